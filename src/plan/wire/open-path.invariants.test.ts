/** What holds for every open line that a wire can follow: the wire keeps its distance, and a mirrored line gives the mirrored way. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { type Path, path } from '../../geometry/contour.ts';
import { lengthOf, pointAt } from '../../geometry/measure.ts';
import { lookupOf, nearestIn } from '../../geometry/near/lookup.ts';
import { line, type Point, point, type Segment } from '../../geometry/segment.ts';
import { centreAlong, lapOf } from '../path/lap.ts';
import { openedPath } from './open-path.ts';

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const polyline = (corners: readonly Point[]): Path => path(corners.slice(1).map((p, i) => line(there(corners[i]), p)));

/** From left to right by any steps. */
const steps = fc.array(fc.record({ on: number(1, 10), up: number(-20, 20) }), { minLength: 1, maxLength: 8 }).map((all) => {
  const ends = all.map((_, i) => all.slice(0, i + 1).reduce((x, { on }) => x + on, 0));
  return [point(0, 0), ...all.map(({ up }, i) => point(there(ends[i]), up))];
});

const side = fc.constantFrom<1 | -1>(1, -1);
const distance = number(0.05, 0.4);
const MARGIN = 4e-4;

const length = ({ segments }: { readonly segments: readonly Segment[] }): number => segments.reduce((sum, s) => sum + lengthOf(s), 0);

describe('the way of the wire along an open line', () => {
  it('keeps its distance from all of the line and starts and ends square to it', () => {
    fc.assert(
      fc.property(steps, side, distance, fc.constantFrom('arc', 'intersection'), (corners, wire, offset, outsideCorners) => {
        const wanted = polyline(corners);
        const opened = openedPath(wanted, wire, offset + MARGIN);
        if (opened.kind !== 'whole') return;
        const centre = centreAlong(lapOf(opened.path, { side: wire, offset, outsideCorners }));
        const lookup = lookupOf(wanted);
        for (const s of centre.segments)
          for (let n = 0; n <= 6; n += 1) expect(nearestIn(lookup, pointAt(s, n / 6)).distance).toBeGreaterThan(offset - 1e-7);
        for (const [p, q] of [
          [there(centre.segments[0]).from, there(corners[0])],
          [there(centre.segments.at(-1)).to, there(corners.at(-1))],
        ] as const)
          expect(Math.hypot(p.x - q.x, p.y - q.y)).toBeCloseTo(offset, 7);
      }),
      { seed: 51, numRuns: 150 },
    );
  });

  it('is joined without gaps and no longer than the line by more than its corners', () => {
    fc.assert(
      fc.property(steps, side, distance, (corners, wire, offset) => {
        const wanted = polyline(corners);
        const opened = openedPath(wanted, wire, offset + MARGIN);
        if (opened.kind !== 'whole') return;
        for (const chain of [opened.path, centreAlong(lapOf(opened.path, { side: wire, offset, outsideCorners: 'arc' }))])
          chain.segments.slice(1).forEach((s, i) => {
            const before = there(chain.segments[i]).to;
            expect(Math.hypot(s.from.x - before.x, s.from.y - before.y)).toBeLessThan(3e-6);
          });
        expect(length(opened.path)).toBeLessThan(length(wanted) + 1e-6);
      }),
      { seed: 52, numRuns: 150 },
    );
  });

  it('is mirrored with the line, on the other side', () => {
    fc.assert(
      fc.property(steps, side, distance, (corners, wire, offset) => {
        const here = openedPath(polyline(corners), wire, offset);
        const there = openedPath(polyline(corners.map((p) => point(p.x, -p.y))), wire === 1 ? -1 : 1, offset);
        expect(there.kind).toBe(here.kind);
        if (here.kind === 'whole' && there.kind === 'whole') expect(length(there.path)).toBeCloseTo(length(here.path), 6);
      }),
      { seed: 53, numRuns: 100 },
    );
  });
});
