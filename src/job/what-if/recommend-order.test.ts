/** The advice which run to take: the stress rule first, then what people and machine cost, then threadings. */
import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { jobRun } from '../../cli/inputs.ts';
import { materials } from '../../physics/material/materials.ts';
import { printPlain } from '../../text/print/print.ts';
import type { JobRun } from '../job-run.ts';
import { adviseRun } from './both-orders.ts';
import { type RunOption, type RunQuestion, recommendRun } from './recommend-order.ts';

const die: JobRun = jobRun('examples/die-plate/die-plate.job.json', {}, '2026-11-25');
const advised = adviseRun(die);
if (advised.kind !== 'advised') throw new Error(advised.kind);

const steel = there(materials.find((m) => m.id === 'd2'));

const option = (totals: Partial<RunOption['schedule']['totals']>): RunOption => {
  const { timed, schedule } = advised.options.attended;
  return { plan: timed.made.plan, schedule: { ...schedule, totals: { ...schedule.totals, waiting: 0, ...totals } } };
};
const question = (attended: RunOption, alone: RunOption): RunQuestion => ({
  options: { attended, 'unattended first': alone },
  material: { ...steel, family: 'carbide' },
  tolerance: 0.02,
  rates: { machineHour: 4000, labourHour: 5000 },
});
describe('the advice which run to take', () => {
  it('is all roughs first where a tight block of steel may move, whatever it costs', () => {
    expect(advised.advice).toMatchObject({ kind: 'stress', run: 'unattended first' });
    expect(printPlain(advised.advice.sentence)).toContain('8 openings');
    expect(printPlain(advised.advice.sentence)).toMatch(/needs .* of attendance .* threads .* finishes /);
    expect(advised.options['unattended first'].schedule.totals.threadings).toBeGreaterThan(
      advised.options.attended.schedule.totals.threadings,
    );
  });

  it('goes by what people and machine cost where nothing moves', () => {
    const dear = option({ attended: 120, total: 600 });
    const cheap = option({ attended: 30, total: 600 });
    const found = recommendRun(question(dear, cheap));
    expect(found).toMatchObject({ kind: 'cheaper', run: 'unattended first' });
    // 120 min of people at 50.00 an hour and 600 min of the machine at 40.00: 100.00 + 400.00.
    expect(found.costs).toEqual({ attended: 50_000, 'unattended first': 42_500 });
    expect(recommendRun(question(cheap, dear)).run).toBe('attended');
  });

  it('counts a machine that waits as taken', () => {
    const waits = option({ attended: 30, total: 1500, waiting: 900 });
    const found = recommendRun(question(waits, option({ attended: 60, total: 620 })));
    expect(found.run).toBe('unattended first');
    expect(printPlain(found.sentence)).toContain('waits 0 s instead of 15 h');
  });

  it('takes fewer threadings where both cost the same', () => {
    const [few, many] = [option({ total: 600, attended: 60, threadings: 8 }), option({ total: 598, attended: 60, threadings: 24 })];
    expect(recommendRun(question(few, many))).toMatchObject({ kind: 'alike', run: 'attended' });
    expect(recommendRun(question(many, few))).toMatchObject({ kind: 'alike', run: 'unattended first' });
  });

  it('knows stress only in metals that hold it, with several openings and a tolerance that shows it', () => {
    const plain = question(option({}), option({}));
    expect(recommendRun({ ...plain, material: steel, tolerance: 0.008 }).kind).toBe('stress');
    expect(recommendRun({ ...plain, material: steel, tolerance: 0.02 }).kind).toBe('alike');
    expect(recommendRun({ ...plain, tolerance: 0.008 }).kind).toBe('alike');
  });

  it('comes with a start that is never worse than the run asked for, started at once', () => {
    const { start } = advised;
    if (!('best' in start)) throw new Error(start.kind);
    expect(start.best.cuttingAtNight).toBeGreaterThanOrEqual(start.atOnce.cuttingAtNight);
    expect(start.atOnce.name).toBe('attended');
  });

  it('is not given where the job cannot be cut', () => {
    expect(adviseRun({ ...die, job: { ...die.job, height: 900 } }).kind).toBe('cannot');
    const undated = adviseRun({ ...die, day: '1999-01-01' });
    expect(undated.kind === 'cannot' && printPlain(undated.reason)).toContain('no rates');
  });
});
