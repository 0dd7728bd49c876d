/** Other starts and orders are told by the clock: what a row says is what the job laid that way gives. */

import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { jobRun } from '../../cli/inputs.ts';
import { timeText } from '../../documents/sheet/comparison-time-text.ts';
import { printMoment } from '../../text/print/moment.ts';
import { printPlain } from '../../text/print/print.ts';
import { memoryOf } from '../memory.ts';
import { runUpTo } from '../pipeline/pipeline.ts';
import { adviseRun } from './both-orders.ts';
import { priceCurve } from './compare.ts';
import { timeComparison } from './compare-time.ts';
import { pathChanges } from './what-if-paths.ts';

const die = { ...jobRun('examples/die-plate/die-plate.job.json', {}, '2026-11-25'), memory: memoryOf() };
const time = timeComparison(die);
if (time === undefined) throw new Error('the die plate can be scheduled');

describe('a comparison of starts and orders', () => {
  it('tells for the other order what the clock gives for it, and ranks by what is worth most', () => {
    const advised = adviseRun(die);
    const row = there(time.rows.find((r) => r.what === 'run order'));
    expect(advised.kind === 'advised' && advised.options['unattended first'].schedule.finish).toBe(row.outcome.done);
    expect(printPlain(row.sentence)).toContain(printMoment(row.outcome.done));
    expect(row.sooner).toBe(time.now.done - row.outcome.done);
    expect(time.rows.map((r) => r.worth)).toEqual(time.rows.map((r) => r.worth).toSorted((a, b) => b - a));
  });

  it('proposes night starts that leave more of the shift to other work, each with when it is done', () => {
    const nights = time.rows.filter((r) => r.what === 'night start');
    expect(nights.length).toBeGreaterThan(0);
    for (const { outcome, worth, sentence } of nights) {
      expect(outcome.start).toBeGreaterThan(time.now.start);
      expect(outcome.inShift).toBeLessThan(time.now.inShift);
      expect(outcome.inShift).toBeGreaterThan(0);
      expect(worth).toBeGreaterThan(0);
      expect(printPlain(sentence)).toContain(printMoment(outcome.start));
    }
    expect(timeText(time)).toContain(`1  ${there(time.rows[0]).what}`);
  });

  it('has nothing to say where nobody ever comes', () => {
    expect(timeComparison({ ...die, shop: { ...die.shop, shifts: [] } })).toBeUndefined();
  });
});

describe('what-ifs about the way of the wire', () => {
  it('cut small slugs away and leave whole what has no core, each the other way round of what is planned', () => {
    const night = { ...jobRun('examples/die-plate/die-plate.job.json', {}, '2026-11-25'), memory: memoryOf() };
    const now = runUpTo(night, 'program');
    if (now.kind !== 'programmed') throw new Error(now.kind);
    const contours = now.plan.contours.map((c, i) => (i === 0 ? { ...c, piece: { ...c.piece, area: 20 } } : c));
    const [noCore] = pathChanges(night.job, { ...now.plan, contours });
    const loop = there(contours[0]).loop;
    expect(noCore?.job.core).toEqual({ [loop]: 'no-core' });
    const without = runUpTo({ ...night, job: { ...night.job, ...noCore?.job } }, 'program');
    if (without.kind !== 'programmed') throw new Error(without.kind);
    expect(without.plan.contours.find((c) => c.loop === loop)?.core).toBeDefined();
    expect(pathChanges(night.job, without.plan)[0]?.job.core).toEqual({ [loop]: 'slug' });
  });
});

describe('the steps of the price curve', () => {
  it('lie at the finest finish a number of passes gives: a hundredth finer takes one more', () => {
    const last = priceCurve(die).filter((p) => p.lastOfStep === true);
    expect(last.map((p) => p.passes)).toEqual([3, 4, 5, 6]);
    const [step] = last;
    const finer = runUpTo({ ...die, job: { ...die.job, finish: there(step).finish * 0.985 } }, 'program');
    expect(finer.kind === 'programmed' && finer.plan.passes.length).toBe(4);
  });
});
