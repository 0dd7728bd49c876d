/** What holds for every plan of any drawing. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { there } from '../../test/there.ts';
import type { Contour } from '../geometry/contour.ts';
import { lookupOf, nearestIn } from '../geometry/near/lookup.ts';
import { inTurn, rotation, transformChain, translation } from '../geometry/transform.ts';
import { planCut } from './cut/plan-cut.ts';
import { cutLength, disc, faultsOf, loop, planned, polygon, questionFor, rectangle, slot, star } from './plan.fixture.ts';
import type { PlanQuestion } from './question.ts';

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Shapes of one corner after another round a middle, never crossing themselves. */
const crooked = fc.array(fc.record({ turn: number(0.25, 0.75), radius: number(6, 25) }), { minLength: 3, maxLength: 14 }).map((corners) =>
  polygon(
    ...corners.map(({ turn, radius }, i): readonly [number, number] => {
      const angle = ((i + turn) / corners.length) * 2 * Math.PI;
      return [35 + radius * Math.cos(angle), 35 + radius * Math.sin(angle)];
    }),
  ),
);

const shape: fc.Arbitrary<Contour> = fc.oneof(
  crooked,
  fc.tuple(number(4, 40), number(4, 40)).map(([w, h]) => rectangle(15, 15, w, h)),
  number(2.5, 25).map((r) => disc(35, 35, r)),
  fc.tuple(number(1, 30), number(3, 20)).map(([l, w]) => slot(20, 35, l, w)),
  fc.tuple(fc.integer({ min: 3, max: 12 }), number(15, 28), number(5, 12)).map(([n, outer, inner]) => star(35, 35, n, outer, inner)),
);

const question: fc.Arbitrary<PlanQuestion> = fc
  .record({
    contour: shape,
    block: fc.boolean(),
    run: fc.constantFrom('attended', 'unattended first'),
    outsideCorners: fc.constantFrom('arc', 'intersection'),
    finish: fc.constantFrom(3.2, 1.6, 0.8, 0.4, 0.2),
    height: fc.constantFrom(5, 25, 80),
    decimals: fc.constantFrom(3, 4),
  })
  .map(({ contour, block, run, outsideCorners, finish, height, decimals }) =>
    questionFor(block ? [loop('B', rectangle(0, 0, 80, 80)), loop('A', contour, 1, 'B')] : [loop('A', contour)], {
      outline: block ? 'block' : 'cut',
      run,
      outsideCorners,
      finish,
      height,
      insideCorner: 0.3,
      resolution: { unit: 1, decimals },
    }),
  );

describe('every plan', () => {
  it('keeps its offsets, joins up, closes every contour and lets no piece fall unheld', () => {
    fc.assert(
      fc.property(question, (q) => {
        const plan = planCut(q);
        if (plan.kind === 'refused') {
          expect(plan.findings.some((f) => f.severity === 'refusal')).toBe(true);
          return;
        }
        expect(plan.findings.some((f) => f.severity === 'refusal')).toBe(false);
        expect(faultsOf(plan, q)).toEqual([]);
      }),
      { seed: 20, numRuns: 80 },
    );
  });

  it('puts drilled holes clear of every contour, wherever they drift, or says by how much they may not be', () => {
    fc.assert(
      fc.property(question, (q) => {
        const plan = planCut(q);
        if (plan.kind === 'refused') return;
        for (const { hole } of plan.contours) {
          const away = Math.min(...q.loops.filter((l) => l.id === 'A').map((l) => nearestIn(lookupOf(l.contour), hole.at).distance));
          const within = away - there(plan.passes[0]).offset.value - 0.05;
          expect(hole.diameter / 2 + 0.01 * q.height - (hole.past ?? 0)).toBeLessThanOrEqual(within + 1e-6);
          expect(plan.findings.some((f) => f.code === 'hole-may-drift')).toBe(plan.contours.some((c) => c.hole.past !== undefined));
        }
      }),
      { seed: 21, numRuns: 30 },
    );
  });

  it('is as long wherever the drawing lies and however it is turned', () => {
    fc.assert(
      fc.property(shape, number(0, 6.28), number(-500, 500), number(-500, 500), (c, angle, x, y) => {
        const place = inTurn(rotation(angle), translation(x, y));
        const loops = [loop('B', rectangle(0, 0, 80, 80)), loop('A', c, 1, 'B')];
        const still = planCut(questionFor(loops, { outline: 'block' }));
        const turned = planCut(
          questionFor(
            loops.map((l) => ({ ...l, contour: transformChain(place, l.contour) })),
            { outline: 'block' },
          ),
        );
        expect(turned.kind).toBe(still.kind);
        if (turned.kind === 'refused' || still.kind === 'refused') return;
        expect(Math.abs(cutLength(turned) - cutLength(still))).toBeLessThan(1e-5 * (1 + cutLength(still)));
      }),
      { seed: 22, numRuns: 40 },
    );
  });

  it('never gets finer wire or more passes for less', () => {
    fc.assert(
      fc.property(shape, (c) => {
        const plans = [3.2, 1.6, 0.8, 0.4].map((finish) =>
          planned(questionFor([loop('A', c)], { finish, wire: 'brass-0.25', tolerance: 0.05 })),
        );
        const passes = plans.map((p) => p.passes.length);
        expect(passes).toEqual(passes.toSorted((a, b) => a - b));
        for (const p of plans) {
          const offsets = p.passes.map((pass) => pass.offset.value);
          expect(offsets).toEqual(offsets.toSorted((a, b) => b - a));
        }
      }),
      { seed: 23, numRuns: 10 },
    );
  });
});
