/** Which openings are cut without a core: those that are asked for, those with slugs nobody can catch, and those where it is cheaper. */

import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import type { Contour } from '../../geometry/contour.ts';
import { sentenceOf } from '../../text/finding.fixture.ts';
import { printPlain } from '../../text/print/print.ts';
import { disc, loop, planned, questionFor, rectangle, slot } from '../plan.fixture.ts';
import type { ContourPlan, CutPlan } from '../plan.ts';
import type { PlanQuestion } from '../question.ts';

const opening = (contour: Contour, changes: Partial<PlanQuestion> = {}): CutPlan =>
  planned(questionFor([loop('B', rectangle(0, 0, 80, 80)), loop('A', contour, 1, 'B')], { outline: 'block', ...changes }));

const cutOf = (plan: CutPlan, id = 'A'): ContourPlan => {
  const found = plan.contours.find((c) => c.loop === id);
  if (found === undefined) throw new Error(plan.findings.map((f) => sentenceOf(f)).join(' '));
  return found;
};

/** Why it is cut away; '' where it is not. */
const reasonOf = (plan: CutPlan): string => {
  const { core } = cutOf(plan);
  return core === undefined ? '' : printPlain(core.reason);
};

const sentence = (plan: CutPlan, code: string): string => sentenceOf(plan.findings.find((f) => f.code === code));

const stops = (plan: CutPlan, id = 'A'): number => plan.steps.filter((s) => s.kind === 'stop' && s.loop === id).length;

describe('the core of an opening', () => {
  it('is cut away where its slug is too small to be caught, and nobody is needed', () => {
    for (const run of ['attended', 'unattended first'] as const) {
      const plan = opening(disc(40, 40, 2.3), { run });
      const { tab, piece } = cutOf(plan);
      expect(reasonOf(plan)).toContain('too small to catch');
      expect(tab).toBeUndefined();
      expect(piece).toMatchObject({ area: 0, handling: 'no core', size: { x: 0, y: 0, height: 0 } });
      expect(piece.mass.value).toBe(0);
      expect(stops(plan)).toBe(0);
      expect(sentence(plan, 'no-core-cut')).toMatch(/no stop|2 stops of 5 min/);
      expect(plan.findings.map((f) => f.code)).not.toContain('slug-tiny');
    }
  });

  it('stays whole where it can be caught, and where the user wants it', () => {
    expect(cutOf(opening(disc(40, 40, 8))).core).toBeUndefined();
    const kept = opening(disc(40, 40, 2.3), { core: { A: 'slug' } });
    expect(cutOf(kept).core).toBeUndefined();
    expect(stops(kept)).toBe(2);
    expect(kept.findings.map((f) => f.code)).toContain('slug-tiny');
  });

  it('is cut away where stops cost more than the cutting', () => {
    const wide = disc(40, 40, 4.5);
    const cheap = { person: { stopMinutes: 1, hour: 2000 } };
    const dear = { person: { stopMinutes: 30, hour: 9000 } };
    expect(cutOf(opening(wide, cheap)).core).toBeUndefined();
    expect(reasonOf(opening(wide, dear))).toContain('costs less');
    // What the finding says of the minutes is what the rings are long and the feed makes of it.
    const plan = opening(wide, dear);
    const minutes = there(cutOf(plan).core).length / there(plan.passes[0]).feed.value;
    expect(sentence(plan, 'no-core-cut')).toContain(`${minutes.toFixed(0)} min more unattended cutting`);
  });

  it('is never more expensive than the slug where it was cut away for the cost', () => {
    let compared = 0;
    for (const radius of [2.8, 3.2, 3.6, 4, 5]) {
      for (const stopMinutes of [2, 5, 10, 20]) {
        const plan = opening(disc(40, 40, radius), { person: { stopMinutes, hour: 5000 }, machineRate: 4500 });
        const { core } = cutOf(plan);
        if (core === undefined || !reasonOf(plan).includes('costs less')) continue;
        compared += 1;
        // Wire comes on top of the machine in both, so leaving it out only helps the slug.
        expect((core.length / there(plan.passes[0]).feed.value) * 75).toBeLessThan(2 * stopMinutes * (75 + 5000 / 60));
      }
    }
    expect(compared).toBeGreaterThan(5);
  });

  it('is cut away of any size where the user says so', () => {
    const plan = opening(slot(25, 40, 20, 9), { core: { A: 'no-core' } });
    expect(reasonOf(plan)).toBe('you specified it');
    expect(stops(plan)).toBe(0);
  });

  it('cannot be cut away where it is the part, where something is cut in it, or where the contour begins at the edge', () => {
    const part = planned(questionFor([loop('A', rectangle(0, 0, 20, 20))], { core: { A: 'no-core' } }));
    expect(sentence(part, 'core-needed')).toContain('the piece inside is the part');
    const loops = [loop('B', rectangle(0, 0, 80, 80)), loop('A', disc(40, 40, 20), 1, 'B'), loop('C', disc(40, 40, 6), 2, 'A')];
    const ring = planned(questionFor(loops, { outline: 'block', core: { A: 'no-core' } }));
    expect(sentence(ring, 'core-needed')).toContain('something else is cut inside it');
    expect(stops(ring)).toBe(2);
    const edge = opening(rectangle(5, 30, 20, 20), { core: { A: 'no-core' }, start: { A: 'edge' } });
    expect(sentence(edge, 'core-needed')).toContain('block edge');
  });

  it('of a loop that is not there is told', () => {
    expect(sentence(opening(disc(40, 40, 8), { core: { Z: 'no-core' } }), 'core-of-unknown-loop')).toContain('Z');
    // Names that every object has are not choices of the user.
    expect(
      cutOf(opening(disc(40, 40, 8), { core: JSON.parse('{"constructor":"no-core"}') as Record<string, 'no-core'> })).core,
    ).toBeUndefined();
  });

  it('may differ between openings of one shape', () => {
    const loops = [loop('B', rectangle(0, 0, 80, 80)), loop('A', disc(20, 40, 2.3), 1, 'B'), loop('C', disc(60, 40, 2.3), 1, 'B')];
    const plan = planned(questionFor(loops, { outline: 'block', core: { C: 'slug' } }));
    expect(cutOf(plan, 'A').core).toBeDefined();
    expect(cutOf(plan, 'C').core).toBeUndefined();
    expect([stops(plan, 'A'), stops(plan, 'C')]).toEqual([0, 2]);
  });
});
