/** Each opening to the end, or all roughs first: which of the two a programmer would run, and why. */

import type { Rates } from '../../estimate/rates.ts';
import type { Schedule } from '../../estimate/schedule/schedule.ts';
import type { Family, Material } from '../../physics/material/material.ts';
import type { CutPlan } from '../../plan/plan.ts';
import { count, duration, limit, list, moment, name } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import type { Job } from '../job.ts';

export type RunKind = Job['run'];

/** The same job as one of the two runs. */
export interface RunOption {
  readonly plan: CutPlan;
  readonly schedule: Schedule;
}

export interface RunQuestion {
  readonly options: Readonly<Record<RunKind, RunOption>>;
  readonly material: Material;
  /** Profile tolerance either side, mm. */
  readonly tolerance: number;
  readonly rates: Pick<Rates, 'machineHour' | 'labourHour'>;
}

/**
 * `stress`: the block may move, which outweighs hours. `cheaper`: people and machine together cost less. `alike`: they cost the
 * same within a fiftieth, so that the run with fewer threadings is taken.
 */
export interface RunAdvice {
  readonly kind: 'stress' | 'cheaper' | 'alike';
  readonly run: RunKind;
  readonly sentence: Text;
  /** Minor money units of people at the machine and of the machine taken up, waiting included, for all pieces scheduled. */
  readonly costs: Readonly<Record<RunKind, number>>;
}

/** Runs whose costs differ by a smaller share are alike. */
const ALIKE = 0.02;
/** Common practice, no source: below this tolerance either side, mm, a block that moves is noticed. */
const NOTICED = 0.01;
/** Common practice, no source: rolled, forged or hardened metals hold stress that cutting sets free; sintered and brittle ones hardly. */
const HOLDS_STRESS: ReadonlySet<Family> = new Set(['tool steel', 'steel', 'stainless', 'aluminium', 'titanium', 'nickel alloy']);

export const recommendRun = (question: RunQuestion): RunAdvice => {
  const { options } = question;
  const costs = { attended: costOf('attended', question), 'unattended first': costOf('unattended first', question) };
  const moving = whyItMoves(question);
  if (moving !== undefined) {
    const run = 'unattended first';
    return { kind: 'stress', run, costs, sentence: words.stress(runs[run], moving, comparison(options, run)) };
  }
  const alike = Math.abs(costs.attended - costs['unattended first']) <= ALIKE * Math.max(costs.attended, costs['unattended first']);
  const run = alike ? fewerThreadings(options) : costs.attended <= costs['unattended first'] ? 'attended' : 'unattended first';
  const sentence = (alike ? words.alike : words.cheaper)(runs[run], comparison(options, run));
  return { kind: alike ? 'alike' : 'cheaper', run, costs, sentence };
};

const runs: Readonly<Record<RunKind, Text>> = phrases('run-advice-run', {
  attended: say`Finish each opening in turn`,
  'unattended first': say`Rough all first`,
});

const fewerThreadings = (options: RunQuestion['options']): RunKind =>
  options['unattended first'].schedule.totals.threadings < options.attended.schedule.totals.threadings ? 'unattended first' : 'attended';

const costOf = (run: RunKind, { options, rates }: RunQuestion): number => {
  const { attended, total } = options[run].schedule.totals;
  return (attended * rates.labourHour + total * rates.machineHour) / 60;
};

/** Rough everything before finishing anything, where several openings set stress free and the tolerance would show it. */
const whyItMoves = ({ options, material, tolerance }: RunQuestion): Text | undefined => {
  const { plan } = options['unattended first'];
  const openings = plan.contours.filter((c) => c.kept === 'die').length;
  if (openings < 2 || plan.passes.length < 2 || tolerance > NOTICED || !HOLDS_STRESS.has(material.family)) return undefined;
  return words.moves(material, openings, tolerance);
};

/** What the run takes against the other, as far as they differ. */
const comparison = (options: RunQuestion['options'], run: RunKind): Text => {
  const [one, other] = [options[run].schedule, options[run === 'attended' ? 'unattended first' : 'attended'].schedule];
  const [needs, otherNeeds] = [Math.round(one.totals.attended), Math.round(other.totals.attended)];
  const [waits, otherWaits] = [Math.round(one.totals.waiting), Math.round(other.totals.waiting)];
  const [threads, otherThreads] = [one.totals.threadings, other.totals.threadings];
  const parts = [
    needs === otherNeeds ? words.needsAlike(needs) : words.needs(needs, otherNeeds),
    one.totals.waiting + other.totals.waiting < 1 ? [] : [waits === otherWaits ? words.waitsAlike(waits) : words.waits(waits, otherWaits)],
    threads === otherThreads ? words.threadsAlike(times(threads)) : words.threads(times(threads), times(otherThreads)),
  ].flat();
  const [done, otherDone] = [Math.round(one.finish), Math.round(other.finish)];
  return done === otherDone ? words.doneAlike(parts, done) : words.done(parts, done, otherDone);
};

const times = (threadings: number): Text => (threadings === 1 ? words.once : words.times(threadings));

const words = phrases('run-advice', {
  stress: (run: Text, moving: Text, comparison: Text) => say`${{ run }}: ${{ moving }}. That ${{ comparison }}.`,
  alike: (run: Text, comparison: Text) => say`${{ run }}: both cost about the same, and every threading is a risk. It ${{ comparison }}.`,
  cheaper: (run: Text, comparison: Text) => say`${{ run }}: attendance and machine together cost less. It ${{ comparison }}.`,
  moves: (material: Material, openings: number, tolerance: number) =>
    say`the ${{ material: name(material.name) }} block may move when ${{ openings: count(openings, 'opening') }} are cut out of it, and ${{ tolerance: limit(tolerance) }} would show it`,
  needsAlike: (minutes: number) => say`needs ${{ time: duration(minutes) }} of attendance either way`,
  needs: (minutes: number, other: number) =>
    say`needs ${{ time: duration(minutes) }} of attendance instead of ${{ other: duration(other) }}`,
  waitsAlike: (minutes: number) => say`waits ${{ time: duration(minutes) }} either way`,
  waits: (minutes: number, other: number) => say`waits ${{ time: duration(minutes) }} instead of ${{ other: duration(other) }}`,
  threadsAlike: (often: Text) => say`threads ${{ often }} either way`,
  threads: (often: Text, other: Text) => say`threads ${{ often }} instead of ${{ other }}`,
  once: say`once`,
  times: (threadings: number) => say`${{ threadings: count(threadings) }} times`,
  doneAlike: (parts: readonly Text[], done: number) => say`${{ parts: list(parts) }}, and finishes ${{ done: moment(done) }} as well`,
  done: (parts: readonly Text[], done: number, other: number) =>
    say`${{ parts: list(parts) }}, and finishes ${{ done: moment(done) }} instead of ${{ other: moment(other) }}`,
});
