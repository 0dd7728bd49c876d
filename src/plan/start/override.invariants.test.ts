/** Whatever is set by hand, the plan is either sound and as it was set, or refused with the field that asked for it. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { pointAt } from '../../geometry/measure.ts';
import { distanceBetween } from '../../geometry/segment.ts';
import { planCut } from '../cut/plan-cut.ts';
import { faultsOf, loop, plate, questionFor, rectangle, slot } from '../plan.fixture.ts';
import type { PlanQuestion } from '../question.ts';

const SEED = 20261125;
const TINY = 1e-6;

const loops = [...plate(), loop('L6', rectangle(150, 0, 30, 24)), loop('L7', slot(158, 12, 12, 6), 1, 'L6')];

const share = fc.double({ min: 0, max: 1, noNaN: true });

describe('choices by hand', () => {
  it('are followed or refused, never something else', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...loops),
        fc.nat(),
        share,
        fc.option(fc.double({ min: 0.5, max: 6, noNaN: true })),
        fc.constantFrom('attended' as const, 'unattended first' as const),
        ({ id, contour }, pick, at, tab, run) => {
          const entry = pointAt(there(contour.segments[pick % contour.segments.length]), at);
          const question: PlanQuestion = questionFor(loops, { run, overrides: { [id]: { entry, ...(tab === null ? {} : { tab }) } } });
          const plan = planCut(question);
          if (plan.kind === 'refused') {
            const fields = plan.findings
              .filter((f) => f.severity === 'refusal')
              .map((f) => (f.place?.kind === 'field' ? f.place.path : ''));
            expect(fields.every((path) => path.startsWith(`overrides.${id}.`))).toBe(true);
            return;
          }
          const made = there(plan.contours.find((c) => c.loop === id));
          expect(distanceBetween(made.entry.at, entry)).toBeLessThan(TINY);
          if (tab !== null && made.core === undefined) expect(there(made.tab).length).toBeGreaterThanOrEqual(tab - TINY);
          expect(faultsOf(plan, question)).toEqual([]);
        },
      ),
      { numRuns: 25, seed: SEED },
    );
  });

  it('of the order give that order, or the reason why not', () => {
    const ids = loops.map((l) => l.id);
    fc.assert(
      fc.property(fc.shuffledSubarray(ids, { minLength: 1 }), (order) => {
        const question = questionFor(loops, { order });
        const plan = planCut(question);
        const before = (inner: string, outer: string): boolean => {
          const [i, o] = [order.indexOf(inner), order.indexOf(outer)];
          return i < 0 || o < 0 || i < o;
        };
        const possible = loops.every((l) => l.parent === undefined || before(l.id, l.parent));
        expect(plan.kind).toBe(possible ? 'cut' : 'refused');
        if (plan.kind === 'refused') return;
        expect(plan.order.filter((id) => order.includes(id))).toEqual(order);
        expect(plan.order.toSorted()).toEqual(ids.toSorted());
        expect(faultsOf(plan, question)).toEqual([]);
      }),
      { numRuns: 25, seed: SEED },
    );
  });
});
