/** Proposes when to start, and which of several programs to run, so that most of the cutting falls into hours in which nobody is there. */
import { firstItem } from '../../sequence/sequence.ts';
import { atField, type Finding } from '../../text/finding.ts';
import type { Moment } from '../../text/moment.ts';
import { duration, moment } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { find } from '../findings.ts';
import { type LaidSchedule, prepareSchedule, type RunThrough, runThrough, type ScheduleQuestion } from './schedule.ts';
import type { Turn } from './sequence.ts';
import { type Calendar, isAttended } from './shifts.ts';

/** Starts that come into question; the first of them is `from`, which stands for starting at once. */
export interface Window {
  readonly from: Moment;
  readonly to: Moment;
  /** Minutes by which the end may come later than with a start at once; as late as it likes when left out. */
  readonly later?: number;
}

/** `most at night`: the most cutting outside the shifts, then the earliest finish. `ends soonest`: the other way round. */
export type Aim = 'most at night' | 'ends soonest';

/** A program that could be run: its name is given back with the proposal. */
export interface Candidate<Name extends string = string> {
  readonly name: Name;
  readonly question: ScheduleQuestion;
}

export interface Start<Name extends string = string> extends RunThrough {
  readonly name: Name;
  readonly at: Moment;
}

export type BestStart<Name extends string = string> =
  /** `kind` says whether the first candidate, started at once, is already the best. */
  | { readonly kind: 'at once' | 'another'; readonly best: Start<Name>; readonly atOnce: Start<Name> }
  | Exclude<LaidSchedule, { kind: 'schedule' }>;

/** Starts are proposed on the quarter hour: nobody plans a shop to the minute. */
const STEP = 15;
/** Turns gone through for all starts together; where there are many turns fewer starts are tried. */
const WORK = 20_000;

/** Never worse than the first candidate started at once, by the aim. */
export const bestStart = <Name extends string>(
  candidates: readonly [Candidate<Name>, ...Candidate<Name>[]],
  window: Window,
  aim: Aim = 'most at night',
): BestStart<Name> => {
  const starts: Start<Name>[] = [];
  for (const { name, question } of alike(candidates)) {
    const prepared = prepareSchedule(question, WORK);
    if (prepared.kind !== 'ready') return prepared;
    const { sequence, calendar } = prepared;
    for (const at of startsIn(window, calendar, sequence.turns)) starts.push({ name, at, ...runThrough(sequence.turns, at, calendar) });
  }
  const atOnce = firstItem(starts);
  const latest = atOnce.finish + (window.later ?? Number.POSITIVE_INFINITY);
  const best = starts.filter((s) => s.finish <= latest).reduce((one, other) => (isBetter(other, one, aim) ? other : one));
  return { kind: best === atOnce ? 'at once' : 'another', best, atOnce };
};

/** All with as many pieces as each of them can be laid out with. */
const alike = <Name extends string>(candidates: readonly Candidate<Name>[]): readonly Candidate<Name>[] => {
  const pieces = candidates.map(({ question }) => {
    const prepared = prepareSchedule(question, WORK);
    return prepared.kind === 'ready' ? prepared.sequence.pieces : question.quantity;
  });
  return candidates.map(({ name, question }) => ({ name, question: { ...question, quantity: Math.min(...pieces) } }));
};

/** At once, and every quarter of an hour at which somebody is there. */
const startsIn = ({ from, to }: Window, calendar: Calendar, turns: readonly Turn[]): readonly Moment[] => {
  const starts = [from];
  const affordable = Math.max(8, Math.floor(WORK / (turns.length + 1)));
  const step = STEP * Math.ceil((to - from) / STEP / affordable);
  for (let at = Math.ceil((from + LEAST) / STEP) * STEP; at <= to && step > 0; at += step) if (isAttended(calendar, at)) starts.push(at);
  return starts;
};
const LEAST = 1e-6;

/** In whole minutes, so that rounding decides nothing and no two starts are each better than the other. */
const isBetter = (one: RunThrough, other: RunThrough, aim: Aim): boolean => {
  const night = Math.round(one.cuttingAtNight) - Math.round(other.cuttingAtNight);
  const sooner = Math.round(other.finish) - Math.round(one.finish);
  const gains = aim === 'most at night' ? [night, sooner] : [sooner, night];
  return ([...gains, Math.round(other.waiting) - Math.round(one.waiting)].find((gain) => gain !== 0) ?? 0) > 0;
};

/** A note where another start brings at least so much more of the cutting into the night, minutes. */
const WORTH = 60;

/** Tells of a better start, where it is worth a word. */
export const startFindings = (proposal: BestStart): readonly Finding[] =>
  proposal.kind === 'another' && proposal.best.cuttingAtNight - proposal.atOnce.cuttingAtNight >= WORTH
    ? [
        find('better-start', better(proposal.best, proposal.atOnce), {
          place: atField('startAt'),
          remedy: say`Start then, unless the machine is needed for another job that night.`,
        }),
      ]
    : [];

const better = (best: Start, atOnce: Start): Text => {
  const [start, finish, night, instead] = [moment(best.at), moment(best.finish), atNight(best), atNight(atOnce)];
  const end = Math.round(atOnce.finish) === Math.round(best.finish) ? words.asSoon : words.insteadOf(atOnce.finish);
  return say(
    'better-start',
  )`Started ${{ start }}, ${{ night }} of the cutting runs outside the shifts, instead of ${{ instead }}; it finishes ${{ finish }}, ${{ end }}.`;
};

const words = phrases('better-start-end', {
  asSoon: say`as soon as with a start at once`,
  insteadOf: (finish: Moment) => say`instead of ${{ finish: moment(finish) }}`,
});

const atNight = ({ cuttingAtNight }: RunThrough) => duration(Math.round(cuttingAtNight));
