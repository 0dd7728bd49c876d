/** A job laid on the clock: start and spool as the job says, shifts as the shop says, told on every paper. */

import { describe, expect, it } from 'vitest';
import { jobRun } from '../../cli/inputs.ts';
import { toldPaper } from '../../documents/paper-for-reader.ts';
import { paperText } from '../../documents/paper-text.ts';
import { setupSheet } from '../../documents/sheet/setup-sheet.ts';
import type { Clock } from '../../estimate/clock/clock.ts';
import { isoOf } from '../../estimate/clock/moment.ts';
import type { JobFacts } from '../../result/facts.ts';
import { HOUSE } from '../../text/reader.ts';
import { cut, factsOf, hours, program } from '../answered.fixture.ts';
import { answerJson } from '../handout/answer-json.ts';
import { jobSchema } from '../job.ts';
import type { JobRun } from '../job-run.ts';
import { shopSchema } from '../shop.ts';

const die: JobRun = jobRun('examples/die-plate/die-plate.job.json', {}, '2026-11-25');
const facts = factsOf(die);
const clockOf = (of: JobFacts): Clock => {
  const { clock } = hours(of);
  if (clock === undefined) throw new Error('the run is not laid on the clock');
  return clock;
};
const clock = clockOf(facts);

describe('a job on the clock', () => {
  it('starts with the first shift after the day of the answer, or when the job says', () => {
    expect(isoOf(clock.start)).toBe('2026-11-26T06:00');
    expect(isoOf(clockOf(factsOf({ ...die, day: '2026-11-27' })).start)).toBe('2026-11-30T06:00');
    const late = factsOf({ ...die, job: { ...die.job, startAt: '2026-11-26T17:00' } });
    expect(isoOf(clockOf(late).start)).toBe('2026-11-26T17:00');
    expect(late.findings.map((f) => f.code)).toContain('stop-at-night');
    expect(clockOf(late).totals.waiting).toBeGreaterThan(600);
  });

  it('takes the hours of the estimate: what people do and what runs alone', () => {
    expect(clock.totals.attended).toBeCloseTo(hours(facts).estimate.attended.value, 6);
    expect(clock.totals.busy).toBeCloseTo(hours(facts).estimate.total.value, 6);
  });

  it('runs out of wire where little is left on the spool', () => {
    const short = factsOf({ ...die, job: { ...die.job, startAt: '2026-11-26T17:00', spoolLeft: 0.3 } });
    expect(clockOf(short).spools.length).toBe(1);
    expect(clockOf(short).totals.threadings).toBe(clock.totals.threadings + 1);
  });

  it('has no clock, but an answer, in a shop where nobody comes', () => {
    const alone = factsOf({ ...die, shop: { ...die.shop, shifts: [] } });
    expect(alone.outcome.answer).toBe('yes');
    expect(hours(alone).clock).toBe(undefined);
    expect(alone.findings.map((f) => f.code)).toContain('nobody-comes');
  });

  it('is told by the set-up sheet at every stop, and as data', () => {
    const sheet = paperText(toldPaper(setupSheet(facts, { cut: cut(facts), program: program(facts) }), HOUSE));
    expect(sheet).toMatch(/^ +Stop +Time /m);
    const rows = sheet.split('\n').filter((l) => /^ {2}\d+ +Thu \d\d:\d\d {2}\d+ /.test(l));
    expect(rows.length).toBe(program(facts).proof.stops.length);
    const json = answerJson({ kind: 'answered', facts, job: die.job, figures: new Map() });
    expect(json).toMatchObject({ clock: { start: '2026-11-26T06:00', pieces: { laid: 1, asked: 1 }, moreEvents: 0 } });
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
