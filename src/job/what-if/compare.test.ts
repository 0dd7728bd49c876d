/** What-ifs are the job run again: they rank by what they save, say why they cannot be, and remember what did not change. */
import { describe, expect, it } from 'vitest';
import { jobRun } from '../../cli/inputs.ts';
import { comparisonText } from '../../documents/sheet/comparison-text.ts';
import { printPlain } from '../../text/print/print.ts';
import type { JobRun } from '../job-run.ts';
import { memoryOf } from '../memory.ts';
import { runUpTo } from '../pipeline/pipeline.ts';
import { compareJob, priceCurve } from './compare.ts';

const die: JobRun = jobRun('examples/die-plate/die-plate.job.json', {}, '2026-11-25');
const comparison = compareJob(die);
if (comparison.kind !== 'compared') throw new Error(comparison.kind);
const curve = priceCurve(die);

describe('a comparison', () => {
  it('ranks changes by what they save, with the impossible ones last and their reason told', () => {
    const saves = comparison.rows.flatMap((r) => (r.kind === 'can' ? [r.saves] : []));
    expect(saves.length).toBeGreaterThanOrEqual(10);
    expect(saves).toEqual(saves.toSorted((a, b) => b - a));
    const first = comparison.rows.findIndex((r) => r.kind === 'cannot');
    expect(
      comparison.rows
        .slice(first < 0 ? comparison.rows.length : first)
        .every((r) => r.kind === 'cannot' && printPlain(r.reason).length > 20),
    ).toBe(true);
  });

  it('gives for each change what the job itself gives when it is asked that way', () => {
    const coarser = comparison.rows.find((r) => r.what === 'finish' && printPlain(r.sentence).includes('coarser'));
    const asked = runUpTo({ ...die, job: { ...die.job, finish: 1.6 } }, 'hours');
    expect(coarser?.kind === 'can' && asked.kind === 'timed' && Math.abs(coarser.outcome.each - asked.estimate.each.value) < 1e-6).toBe(
      true,
    );
  });

  it('never finds a wire cheaper than the one that was chosen', () => {
    const wires = comparison.rows.flatMap((r) => (r.kind === 'can' && r.what === 'wire' ? [r.saves] : []));
    expect(wires.length).toBeGreaterThan(2);
    for (const saved of wires) expect(saved).toBeLessThanOrEqual(1e-6);
  });

  it('shows a price that never falls as the finish gets finer', () => {
    const prices = curve.map((p) => p.each);
    expect(prices.length).toBeGreaterThan(6);
    expect(prices).toEqual(prices.toSorted((a, b) => a - b));
  });

  it('is told as a table with the job as asked at its head', () => {
    const text = comparisonText(comparison, curve);
    expect(text.split('\n')[1]).toMatch(/^ {2}As specified/);
    expect(text).toContain('Price against finish');
  });

  it('prices a stack as the job that is cut in one', () => {
    const two = compareJob({ ...die, job: { ...die.job, quantity: 2 } });
    const stacked = two.kind === 'compared' ? two.rows.find((r) => r.what === 'stack') : undefined;
    const inOne = runUpTo({ ...die, job: { ...die.job, quantity: 2, stack: 2 } }, 'hours');
    if (stacked?.kind !== 'can' || inOne.kind !== 'timed') throw new Error('a stack of two cannot be cut');
    expect(stacked.outcome.each).toBe(inOne.estimate.each.value);
    expect(stacked.outcome.minutes).toBe(inOne.estimate.total.value / 2);
    expect(stacked.saves).toBeGreaterThan(0);
  });
});

describe('the memory of stages', () => {
  it('makes a thing once for the same key and forgets the oldest first', () => {
    const memory = memoryOf(2);
    let made = 0;
    const make = (): number => ++made;
    expect([memory.recall('a', 'x', make), memory.recall('a', 'x', make), memory.recall('b', 'x', make)]).toEqual([1, 1, 2]);
    memory.recall('a', 'y', make);
    memory.recall('a', 'z', make);
    expect(memory.recall('a', 'x', make)).toBe(5);
  });
});
