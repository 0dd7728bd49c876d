/** Damaged files end, say where they are damaged, and give no number that was half read. */

import { describe, expect, it } from 'vitest';
import { curvesTags, plateTags, polyline } from '../../../test/drawing-fixtures.ts';
import { asciiDxf, binaryDxf, dxfTags, entity, lightPolyline, lineTags, section, type Tag } from '../../../test/dxf-writer.ts';
import { diceOf } from '../../../test/fuzz/dice.ts';
import { drawingCases } from '../../../test/fuzz/drawings.ts';
import { there } from '../../../test/there.ts';
import { sentenceOf } from '../../text/finding.fixture.ts';
import type { DrawnFile } from '../curve/curve.ts';
import { readSvg } from '../svg/read-svg.ts';
import { readDxf } from './read-dxf.ts';

const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);
const textOf = (tags: readonly Tag[]): string => new TextDecoder().decode(asciiDxf(tags));
const codesOf = (file: DrawnFile): readonly string[] => file.findings.map((f) => f.code);

/** The path to the first number in a result that is none. */
const notANumber = (value: unknown, path = ''): string | undefined => {
  if (typeof value === 'number') return Number.isFinite(value) ? undefined : path;
  if (typeof value !== 'object' || value === null) return undefined;
  for (const [key, inner] of Object.entries(value)) {
    const bad = notANumber(inner, `${path}.${key}`);
    if (bad !== undefined) return bad;
  }
  return undefined;
};

describe('what is no DXF file', () => {
  it.each([
    ['nothing', ''],
    ['blanks', ' \n \n\n'],
    ['a web page', '<!DOCTYPE html>\n<html><body>0\nSECTION</body></html>\n'],
    ['numbers', '0\n1\n2\n3\n4\n5\n'],
    ['an end mark alone', '0\nEOF\n'],
  ])('refuses %s by name', (_, text) => {
    const file = readDxf(bytesOf(text));
    expect(file).toMatchObject({ state: 'refused', curves: [] });
    expect(codesOf(file).at(-1)).toBe('not-a-drawing');
  });

  it('refuses random bytes and a binary head with nothing behind it', () => {
    const dice = diceOf(3);
    const noise = Uint8Array.from({ length: 5000 }, () => dice.below(256));
    expect(readDxf(noise).state).toBe('refused');
    expect(readDxf(binaryDxf([])).state).toBe('refused');
  });
});

describe('numbers that are none', () => {
  it.each(['nan', 'inf', '1,5', '1e999', '', '12..5', '3 4'])('leave out the entity and point to the line of "%s"', (bad) => {
    const good = lineTags(0, 0, 1, 0);
    const file = readDxf(asciiDxf(dxfTags({ entities: [entity('LINE', { 10: bad, 20: 0, 11: 5, 21: 5 }), good] })));
    expect(file.curves.length).toBe(1);
    expect(file.findings).toMatchObject([{ code: 'number-unreadable', place: { kind: 'line', line: 9 } }]);
    expect(sentenceOf(file.findings[0])).toContain(`'${bad}'`);
  });

  it('reads an exponent as Fortran writes it', () => {
    const [drawn] = readDxf(asciiDxf(dxfTags({ entities: [entity('LINE', { 10: 0, 20: 0, 11: '1.0D+02', 21: '-2.5d-1' })] }))).curves;
    expect(there(drawn).curve).toMatchObject({ to: { x: 100, y: -0.25 } });
  });

  it('reads no infinity out of a binary file', () => {
    const file = readDxf(binaryDxf(dxfTags({ entities: [entity('LINE', { 10: Number.POSITIVE_INFINITY, 20: 0, 11: 1, 21: 0 })] })));
    expect(file.curves).toEqual([]);
    expect(file.findings).toMatchObject([{ code: 'number-unreadable', place: { kind: 'byte' } }]);
  });

  it('does not mind them where nothing is made of them', () => {
    const file = readDxf(asciiDxf(dxfTags({ entities: [entity('TEXT', { 10: 'nan', 20: 0 }), lineTags(0, 0, 1, 0)] })));
    expect(codesOf(file)).toEqual(['entities-passed-over']);
  });

  it('lose the polyline one of whose vertices has them', () => {
    const bad = polyline([
      [0, 0],
      [1, 0],
      [1, 1],
    ]).map((tag): Tag => (tag[0] === 10 && tag[1] === 1 ? [10, 'x'] : tag));
    const file = readDxf(asciiDxf(dxfTags({ entities: [bad, lineTags(0, 0, 1, 0)] })));
    expect(file.curves.map((c) => c.curve.kind)).toEqual(['line']);
    expect(codesOf(file)).toEqual(['number-unreadable', 'number-unreadable', 'entity-unfinished']);
  });
});

describe('group codes that are none', () => {
  const three = dxfTags({ entities: [lineTags(0, 0, 1, 0), lineTags(2, 0, 3, 0), lineTags(4, 0, 5, 0)] });

  it.each(['XX', '8.5', '-17', '99999', '1 0'])('lose one entity and no more for the code "%s"', (bad) => {
    const lines = textOf(three).split('\n');
    // The code of y of the second line's start.
    lines[22] = bad;
    const file = readDxf(bytesOf(lines.join('\n')));
    expect(file.curves.map((c) => (c.curve.kind === 'line' ? c.curve.from.x : Number.NaN))).toEqual([0, 4]);
    expect(file.findings).toMatchObject([
      { code: 'entity-unfinished', place: { line: 17 } },
      { code: 'group-code-unreadable', place: { line: 23 } },
    ]);
  });

  it('never shift a value to another code, whichever single line is lost', () => {
    const lines = textOf(three).split('\n');
    const good = new Set(['0,0 1,0', '2,0 3,0', '4,0 5,0']);
    for (let i = 0; i < lines.length - 1; i++) {
      const file = readDxf(bytesOf(lines.toSpliced(i, 1).join('\n')));
      const drawn = file.curves.map(({ curve: c }) => (c.kind === 'line' ? `${c.from.x},${c.from.y} ${c.to.x},${c.to.y}` : c.kind));
      const wrong = drawn.filter((d) => !good.has(d));
      expect({ i, wrong }).toEqual({ i, wrong: [] });
      if (drawn.length < 3) expect(file.findings.length).toBeGreaterThan(0);
    }
  });

  it('never draw a polyline that lacks a vertex, whichever single line is lost', () => {
    const tags = dxfTags({
      entities: [
        polyline(
          [
            [0, 0],
            [9, 0],
            [9, 5],
            [0, 5],
          ],
          { 70: 1 },
        ),
        lineTags(0, 0, 1, 0),
      ],
    });
    const lines = textOf(tags).split('\n');
    for (let i = 0; i < lines.length - 1; i++) {
      const pieces = readDxf(bytesOf(lines.toSpliced(i, 1).join('\n'))).curves.filter((c) => c.closes).length;
      expect({ i, pieces: pieces === 0 || pieces === 4 }).toEqual({ i, pieces: true });
    }
  });

  it('end a binary file where they stand, with the byte', () => {
    const bytes = binaryDxf(three);
    const at = bytes.length - 60;
    bytes[at] = 0xff;
    bytes[at + 1] = 0x7f;
    const file = readDxf(bytes);
    expect(file.state).toBe('incomplete');
    expect(codesOf(file)).toContain('file-cut-short');
    expect(file.curves.length).toBeLessThan(3);
  });
});

describe('marks that are missing', () => {
  const closed = polyline(
    [
      [0, 0],
      [1, 0],
      [1, 1],
    ],
    { 70: 1 },
  );

  it('takes a POLYLINE without end mark to end where the next entity begins, and says so', () => {
    const file = readDxf(asciiDxf(dxfTags({ entities: [closed.slice(0, -1), lineTags(0, 0, 1, 0)] })));
    expect(file.state).toBe('complete');
    expect(file.curves.length).toBe(4);
    expect(codesOf(file)).toEqual(['sequence-end-missing']);
  });

  it('ends when a POLYLINE without end mark is the last thing in the file', () => {
    const file = readDxf(asciiDxf(dxfTags({ entities: [closed.slice(0, -1)] }).slice(0, -2)));
    expect(file).toMatchObject({ state: 'incomplete', curves: [] });
    expect(codesOf(file)).toEqual(['entity-unfinished', 'entity-unfinished', 'file-cut-short']);
  });

  it.each([
    ['the file', (tags: readonly Tag[]) => tags.slice(0, -1), 'its end mark is missing'],
    ['the last section', (tags: readonly Tag[]) => tags.filter((_, i) => i !== tags.length - 2), 'the section ENTITIES has no end mark'],
    [
      'a section between',
      (tags: readonly Tag[]) => tags.filter((t, i) => i > 9 || t[1] !== 'ENDSEC'),
      'the section HEADER has no end mark',
    ],
  ])('knows that the end mark of %s is missing', (_, without, why) => {
    const file = readDxf(asciiDxf(without(dxfTags({ version: 'AC1015', entities: [lineTags(0, 0, 1, 0), lineTags(0, 0, 1, 1)] }))));
    expect(file.state).toBe('incomplete');
    expect([file.findings.at(-1)?.code, sentenceOf(file.findings.at(-1))]).toEqual(['file-cut-short', `The file is not whole: ${why}.`]);
    expect(file.curves.length).toBe(2);
  });

  it('reads on behind the head of a section that was lost', () => {
    const tags = [...section('HEADER', []), ...lineTags(0, 0, 1, 0), [0, 'ENDSEC'] as Tag, [0, 'EOF'] as Tag];
    const file = readDxf(asciiDxf(tags));
    expect(file.curves.length).toBe(1);
    expect(codesOf(file)).toEqual(['section-missing']);
  });

  it('stops at the end mark, whatever stands behind', () => {
    const file = readDxf(asciiDxf([...dxfTags({ entities: [lineTags(0, 0, 1, 0)] }), ...dxfTags({ entities: [lineTags(5, 5, 6, 6)] })]));
    expect(file).toMatchObject({ state: 'complete', curves: { length: 1 } });
  });

  it('does not draw an attribute, nor lose what follows its end mark', () => {
    const withAttribute = [
      ...entity('INSERT', { 2: 'none', 66: 1, 10: 0, 20: 0 }),
      ...entity('ATTRIB', { 10: 0, 20: 0, 1: 'x' }),
      [0, 'SEQEND'] as Tag,
    ];
    const file = readDxf(asciiDxf(dxfTags({ entities: [withAttribute, lineTags(0, 0, 1, 0)] })));
    expect(file.curves.length).toBe(1);
    expect(codesOf(file)).toEqual(['reference-missing', 'entities-passed-over']);
  });
});

describe('files cut short', () => {
  const files = [asciiDxf(plateTags()), asciiDxf(curvesTags(), { lineEnd: '\r\n' }), binaryDxf(plateTags('AC1009'), { shortCodes: true })];
  const whole = files.map((bytes) => new Set(readDxf(bytes).curves.map((c) => JSON.stringify(c.curve))));

  /** Every cut but one behind the end mark is known as a cut, and every curve that is read is one of the whole file. */
  const holds = (bytes: Uint8Array, at: number, good: ReadonlySet<string>, last: number): void => {
    const file = readDxf(bytes.subarray(0, at));
    const strange = file.curves.filter((c) => !good.has(JSON.stringify(c.curve)));
    const state = at >= last ? 'complete' : file.state === 'refused' ? 'refused' : 'incomplete';
    expect({ at, state: file.state, strange, bad: notANumber(file.curves) }).toEqual({ at, state, strange: [], bad: undefined });
    if (file.state !== 'complete') expect(file.findings.length).toBeGreaterThan(0);
  };

  it('are known at every 37th line', () => {
    const lines = textOf(plateTags()).split('\n');
    for (let n = 0; n < lines.length - 2; n += 37) {
      const text = lines
        .slice(0, n)
        .map((l) => `${l}\n`)
        .join('');
      holds(bytesOf(text), text.length, there(whole[0]), Number.POSITIVE_INFINITY);
    }
  });

  it('are known at every byte of small files and at random bytes', () => {
    const dice = diceOf(11);
    files.forEach((bytes, i) => {
      const last = new TextDecoder('latin1').decode(bytes).lastIndexOf('EOF') + (i === 2 ? 4 : 3);
      for (let k = 0; k < 400; k++) {
        const at = dice.below(bytes.length + 1);
        holds(bytes, at, there(whole[i]), last);
      }
    });
  });

  it('lose the entity in which they are cut, for its last number may be half of one', () => {
    const text = textOf(
      dxfTags({
        entities: [
          lineTags(0, 0, 123.456, 0),
          lightPolyline([
            [0, 0],
            [1, 0],
            [1, 1],
          ]),
        ],
      }),
    );
    const cut = text.slice(0, text.indexOf('123.456') + 4);
    expect(readDxf(bytesOf(cut)).curves).toEqual([]);
  });
});

describe('damage by chance', () => {
  it('ends in a result or a finding, without any number that is none', () => {
    for (const { name, bytes } of drawingCases(1500, 20)) {
      const file = name.endsWith('.svg') ? readSvg(bytes) : readDxf(bytes);
      expect({ name, bad: notANumber([file.curves, file.marks, file.layers, file.findings]) }).toEqual({ name, bad: undefined });
      if (file.state !== 'complete') expect(file.findings.length).toBeGreaterThan(0);
    }
  });
});
