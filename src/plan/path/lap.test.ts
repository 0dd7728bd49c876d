/** Laps: programmed and centre pieces side by side, cut and turned round anywhere. */
import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { lengthOf } from '../../geometry/measure.ts';
import { distanceBetween } from '../../geometry/segment.ts';
import { disc, rectangle } from '../plan.fixture.ts';
import { centreOf, frameAt, lapOf, stretch } from './lap.ts';

const around = (outsideCorners: 'arc' | 'intersection') => lapOf(rectangle(0, 0, 20, 10), { side: -1, offset: 0.2, outsideCorners });
const total = (pieces: ReturnType<typeof stretch>, which: 'programmed' | 'centre'): number =>
  pieces.reduce((sum, p) => sum + (p[which] === undefined ? 0 : lengthOf(p[which])), 0);

describe('a lap', () => {
  it('goes round outside corners by an arc, or by carrying on', () => {
    expect(total(around('arc').pieces, 'centre')).toBeCloseTo(60 + 2 * Math.PI * 0.2, 9);
    expect(total(around('intersection').pieces, 'centre')).toBeCloseTo(60 + 8 * 0.2, 9);
    expect(around('arc').pieces.filter((p) => p.programmed === undefined)).toHaveLength(4);
    expect(around('intersection').pieces.filter((p) => p.programmed === undefined)).toHaveLength(0);
  });

  it('is as long as what is taken of it, either way and past its end', () => {
    const lap = around('arc');
    for (const [start, end] of [
      [1, 58],
      [58, 1],
      [55, 65.5],
      [-3, 4],
      [4, -69],
    ] as const) {
      const pieces = stretch(lap, start, end);
      expect(total(pieces, 'programmed')).toBeCloseTo(Math.abs(end - start), 9);
      const centres = pieces.flatMap((p) => (p.centre ? [p.centre] : []));
      for (let i = 1; i < centres.length; i += 1)
        expect(distanceBetween(there(centres[i - 1]).to, there(centres[i]).from)).toBeLessThan(1e-9);
    }
  });

  it('shrinks or grows a circle by the offset', () => {
    for (const side of [1, -1] as const) {
      const lap = lapOf(disc(3, 4, 5), { side, offset: 0.2, outsideCorners: 'arc' });
      const centre = there(centreOf(lap).segments[0]);
      expect(centre.kind === 'arc' && centre.radius).toBeCloseTo(5 - 0.2 * side, 12);
      expect(total(stretch(lap, 1, 1 + 3 * lap.length), 'programmed')).toBeCloseTo(3 * lap.length, 9);
    }
  });

  it('never stands at the very corner', () => {
    const frame = frameAt(around('arc'), 20);
    expect(frame.at.x).toBeCloseTo(20, 9);
    expect(frame.at.y).toBeCloseTo(0.02, 9);
    expect(frame.along).toEqual({ x: 0, y: 1 });
  });
});
