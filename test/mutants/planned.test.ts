/** Programs of every kind of plan are proven, and faults put into their text are told from changes that do no harm. */
import { describe, expect, it } from 'vitest';
import { readProgram } from '../../src/nc/read/read.ts';
import { proveProgram } from '../../src/proof/prove/prove.ts';
import { changeOf, goodOf } from './change.ts';
import { textOf } from './good-programs.ts';
import { plannedJobs } from './planned-jobs.ts';
import { type Result, tryFaults } from './try-planned.ts';

/** `npm run fuzz` tries as many as one likes. */
const PER_JOB = 20;

const tally = new Map<Result, number>();
const jobs = plannedJobs();

describe('faults in planned programs', () => {
  it.each(jobs.map((job, n) => [job.name, job, n] as const))('are told from harmless changes: %s', (_, job, n) => {
    const question = { ...job.question, program: textOf(job.lines) };
    const proof = proveProgram(question);
    expect([proof.verdict, proof.findings.filter((f) => f.severity === 'refusal')]).toEqual(['proven', []]);
    const { actions } = readProgram(question.program, question.dialect, question.registers);
    expect(changeOf(goodOf(job, actions), actions)).toMatchObject({ left: 0, faults: [] });
    const tried = tryFaults(job, PER_JOB, 900 + n);
    for (const { result } of tried) tally.set(result, (tally.get(result) ?? 0) + 1);
    expect(tried.filter(({ result }) => result === 'missed' || result === 'blamed wrongly').map((t) => t.what)).toEqual([]);
    // A job whose every fault is too near to tell would try nothing.
    expect(tried.filter(({ result }) => result === 'caught').length).toBeGreaterThanOrEqual(3);
  });

  it('are enough of both kinds', () => {
    const count = (r: Result): number => tally.get(r) ?? 0;
    expect([...tally.values()].reduce((a, b) => a + b, 0)).toBe(PER_JOB * jobs.length);
    expect(count('caught')).toBeGreaterThanOrEqual(80);
    expect(count('passed')).toBeGreaterThanOrEqual(50);
    expect(count('too near to tell')).toBeLessThan((count('caught') + count('passed')) * 0.1);
  });
});
