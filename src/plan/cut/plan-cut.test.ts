/** Whole plans: what is cut, in which order, and what is refused and why. */

import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { remedyTextOf, sentenceOf } from '../../text/finding.fixture.ts';
import { printPlain } from '../../text/print/print.ts';
import { cutLength, disc, faultsOf, loop, planned, plate, polygon, questionFor, rectangle, slot, star } from '../plan.fixture.ts';
import type { RefusedPlan } from '../plan.ts';
import type { PlanQuestion } from '../question.ts';
import { planCut } from './plan-cut.ts';

const codes = (question: PlanQuestion): readonly string[] =>
  planCut(question)
    .findings.filter((f) => f.severity !== 'note')
    .map((f) => f.code);
const refused = (question: PlanQuestion): RefusedPlan => {
  const plan = planCut(question);
  if (plan.kind === 'cut') throw new Error('the plan was not refused');
  return plan;
};
const opening = (c: Parameters<typeof loop>[1], changes: Partial<PlanQuestion> = {}): PlanQuestion =>
  questionFor([loop('L1', rectangle(-50, -50, 200, 200)), loop('L2', c, 1, 'L1')], { outline: 'block', ...changes });

describe('a plan', () => {
  it.each(['attended', 'unattended first'] as const)('of a plate has no fault when run %s', (run) => {
    for (const outsideCorners of ['arc', 'intersection'] as const) {
      for (const finish of [3.2, 0.8, 0.4]) {
        const question = questionFor(plate(), { run, outsideCorners, finish, tolerance: 0.03 });
        const plan = planned(question);
        expect(faultsOf(plan, question)).toEqual([]);
      }
    }
  });

  it('cuts openings before the part around them, and islands before both', () => {
    const loops = [
      loop('L1', rectangle(0, 0, 100, 100)),
      loop('L2', rectangle(10, 10, 60, 60), 1, 'L1'),
      loop('L3', rectangle(30, 30, 20, 20), 2, 'L2'),
    ];
    const question = questionFor(loops);
    const plan = planned(question);
    expect(plan.steps.flatMap((s) => (s.kind === 'contour begins' ? [s.loop] : []))).toEqual(['L3', 'L2', 'L1']);
    expect(faultsOf(plan, question)).toEqual([]);
  });

  it('alone at night does all roughs, then all tabs, then all skims', () => {
    const plan = planned(questionFor(plate().slice(0, 4), { run: 'unattended first', kept: { L1: 'leave' } }));
    const visits = plan.steps.flatMap((s) => (s.kind === 'contour begins' ? [printPlain(s.name)] : []));
    expect(visits).toEqual(
      ['up to the tab', 'the tab', 'finishing'].flatMap((part) => Array(3).fill(expect.stringMatching(new RegExp(`, ${part}$`)))),
    );
    const firstStop = plan.steps.findIndex((s) => s.kind === 'stop');
    expect(plan.steps.slice(0, firstStop).filter((s) => s.kind === 'thread')).toHaveLength(3);
  });

  it('skims to and fro without rethreading when attended', () => {
    const plan = planned(opening(rectangle(0, 0, 30, 20), { finish: 0.4 }));
    expect(plan.steps.filter((s) => s.kind === 'thread')).toHaveLength(1);
    const sides = plan.steps.flatMap((s) => (s.kind === 'compensate' ? [`${s.register} ${s.side}`] : []));
    expect(sides).toEqual(plan.passes.map((p, i) => `${p.register} ${i % 2 === 0 ? 'left' : 'right'}`));
  });

  it('starts from a hole that the drawing shows', () => {
    const hole = { at: { x: 11, y: 10 }, diameter: 1.5 };
    const plan = planned(opening(rectangle(0, 0, 30, 20), { holes: [hole] }));
    expect(there(plan.contours[0]).hole).toEqual({ ...hole, origin: 'drawing' });
    // A mark is no hole yet: somebody has to drill it.
    const marked = planned(opening(rectangle(0, 0, 30, 20), { marks: [hole.at] }));
    expect(there(marked.contours[0]).hole).toEqual({ at: hole.at, diameter: 2, origin: 'placed' });
    const circle = planned(
      questionFor([
        loop('L1', rectangle(0, 0, 100, 60)),
        loop('L2', rectangle(10, 10, 30, 20), 1, 'L1'),
        loop('L3', disc(20, 20, 1), 2, 'L2'),
      ]),
    );
    expect(there(circle.contours.find((c) => c.loop === 'L2')).hole.origin).toBe('drawing');
  });

  it('says when a hole is no good, and plans another', () => {
    const question = opening(rectangle(0, 0, 30, 20), { holes: [{ at: { x: 15, y: 0.3 }, diameter: 1 }] });
    expect(codes(question)).toContain('hole-not-usable');
    expect(there(planned(question).contours[0]).hole.origin).toBe('placed');
  });

  it('refuses holes that the wire does not go through, and tells of those that nothing is begun from', () => {
    expect(codes(opening(rectangle(0, 0, 30, 20), { startHole: 0.3, wire: 'brass-0.25' }))).toContain('hole-too-fine');
    expect(codes(opening(rectangle(0, 0, 30, 20), { startHole: 0.4, wire: 'brass-0.25' }))).not.toContain('hole-too-fine');
    const astray = planned(opening(rectangle(0, 0, 30, 20), { holes: [{ at: { x: 80, y: 80 }, diameter: 2 }] }));
    expect(astray.findings.find((f) => f.code === 'hole-not-used')?.place).toMatchObject({ x: 80, y: 80 });
  });

  it('refuses cuts that reach beyond the travel of the machine, and only warns where the block alone does', () => {
    const machine = { ...questionFor([]).machine, travel: { x: 100, y: 60 } };
    expect(codes(opening(rectangle(0, 0, 101, 50), { machine }))).toContain('cuts-beyond-travel');
    expect(codes(opening(rectangle(0, 0, 50, 61), { machine }))).toContain('cuts-beyond-travel');
    expect(codes(opening(rectangle(0, 0, 90, 50), { machine }))).toEqual(['block-beyond-travel']);
    const standing = planCut(opening(rectangle(0, 0, 50, 90), { machine })).findings.find((f) => f.code === 'cuts-beyond-travel');
    expect(remedyTextOf(standing)).toBe('Turn it by 90°.');
  });

  it('is made with a wire that is not in stock where the job insists on it, and says so', () => {
    const wires = questionFor([]).wires.map((w) => ({ ...w, inStock: w.id !== 'brass-0.25' }));
    const plan = planCut(opening(rectangle(0, 0, 30, 20), { wires, wire: 'brass-0.25' }));
    expect(plan.kind === 'cut' && plan.wire.id).toBe('brass-0.25');
    expect(plan.findings.find((f) => f.code === 'wire-not-in-stock')?.place).toEqual({ kind: 'field', path: 'wire' });
    expect(codes(opening(rectangle(0, 0, 30, 20), { wires }))).not.toContain('wire-not-in-stock');
  });

  it('goes by the block of the drawing, and says so where the job gives the stock another size', () => {
    const sized = (width: number) => opening(rectangle(0, 0, 30, 20), { stock: { width, depth: 200 } });
    expect(codes(sized(210))).toEqual(['stock-not-as-drawn']);
    expect(codes(sized(200))).toEqual([]);
  });

  it('starts on a curve or near a corner only where nothing better is there, and says so', () => {
    const notes = (question: PlanQuestion) => planCut(question).findings.map((f) => f.code);
    expect(notes(opening(disc(20, 20, 10)))).toContain('entry-on-arc');
    expect(notes(opening(rectangle(0, 0, 40, 30)))).not.toContain('entry-on-arc');
    const starred = (tips: number) => codes(opening(star(20, 20, tips, 6, 5.4), { startHole: 1, core: { L2: 'slug' } }));
    expect(starred(3)).toEqual([]);
    expect(starred(5)).toEqual(['entry-near-corner']);
    expect(starred(12)).toEqual(['tab-round-corner']);
  });

  it('cuts a slot hardly wider than the kerf from a hole at its end', () => {
    const eye = polygon([0, 0], [4, 0], [4, 1.75], [20, 1.75], [20, 2.25], [4, 2.25], [4, 4], [0, 4]);
    const question = opening(eye, { finish: 1.6 });
    const plan = planned(question);
    expect(faultsOf(plan, question)).toEqual([]);
    const narrow = opening(slot(0, 0, 20, 0.46), { finish: 1.6, holes: [{ at: { x: 2, y: 0 }, diameter: 0.4 }] });
    expect(faultsOf(planned(narrow), narrow)).toEqual([]);
  });

  it('has one mass for the slug without the kerf and one for the part without its openings', () => {
    const plan = planned(questionFor([loop('L1', rectangle(0, 0, 50, 40)), loop('L2', rectangle(10, 10, 20, 20), 1, 'L1')]));
    const [slug, part] = ['L2', 'L1'].map((id) => there(plan.contours.find((c) => c.loop === id)).piece);
    expect(there(part).mass.value).toBeCloseTo((2000 - 400) * 25 * 7.7e-6, 9);
    expect(there(slug).mass.value).toBeLessThan(400 * 25 * 7.7e-6);
    expect(there(slug).mass.value).toBeGreaterThan(19 * 19 * 25 * 7.7e-6);
  });
});

describe('what cannot be made', () => {
  it('is refused for a corner too tight, with the radius that comes out', () => {
    const plan = refused(opening(rectangle(0, 0, 30, 20), { insideCorner: 0.02, tolerance: 0.015 }));
    const finding = there(plan.findings.find((f) => f.code === 'corner-too-tight'));
    expect(sentenceOf(finding)).toContain('R 0.06');
    expect(finding.place).toMatchObject({ kind: 'spot', loop: 'L2' });
    expect(plan.nearest?.comesOut.find((w) => w.loop === 'L2')?.contours).toHaveLength(1);
  });

  it('leads to a finer wire where one does it', () => {
    const wires = [0.3, 0.12, 0.08].map(
      (insideCorner) => planned(opening(rectangle(0, 0, 30, 20), { insideCorner, tolerance: 0.01 })).wire.diameter,
    );
    expect(wires).toEqual([0.3, 0.2, 0.1]);
  });

  it('is a slot narrower than the kerf, with its width and place', () => {
    const waist = polygon(
      [0, 0],
      [10, 0],
      [10, 4.95],
      [14, 4.95],
      [14, 0],
      [24, 0],
      [24, 10],
      [14, 10],
      [14, 5.05],
      [10, 5.05],
      [10, 10],
      [0, 10],
    );
    const plan = refused(opening(waist));
    const finding = there(plan.findings.find((f) => f.code === 'slot-too-narrow'));
    expect(sentenceOf(finding)).toContain('0.100 mm wide');
    expect(finding.place).toMatchObject({ kind: 'spot', y: 5 });
    expect(plan.nearest?.comesOut.find((w) => w.loop === 'L2')?.contours).toHaveLength(2);
  });

  it('is a nook that the wire cannot enter', () => {
    const nook = polygon([0, 0], [20, 0], [20, 20], [10.05, 20], [10.05, 23], [9.95, 23], [9.95, 20], [0, 20]);
    expect(codes(opening(nook))).toEqual(['slot-too-narrow']);
  });

  it('is an opening without room for a start hole', () => {
    expect(codes(opening(rectangle(0, 0, 10, 1.5)))).toEqual(['hole-does-not-fit']);
    expect(codes(opening(rectangle(0, 0, 10, 3)))).toContain('hole-made-smaller');
    expect(codes(opening(rectangle(0, 0, 10, 3), { height: 200 }))).toContain('hole-may-drift');
  });

  it('is a finish or a tolerance out of reach', () => {
    expect(codes(opening(star(20, 20, 6, 15, 9), { finish: 0.05 }))).toEqual(['finish-out-of-reach']);
    expect(codes(opening(star(20, 20, 6, 15, 9), { tolerance: 0.001 }))).toEqual(['tolerance-out-of-reach']);
  });

  it('is a wire that is not there, and the wire that would do is named', () => {
    expect(codes(opening(disc(10, 10, 5), { wire: 'gold-1' }))).toEqual(['wire-unknown']);
    expect(codes(opening(disc(10, 10, 5), { wires: [] }))).toEqual(['no-wire-in-stock']);
    const asked = refused(opening(rectangle(0, 0, 30, 20), { wire: 'brass-0.30', insideCorner: 0.1, tolerance: 0.01 }));
    expect(remedyTextOf(asked.findings.find((f) => f.code === 'wire-chosen'))).toContain('brass-0.15');
  });

  it('is a contour that crosses itself', () => {
    const bow = polygon([0, 0], [20, 20], [20, 0], [0, 30]);
    expect(codes(opening(bow))).toContain('contour-unsound');
  });

  it('is nothing at all, a height the machine has not, or contours on top of each other', () => {
    expect(codes(questionFor([]))).toEqual(['nothing-to-cut']);
    expect(codes(opening(disc(10, 10, 5), { height: 900 }))).toContain('height-out-of-range');
    const touching = questionFor([loop('L1', rectangle(0, 0, 20, 20)), loop('L2', rectangle(20, 0, 20, 20))]);
    expect(codes(touching)).toContain('contours-touch');
    const close = questionFor([loop('L1', rectangle(0, 0, 20, 20)), loop('L2', rectangle(20.3, 0, 20, 20))]);
    expect(codes(close)).toContain('cuts-overlap');
  });
});

describe('webs and slugs', () => {
  it('are told where they are thin or tiny', () => {
    const thin = [
      loop('L1', rectangle(0, 0, 60, 40)),
      loop('L2', rectangle(10, 10, 10, 10), 1, 'L1'),
      loop('L3', rectangle(20.2, 10, 10, 10), 1, 'L1'),
    ];
    expect(codes(questionFor(thin))).toContain('cuts-too-close');
    // Metal that comes to a point in an opening is no web; a fin between two of its lobes is one.
    const pointed = polygon([0, 0], [40, 0], [40, 30], [24, 30], [20, 10], [16, 30], [0, 30]);
    expect(codes(opening(pointed))).not.toContain('cuts-too-close');
    const slitted = polygon([0, 0], [40, 0], [40, 30], [20.2, 30], [20.2, 10], [20, 10], [20, 30], [0, 30]);
    expect(codes(opening(slitted))).toContain('cuts-too-close');
    expect(codes({ ...opening(disc(10, 10, 2.2)), core: { L2: 'slug' } })).toContain('slug-tiny');
    expect(codes(questionFor([loop('L1', rectangle(0, 0, 300, 200))], { height: 120 }))).toContain('slug-heavy');
  });
});

describe('equal openings', () => {
  it('are planned alike, wherever they stand', () => {
    const loops = [
      loop('L1', rectangle(0, 0, 400, 60)),
      ...Array.from({ length: 9 }, (_, i) => loop(`L${i + 2}`, star(30 + 40 * i, 30, 6, 14, 9), 1, 'L1')),
    ];
    const question = questionFor(loops, { outline: 'block' });
    const plan = planned(question);
    expect(faultsOf(plan, question)).toEqual([]);
    const one = planned({ ...question, loops: loops.slice(0, 2) });
    expect(cutLength(plan)).toBeCloseTo(9 * cutLength(one), 6);
    expect(plan.findings.filter((f) => f.code === 'corner-rounded')).toHaveLength(1);
  });
});

describe('very small contours', () => {
  it('are refused by name, never by an error', () => {
    for (const radius of [0.05, 0.2, 0.5, 0.9, 1.3, 1.6]) {
      for (const depth of [0, 1]) {
        const small = depth === 0 ? questionFor([loop('L1', disc(5, 5, radius))]) : opening(disc(5, 5, radius));
        const plan = planCut(small);
        if (plan.kind === 'cut') expect(faultsOf(plan, small)).toEqual([]);
        else expect(plan.findings.filter((f) => f.severity === 'refusal').map((f) => f.code)).not.toEqual([]);
      }
    }
  });
});
