/** However a drawing is written down, it reads to the same curves. */
import { describe, expect, it } from 'vitest';
import { curvesTags, plateTags } from '../../../test/drawing-fixtures.ts';
import { asciiDxf, binaryDxf, dxfTags, layer, lineTags, type Tag } from '../../../test/dxf-writer.ts';
import { there } from '../../../test/there.ts';
import { readDxf } from './read-dxf.ts';

const VERSIONS = ['AC1009', 'AC1012', 'AC1014', 'AC1015', 'AC1018', 'AC1021', 'AC1024', 'AC1027', 'AC1032'];

/** All but the line or byte, which differ from format to format. */
const seen = (bytes: Uint8Array): unknown => {
  const { state, units, curves, marks, layers, passedOver } = readDxf(bytes);
  return { state, units, curves: curves.map(({ line: _, ...rest }) => rest), marks, layers, passedOver: [...passedOver] };
};

const utf8From = (version: string): 'utf-8' | 'windows-1252' => (version >= 'AC1021' ? 'utf-8' : 'windows-1252');

describe('versions and encodings', () => {
  const expected = seen(asciiDxf(plateTags()));

  it('reads the plate whole, as the yardstick of what follows', () => {
    const { state, curves, marks, findings } = readDxf(asciiDxf(plateTags()));
    expect(state).toBe('complete');
    expect(curves.length).toBe(6 + 2 + 3 + 2 + 3);
    expect(marks).toEqual([{ at: { x: 20, y: 14 }, layer: 'holes', hidden: false }]);
    expect(findings.map((f) => f.code)).toEqual(['entities-passed-over']);
  });

  it.each(VERSIONS)('reads %s the same in ASCII and binary', (version) => {
    const encoding = utf8From(version);
    expect(seen(asciiDxf(plateTags(version), { encoding }))).toEqual(expected);
    expect(seen(binaryDxf(plateTags(version), { encoding, shortCodes: version === 'AC1009' }))).toEqual(expected);
  });

  it('reads what later versions brought the same in ASCII and binary', () => {
    const later = seen(asciiDxf(curvesTags()));
    expect(later).toMatchObject({ state: 'complete', curves: { length: 4 + 1 + 1 + 1 + 1 } });
    expect(seen(binaryDxf(curvesTags()))).toEqual(later);
  });

  it.each([
    ['CR LF', { lineEnd: '\r\n' }],
    ['CR alone', { lineEnd: '\r' }],
    ['CR CR LF, as a file copied twice in text mode', { lineEnd: '\r\r\n' }],
    ['codes set right', { padded: true }],
    ['blanks after each line', { trailing: '  \t' }],
    ['a byte order mark', { before: '\uFEFF' }],
    ['empty lines before the first', { before: '\n\n\n' }],
    ['a comment before the first', { before: '999\nmade by hand\n' }],
    ['empty lines after a byte order mark', { before: '\uFEFF\n\n', lineEnd: '\r\n' }],
  ] as const)('reads the same with %s', (_, style) => {
    expect(seen(asciiDxf(plateTags(), style))).toEqual(expected);
  });

  it('reads the same with comments between all pairs, and knows the lines still', () => {
    const commented = plateTags().flatMap((tag): Tag[] => [[999, 'a remark'], tag]);
    expect(seen(asciiDxf(commented))).toEqual(expected);
    expect(seen(binaryDxf(commented, { shortCodes: true }))).toEqual(expected);
  });

  it('reads binary R12 with its codes of one byte when it begins with a comment', () => {
    const tags: readonly Tag[] = [[999, 'a remark'], ...plateTags('AC1009')];
    expect(seen(binaryDxf(tags, { shortCodes: true }))).toEqual(expected);
    expect(seen(binaryDxf(tags))).toEqual(expected);
  });

  it('steps over binary values of every length', () => {
    const values = { 290: 1, 160: 5, 310: 'chunk', 370: 25, 420: 255, 440: 7, 460: 0.5, 480: 'A', 1004: 'data', 1010: 1, 1070: 3, 1071: 7 };
    const more = Object.entries(values).map(([code, value]): Tag => [Number(code), value]);
    const [head, ...rest] = lineTags(1, 2, 3, 4);
    const tags = dxfTags({ version: 'AC1032', entities: [[there(head), ...more, ...rest]] });
    expect(readDxf(binaryDxf(tags)).curves[0]?.curve).toEqual({ kind: 'line', from: { x: 1, y: 2 }, to: { x: 3, y: 4 } });
  });

  it('reads a file without header and tables', () => {
    const { state, units, unitless, curves } = readDxf(asciiDxf(dxfTags({ entities: [lineTags(0, 0, 1, 0)] })));
    expect({ state, units, unitless, count: curves.length }).toEqual({ state: 'complete', units: undefined, unitless: false, count: 1 });
  });

  it.each([
    ['before 2007 by its code page', 'AC1015', 'ANSI_1252', 'windows-1252'],
    ['from 2007 as UTF-8, whatever code page it names', 'AC1021', 'ANSI_1252', 'utf-8'],
    ['as UTF-8 where neither is told', undefined, undefined, 'utf-8'],
    ['byte by byte where that is no UTF-8', undefined, undefined, 'windows-1252'],
    ['in Greek', 'AC1015', 'ANSI_1253', 'windows-1252'],
  ] as const)('decodes names %s', (_, version, codePage, encoding) => {
    const name = 'Bügel Ø';
    const parts = {
      ...(version && { version }),
      ...(codePage && { codePage }),
      layers: [layer(name)],
      entities: [lineTags(0, 0, 1, 0, name)],
    };
    for (const bytes of [asciiDxf(dxfTags(parts), { encoding }), binaryDxf(dxfTags(parts), { encoding })]) {
      const read = readDxf(bytes).layers.find((l) => l.entities > 0)?.name;
      expect(read).toBe(codePage === 'ANSI_1253' ? 'Bόgel Ψ' : name);
    }
  });

  it('reads signs that are written by their number', () => {
    const bytes = asciiDxf(dxfTags({ entities: [lineTags(0, 0, 1, 0, 'B\\U+00FCgel')] }));
    expect(readDxf(bytes).layers.map((l) => l.name)).toEqual(['Bügel']);
  });

  it('says that a code page is not known, and still tells its names apart', () => {
    const parts = { version: 'AC1009', codePage: 'dos850', entities: [lineTags(0, 0, 1, 0, 'ä'), lineTags(0, 0, 1, 0, 'ö')] };
    const { findings, layers } = readDxf(asciiDxf(dxfTags(parts), { encoding: 'windows-1252' }));
    expect(findings.map((f) => f.code)).toEqual(['code-page-unknown']);
    expect(layers.length).toBe(2);
  });
});
