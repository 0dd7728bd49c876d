/** Where chains meet themselves and each other, case by case. */
import { describe, expect, it } from 'vitest';
import { arcByDegrees } from '../bulge.ts';
import { contour, path } from '../contour.ts';
import { disc, polygon, rectangle, roundedRectangle } from '../example-shapes.fixture.ts';
import { line, point } from '../segment.ts';
import { crossingsBetween, selfCrossings } from './crossings.ts';

const kinds = (found: ReturnType<typeof selfCrossings>): string => found.map((c) => c.kind).join(', ');

describe('self-crossings', () => {
  it('finds none in sound contours', () => {
    for (const c of [rectangle(4, 3), roundedRectangle(10, 6, 2), roundedRectangle(4, 4, 2), disc(1, 2, 3)])
      expect(selfCrossings(c, 1e-6)).toEqual([]);
  });
  it('finds the crossing of a bow tie, also when it falls on corners', () => {
    const tie = polygon([
      [0, 0],
      [2, 2],
      [2, 0],
      [0, 2],
    ]);
    expect(selfCrossings(tie, 1e-6)).toMatchObject([{ kind: 'crossing', at: { x: 1, y: 1 }, first: 0, second: 2 }]);
    const onCorners = polygon([
      [0, 0],
      [1, 1],
      [2, 2],
      [2, 0],
      [1, 1],
      [0, 2],
    ]);
    expect(kinds(selfCrossings(onCorners, 1e-6))).toBe('crossing');
    const fromTheCorner = polygon([
      [1, 1],
      [2, 2],
      [2, 0],
      [1, 1],
      [0, 2],
      [0, 0],
    ]);
    expect(kinds(selfCrossings(fromTheCorner, 1e-6))).toBe('crossing');
  });
  it('tells a pinch from a crossing', () => {
    const pinched = polygon([
      [0, 0],
      [2, 1],
      [4, 0],
      [4, 2],
      [2, 1],
      [0, 2],
    ]);
    expect(kinds(selfCrossings(pinched, 1e-6))).toBe('touching');
    const dent = polygon([
      [0, 0],
      [4, 0],
      [4, 2],
      [2, 0],
      [0, 2],
    ]);
    expect(selfCrossings(dent, 1e-6)).toMatchObject([{ kind: 'touching', at: { x: 2, y: 0 }, first: 0, second: 2 }]);
  });
  it('tells crossing from touching by the bend where arcs part tangentially', () => {
    const up = arcByDegrees(point(0, 5), 5, 180, 270);
    const onward = arcByDegrees(point(0, 5), 5, 270, 360);
    const over = path([up, onward]);
    const tighter = path([arcByDegrees(point(0, 2), 2, 180, 270), arcByDegrees(point(0, 2), 2, 270, 360)]);
    const wavy = path([arcByDegrees(point(0, 2), 2, 180, 270), line(point(0, 0), point(9, 0))]);
    expect(kinds(crossingsBetween(over, tighter, 1e-9))).toBe('touching');
    expect(kinds(crossingsBetween(over, wavy, 1e-9))).toBe('crossing');
  });
  it('names a spike and a doubled edge as overlaps', () => {
    const spike = polygon([
      [0, 0],
      [4, 0],
      [6, 0],
      [4, 0],
      [4, 4],
      [0, 4],
    ]);
    expect(kinds(selfCrossings(spike, 1e-6))).toContain('overlap');
    const half = arcByDegrees(point(0, 0), 5, 0, 180);
    const back = { ...half, from: half.to, to: half.from, sweep: -half.sweep };
    expect(kinds(selfCrossings(contour([half, back]), 1e-6))).toBe('overlap');
  });
  it('is not taken in by corners that are nearly double, and still sees a spike with a blunt tip', () => {
    for (const gap of [1e-3, 1e-5, 1e-6, 1e-7, 1e-8, 1e-10]) {
      const nearly = polygon([
        [0, 0],
        [4, 0],
        [4 + gap / 2, gap],
        [4, 2 * gap],
        [4, 3],
        [0, 3],
      ]);
      expect(selfCrossings(nearly, 1e-6)).toEqual([]);
    }
    const blunt = polygon([
      [0, 0],
      [4, 0],
      [6, 0],
      [6, 5e-7],
      [4, 5e-7],
      [4, 4],
      [0, 4],
    ]);
    expect(kinds(selfCrossings(blunt, 1e-6))).toContain('overlap');
  });
  it('meets two chains in all their places once', () => {
    expect(kinds(crossingsBetween(rectangle(4, 4), disc(4, 4, 1), 1e-6))).toBe('crossing, crossing');
    expect(kinds(crossingsBetween(rectangle(4, 4), disc(2, 2, 2), 1e-6))).toBe('touching, touching, touching, touching');
    expect(kinds(crossingsBetween(rectangle(4, 4), disc(2, 2, 1), 1e-6))).toBe('');
  });
});
