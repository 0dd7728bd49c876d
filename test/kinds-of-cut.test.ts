/**
 * Every kind of cut through planner, writer, reader and proof: from the edge of the block, several parts, shared holes, loops at
 * corners, open lines and slits. The proof knows nothing of the planner; faults put into the programs are caught by it.
 */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Path, path } from '../src/geometry/contour.ts';
import { arc, line, type Point, point } from '../src/geometry/segment.ts';
import { planCut } from '../src/plan/cut/plan-cut.ts';
import type { WantedLine } from '../src/plan/open-line.ts';
import { disc, loop, planned, plate, polygon, questionFor, rectangle, star } from '../src/plan/plan.fixture.ts';
import type { PlanQuestion } from '../src/plan/question.ts';
import type { Proof, ProofQuestion } from '../src/proof/proof.ts';
import { proveProgram } from '../src/proof/prove/prove.ts';
import { sentenceOf } from '../src/text/finding.fixture.ts';
import { asked, inControl, inPath } from './planned.ts';
import { there } from './there.ts';

const faults = (proof: Proof): readonly string[] =>
  proof.findings.filter((f) => f.severity !== 'note').map((f) => `${f.code}: ${sentenceOf(f)}`);

const polyline = (...corners: readonly (readonly [number, number])[]): Path =>
  path(corners.slice(1).map(([x, y], i) => line(point(...(corners[i] as [number, number])), point(x, y))));

const B = loop('B', rectangle(0, 0, 100, 60));
const cutLine = (kept: WantedLine['kept'], p: Path, changes: Partial<PlanQuestion> = {}): PlanQuestion =>
  questionFor([B], { outline: 'block', open: [{ id: 'C1', path: p, kept }], ...changes });

/** Steps and an arc, from edge to edge; the way back turns left and right about. */
const stepped = path([
  line(point(-4, 20), point(30, 20)),
  arc(point(30, 20), point(40, 30), point(30, 30), Math.PI / 2),
  line(point(40, 30), point(60, 30)),
  line(point(60, 30), point(60, 15)),
  line(point(60, 15), point(104, 15)),
]);

const KINDS: readonly (readonly [name: string, question: PlanQuestion])[] = [
  ['a part from the edge', questionFor([loop('L1', rectangle(0, 0, 40, 30))], { start: { L1: 'edge' } })],
  [
    'an opening from the edge',
    questionFor([B, loop('L1', rectangle(30, 20, 40, 20), 1, 'B')], { outline: 'block', start: { L1: 'edge' } }),
  ],
  [
    'an opening from the edge of a slanting block',
    questionFor([loop('B', polygon([0, 0], [100, -15], [110, 70], [-10, 60])), loop('L1', disc(45, 25, 12), 1, 'B')], {
      outline: 'block',
      start: { L1: 'edge' },
    }),
  ],
  [
    'two parts from one hole',
    questionFor([loop('L1', rectangle(0, 0, 30, 20)), loop('L2', rectangle(36, 0, 30, 20)), loop('L3', disc(15, 10, 5), 1, 'L1')]),
  ],
  ['loops at outside corners', questionFor(plate(), { sharpOutside: 'loop' })],
  ['a line across, left kept', cutLine('left', stepped)],
  ['a line across, right kept', cutLine('right', stepped)],
  ['a line from the edge to a hole', cutLine('left', polyline([0, 20], [60, 20], [60, 30]))],
  ['a line from hole to hole', cutLine('right', polyline([20, 20], [60, 25], [80, 45]))],
  ['a slit across', cutLine('slit', stepped)],
  ['a blind slit', cutLine('slit', polyline([50, 60], [50, 30], [70, 20]))],
  ['a slit from a hole', cutLine('slit', polyline([30, 20], [50, 20], [50, 40]))],
  ['a slit that is blind at its start', cutLine('slit', polyline([50, 30], [50, 0]))],
  [
    'a line in a block that nobody drew',
    questionFor([], { open: [{ id: 'C1', path: polyline([0, 0], [40, 0], [40, 10], [80, 10]), kept: 'right' }] }),
  ],
  [
    'a slit in a part, to its opening',
    questionFor([loop('L1', rectangle(0, 0, 60, 30)), loop('L2', disc(30, 15, 8), 1, 'L1')], {
      open: [{ id: 'C1', path: polyline([60, 15], [38, 15]), kept: 'slit' }],
    }),
  ],
  [
    'openings, then the block parted',
    questionFor([B, loop('L1', disc(20, 40, 8), 1, 'B'), loop('L2', rectangle(60, 4, 10, 8), 1, 'B')], {
      outline: 'block',
      open: [{ id: 'C1', path: polyline([0, 20], [100, 20]), kept: 'slit' }],
    }),
  ],
];

describe.each(KINDS)('%s', (_, question) => {
  it.each(['attended', 'unattended first'] as const)('is proven, run %s', (run) => {
    for (const dialect of [inControl, inPath]) {
      const proof = proveProgram(asked({ ...question, run }, dialect));
      expect([proof.verdict, faults(proof)]).toEqual(['proven', []]);
      expect((proof.open ?? []).filter((o) => o.state !== 'right')).toEqual([]);
    }
  });
});

describe('stars and crooked shapes', () => {
  const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  const shape = fc.oneof(
    fc
      .tuple(fc.integer({ min: 3, max: 10 }), number(15, 28), number(5, 12))
      .map(([tips, outer, inner]) => star(35, 35, tips, outer, inner)),
    fc.array(number(8, 25), { minLength: 3, maxLength: 9 }).map((radii) =>
      polygon(
        ...radii.map((r, i): readonly [number, number] => {
          const angle = ((i + 0.5) / radii.length) * 2 * Math.PI;
          return [35 + r * Math.cos(angle), 35 + r * Math.sin(angle)];
        }),
      ),
    ),
  );

  it('are proven from the edge or from a hole, with loops at their corners, as openings and as parts', () => {
    const ways = fc.record({
      block: fc.boolean(),
      start: fc.constantFrom('edge', 'hole'),
      run: fc.constantFrom('attended', 'unattended first'),
    });
    fc.assert(
      fc.property(shape, ways, (contour, { block, start, run }) => {
        const loops = block ? [loop('B', rectangle(0, 0, 80, 80)), loop('A', contour, 1, 'B')] : [loop('A', contour)];
        const outline = block ? 'block' : 'cut';
        const question = questionFor(loops, { outline, run, start: { A: start }, sharpOutside: 'loop', insideCorner: 0.3, finish: 1.6 });
        const plan = planCut(question);
        if (plan.kind === 'refused') {
          const known = ['no-way-in-from-edge', 'hole-does-not-fit', 'no-room-for-lead', 'slot-too-narrow', 'corner-too-tight'];
          expect(known).toContain(there(plan.findings.find((f) => f.severity === 'refusal')).code);
          return;
        }
        const proof = proveProgram(asked(question, inControl));
        expect([proof.verdict, proof.findings.filter((f) => f.severity === 'refusal')]).toEqual(['proven', []]);
      }),
      { seed: 5, numRuns: 40 },
    );
  });
});

describe('open lines', () => {
  it('of any steps are proven with either side kept', () => {
    const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    const steps = fc.array(number(8, 52), { minLength: 2, maxLength: 5 });
    fc.assert(
      fc.property(
        steps,
        fc.constantFrom('left', 'right', 'slit'),
        fc.constantFrom('attended', 'unattended first'),
        fc.constantFrom(1.6, 0.8),
        (ys, kept, run, finish) => {
          const along = polyline(...ys.map((y, i) => [(100 * i) / (ys.length - 1), y] as const));
          const plan = planCut(cutLine(kept, along, { run, finish, insideCorner: 0.3 }));
          if (plan.kind === 'refused') throw new Error(sentenceOf(plan.findings.find((f) => f.severity === 'refusal')));
          const proof = proveProgram(asked(cutLine(kept, along, { run, finish, insideCorner: 0.3 }), inControl));
          expect([proof.verdict, faults(proof)]).toEqual(['proven', []]);
        },
      ),
      { seed: 41, numRuns: 25 },
    );
  });

  it('come after the openings of the block, and before a part they lie in', () => {
    const order = (name: string): readonly string[] => planned(there(KINDS.find(([n]) => n === name))[1]).order;
    expect(order('openings, then the block parted').at(-1)).toBe('C1');
    expect(order('a slit in a part, to its opening')).toEqual(['L2', 'C1', 'L1']);
  });

  it('tell which piece comes off, how heavy it is, and warn where it is the kept one', () => {
    const told = (kept: WantedLine['kept']) => planned(cutLine(kept, polyline([0, 20], [100, 20])));
    const { piece } = there(there(told('left').openCuts)[0]);
    const proof = proveProgram(asked(cutLine('left', polyline([0, 20], [100, 20])), inControl));
    expect([there(piece).role, Math.abs(there(piece).area - there(proof.loose[0]).area)]).toEqual(['waste', expect.closeTo(0, 0)]);
    expect(there(piece).mass.value).toBeCloseTo(there(proof.loose[0]).mass, 3);
    const codes = (kept: WantedLine['kept']): readonly string[] => told(kept).findings.map((f) => f.code);
    expect([codes('left').includes('kept-side-comes-off'), codes('right').includes('kept-side-comes-off')]).toEqual([false, true]);
    expect(codes('slit')).not.toContain('kept-side-comes-off');
  });

  it('take the openings out of the mass of the piece', () => {
    const question = there(KINDS.find(([n]) => n === 'openings, then the block parted'))[1];
    const proof = proveProgram(asked(question, inControl));
    expect(there(there(there(planned(question).openCuts)[0]).piece).area).toBeCloseTo(there(proof.loose.at(-1)).area, 0);
  });

  it('that the wire cannot follow are refused with the place', () => {
    const bay = cutLine('left', polyline([0, 20], [50, 20], [50, 25], [50.2, 25], [50.2, 20], [100, 20]));
    const refusal = planCut(bay).findings.find((f) => f.severity === 'refusal');
    expect(refusal).toMatchObject({ code: 'slot-too-narrow', place: { loop: 'C1' } });
    const tight = planCut(cutLine('left', stepped, { insideCorner: 0.05, tolerance: 0.01, wire: 'brass-0.25' }));
    expect(tight.findings.find((f) => f.severity === 'refusal')?.code).toBe('corner-too-tight');
    const crossing = planCut(cutLine('left', polyline([0, 20], [60, 20], [60, 40], [30, 40], [30, 0])));
    expect(crossing.findings.find((f) => f.severity === 'refusal')?.code).toBe('contour-unsound');
  });

  it('begin at a hole that is there', () => {
    const hole = { at: { x: 60, y: 16 }, diameter: 3 };
    const { to } = there(there(planned(cutLine('left', polyline([0, 20], [60, 20]), { holes: [hole] })).openCuts)[0]);
    expect(to).toEqual({ kind: 'hole', ...hole, origin: 'drawing' });
  });
});

/** A straight line across at a height of 20 with the metal above kept; the piece below is waste. */
const straight = (): ProofQuestion => asked(cutLine('left', polyline([0, 20], [100, 20])), inControl);

const changed = (question: ProofQuestion, change: (text: string, i: number) => string): Proof =>
  proveProgram({ ...question, program: question.program.split('\n').map(change).join('\n') });

describe('faults put into the program of an open line', () => {
  const lines = straight().program.split('\n');
  /** Moves along it that end within the block. */
  const along = lines.flatMap((text, i) => (Number(/G01 X([\d.]+) Y20\.?$/.exec(text.trim())?.[1] ?? 101) <= 100 ? [i] : []));

  it('are caught wherever a move along it is led towards the side that stays', () => {
    expect(along.length).toBeGreaterThanOrEqual(3);
    for (const n of along) {
      const proof = changed(straight(), (text, i) => (i === n ? text.replace(/Y20\.?/, 'Y20.2') : text));
      expect([lines[n], proof.verdict]).toEqual([lines[n], 'not proven']);
    }
  });

  it('are caught when compensation changes sides', () => {
    const sides = lines.flatMap((text, i) => (/G4[12] D/.test(text) ? [i] : []));
    for (const n of sides) {
      const proof = changed(straight(), (text, i) => (i === n ? text.replace(/G4([12])/, (_, d) => `G4${d === '1' ? 2 : 1}`) : text));
      expect(proof.verdict).toBe('not proven');
    }
  });

  it('are caught when nobody holds the waste, and when the last pass is left out', () => {
    const hold = lines.findIndex((text) => /M00/.test(text));
    expect(changed(straight(), (text, i) => (i === hold ? '' : text)).reasons.map((r) => r.finding.code)).toContain('piece-falls-unheld');
    const last = lines.findIndex((text) => /\bE2\b/.test(text));
    const kept = straight()
      .program.split('\n')
      .filter((text, i) => i < last || !/G0[01]|G4[012]|E2/.test(text));
    expect(proveProgram({ ...straight(), program: kept.join('\n') }).reasons.map((r) => r.finding.code)).toContain('metal-left');
  });

  it('are told apart from a change that does nothing: the waste cut a little deeper', () => {
    const rough = there(along[0]);
    const proof = changed(straight(), (text, i) => (i === rough ? text.replace(/Y20\.?/, 'Y19.95') : text));
    expect([proof.verdict, faults(proof)]).toEqual(['proven', []]);
  });

  it('are caught when a slit runs on too far, and when a lead is not the one that was told', () => {
    const slit = asked(cutLine('slit', polyline([0, 20], [50, 20])), inControl);
    expect(changed(slit, (text) => text.replace(/X50\.? Y20/, 'X50.5 Y20')).verdict).toBe('not proven');
    const [, opening] = there(KINDS.find(([name]) => name === 'an opening from the edge'));
    const question = asked(opening, inControl);
    expect(proveProgram({ ...question, wantedOpen: [] }).verdict).toBe('not proven');
    const other = there(question.wantedOpen).map((o) => ({
      ...o,
      path: path(o.path.segments.map((s) => line(shifted(s.from), shifted(s.to)))),
    }));
    expect(proveProgram({ ...question, wantedOpen: other }).verdict).toBe('not proven');
  });
});

const shifted = ({ x, y }: Point): Point => point(x + 1, y);
