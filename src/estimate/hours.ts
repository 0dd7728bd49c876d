/** Minutes of one piece: cutting by pass, threading, travel, stops; attended and unattended apart. */
import type { Machine } from '../physics/cut/machine.ts';
import type { CutPlan } from '../plan/plan.ts';
import { type Figure, given } from '../quantity/figure.ts';
import { apply } from '../quantity/formula.ts';
import type { Unit } from '../text/unit.ts';
import { cuttingMinutes, drillingMinutes, repeated, sumOf } from './formulas.ts';
import type { Rates } from './rates.ts';
import type { Tally } from './tally.ts';

export interface PassTime {
  readonly pass: number;
  readonly length: Figure;
  readonly minutes: Figure;
}

export interface Hours {
  readonly passes: readonly PassTime[];
  readonly threading: Figure;
  readonly travel: Figure;
  readonly stops: Figure;
  readonly drilling: Figure;
  readonly setUp: Figure;
  readonly programming: Figure;
  readonly sparking: Figure;
  readonly attended: Figure;
  readonly unattended: Figure;
  readonly total: Figure;
}

/** A count or length taken from the program as read back: exact. */
export const counted = (key: string, name: string, value: number, unit: Unit): Figure =>
  given({ key, name, value, unit, basis: 'drawing', source: 'the program as read back' });

/** A value out of the shop file. */
export const fromShop = (key: string, name: string, value: number, unit: Unit, spread = 0): Figure =>
  given({ key, name, value, unit, basis: 'shop', source: 'the shop file', deviation: value * spread });

export const hoursOf = (tally: Tally, plan: CutPlan, machine: Machine, rates: Rates): Hours => {
  const passes = passTimes(tally, plan);
  const people = (key: string, name: string, minutes: number): Figure =>
    fromShop(`shop.minutes.${key}`, name, minutes, 'min', rates.spread);
  const often = (key: string, name: string, count: number, minutes: Figure): Figure =>
    apply(repeated, { count: counted(`program.${key}`, `how often: ${name}`, count, '1'), minutes }, { key: `hours.${key}`, name });

  const byMachine = often(
    'threading-machine',
    'threading by the machine',
    tally.machineThreads,
    fromShop('machine.thread', 'one threading by the machine', machine.threadMinutes, 'min', rates.spread),
  );
  const byHand = often(
    'threading-hand',
    'threading by hand',
    tally.handThreads,
    people('handThread', 'one threading by hand', rates.minutes.handThread),
  );
  const conditions = often(
    'conditions',
    'conditions set by hand',
    tally.handConditions,
    people('condition', 'setting one condition', rates.minutes.condition),
  );
  const pieces = often('stops-pieces', 'stops for slugs and parts', tally.stops, people('stop', 'one stop', rates.minutes.stop));
  const travel = apply(
    cuttingMinutes,
    {
      length: counted('program.travel', 'travel without the wire', tally.travel, 'mm'),
      feed: fromShop('machine.travel', 'travel feed', machine.travelFeed, 'mm/min'),
    },
    { key: 'hours.travel', name: 'travel' },
  );
  const sparking = sumOf(
    passes.map((p) => p.minutes),
    'min',
    { key: 'hours.sparking', name: 'cutting' },
  );
  const stops = sumOf([conditions, pieces], 'min', { key: 'hours.stops', name: 'stops' });
  const threading = sumOf([byMachine, byHand], 'min', { key: 'hours.threading', name: 'threading' });
  const watched = machine.threadsItself ? [byHand, stops] : [byHand, byMachine, stops];
  const alone = machine.threadsItself ? [sparking, travel, byMachine] : [sparking, travel];
  return {
    passes,
    threading,
    travel,
    stops,
    sparking,
    drilling: drillingOf(plan, rates),
    setUp: people('setUp', 'set-up', rates.minutes.setUp),
    programming: programmingOf(plan, rates, people),
    attended: sumOf(watched, 'min', { key: 'hours.attended', name: 'machine time with somebody there' }),
    unattended: sumOf(alone, 'min', { key: 'hours.unattended', name: 'machine time alone' }),
    total: sumOf([...alone, ...watched], 'min', { key: 'hours.total', name: 'machine time of one piece' }),
  };
};

const passTimes = (tally: Tally, plan: CutPlan): readonly PassTime[] =>
  plan.passes.map((pass, i) => {
    const length = counted(
      `program.pass.${pass.number}.length`,
      `path of the wire in pass ${pass.number}`,
      tally.lengths[i] as number,
      'mm',
    );
    return {
      pass: pass.number,
      length,
      minutes: apply(
        cuttingMinutes,
        { length, feed: pass.feed },
        { key: `hours.pass.${pass.number}`, name: `cutting time of pass ${pass.number}` },
      ),
    };
  });

const drillingOf = (plan: CutPlan, rates: Rates): Figure => {
  const ends = (plan.openCuts ?? []).flatMap((o) => [o.from, o.to].filter((e) => e.kind === 'hole'));
  const drilled = [...plan.contours.map((c) => c.hole), ...ends].filter((h) => h.origin === 'placed');
  const holes = new Set(drilled.map(({ at }) => `${at.x} ${at.y}`)).size;
  const inputs = {
    holes: given({ key: 'plan.holes', name: 'start holes to drill', value: holes, unit: '1', basis: 'drawing', source: 'the plan' }),
    depth: given({ key: 'job.height', name: 'height of the block', value: plan.height, unit: 'mm', basis: 'drawing', source: 'the job' }),
    feed: fromShop('shop.drilling.feed', 'drilling feed', rates.drillingFeed, 'mm/min', rates.spread),
    setting: fromShop('shop.drilling.hole', 'setting one hole', rates.drillingHole, 'min', rates.spread),
  };
  return apply(drillingMinutes, inputs, { key: 'hours.drilling', name: 'start-hole drilling' });
};

const programmingOf = (plan: CutPlan, rates: Rates, people: (key: string, name: string, minutes: number) => Figure): Figure => {
  const contours = apply(
    repeated,
    {
      count: given({
        key: 'plan.contours',
        name: 'contours',
        value: plan.contours.length,
        unit: '1',
        basis: 'drawing',
        source: 'the plan',
      }),
      minutes: people('programmingContour', 'programming of one contour', rates.minutes.programmingContour),
    },
    { key: 'hours.programming-contours', name: 'programming of the contours' },
  );
  return sumOf([people('programming', 'programming of any job', rates.minutes.programming), contours], 'min', {
    key: 'hours.programming',
    name: 'programming',
  });
};
