/** From the edge of the block, several parts out of one block, openings before outsides, and holes that serve two. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { there } from '../../test/there.ts';
import { distanceTo } from '../geometry/near/distance.ts';
import { windingOf } from '../geometry/near/inside.ts';
import { distanceBetween } from '../geometry/segment.ts';
import { remedyTextOf, sentenceOf } from '../text/finding.fixture.ts';
import { planCut } from './cut/plan-cut.ts';
import { disc, faultsOf, loop, planned, polygon, questionFor, rectangle, slot } from './plan.fixture.ts';
import type { PlanQuestion } from './question.ts';

const RUNS = ['attended', 'unattended first'] as const;
const finding = (question: PlanQuestion, code: string) => planCut(question).findings.filter((f) => f.code === code);
const block = rectangle(-30, -30, 100, 90);
const inBlock = (changes: Partial<PlanQuestion> = {}) =>
  questionFor([loop('B', block), loop('L1', rectangle(0, 0, 40, 30), 1, 'B')], { outline: 'block', start: { L1: 'edge' }, ...changes });

describe('a contour begun from the edge of the block', () => {
  it.each(RUNS)('is threaded beside the block and right all round, a part run %s', (run) => {
    for (const finish of [3.2, 0.4]) {
      const question = questionFor([loop('L1', rectangle(0, 0, 40, 30))], { run, finish, tolerance: 0.05, start: { L1: 'edge' } });
      const plan = planned(question);
      expect([plan.kind, faultsOf(plan, question)]).toEqual(['cut', []]);
      const { hole } = there(plan.contours[0]);
      expect([hole.origin, hole.diameter, windingOf(plan.block, hole.at)]).toEqual(['block edge', 0, 0]);
      expect(distanceTo(plan.block, hole.at)).toBeGreaterThan(1);
    }
    expect(finding(questionFor([loop('L1', rectangle(0, 0, 40, 30))], { start: { L1: 'edge' } }), 'frame-cut-open')).toHaveLength(1);
  });

  it.each(RUNS)('leads into an opening through its entry, run %s', (run) => {
    const plan = planned(inBlock({ run }));
    const { hole, entry } = there(plan.contours[0]);
    expect([plan.kind, hole.origin, windingOf(block, hole.at)]).toEqual(['cut', 'block edge', 0]);
    const threads = plan.steps.flatMap((s, i) => (s.kind === 'thread' ? [i] : []));
    for (const i of threads) {
      expect(plan.steps[i]).toEqual({ kind: 'thread', at: hole.at });
      const lead = plan.steps.slice(i).find((s) => s.kind === 'cut');
      if (lead?.kind !== 'cut' || lead.centre === undefined) throw new Error('a visit cuts something');
      const { from, to } = lead.centre;
      const [a, b, whole] = [distanceBetween(from, entry.at), distanceBetween(entry.at, to), distanceBetween(from, to)];
      expect(a + b).toBeCloseTo(whole, 6);
    }
    expect(sentenceOf(finding(inBlock({ run }), 'frame-cut-open')[0])).toContain('stays as a slit in the block');
  });

  it('takes the way that is free of other openings and of clamps', () => {
    const below = loop('L2', slot(-10, -15, 60, 4), 1, 'B');
    const base = inBlock();
    const plan = planned({ ...base, loops: [...base.loops, below] });
    expect(there(plan.contours.find((c) => c.loop === 'L1')).hole.at.y).toBeGreaterThan(-15);
    const clamped = planned({ ...base, loops: [...base.loops, below], clamps: [{ low: { x: 56, y: -30 }, high: { x: 70, y: 60 } }] });
    expect(there(clamped.contours.find((c) => c.loop === 'L1')).hole.at.x).toBeLessThan(50);
  });

  it('is refused where every way is barred, with the name of the option', () => {
    const ring = [loop('L2', slot(-10, -12, 60, 4), 1, 'B'), loop('L3', slot(-10, 42, 60, 4), 1, 'B')];
    const sides = [loop('L4', rectangle(-16, -8, 4, 46), 1, 'B'), loop('L5', rectangle(52, -8, 4, 46), 1, 'B')];
    const base = inBlock();
    const plan = planCut({ ...base, loops: [...base.loops, ...ring, ...sides] });
    expect([plan.kind, remedyTextOf(plan.findings.find((f) => f.code === 'no-way-in-from-edge'))]).toEqual([
      'refused',
      expect.stringContaining('start.L1'),
    ]);
  });

  it('stands outside whatever the shape of block and part', () => {
    const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(number(5, 30), number(5, 30), number(0, 8), fc.constantFrom(...RUNS), (width, height, slant, run) => {
        const edge = polygon([-20, -20], [60, -20 - slant], [60 + slant, 60], [-20, 60 + slant]);
        const question = questionFor([loop('B', edge), loop('L1', rectangle(0, 0, width, height), 1, 'B')], {
          run,
          outline: 'block',
          start: { L1: 'edge' },
        });
        const plan = planned(question);
        expect(windingOf(edge, there(plan.contours[0]).hole.at)).toBe(0);
        expect(distanceTo(edge, there(plan.contours[0]).hole.at)).toBeGreaterThan(1);
      }),
      { seed: 31, numRuns: 15 },
    );
  });
});

describe('several parts out of one block', () => {
  const row = (count: number, apart: number) =>
    Array.from({ length: count }, (_, i) => [
      loop(`P${i + 1}`, rectangle(i * (20 + apart), 0, 20, 20)),
      loop(`H${i + 1}`, disc(i * (20 + apart) + 10, 10, 5), 1, `P${i + 1}`),
    ]).flat();

  it.each(RUNS)('have all their openings cut before the first outside, run %s', (run) => {
    const question = questionFor(row(3, 8), { run });
    const plan = planned(question);
    expect(faultsOf(plan, question)).toEqual([]);
    const begun = plan.steps.flatMap((s) => (s.kind === 'contour begins' ? [s.loop[0]] : [])).join('');
    expect(begun).toMatch(/^H+P+$/);
  });

  it('are told with their order and the distance of the nearest two', () => {
    const [told, ...rest] = finding(questionFor(row(3, 8)), 'several-parts');
    expect(rest).toEqual([]);
    expect(sentenceOf(told)).toContain(
      '3 parts come out of one block, all from one datum in one set-up: the 3 openings in them first, then P',
    );
    expect(sentenceOf(told)).toContain('are 8.000 mm apart');
    expect(finding(questionFor(row(1, 8)), 'several-parts')).toEqual([]);
  });

  it('lie in one block with the margin round all of them', () => {
    const xs = planned(questionFor(row(3, 8))).block.segments.map((s) => s.from.x);
    expect([Math.min(...xs), Math.max(...xs)]).toEqual([-10, 86]);
  });
});

describe('a start hole for two', () => {
  const pair = (apart: number, changes: Partial<PlanQuestion> = {}) =>
    questionFor([loop('L1', rectangle(0, 0, 30, 20)), loop('L2', rectangle(30 + apart, 0, 30, 20))], changes);
  const holesOf = (question: PlanQuestion) =>
    new Set(planned(question).contours.map((c) => `${c.hole.at.x.toFixed(6)} ${c.hole.at.y.toFixed(6)}`));

  it.each(RUNS)('stands in the middle between two parts, run %s', (run) => {
    const question = pair(6, { run });
    const plan = planned(question);
    expect(faultsOf(plan, question)).toEqual([]);
    expect(plan.contours.map((c) => c.hole)).toEqual(
      Array(2).fill({ at: { x: expect.closeTo(33, 9), y: expect.closeTo(10, 9) }, diameter: 2, origin: 'placed' }),
    );
    expect(finding(question, 'hole-shared')).toHaveLength(1);
  });

  it('is not drilled where it has no room, where it is far from either, or in metal that stays', () => {
    expect(holesOf(pair(3)).size).toBe(2);
    expect(holesOf(pair(14)).size).toBe(2);
    expect(finding(pair(14), 'hole-shared')).toEqual([]);
    const openings = questionFor(
      [loop('B', block), loop('L1', rectangle(0, 0, 15, 20), 1, 'B'), loop('L2', rectangle(21, 0, 15, 20), 1, 'B')],
      { outline: 'block' },
    );
    expect(holesOf(openings).size).toBe(2);
  });

  it('serves two of a row of three, and the third has its own', () => {
    const three = questionFor([0, 36, 72].map((x, i) => loop(`L${i + 1}`, rectangle(x, 0, 30, 20))));
    expect([holesOf(three).size, finding(three, 'hole-shared').length]).toEqual([2, 1]);
    expect(faultsOf(planned(three), three)).toEqual([]);
  });
});
