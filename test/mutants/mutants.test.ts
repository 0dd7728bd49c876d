/**
 * Every fault that changes the metal, or what holds it, is caught, and every one that changes nothing is passed. What is
 * true comes from truth.ts, which knows nothing of the proof.
 */
import { describe, expect, it } from 'vitest';
import { readProgram } from '../../src/nc/read/read.ts';
import { limitsFor, proveProgram } from '../../src/proof/prove/prove.ts';
import type { GoodProgram } from './good-programs.ts';
import { goodPrograms, textOf } from './good-programs.ts';
import type { Mutant } from './mutate.ts';
import { mutantsOf } from './mutate.ts';
import type { Surface } from './truth.ts';
import { mayBeOff, truthOf } from './truth.ts';

const PER_PROGRAM = 52;

/** Deviations this near to what the program may use, mm, are left out: the proof counts its resolution of 0.25 µm against a program, and the truth samples. */
const TOO_NEAR = 3.5e-4;

type Result = 'caught' | 'passed' | 'refused by the reader' | 'too near to tell' | 'missed' | 'blamed wrongly';

const judge = (good: GoodProgram, mutant: Mutant, surface: Surface): Result => {
  const question = { ...good.question, program: textOf(mutant.lines), registers: mutant.registers };
  const proof = proveProgram(question);
  const read = readProgram(question.program, question.dialect, question.registers, limitsFor(question));
  if (read.state === 'refused') return proof.verdict === 'not proven' ? 'refused by the reader' : 'missed';
  const truth = truthOf(read.actions, question, surface);
  const off = Math.max(truth.left, truth.gouge);
  const wrong = off > mayBeOff(question) || truth.faults.length > 0;
  const near = Math.abs(off - mayBeOff(question)) < TOO_NEAR || (truth.unclear && off <= mayBeOff(question));
  if (truth.faults.length === 0 && near) return 'too near to tell';
  if (proof.verdict === 'not proven') return wrong ? 'caught' : 'blamed wrongly';
  return wrong ? 'missed' : 'passed';
};

const tally = new Map<Result, number>();
const kindsCaught = new Set<string>();

describe('mutants of good programs', () => {
  for (const [n, good] of goodPrograms().entries()) {
    it(`tells faults from harmless changes: ${good.name}`, () => {
      const question = { ...good.question, program: textOf(good.lines) };
      expect(proveProgram(question).findings.filter((f) => f.severity !== 'note')).toEqual([]);
      const truth = truthOf(readProgram(question.program, question.dialect, question.registers).actions, question, undefined);
      expect([truth.faults, truth.gouge < TOO_NEAR]).toEqual([[], true]);
      const wrong: string[] = [];
      for (const mutant of mutantsOf(good, PER_PROGRAM, 500 + n)) {
        const result = judge(good, mutant, truth.surface);
        tally.set(result, (tally.get(result) ?? 0) + 1);
        if (result === 'caught') kindsCaught.add(mutant.kind);
        if (result === 'missed' || result === 'blamed wrongly') wrong.push(`${result}: ${mutant.name}`);
      }
      expect(wrong).toEqual([]);
    });
  }

  it('has judged enough mutants of both kinds', () => {
    const count = (r: Result): number => tally.get(r) ?? 0;
    expect(count('caught')).toBeGreaterThanOrEqual(120);
    expect(count('passed')).toBeGreaterThanOrEqual(80);
    expect(count('too near to tell')).toBeLessThan((count('caught') + count('passed')) * 0.05);
    expect([...kindsCaught]).toEqual(
      expect.arrayContaining([
        'register between share and tolerance',
        'whole pass left out',
        'registers changed round',
        'end of a pass dropped',
        'wire threaded twice',
      ]),
    );
  });
});
