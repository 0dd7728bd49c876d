/** A job scheduled: start and spool as the job says, shifts as the shop says, told on every paper. */

import { describe, expect, it } from 'vitest';
import { jobRun } from '../../cli/inputs.ts';
import { printedPaper } from '../../documents/paper-for-reader.ts';
import { paperText } from '../../documents/paper-text.fixture.ts';
import { setupSheet } from '../../documents/sheet/setup-sheet.ts';
import { isoOf } from '../../estimate/schedule/moment.ts';
import type { Schedule } from '../../estimate/schedule/schedule.ts';
import type { JobFacts } from '../../result/facts.ts';
import { HOUSE } from '../../text/reader.ts';
import { cut, factsOf, hours, program } from '../answered.fixture.ts';
import { answerJson } from '../handout/answer-json.ts';
import { jobSchema } from '../job.ts';
import type { JobRun } from '../job-run.ts';
import { shopSchema } from '../shop.ts';

const die: JobRun = jobRun('examples/die-plate/die-plate.job.json', {}, '2026-11-25');
const facts = factsOf(die);
const scheduleInHours = (of: JobFacts): Schedule => {
  const { schedule } = hours(of);
  if (schedule === undefined) throw new Error('the run is not scheduled');
  return schedule;
};
const schedule = scheduleInHours(facts);

describe('a job on the schedule', () => {
  it('starts with the first shift after the day of the answer, or when the job says', () => {
    expect(isoOf(schedule.start)).toBe('2026-11-26T06:00');
    expect(isoOf(scheduleInHours(factsOf({ ...die, day: '2026-11-27' })).start)).toBe('2026-11-30T06:00');
    const late = factsOf({ ...die, job: { ...die.job, startAt: '2026-11-26T17:00' } });
    expect(isoOf(scheduleInHours(late).start)).toBe('2026-11-26T17:00');
    expect(late.findings.map((f) => f.code)).toContain('stop-at-night');
    expect(scheduleInHours(late).totals.waiting).toBeGreaterThan(600);
  });

  it('takes the hours of the estimate: what people do and what runs alone', () => {
    expect(schedule.totals.attended).toBeCloseTo(hours(facts).estimate.attended.value, 6);
    expect(schedule.totals.busy).toBeCloseTo(hours(facts).estimate.total.value, 6);
  });

  it('runs out of wire where little is left on the spool', () => {
    const short = factsOf({ ...die, job: { ...die.job, startAt: '2026-11-26T17:00', spoolLeft: 0.3 } });
    expect(scheduleInHours(short).spools.length).toBe(1);
    expect(scheduleInHours(short).totals.threadings).toBe(schedule.totals.threadings + 1);
  });

  it('has no clock, but an answer, in a shop where nobody comes', () => {
    const alone = factsOf({ ...die, shop: { ...die.shop, shifts: [] } });
    expect(alone.outcome.answer).toBe('yes');
    expect(hours(alone).schedule).toBe(undefined);
    expect(alone.findings.map((f) => f.code)).toContain('nobody-comes');
  });

  it('is told by the set-up sheet at every stop, and as data', () => {
    const sheet = paperText(printedPaper(setupSheet(facts, { cut: cut(facts), program: program(facts) }), HOUSE));
    expect(sheet).toMatch(/^ +Stop +Time /m);
    const rows = sheet.split('\n').filter((l) => /^ {2}\d+ +Thu \d\d:\d\d {2}\d+ /.test(l));
    expect(rows.length).toBe(program(facts).proof.stops.length);
    const json = answerJson({ kind: 'answered', facts, job: die.job, figures: new Map() });
    expect(json).toMatchObject({ schedule: { start: '2026-11-26T06:00', pieces: { laid: 1, asked: 1 }, moreEvents: 0 } });
  });

  it('refuses shifts and starts that no clock has', () => {
    const job = { drawing: 'a.dxf' };
    expect(jobSchema.safeParse({ ...job, startAt: '2026-11-31T07:00' }).success).toBe(false);
    expect(jobSchema.safeParse({ ...job, startAt: '2026-11-30T07:00' }).success).toBe(true);
    const { shifts: _, ...shop } = die.shop;
    expect(shopSchema.parse(shop).shifts).toEqual([{ days: ['Mon', 'Tue', 'Wed', 'Thu', 'Fri'], from: '07:00', to: '16:00', breaks: [] }]);
    expect(shopSchema.safeParse({ ...shop, shifts: [{ days: ['Mon'], from: '7:00', to: '16:00' }] }).success).toBe(false);
  });
});
