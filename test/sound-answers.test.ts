/** What must hold of the answer to any example: hours that add up, a clock with one thing at a time, figures that say why. */

import { describe, expect, it } from 'vitest';
import { jobRun } from '../src/cli/inputs.ts';
import { answered, hours } from '../src/job/answered.fixture.ts';
import type { Figure } from '../src/quantity/figure.ts';
import { printPlain } from '../src/text/print/print.ts';
import { there } from './there.ts';

const JOBS = ['die-plate/die-plate', 'form-insert/form-insert-eased', 'thick-gear/thick-gear'];
const answers = JOBS.map((name) => [name, answered(jobRun(`examples/${name}.job.json`, {}, '2026-11-25'))] as const);

describe.each(answers)('the answer to %s', (_, { facts, figures }) => {
  it('has attended and unattended hours that make the total', () => {
    const { attended, unattended, total } = hours(facts).estimate;
    expect(total.value).toBeGreaterThan(0);
    expect(attended.value + unattended.value).toBeCloseTo(total.value, 9);
  });

  it('has a clock on which one thing follows the other', () => {
    const { events, totals } = there(hours(facts).schedule);
    expect(events.length).toBeGreaterThan(3);
    for (const [i, event] of events.entries()) {
      expect(event.to).toBeGreaterThanOrEqual(event.from);
      if (i > 0) expect(event.from).toBeGreaterThanOrEqual(there(events[i - 1]).to - 1e-6);
    }
    expect(totals.attended + totals.unattended).toBeCloseTo(totals.total, 4);
  });

  it('explains every choice by figures down to what was given or published', () => {
    for (const key of ['hours.total', 'price.piece'])
      expect([...figures.keys()].some((k) => k.startsWith(there(key.split('.')[0])))).toBe(true);
    for (const figure of figures.values()) {
      expect([figure.key, Number.isFinite(figure.value), printPlain(figure.name).length > 2]).toEqual([figure.key, true, true]);
      if (figure.basis === 'computed') expect([figure.key, figure.from.length > 0]).toEqual([figure.key, true]);
      for (const leaf of leavesOf(figure)) expect([leaf.key, leaf.basis === 'computed']).toEqual([leaf.key, false]);
    }
  });
});

const leavesOf = (figure: Figure): readonly Figure[] => (figure.from.length === 0 ? [figure] : figure.from.flatMap(leavesOf));
