/** What is left out lies around nothing, and what was asked of it is settled by what the job says. */
import { describe, expect, it } from 'vitest';
import { asciiDxf, dxfTags, lineTags, type Tag } from '../../test/dxf-writer.ts';
import type { Drawing } from './drawing.ts';
import { type SaidOfLoops, takenOf } from './left-out.ts';
import { readDrawing } from './read/read-drawing.ts';

const box = (x: number, y: number, wide: number, high: number, layer = 'part'): readonly (readonly Tag[])[] => [
  lineTags(x, y, x + wide, y, layer),
  lineTags(x + wide, y, x + wide, y + high, layer),
  lineTags(x + wide, y + high, x, y + high, layer),
  lineTags(x, y + high, x, y, layer),
];
const read = (...entities: readonly (readonly Tag[])[]): Drawing => readDrawing(asciiDxf(dxfTags({ units: 4, entities })), 'a.dxf');
const framed = read(...box(0, 0, 420, 297, 'sheet'), ...box(100, 100, 60, 40), ...box(110, 110, 20, 20));
const seen = (drawing: Drawing, said: SaidOfLoops): unknown => {
  const { loops, findings } = takenOf(drawing, said);
  const work = loops.filter((l) => l.aside === undefined).map((l) => `${l.id} ${l.depth} ${l.parent ?? '-'}`);
  return [work, findings.filter((f) => f.severity === 'doubt').map((f) => f.code)];
};

describe('a border', () => {
  it.each([
    ['is left out and asked about', {}, [['L2 0 -', 'L3 1 L2'], ['looks-like-border']]],
    ['is settled when it is left out by name', { without: ['L1'] }, [['L2 0 -', 'L3 1 L2'], []]],
    ['is settled when its layer is not to be cut', { layers: ['part'] }, [['L2 0 -', 'L3 1 L2'], []]],
    ['is work when its kept side is named', { kept: { L1: 'punch' } }, [['L1 0 -', 'L2 1 L1', 'L3 2 L2'], []]],
    ['stays a question when something else is named', { without: ['L3'], kept: { L2: 'punch' } }, [['L2 0 -'], ['looks-like-border']]],
  ])('%s', (_, said, wanted) => {
    expect(seen(framed, said)).toEqual(wanted);
  });

  it('that may be the edge of the block is that where the job says that there is one', () => {
    const blocked = read(...box(0, 0, 150, 90), ...box(40, 30, 60, 40), ...box(50, 40, 20, 20));
    expect(seen(blocked, {})).toEqual([['L2 0 -', 'L3 1 L2'], ['looks-like-border']]);
    expect(seen(blocked, { outline: 'block' })).toEqual([['L1 0 -', 'L2 1 L1', 'L3 2 L2'], []]);
  });
});

it('crossings of a contour that is left out are nobody’s trouble', () => {
  const crossed = read(...box(0, 0, 100, 60), ...box(80, 20, 60, 10, 'note'));
  expect(crossed.findings.map((f) => f.code)).toContain('loops-cross');
  expect(takenOf(crossed, { without: ['L2'] }).findings.map((f) => f.code)).not.toContain('loops-cross');
});
