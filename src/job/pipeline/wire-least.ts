/** Hours and price that a job takes at least with a wire, by the same rates and lines as its estimate. */

import { ratesOn } from '../../estimate/rates.ts';
import { type Drilled, drillingIndex } from '../../physics/material/hole-drilling.ts';
import type { Wire } from '../../physics/wire/wire.ts';
import { wireKilograms, wireMetres } from '../../physics/wire/wire-use.ts';
import type { WireBound } from '../../plan/cut/least-of-wire.ts';
import type { JobRun } from '../job-run.ts';
import { machineOf } from '../shop.ts';

export interface LeastAsked {
  readonly wire: Wire;
  readonly run: JobRun;
  readonly material: Drilled;
  /** Contours to be programmed. */
  readonly contours: number;
}

/** Minutes of machine time and minor money units for one piece; 0 where no rates hold. */
export const leastOf = (
  bound: WireBound,
  { wire, run, contours, material }: LeastAsked,
): { readonly minutes: number; readonly each: number } => {
  const onDay = ratesOn(run.shop.rates, run.day);
  if (onDay.kind !== 'rates') return { minutes: 0, each: 0 };
  const { rates } = onDay;
  const machine = machineOf(run.shop);
  const byMachine = run.dialect.words.thread !== undefined;
  const threading = bound.threadings * (byMachine ? machine.threadMinutes : rates.minutes.handThread);
  const stops = bound.stops * rates.minutes.stop;
  const minutes = bound.sparking + threading + stops;
  const attended = stops + (byMachine && machine.autoThreading ? 0 : threading);
  const people = attended + rates.minutes.load + run.job.stack * rates.minutes.inspection;
  const feed = rates.drillingFeeds?.[material.id] ?? rates.drillingFeed * drillingIndex(material.family);
  const drilling = bound.drilled * (run.job.height / feed + rates.drillingHole);
  const once = rates.minutes.programming + rates.minutes.programmingContour * contours + rates.minutes.setUp;
  const kilograms = wireKilograms.compute({ ...wire, length: wireMetres.compute({ minutes: bound.sparking, speed: wire.speed }) });
  const one =
    (minutes * rates.machineHour + people * rates.labourHour + drilling * rates.drillingHour) / 60 +
    (minutes * (rates.filtersHour + rates.resinHour)) / 60 +
    (minutes / 60) * rates.power * rates.powerPrice +
    kilograms * wire.price;
  const { quantity, stack } = run.job;
  // A stack that is not full costs as much as a full one; the metal is the same with every wire and left out.
  return { minutes, each: (((once * rates.labourHour) / 60 + one * Math.ceil(quantity / stack)) / quantity) * (1 + rates.markup) };
};
