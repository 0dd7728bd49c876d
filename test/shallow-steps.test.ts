/** Steps, nicks and spikes shallower than the wire is wide are judged by what really stays in them; slits stay refused. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planCut } from '../src/plan/cut/plan-cut.ts';
import { loop, planned, polygon, questionFor, rectangle } from '../src/plan/plan.fixture.ts';
import type { PlanQuestion } from '../src/plan/question.ts';
import { proveProgram } from '../src/proof/prove/prove.ts';
import { asked, inControl } from './planned.ts';

type Corner = readonly [number, number];

/** A square of 40 whose right side is drawn as given, from below up. */
const sideOf = (...corners: readonly Corner[]): readonly Corner[] => [[0, 0], [40, 0], ...corners, [40, 40], [0, 40]];
const step = (depth: number): readonly Corner[] => [
  [0, 0],
  [40, 0],
  [40, 20],
  [40 + depth, 20],
  [40 + depth, 40],
  [0, 40],
];
const nick = (depth: number, width: number): readonly Corner[] => sideOf([40, 20], [40 - depth, 20 + width / 2], [40, 20 + width]);
const slit = (depth: number, width: number): readonly Corner[] =>
  sideOf([40, 20], [40 - depth, 20], [40 - depth, 20 + width], [40, 20 + width]);
/** A notch with slanting walls that end a little above its floor. */
const root = (height: number): readonly Corner[] => [
  [0, 0],
  [10, 0],
  [10, 10],
  [6.5, 10],
  [5.34, 7.6 + height],
  [5.34, 7.6],
  [4.68, 7.6],
  [4.68, 7.6 + height],
  [3.5, 10],
  [0, 10],
];

const asPart = (corners: readonly Corner[], changes: Partial<PlanQuestion> = {}): PlanQuestion =>
  questionFor([loop('L1', polygon(...corners))], { finish: 1.6, insideCorner: 0.2, ...changes });
const asOpening = (corners: readonly Corner[], changes: Partial<PlanQuestion> = {}): PlanQuestion =>
  questionFor([loop('L1', rectangle(-20, -20, 90, 80)), loop('L2', polygon(...corners), 1, 'L1')], {
    finish: 1.6,
    insideCorner: 0.2,
    ...changes,
  });

const ALLOWED: readonly (readonly [name: string, question: PlanQuestion])[] = [
  ['a step of 6 µm in an opening', asOpening(step(0.006))],
  ['a step of 60 µm in an opening', asOpening(step(0.06))],
  ['a step of 124 µm in an opening', asOpening(step(0.124))],
  ['a step of 90 µm on a part', asPart(step(0.09))],
  ['walls that end 9 µm above the floor', asPart(root(0.009))],
  ['walls that end 40 µm above the floor', asPart(root(0.04))],
  ['a spike of 35 µm on a part', asPart(nick(-0.035, 0.05))],
  ['a spike of 60 µm into an opening', asOpening(nick(0.06, 0.1))],
  ['a nick of 35 µm in a part', asPart(nick(0.035, 0.05))],
  ['a nick of 30 µm out of an opening', asOpening(nick(-0.03, 0.06))],
  ['a slit no deeper than the tolerance', asPart(slit(0.018, 0.1))],
];

describe.each(ALLOWED)('%s', (_, question) => {
  it('is cut with the thickest wire, and proven', () => {
    expect(planned(question).wire.diameter).toBe(0.3);
    const proof = proveProgram(asked(question, inControl));
    expect([proof.verdict, proof.findings.filter((f) => f.severity === 'refusal')]).toEqual(['proven', []]);
  });
});

const refusal = (question: PlanQuestion): string | undefined => {
  const plan = planCut({ ...question, wire: 'brass-0.30' });
  return plan.kind === 'refused' ? plan.findings.find((f) => f.severity === 'refusal')?.code : undefined;
};

describe('more than a corner of the radius allowed would leave', () => {
  it.each([
    ['a slit of 5 mm', asPart(slit(5, 0.15))],
    ['a slit of 0.3 mm', asPart(slit(0.3, 0.15))],
    ['a slit into the block', asOpening(slit(-0.5, 0.2))],
    ['a nick of 0.5 mm', asPart(nick(0.5, 0.08))],
  ])('is a slot too narrow: %s', (_, question) => {
    expect(refusal(question)).toBe('slot-too-narrow');
  });

  it('is refused where no corner radius is allowed, and taken again where the tolerance has room', () => {
    const tight = { insideCorner: 0, tolerance: 0.01 };
    expect(refusal(asPart(nick(0.035, 0.05), tight))).toBeDefined();
    expect(refusal(asOpening(step(0.06), tight))).toBeDefined();
    expect(refusal(asPart(nick(0.035, 0.05), { insideCorner: 0, tolerance: 0.04 }))).toBeUndefined();
  });
});

describe('steps of any depth', () => {
  it('are proven wherever they are taken', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.002, max: 0.4, noNaN: true }), fc.boolean(), (depth, part) => {
        const question = (part ? asPart : asOpening)(step(depth));
        expect(proveProgram(asked(question, inControl)).verdict).toBe('proven');
      }),
      { seed: 11, numRuns: 12 },
    );
  });
});
