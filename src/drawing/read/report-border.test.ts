/** A border around the part is asked about, once, and a part that is a rectangle is not. */
import { describe, expect, it } from 'vitest';
import { asciiDxf, dxfTags, entity, lineTags, type Tag } from '../../../test/dxf-writer.ts';
import { sentenceOf } from '../../text/finding.fixture.ts';
import type { Finding } from '../../text/finding.ts';
import { readDrawing } from './read-drawing.ts';

const box = (x: number, y: number, wide: number, high: number, layer = 'part'): readonly (readonly Tag[])[] => [
  lineTags(x, y, x + wide, y, layer),
  lineTags(x + wide, y, x + wide, y + high, layer),
  lineTags(x + wide, y + high, x, y + high, layer),
  lineTags(x, y + high, x, y, layer),
];
const asked = (...entities: readonly (readonly Tag[])[]): readonly Finding[] =>
  readDrawing(asciiDxf(dxfTags({ units: 4, entities })), 'a.dxf').findings.filter((f) => f.code === 'looks-like-border');
const plain = box(100, 100, 60, 40);
const part = [...plain, ...box(110, 110, 20, 20)];

describe('the border of a sheet', () => {
  it('speaks of its grid and marks itself, and of no line of the work', () => {
    const grid = [90, 190, 290].flatMap((at) => [lineTags(at, 0, at, 297, 'grid'), lineTags(0, at - 35, 420, at - 35, 'grid')]);
    const open = lineTags(105, 105, 130, 120, 'part');
    const { findings } = readDrawing(
      asciiDxf(dxfTags({ units: 4, entities: [...box(0, 0, 420, 297, 'lines'), ...grid, ...plain, open] })),
      'a.dxf',
    );
    expect(sentenceOf(findings.find((f) => f.code === 'looks-like-border'))).toContain('6 open lines end on it');
    expect(findings.filter((f) => f.code === 'open-chain').map(sentenceOf)).toEqual([expect.stringContaining('on layer part')]);
    expect(findings.filter((f) => f.code === 'chain-ends-on-loop')).toEqual([]);
  });

  it.each([
    ['of ISO size', box(0, 0, 420, 297, 'lines'), 'L1 on layer lines, 420 mm by 297 mm, looks like'],
    ['standing', box(0, 0, 297, 420, 'lines'), '297 mm by 420 mm'],
    ['of letter size', box(0, 0, 431.8, 279.4, 'lines'), 'looks like the border'],
    ['by its layer', box(10, 10, 300, 250, 'TITLE_BLOCK'), 'on layer TITLE_BLOCK'],
    ['of ISO by its frame alone', box(0, 0, 390, 277, 'lines'), '390 mm by 277 mm'],
    ['standing, by its frame alone', box(0, 0, 180, 277, 'lines'), '180 mm by 277 mm'],
    ['by its layer in another language', box(10, 10, 300, 250, 'Cajetín'), 'on layer Cajetín'],
    ['with an inner one', [...box(0, 0, 420, 297, 'border'), ...box(10, 10, 400, 277, 'border')], 'L1 and L2 look like the border'],
  ])('is one question: %s', (_, border, sentence) => {
    const [told, ...more] = asked(...border, ...part);
    expect([sentenceOf(told), more]).toEqual([expect.stringContaining(sentence), []]);
    expect([told?.severity, told?.remedy?.field]).toEqual(['doubt', 'without']);
  });

  it.each([
    [297, 210],
    [420, 297],
    [594, 420],
    [841, 594],
    [1189, 841],
    [279.4, 215.9],
    [431.8, 279.4],
    [558.8, 431.8],
    [863.6, 558.8],
    [1117.6, 863.6],
  ])('is seen at %d by %d mm, up to half a millimetre off', (long, short) => {
    expect(asked(...box(0, 0, long + 0.45, short - 0.45, 'lines'), ...plain)).toHaveLength(1);
    expect(asked(...box(0, 0, long + 0.55, short, 'lines'), ...plain)).toEqual([]);
    expect(asked(...box(0, 0, long, short - 0.55, 'lines'), ...plain)).toEqual([]);
  });

  it('is not seen in a part, an empty rectangle or one among others', () => {
    expect(asked(...part)).toEqual([]);
    expect(asked(...box(0, 0, 420, 297))).toEqual([]);
    expect(asked(...box(0, 0, 421, 297), ...plain)).toEqual([]);
    expect(asked(...box(0, 0, 600, 400), ...box(50, 50, 420, 297), ...box(500, 50, 20, 20))).toEqual([]);
  });

  it('is seen around a part that has openings, whatever its size, and not around an opening with its start hole', () => {
    expect(sentenceOf(asked(...box(0, 0, 421, 297), ...part)[0])).toContain('421 mm by 297 mm, lies around a part that has openings');
    const threadedBeside = entity('CIRCLE', { 8: 'part', 10: 110, 20: 120, 40: 1.25 });
    const threaded = entity('CIRCLE', { 8: 'part', 10: 120, 20: 120, 40: 1.5 });
    expect(asked(...box(0, 0, 421, 297), ...plain, threaded)).toEqual([]);
    expect(asked(...box(0, 0, 421, 297), ...box(100, 100, 60, 40), ...box(130, 110, 20, 20), threadedBeside)).toEqual([]);
  });
});
