/** The corpus of drawings made by others, where it is there, and the comparison itself. */
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Drawing } from '../src/drawing/drawing.ts';
import { box, drawn } from '../src/drawing/drawn.fixture.ts';
import { readDrawing } from '../src/drawing/read/read-drawing.ts';
import { asciiDxf, dxfTags, entity, lightPolyline, lineTags, type Tag } from '../test/dxf-writer.ts';
import { compared } from './corpus/compare.ts';
import { flagged } from './corpus/flags.ts';
import type { Truth } from './corpus/truth.ts';
import { readTruths } from './corpus/truth.ts';
import { table, verdictOn, verdictsOn } from './corpus.ts';

/** Drawings made by others are kept beside the project, not in it. */
const folder = process.env['KERFWRIGHT_CORPUS'] ?? join(import.meta.dirname, '..', '..', 'shared', 'drawings');
const isThere = existsSync(join(folder, 'truth.json'));

describe('drawings made by others', () => {
  it.skipIf(!isThere)(`are all right or rightly flagged${isThere ? '' : ` (skipped: no truth.json in ${folder})`}`, () => {
    const verdicts = verdictsOn(folder);
    expect(verdicts.length).toBeGreaterThan(0);
    expect(verdicts.filter((v) => v.wrong.length > 0)).toEqual([]);
  });
});

const truth = (changes: Partial<Truth> = {}): Truth => ({
  path: 'a.dxf',
  clean: true,
  flags: [],
  units: 'mm',
  loops: 2,
  areas: [200, 12.5664],
  openChains: 0,
  ...changes,
});
const plate = (): Drawing =>
  drawn()
    .polyline(box(0, 0, 20, 10), true)
    .circle([5, 5], 2)
    .read();

describe('comparing a drawing with its truth', () => {
  it('passes a drawing that agrees', () => {
    expect(compared(plate(), truth())).toEqual({ path: 'a.dxf', wrong: [], differs: [] });
  });

  it('fails a clean drawing on a wrong loop, area, open chain or unit', () => {
    expect(compared(plate(), truth({ loops: 3 })).wrong).toEqual(['loops: 2, expected 3']);
    expect(compared(plate(), truth({ areas: [200.01, 12.5664] })).wrong).toEqual(['area 200.00000, expected 200.01']);
    expect(compared(plate(), truth({ units: 'inch' })).wrong).toEqual(['unit mm, expected inch']);
    expect(compared(plate(), truth({ units: 'absent' })).wrong).toEqual(['the missing unit is not asked about (mm, header)']);
    const open = drawn()
      .polyline(box(0, 0, 20, 10), true)
      .circle([5, 5], 2)
      .line([30, 0], [40, 0])
      .read();
    expect(compared(open, truth()).wrong).toEqual(['open chains: 1, expected 0']);
  });

  it('fails any drawing on a flag that no finding answers, and shows counts that differ', () => {
    const verdict = compared(plate(), truth({ clean: false, flags: ['open', 'self_intersecting'], loops: 1 }));
    expect(verdict.wrong).toHaveLength(2);
    expect(verdict.differs).toEqual(['loops: 2, expected 1']);
  });

  it('takes a flag as answered by a finding of its meaning with a place', () => {
    const gaps = drawn().lines([0, 0], [10, 0], [10, 5], [0, 5], [0, 0.004]).read();
    expect(flagged(gaps, 'gaps')).toEqual([]);
    expect(flagged(gaps, 'duplicates')).toHaveLength(1);
    expect(flagged(gaps, 'never heard of')).toHaveLength(1);
  });

  const read = (...entities: readonly (readonly Tag[])[]): Drawing => readDrawing(asciiDxf(dxfTags({ units: 4, entities })), 'a.dxf');
  const square = lightPolyline([
    [0, 0],
    [9, 0],
    [9, 9],
    [0, 9],
  ]);
  const one = (changes: Partial<Truth>): Truth => truth({ loops: 1, areas: [81], ...changes });

  it('accepts a file without a shape, with the flags that say so and whatever its unit', () => {
    const empty = readDrawing(asciiDxf(dxfTags({ entities: [] })), 'a.dxf');
    for (const flag of ['no_shapes', 'no geometry', 'empty', 'no-loops'])
      expect(compared(empty, truth({ loops: 0, areas: [], units: 'absent', flags: [flag] })).wrong).toEqual([]);
    const refused = readDrawing(new TextEncoder().encode('<svg xmlns="http://www.w3.org/2000/svg"/>'), 'a.svg');
    expect(compared(refused, truth({ loops: 0, areas: [], flags: ['no_shapes'] })).wrong).toEqual([]);
    expect(compared(plate(), truth({ flags: ['no_shapes'] })).wrong).toHaveLength(1);
  });

  it('accepts that a helix is named and left out', () => {
    const helix = read(square, entity('HELIX', { 10: 0, 20: 0, 40: 2 }));
    expect(compared(helix, one({ flags: ['helix'] })).wrong).toEqual([]);
    expect(flagged(plate(), 'helix')).toHaveLength(1);
  });

  it('accepts an open chain that lies exactly on the edge of a loop as an edge drawn twice', () => {
    const onEdge = read(square, lineTags(2, 0, 6, 0));
    expect(onEdge.openChains).toEqual([]);
    expect(compared(onEdge, one({ openChains: 1, flags: ['open_chains'] })).wrong).toEqual([]);
    expect(compared(plate(), truth({ openChains: 1 })).wrong).toEqual(['open chains: 0, expected 1']);
  });

  it.each([0, -2])('accepts a radius of %i that is told', (radius) => {
    const told = read(square, entity('CIRCLE', { 10: 4, 20: 4, 40: radius }));
    for (const flag of ['zero_radius', 'negative radius', 'radius']) expect(compared(told, one({ flags: [flag] })).wrong).toEqual([]);
    expect(flagged(plate(), 'negative radius')).toHaveLength(1);
  });

  it('reads a truth with odd and missing fields', () => {
    const rows = [{ path: 'a', areas: 'many', loops: null, flags: [1, 'open'], depth_histogram: { 0: 1, 2: 3 } }, { no: 'path' }, 7, null];
    expect(readTruths(JSON.stringify(rows))).toEqual([{ path: 'a', clean: false, flags: ['open'], depths: [1, 0, 3] }]);
    expect(readTruths('{"drawings":[{"path":"b"}]}').map((t) => t.path)).toEqual(['b']);
    expect(readTruths('{}')).toEqual([]);
  });

  it('calls a missing file wrong and counts in the last line', () => {
    const verdict = verdictOn(import.meta.dirname, truth({ path: 'nowhere.dxf' }));
    expect(verdict.wrong).toEqual(['the file is missing']);
    expect(table([verdict]).split('\n').at(-1)).toBe('1 drawings, 0 right or rightly flagged, 1 wrong');
  });
});
