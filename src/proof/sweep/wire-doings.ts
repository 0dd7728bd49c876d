/** The wire's doings as the proof needs them: every cutting move with the radius it sweeps, the stops, and the travels between cuts. */

import type { Point, Segment } from '../../geometry/segment.ts';
import type { Dialect } from '../../nc/dialect/dialect.ts';
import type { Action } from '../../nc/read/program.ts';
import { itemAt } from '../../sequence/sequence.ts';
import { isForTheWire, type StopPurpose } from '../../text/stop-purpose.ts';
import type { Text } from '../../text/text.ts';
import type { Wanted, WantedOpen } from '../proof.ts';
import { type Energy, energyOf, type Pass, passesOf } from './energies.ts';

/** One cutting move of the wire's centre. */
export interface SweptCut {
  /** Index into the actions. */
  readonly action: number;
  readonly block: number;
  readonly segment: Segment;
  /** Half the wire and the spark gap, mm. */
  readonly radius: number;
  /** Moves of one run follow each other without a stop, a rapid, a thread or a cut of the wire between them. */
  readonly run: number;
  /** Condition or register by whose gap it cuts, 0 for none. */
  readonly setting: number;
  readonly energy: Energy;
}

export interface Stop {
  readonly action: number;
  readonly block: number;
  readonly comment: string;
  readonly said?: Text | undefined;
  readonly details?: readonly Text[] | undefined;
  readonly purpose: StopPurpose;
  /** A switch at the control decides whether the wire stops there: nothing may rest on it. */
  readonly optional: boolean;
  readonly at: Point;
  /** Cut before and after it in the list of cuts, -1 and the count of cuts where there is none. */
  readonly before: number;
  readonly after: number;
  /** A rapid stands between the cut before and the stop, or between the stop and the cut after. */
  readonly travelBefore: boolean;
  readonly travelAfter: boolean;
}

/** `'thread or not'`: a stop that does not say what it is for, where the dialect has no word to thread by; `'cut or not'` the same for cutting the wire. */
export type WireDoing = number | 'thread' | 'cut wire' | 'thread or not' | 'cut or not';

type WireAsk = 'thread or not' | 'cut or not';

/** All rapids between two cuts, with what happened to the wire on the way. */
export interface Travel {
  readonly before: number;
  readonly after: number;
  readonly rapids: readonly { readonly action: number; readonly block: number; readonly segment: Segment }[];
  /** In order: what is done to the wire, each rapid by its number in `rapids`, and stops for anything. */
  readonly doings: readonly WireDoing[];
  /** The program cuts the wire, by a word or a stop that says so, on the way or before it. */
  readonly wireCut: boolean;
}

export interface Trace {
  readonly cuts: readonly SweptCut[];
  readonly stops: readonly Stop[];
  readonly travels: readonly Travel[];
  /** Of the set-up, else of the program. */
  readonly passes: readonly Pass[];
  /** What is done to the wire behind the last cut. */
  readonly atEnd: readonly WireDoing[];
  /** Cuts for which neither condition nor register gives a gap: their actions. */
  readonly withoutGap: readonly number[];
}

export interface Gaps {
  readonly wireDiameter: number;
  /** mm by condition, or by register where the program chooses no condition. */
  readonly gaps: ReadonlyMap<number, number>;
  readonly passes?: readonly number[] | undefined;
  readonly wanted?: readonly Wanted[] | undefined;
  readonly wantedOpen?: readonly WantedOpen[] | undefined;
  readonly dialect: { readonly words: Pick<Dialect['words'], 'thread' | 'cutWire'> };
}

export const traceOf = (actions: readonly Action[], gaps: Gaps): Trace => {
  const numbers = gapNumbers(actions, gaps.gaps);
  const swept: Omit<SweptCut, 'energy'>[] = [];
  const withoutGap: number[] = [];
  let run = 0;
  let running = false;
  actions.forEach((action, i) => {
    if (action.kind !== 'move') {
      if (action.kind !== 'word' && action.kind !== 'condition') running = false;
      return;
    }
    if (action.rapid) {
      running = false;
      return;
    }
    if (!running) run += 1;
    running = true;
    const gap = gaps.gaps.get(numbers[i] ?? Number.NaN);
    if (gap === undefined) withoutGap.push(i);
    swept.push({
      action: i,
      block: action.block,
      segment: action.centre,
      radius: gaps.wireDiameter / 2 + (gap ?? 0),
      run,
      setting: numbers[i] ?? 0,
    });
  });
  const passes = passesOf(swept, gaps);
  const cuts = swept.map((cut) => ({ ...cut, energy: energyOf(cut, passes) }));
  return {
    cuts,
    stops: stopsOf(actions, cuts),
    travels: travelsOf(actions, cuts, asksOf(gaps)),
    atEnd: travelOf(actions, (cuts.at(-1)?.action ?? -1) + 1, actions.length, cuts.length - 1, asksOf(gaps)).doings,
    withoutGap,
    passes,
  };
};

/**
 * The condition of each cutting move, or its register. A move that has neither (on the way in before compensation, or on the way
 * out behind it) is cut with the energy of its neighbours in the run: the register before it, else the one behind it. A
 * single known gap needs no number at all.
 */
const gapNumbers = (actions: readonly Action[], gaps: ReadonlyMap<number, number>): readonly (number | undefined)[] => {
  const only = gaps.size === 1 ? [...gaps.keys()][0] : undefined;
  const numbers = actions.map((a) => (a.kind === 'move' && !a.rapid ? (a.condition ?? a.register ?? only) : undefined));
  const fill = (from: number, to: number, step: number): void => {
    let known: number | undefined;
    for (let i = from; i !== to; i += step) {
      const a = itemAt(actions, i);
      if (a.kind === 'move' && a.rapid) known = undefined;
      else if (a.kind === 'move') {
        numbers[i] ??= known;
        known = numbers[i];
      }
    }
  };
  fill(0, actions.length, 1);
  fill(actions.length - 1, -1, -1);
  return numbers;
};

const stopsOf = (actions: readonly Action[], cuts: readonly SweptCut[]): readonly Stop[] => {
  const stops: { action: number; before: number; at: Point; travelBefore: boolean }[] = [];
  const travelAfter = new Set<number>();
  let at: Point = { x: 0, y: 0 };
  let cut = -1;
  let travelled = true;
  let pending: number[] = [];
  actions.forEach((a, i) => {
    if (a.kind === 'stop') {
      pending.push(stops.length);
      stops.push({ action: i, before: cut, at, travelBefore: travelled });
    }
    if (a.kind !== 'move') return;
    at = a.centre.to;
    travelled = a.rapid;
    if (a.rapid) for (const s of pending) travelAfter.add(s);
    else cut += 1;
    if (!a.rapid) pending = [];
  });
  for (const s of pending) travelAfter.add(s);
  return stops.map((s, n) => {
    const a = itemAt(actions, s.action);
    const { comment, said, details, purpose, optional } = a.kind === 'stop' ? a : NO_STOP;
    return {
      ...s,
      block: a.block,
      comment,
      said,
      details,
      purpose,
      optional,
      after: Math.min(s.before + 1, cuts.length),
      travelAfter: travelAfter.has(n),
    };
  });
};

const NO_STOP = { comment: '', said: undefined, details: undefined, purpose: 'other', optional: false } as const;

/** At which a piece may be secured or taken out. */
export const tendsToWork = ({ purpose, optional }: Stop): boolean => !optional && !isForTheWire(purpose);

/** What a stop that does not say what it is for may ask of the operator: only what the dialect has no word for. */
const asksOf = ({ dialect: { words } }: Pick<Gaps, 'dialect'>): readonly WireAsk[] => [
  ...(words.thread === undefined ? ['thread or not' as const] : []),
  ...(words.cutWire === undefined ? ['cut or not' as const] : []),
];

/** A stop that may not stop does nothing. */
const doingsAt = (a: Action, asks: readonly WireAsk[]): readonly Exclude<WireDoing, number>[] => {
  if (a.kind === 'thread' || a.kind === 'cut wire') return [a.kind];
  if (a.kind !== 'stop' || a.optional) return [];
  if (a.purpose === 'cut the wire') return ['cut wire'];
  if (a.purpose === 'thread') return ['thread'];
  return isForTheWire(a.purpose) ? [] : asks;
};

/** What one action does to the wire. */
export const doingsOf = (a: Action, question: Pick<Gaps, 'dialect'>): readonly Exclude<WireDoing, number>[] =>
  doingsAt(a, asksOf(question));

const travelsOf = (actions: readonly Action[], cuts: readonly SweptCut[], asks: readonly WireAsk[]): readonly Travel[] => {
  const travels: Travel[] = [];
  let start = 0;
  for (let c = 0; c <= cuts.length; c += 1) {
    const end = c < cuts.length ? itemAt(cuts, c).action : actions.length;
    if (end > start) travels.push(travelOf(actions, start, end, c - 1, asks));
    start = end + 1;
  }
  return travels.filter((t) => t.rapids.length > 0 || t.wireCut);
};

const travelOf = (actions: readonly Action[], start: number, end: number, before: number, asks: readonly WireAsk[]): Travel => {
  const rapids: { action: number; block: number; segment: Segment }[] = [];
  const doings: WireDoing[] = [];
  let wireCut = false;
  for (let i = start; i < end; i += 1) {
    const a = itemAt(actions, i);
    if (a.kind === 'move') {
      doings.push(rapids.length);
      rapids.push({ action: i, block: a.block, segment: a.centre });
    }
    const here = doingsAt(a, asks);
    if (here.includes('cut wire')) wireCut = true;
    doings.push(...here);
  }
  return { before, after: before + 1, rapids, doings, wireCut };
};
