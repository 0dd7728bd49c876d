/** Minutes of one piece: cutting by pass, threading, travel, stops; attended and unattended apart. */

import type { Machine } from '../physics/cut/machine.ts';
import { type Drilled, drillingIndexOf, feedInMaterial } from '../physics/material/hole-drilling.ts';
import { workHeight } from '../physics/work-height.ts';
import type { CutPlan } from '../plan/plan.ts';
import { type Figure, given } from '../quantity/figure.ts';
import { apply } from '../quantity/formula.ts';
import { leafOf } from '../quantity/leaf-of.ts';
import { saidBy } from '../quantity/source.ts';
import { count } from '../text/part.ts';
import { phrases, say } from '../text/say.ts';
import type { Text } from '../text/text.ts';
import type { Unit } from '../text/unit.ts';
import { cuttingMinutes, drillingMinutes, repeated, sumOf } from './formulas.ts';
import { areInvented } from './invented-rates.ts';
import type { Rates } from './rates.ts';
import type { Tally } from './tally.ts';

export interface PassTime {
  readonly pass: number;
  readonly length: Figure;
  readonly minutes: Figure;
}

/** Where the time of one run goes, and what a person gives besides; minutes. */
export interface Hours {
  readonly passes: readonly PassTime[];
  readonly threading: Figure;
  readonly travel: Figure;
  readonly stops: Figure;
  readonly drilling: Figure;
  readonly setUp: Figure;
  readonly programming: Figure;
  readonly sparking: Figure;
  /** Machine time of one piece; attended + unattended = total. */
  readonly attended: Figure;
  readonly unattended: Figure;
  readonly total: Figure;
}

/** A count or length taken from the program as read back: exact. */
export const counted = (key: string, name: Text, value: number, unit: Unit): Figure =>
  given({ key, name, value, unit, basis: 'counted', source: saidBy.programRead });

/** A value out of the shop file, or an invented one, that holds for as long as these rates do. */
export const fromShop = (rates: Rates, key: string, name: Text, value: number, unit: Unit, spread = 0): Figure => {
  const by = areInvented(rates)
    ? ({ basis: 'assumed', source: saidBy.inventedRates } as const)
    : ({ basis: 'shop', source: saidBy.shopFile } as const);
  return leafOf(rates, { key, name, value, unit, deviation: value * spread, ...by });
};

/** Minutes that people need, by the rates. */
export const minutesBy =
  (rates: Rates) =>
  (key: string, name: Text, minutes: number): Figure =>
    fromShop(rates, `shop.minutes.${key}`, name, minutes, 'min', rates.spread);

export const hoursOf = (tally: Tally, plan: CutPlan, machine: Machine, rates: Rates, material: Drilled): Hours => {
  const passes = passTimes(tally, plan);
  const people = minutesBy(rates);
  const often = (key: string, name: Text, times: number, minutes: Figure): Figure =>
    apply(
      repeated,
      { count: counted(`program.${key}`, say('estimate.how-often')`number: ${{ what: name }}`, times, '1'), minutes },
      { key: `hours.${key}`, name },
    );

  const byMachine = often(
    'threading-machine',
    names.threadingMachine,
    tally.machineThreads,
    fromShop(rates, 'machine.thread', names.machineThread, machine.threadMinutes, 'min', rates.spread),
  );
  const byHand = often(
    'threading-hand',
    names.threadingHand,
    tally.handThreads,
    people('handThread', names.handThread, rates.minutes.handThread),
  );
  const conditions = often(
    'conditions',
    names.conditions,
    tally.handConditions,
    people('condition', names.condition, rates.minutes.condition),
  );
  const pieces = often('stops-pieces', names.stopsPieces, tally.stops, people('stop', names.stop, rates.minutes.stop));
  const travel = apply(
    cuttingMinutes,
    {
      length: counted('program.travel', names.programTravel, tally.travel, 'mm'),
      feed: fromShop(rates, 'machine.travel', names.machineTravel, machine.travelFeed, 'mm/min'),
    },
    { key: 'hours.travel', name: names.hoursTravel },
  );
  const sparking = sumOf(
    passes.map((p) => p.minutes),
    'min',
    { key: 'hours.sparking', name: names.hoursSparking },
  );
  const stops = sumOf([conditions, pieces], 'min', { key: 'hours.stops', name: names.hoursStops });
  const threading = sumOf([byMachine, byHand], 'min', { key: 'hours.threading', name: names.hoursThreading });
  const watched = machine.autoThreading ? [byHand, stops] : [byHand, byMachine, stops];
  const alone = machine.autoThreading ? [sparking, travel, byMachine] : [sparking, travel];
  return {
    passes,
    threading,
    travel,
    stops,
    sparking,
    drilling: drillingOf(plan, rates, material),
    setUp: people('setUp', names.setUp, rates.minutes.setUp),
    programming: programmingOf(plan, rates, people),
    attended: sumOf(watched, 'min', { key: 'hours.attended', name: names.hoursAttended }),
    unattended: sumOf(alone, 'min', { key: 'hours.unattended', name: names.hoursUnattended }),
    total: sumOf([...alone, ...watched], 'min', { key: 'hours.total', name: names.hoursTotal }),
  };
};

const names = phrases('hours', {
  threadingMachine: say`threading by the machine`,
  machineThread: say`one threading by the machine`,
  threadingHand: say`threading by hand`,
  handThread: say`one threading by hand`,
  conditions: say`conditions set by hand`,
  condition: say`setting one condition`,
  stopsPieces: say`stops for slugs and parts`,
  stop: say`one stop`,
  programTravel: say`rapids with the wire out`,
  machineTravel: say`rapid feed`,
  hoursTravel: say`travel`,
  hoursSparking: say`cutting`,
  hoursStops: say`stops`,
  hoursThreading: say`threading`,
  setUp: say`set-up`,
  hoursAttended: say`attended machine time`,
  hoursUnattended: say`unattended machine time`,
  hoursTotal: say`machine time of one piece`,
});

const passTimes = (tally: Tally, plan: CutPlan): readonly PassTime[] =>
  plan.passes.map((pass, i) => {
    const length = counted(
      `program.pass.${pass.number}.length`,
      say('estimate.pass-length')`wire path in pass ${{ pass: count(pass.number) }}`,
      tally.lengths[i] as number,
      'mm',
    );
    return {
      pass: pass.number,
      length,
      minutes: apply(
        cuttingMinutes,
        { length, feed: pass.feed },
        { key: `hours.pass.${pass.number}`, name: say('estimate.pass-minutes')`cutting time of pass ${{ pass: count(pass.number) }}` },
      ),
    };
  });

const drillingOf = (plan: CutPlan, rates: Rates, material: Drilled): Figure => {
  const ends = (plan.openCuts ?? []).flatMap((o) => [o.from, o.to].filter((e) => e.kind === 'hole'));
  const drilled = [...plan.contours.map((c) => c.hole), ...ends].filter((h) => h.origin === 'placed');
  const holes = new Set(drilled.map(({ at }) => `${at.x} ${at.y}`)).size;
  const inputs = {
    holes: given({
      key: 'plan.holes',
      name: say('estimate.plan-holes')`start holes to drill`,
      value: holes,
      unit: '1',
      basis: 'counted',
      source: saidBy.plan,
    }),
    depth: workHeight(plan.height),
    feed: drillingFeed(rates, material),
    setting: fromShop(
      rates,
      'shop.drilling.hole',
      say('estimate.shop-drilling-hole')`set-up of one hole`,
      rates.drillingHole,
      'min',
      rates.spread,
    ),
  };
  return apply(drillingMinutes, inputs, { key: 'hours.drilling', name: say('estimate.hours-drilling')`start-hole drilling` });
};

/** As the shop says for this material, or else its feed in tool steel by what the material is against it. */
const drillingFeed = (rates: Rates, material: Drilled): Figure => {
  const name = say('estimate.shop-drilling-feed')`drilling feed`;
  const own = rates.drillingFeeds?.[material.id];
  if (own !== undefined) return fromShop(rates, `shop.drilling.feed.${material.id}`, name, own, 'mm/min', rates.spread);
  const steel = fromShop(rates, 'shop.drilling.feed', name, rates.drillingFeed, 'mm/min', rates.spread);
  const index = drillingIndexOf(material);
  return index.value === 1 ? steel : apply(feedInMaterial, { steel, index }, { key: 'drilling.feed' });
};

const programmingOf = (plan: CutPlan, rates: Rates, people: (key: string, name: Text, minutes: number) => Figure): Figure => {
  const contours = apply(
    repeated,
    {
      count: given({
        key: 'plan.contours',
        name: say('estimate.plan-contours')`contours`,
        value: plan.contours.length,
        unit: '1',
        basis: 'counted',
        source: saidBy.plan,
      }),
      minutes: people(
        'programmingContour',
        say('estimate.programming-contour')`programming of one contour`,
        rates.minutes.programmingContour,
      ),
    },
    { key: 'hours.programming-contours', name: say('estimate.hours-programming-contours')`programming of the contours` },
  );
  return sumOf([people('programming', say('estimate.programming')`programming of any job`, rates.minutes.programming), contours], 'min', {
    key: 'hours.programming',
    name: say('estimate.hours-programming')`programming`,
  });
};
