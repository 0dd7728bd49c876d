/** Small programs made by hand, for laying on the schedule: moves of so many minutes and stops, one minute to the millimetre. */

import { line, point } from '../../geometry/segment.ts';
import type { Action, ReadProgram } from '../../nc/read/program.ts';
import { stopSaid } from '../../nc/read/stop-purpose.ts';
import { standardMachine } from '../../physics/cut/machine.ts';
import type { Wire } from '../../physics/wire/wire.ts';
import type { Pass } from '../../plan/plan.ts';
import { given } from '../../quantity/figure.ts';
import { saidBy, saidOf } from '../../quantity/source.ts';
import { readMoment } from './moment.ts';
import type { ScheduleQuestion } from './schedule.ts';
import { usualShifts } from './shifts.ts';

export const at = (text: string): number => {
  const read = readMoment(text);
  if (read.kind !== 'moment') throw new Error(text);
  return read.at;
};

const wire: Wire = {
  id: 'w',
  name: 'test wire',
  diameter: 0.25,
  kind: 'brass',
  density: 8.5,
  tension: 12,
  speed: 10,
  price: 1000,
  spool: 8,
  inStock: true,
};

const figure = (value: number) =>
  given({ key: 'feed', name: saidOf('feed'), value, unit: 'mm/min', basis: 'assumed', source: saidBy.program });
const pass = (number: number): Pass => {
  const one = figure(1);
  return {
    number,
    condition: number,
    register: number,
    energy: one,
    gap: one,
    stock: one,
    offset: one,
    feed: one,
    areaRate: one,
    ra: one,
    damage: one,
    formError: one,
  };
};

/** A cut of so many minutes. */
export const cut = (minutes: number, condition = 1): Action => {
  const centre = line(point(0, 0), point(minutes, 0));
  return { kind: 'move', block: 3, rapid: false, programmed: centre, centre, condition };
};
export const stop = (comment = 'L2, THE SLUG IS LOOSE.'): Action => ({
  kind: 'stop',
  block: 5,
  optional: false,
  comment,
  ...stopSaid(comment),
});
export const thread: Action = { kind: 'thread', block: 1 };

export const programOf = (actions: readonly Action[]): ReadProgram => ({ state: 'read', blocks: [], actions, findings: [] });

/** Thursday 26 November 2026, 07:00; stops of 5 min, loading of 10, threading by the machine of 2. */
export const question = (actions: readonly Action[], more: Partial<ScheduleQuestion> = {}): ScheduleQuestion => ({
  program: programOf(actions),
  passes: [pass(1), pass(2)],
  machine: { ...standardMachine, threadMinutes: 2, autoThreading: true, travelFeed: 600 },
  minutes: { setUp: 40, programming: 20, programmingContour: 5, load: 10, inspection: 15, stop: 5, handThread: 3, condition: 1 },
  wire,
  quantity: 1,
  shifts: usualShifts,
  start: at('2026-11-26T07:00'),
  ...more,
});
