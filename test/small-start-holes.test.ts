/** Start holes with little room are a warning that stands for all of them, not a refusal; diamond is not drilled. */
import { describe, expect, it } from 'vitest';
import { findMaterial } from '../src/physics/material/find-material.ts';
import { planCut } from '../src/plan/cut/plan-cut.ts';
import { disc, loop, planned, questionFor, rectangle, slot } from '../src/plan/plan.fixture.ts';
import type { PlanQuestion } from '../src/plan/question.ts';
import { proveProgram } from '../src/proof/prove/prove.ts';
import { remedyTextOf, sentenceOf } from '../src/text/finding.fixture.ts';
import type { Finding } from '../src/text/finding.ts';
import { asked, inControl } from './planned.ts';
import { there } from './there.ts';

const B = loop('B', rectangle(0, 0, 120, 60));
const material = (id: string): PlanQuestion['material'] => {
  const found = findMaterial(id);
  if (found.kind !== 'material') throw new Error(id);
  return found.material;
};
const slots = (count: number, width: number): PlanQuestion['loops'] =>
  Array.from({ length: count }, (_, i) => loop(`L${i + 1}`, slot(8 + 14 * i, 20, 8, width + 0.02 * (i % 2)), 1, 'B'));
const inBlock = (loops: PlanQuestion['loops'], changes: Partial<PlanQuestion> = {}): PlanQuestion =>
  questionFor([B, ...loops], { outline: 'block', finish: 1.6, ...changes });
const about = (question: PlanQuestion): readonly Finding[] => planCut(question).findings.filter((f) => f.code.startsWith('hole-'));

const DRILLED: readonly (readonly [name: string, question: PlanQuestion, codes: readonly string[]])[] = [
  ['an opening of 2.5 mm', inBlock([loop('L1', disc(40, 30, 1.25), 1, 'B')], { height: 20 }), ['hole-made-smaller']],
  ['a slot of 2.2 mm', inBlock(slots(1, 2.2), { height: 20 }), ['hole-made-smaller']],
  [
    'slots of 2 mm in carbide',
    inBlock(slots(7, 2), { material: material('wc-10co'), height: 25 }),
    ['hole-made-smaller', 'hole-may-drift'],
  ],
  ['a channel of 2.5 mm in 80 mm', inBlock(slots(1, 2.5), { height: 80 }), ['hole-made-smaller', 'hole-may-drift']],
  ['a wide opening', inBlock([loop('L1', rectangle(20, 20, 20, 20), 1, 'B')]), []],
];

describe.each(DRILLED)('%s', (_, question, codes) => {
  it('is drilled, told once, and proven', () => {
    expect(about(question).map((f) => f.code)).toEqual(codes);
    expect(about(question).every((f) => f.severity === 'warning')).toBe(true);
    const proof = proveProgram(asked(question, inControl));
    expect([proof.verdict, proof.findings.filter((f) => f.severity === 'refusal')]).toEqual(['proven', []]);
  });
});

describe('a hole that may drift', () => {
  const many = inBlock(slots(7, 2), { height: 40 });
  const told = (question: PlanQuestion): Finding => there(about(question).find((f) => f.code === 'hole-may-drift'));

  it('is one finding with the worst, and offers a finer hole or to leave the opening', () => {
    expect(sentenceOf(told(many))).toMatch(/The start holes of L1 \(and 6 more\).*may drift by 0\.40 mm/);
    expect(remedyTextOf(told(many))).toMatch(/--start-hole.*or set kept to leave/);
    expect(told(many).remedy).toMatchObject({ field: 'startHole' });
  });

  it('is gone with the finer hole that it offers', () => {
    const value = Number(told(many).remedy?.value);
    expect(value).toBeGreaterThan(0.39);
    expect(about({ ...many, startHole: value }).map((f) => f.code)).toEqual([]);
  });

  it('offers none finer than the wire can be threaded through', () => {
    const tall = inBlock(slots(1, 2), { height: 120, wire: 'brass-0.30' });
    expect(told(tall).remedy?.field).toBeUndefined();
    expect(remedyTextOf(told(tall))).toContain('set kept.L1 to leave');
  });
});

describe('diamond', () => {
  const blank = (changes: Partial<PlanQuestion> = {}): PlanQuestion =>
    questionFor([loop('L1', rectangle(0, 0, 20, 10))], { material: material('pcd'), height: 3, finish: 1.6, ...changes });

  it('is refused where a hole would have to be drilled, and taken from the edge or from a hole that is there', () => {
    const refused = there(about(blank()).find((f) => f.code === 'hole-not-drilled'));
    expect([refused.severity, refused.remedy]).toMatchObject(['refusal', { field: 'start.L1', value: 'edge' }]);
    expect(planned(blank({ start: { L1: 'edge' } })).contours[0]?.hole.origin).toBe('block edge');
    expect(about(blank({ holes: [{ at: { x: 10, y: -4 }, diameter: 2 }] }))).toEqual([]);
  });
});
