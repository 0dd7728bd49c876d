/** Which arcs become lines, and how far off the lines are. */
import { describe, expect, it } from 'vitest';
import { heightOverChord } from '../../geometry/bulge.ts';
import { type Arc, arc } from '../../geometry/segment.ts';
import { isAlmostStraight, straightened } from './straightened.ts';

const WITHIN = 0.0005;
const arcOf = (radius: number, sweep: number): Arc =>
  arc({ x: radius, y: 0 }, { x: radius * Math.cos(sweep), y: radius * Math.sin(sweep) }, { x: 0, y: 0 }, sweep);

type Two = readonly [number, number];

describe('an arc that is almost straight', () => {
  it.each<readonly [string, Two, Two]>([
    ['one line will do, from 10 m on', [9_900, 4 / 9_900], [10_100, 4 / 10_100]],
    ['its centre lies beyond 50 m, however long it is', [49_500, 0.01], [50_500, 0.01]],
    ['it bends by less than a fiftieth', [60_000, 0.0202], [60_000, 0.0198]],
  ])('is one where %s', (_, not, yet) => {
    expect([isAlmostStraight(arcOf(...not), WITHIN), isAlmostStraight(arcOf(...yet), WITHIN)]).toEqual([false, true]);
  });

  it('is told by its deviation and by the area between it and the lines, as the circle has them', () => {
    const [radius, sweep] = [80_000, 0.004];
    const { lines, deviation, excess } = straightened(arcOf(radius, sweep), WITHIN);
    expect(lines.length).toBe(18);
    const part = sweep / lines.length;
    expect(deviation / heightOverChord(arcOf(radius, part))).toBeCloseTo(1, 6);
    expect(excess / ((lines.length * radius ** 2 * (part - Math.sin(part))) / 2)).toBeCloseTo(1, 4);
    expect(deviation).toBeLessThanOrEqual(WITHIN);
  });
});
