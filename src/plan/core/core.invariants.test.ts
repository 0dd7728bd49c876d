/** What holds for every opening that is cut without a core: nothing stands, no bite is too wide, and the wire stays inside. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { boundsOfChain } from '../../geometry/area.ts';
import { windingIn } from '../../geometry/near/inside.ts';
import { distanceIn, lookupOf, lookupOfSegments } from '../../geometry/near/lookup.ts';
import { distanceBetween, type Point, type Segment } from '../../geometry/segment.ts';
import { planCut } from '../cut/plan-cut.ts';
import { disc, faultsOf, loop, planned, questionFor, rectangle } from '../plan.fixture.ts';
import type { ContourPlan, CutPlan } from '../plan.ts';
import { burning, number } from './core-shapes.fixture.ts';

/** All that the wire's centre runs in pass 1, and half the width it takes there. */
const roughOf = (plan: CutPlan): { readonly cuts: readonly Segment[]; readonly half: number } => ({
  cuts: plan.steps.flatMap((s) => (s.kind === 'cut' && s.pass === 1 && s.centre !== undefined ? [s.centre] : [])),
  half: plan.wire.diameter / 2 + there(plan.passes[0]).gap.value,
});

/** Places of the unit square, evenly spread. */
const spread = (first: number, count: number): readonly (readonly [number, number])[] =>
  Array.from({ length: count }, (_, n) => [((first + n) * 0.7548776662) % 1, ((first + n) * 0.5698402909) % 1]);

const noCore = (plan: CutPlan): ContourPlan['core'] => plan.contours[0]?.core;

describe('an opening that is cut without a core', () => {
  it('leaves nothing standing inside the rough cut, wherever one looks', () => {
    let looked = 0;
    fc.assert(
      fc.property(burning, fc.integer({ min: 0, max: 9999 }), (q, first) => {
        const plan = planCut(q);
        if (plan.kind === 'refused' || noCore(plan) === undefined) return;
        const wall = lookupOf(there(q.loops[1]).contour);
        const { cuts, half } = roughOf(plan);
        const wire = lookupOfSegments(cuts);
        const offset = there(plan.passes[0]).offset.value;
        const { hole } = there(plan.contours[0]);
        const b = boundsOfChain(there(q.loops[1]).contour);
        for (const [x, y] of spread(first, 300)) {
          const at: Point = { x: b.minX + x * (b.maxX - b.minX), y: b.minY + y * (b.maxY - b.minY) };
          // What the finishing passes take is theirs: along the wall, and up to the rounds in its corners.
          if (windingIn(wall, at) === 0 || distanceIn(wall, at) < offset) continue;
          // A hole is drilled where it is wanted to a hundredth of its depth.
          if (distanceBetween(at, hole.at) < hole.diameter / 2 - 0.01 * q.height) continue;
          looked += 1;
          expect(distanceIn(wire, at)).toBeLessThan(half - 1e-3);
        }
      }),
      { seed: 31, numRuns: 60 },
    );
    expect(looked).toBeGreaterThan(4000);
  });

  it('takes less than a kerf at each ring but the innermost, and says so', () => {
    fc.assert(
      fc.property(burning, (q) => {
        const plan = planCut(q);
        const core = plan.kind === 'cut' ? noCore(plan) : undefined;
        if (core === undefined) return;
        expect(core.bites).toHaveLength(core.rings + 1);
        expect(core.bites[0]).toBe(core.kerf);
        for (const bite of core.bites) expect(bite === core.kerf || bite <= 0.8 * core.kerf + 1e-9).toBe(true);
      }),
      { seed: 32, numRuns: 25 },
    );
  });

  it('keeps the wire inside, joins up, needs nobody and is finished like any other', () => {
    let laid = 0;
    fc.assert(
      fc.property(burning, (q) => {
        const plan = planCut(q);
        if (plan.kind === 'refused') return;
        expect(faultsOf(plan, q)).toEqual([]);
        if (noCore(plan) === undefined) return;
        laid += 1;
        expect(plan.steps.filter((s) => s.kind === 'stop')).toEqual([]);
      }),
      { seed: 33, numRuns: 60 },
    );
    expect(laid).toBeGreaterThan(30);
  });

  it('is cut from the start hole outward', () => {
    fc.assert(
      fc.property(number(2, 7), (r) => {
        const plan = planned(
          questionFor([loop('B', rectangle(0, 0, 80, 80)), loop('A', disc(40, 40, r), 1, 'B')], {
            outline: 'block',
            core: { A: 'no-core' },
          }),
        );
        const core = plan.steps.flatMap((s) => (s.kind === 'cut' && s.part === 'core' && s.centre !== undefined ? [s.centre] : []));
        const away = core.map((s) => Number(distanceBetween(s.to, { x: 40, y: 40 }).toFixed(6)));
        const start = there(plan.contours[0]).hole.at;
        // Only the way to the first ring may lead inward where the hole is not in the middle.
        const first = Math.max(away[0] ?? 0, distanceBetween(start, { x: 40, y: 40 }));
        const later = away.filter((d) => d >= first);
        expect(later).toEqual(later.toSorted((a, b) => a - b));
      }),
      { seed: 34, numRuns: 15 },
    );
  });
});
