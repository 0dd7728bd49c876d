/** Sharp outside corners gone round out and back, and what wire lag does at corners and arcs. */

import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { endDirection, lengthOf, startDirection } from '../../geometry/measure.ts';
import { lookupOf } from '../../geometry/near/lookup.ts';
import { point } from '../../geometry/segment.ts';
import { lagOnArc } from '../../physics/cut/corner-error.ts';
import { sentenceOf } from '../../text/finding.fixture.ts';
import { cornerFigures } from '../lay/corner-lag.ts';
import { cutLength, disc, faultsOf, loop, planned, plate, polygon, questionFor, rectangle } from '../plan.fixture.ts';
import type { PlanQuestion } from '../question.ts';
import { cornersToLoop, loopAt, outsideCorners } from './outside-corners.ts';

const looped = (loops: PlanQuestion['loops'], changes: Partial<PlanQuestion> = {}) =>
  questionFor(loops, { sharpOutside: 'loop', ...changes });

/** Loops in the steps of one pass: arcs that turn by more than half round. */
const loopsOf = (question: PlanQuestion, pass: number): number =>
  planned(question).steps.filter(
    (s) => s.kind === 'cut' && s.pass === pass && s.programmed?.kind === 'arc' && Math.abs(s.programmed.sweep) > Math.PI,
  ).length;

describe('a loop at an outside corner', () => {
  it.each([-2.3, -1.2, -0.6, 0.6, Math.PI / 2, 2.3])('of a turn of %d rad joins both sides smoothly and ends at the corner', (turn) => {
    const along = point(Math.cos(0.4), Math.sin(0.4));
    const onward = point(Math.cos(0.4 + turn), Math.sin(0.4 + turn));
    const corner = point(3, -2);
    const { out, round, back } = loopAt(corner, along, onward, 0.3);
    for (const [u, v] of [
      [along, startDirection(out)],
      [endDirection(out), startDirection(round)],
      [endDirection(round), startDirection(back)],
      [endDirection(back), onward],
    ] as const)
      expect(u.x * v.x + u.y * v.y).toBeCloseTo(1, 9);
    expect([out.from, back.to]).toEqual([corner, corner]);
    expect(Math.hypot(round.from.x - round.centre.x, round.from.y - round.centre.y)).toBeCloseTo(0.3, 12);
    expect(lengthOf(out)).toBeCloseTo(0.3 * Math.tan(Math.abs(turn) / 2), 9);
  });

  it('is run by every pass, at each sharp outside corner', () => {
    const question = looped([loop('L1', rectangle(0, 0, 40, 30))]);
    const plan = planned(question);
    expect(faultsOf(plan, question)).toEqual([]);
    for (const { number } of plan.passes) expect(loopsOf(question, number)).toBe(4);
    expect(loopsOf(questionFor([loop('L1', rectangle(0, 0, 40, 30))]), 1)).toBe(0);
  });

  it.each(['attended', 'unattended first'] as const)('leaves no fault in a plate run %s', (run) => {
    for (const outsideCorners of ['arc', 'intersection'] as const) {
      const question = looped(plate(), { run, outsideCorners, finish: 0.4, tolerance: 0.03 });
      expect(faultsOf(planned(question), question)).toEqual([]);
    }
  });

  it('is left out where another cut is near, where the corner is blunt, and where it is a needle', () => {
    const square = rectangle(0, 0, 10, 10);
    const size = { radius: 0.3, halfKerf: 0.19 };
    const corners = outsideCorners(square, 'punch');
    expect(corners.map((c) => c.turn)).toEqual(Array(4).fill(expect.closeTo(Math.PI / 2, 9)));
    const clear = lookupOf({ closed: true, segments: [...square.segments, ...rectangle(10.6, 10.2, 5, 5).segments] });
    const { looped: some, left } = cornersToLoop(corners, square, clear, size);
    expect([some.length, left.map((c) => c.at)]).toEqual([3, [point(10, 10)]]);
    const odd = polygon([0, 0], [30, 0], [30.5, 5], [30, 10], [0, 10], [-20, 9]);
    const ways = cornersToLoop(outsideCorners(odd, 'punch'), odd, lookupOf(odd), size);
    expect(ways.left.map((c) => [c.at.x, c.at.y])).toEqual(
      expect.arrayContaining([
        [30.5, 5],
        [-20, 9],
      ]),
    );
  });

  it('is told corner by corner; otherwise one note says what the control does', () => {
    const note = (question: PlanQuestion) => planned(question).findings.filter((f) => f.code === 'outside-corners');
    const [told, ...none] = note(looped([loop('L1', polygon([0, 0], [40, 0], [40, 30], [20, 32], [0, 30]))]));
    expect(none).toEqual([]);
    expect(sentenceOf(told)).toMatch(/4 cut with a loop out and back of R 0\.\d{3} mm, at .*; 1 has no room.*\(20\.000, 32\.000\)/);
    expect(note(questionFor(plate())).map((f) => sentenceOf(f))).toEqual([
      expect.stringMatching(/^11 sharp outside corners \(4 in L1, 7 in L5\): the wire rounds the corner/),
    ]);
    expect(note(questionFor([loop('L1', disc(0, 0, 10))]))).toEqual([]);
  });
});

describe('wire lag', () => {
  const cornerIn = (question: PlanQuestion, id: string) => there(planned(question).contours.find((c) => c.loop === id));

  it('is smaller after every skim, as a figure that knows what it was made of', () => {
    const question = questionFor(plate(), { finish: 0.4, tolerance: 0.03 });
    const plan = planned(question);
    for (const contour of plan.contours) {
      const errors = there(contour.corner).errors;
      expect(errors).toHaveLength(plan.passes.length);
      expect(errors.slice(1).every((e, i) => e <= there(errors[i]) + 0.01)).toBe(true);
      const figures = cornerFigures(contour, plan.passes);
      expect(figures.map((f) => f.value)).toEqual(errors);
      expect(figures.every((f, i) => f.unit === 'µm' && f.from.includes(there(plan.passes[i]).formError))).toBe(true);
      expect(there(figures[0]).high).toBeGreaterThan(there(figures[0]).value);
    }
  });

  it('on a round hole is that of an arc with the radius of the wire path', () => {
    const plan = planned(questionFor(plate(), { finish: 3.2 }));
    const { corner } = there(plan.contours.find((c) => c.loop === 'L3'));
    const { offset, formError } = there(plan.passes[0]);
    expect(there(corner).what).toBe('inside arc');
    expect(there(corner).errors).toEqual([lagOnArc.compute({ lag: formError.value, radius: 8 - offset.value })]);
  });

  it('is worst in a sharp inside corner, and gone from outside corners that have a loop', () => {
    expect(there(cornerIn(questionFor(plate()), 'L2').corner).what).toBe('inside corner');
    const part = [loop('L1', rectangle(0, 0, 40, 30))];
    expect(there(cornerIn(questionFor(part), 'L1').corner).what).toBe('outside corner rolled round');
    expect(there(cornerIn(questionFor(part, { outsideCorners: 'intersection' }), 'L1').corner).errors.every((e) => e === 0)).toBe(true);
    expect(cornerIn(looped(part), 'L1').corner).toBeUndefined();
  });

  it('is a warning with a remedy only where it is beyond the tolerance', () => {
    const lag = (tolerance: number) =>
      planned(questionFor(plate(), { finish: 3.2, tolerance, height: 60 })).findings.find((f) => f.code === 'corner-lag');
    expect([there(lag(0.05)).severity, there(lag(0.05)).remedy]).toEqual(['note', undefined]);
    const plan = planned(questionFor(plate(), { finish: 3.2, tolerance: 0.05, height: 60 }));
    const worst = Math.max(...plan.contours.map((c) => there(there(c.corner).errors.at(-1))));
    expect(worst).toBeGreaterThan(5);
    expect(sentenceOf(lag(0.05))).toContain(`the single pass is off by ${worst.toFixed(1)} µm`);
  });

  it('adds little path for a loop', () => {
    const part = [loop('L1', rectangle(0, 0, 40, 30))];
    const [plain, round] = [cutLength(planned(questionFor(part))), cutLength(planned(looped(part)))];
    expect(round - plain).toBeGreaterThan(0);
    expect(round / plain).toBeLessThan(1.1);
  });
});
