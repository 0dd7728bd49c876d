/** Each opening to the end, or all roughs first: which of the two a programmer would run, and why. */
import type { Clock } from '../../estimate/clock/clock.ts';
import { printMoment } from '../../estimate/clock/moment.ts';
import type { Rates } from '../../estimate/rates.ts';
import type { Family, Material } from '../../physics/material/material.ts';
import type { CutPlan } from '../../plan/plan.ts';
import { printDuration } from '../../text/print/duration.ts';
import { printNumber } from '../../text/print/figure.ts';
import type { Job } from '../job.ts';

export type RunKind = Job['run'];

/** The same job as one of the two runs. */
export interface RunOption {
  readonly plan: CutPlan;
  readonly clock: Clock;
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
  readonly sentence: string;
  /** Minor money units of people at the machine and of the machine taken up, waiting included, for all pieces laid on the clock. */
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
    return { kind: 'stress', run, costs, sentence: `${WORDS[run]}: ${moving}. That ${comparison(options, run)}.` };
  }
  const alike = Math.abs(costs.attended - costs['unattended first']) <= ALIKE * Math.max(costs.attended, costs['unattended first']);
  const run = alike ? fewerThreadings(options) : costs.attended <= costs['unattended first'] ? 'attended' : 'unattended first';
  const reason = alike ? 'both cost about the same, and every threading can fail' : 'people and machine together cost less';
  return { kind: alike ? 'alike' : 'cheaper', run, costs, sentence: `${WORDS[run]}: ${reason}. It ${comparison(options, run)}.` };
};

const WORDS: Readonly<Record<RunKind, string>> = {
  attended: 'Cut each opening to the end',
  'unattended first': 'Cut all roughs first',
};

const fewerThreadings = (options: RunQuestion['options']): RunKind =>
  options['unattended first'].clock.totals.threadings < options.attended.clock.totals.threadings ? 'unattended first' : 'attended';

const costOf = (run: RunKind, { options, rates }: RunQuestion): number => {
  const { attended, total } = options[run].clock.totals;
  return (attended * rates.labourHour + total * rates.machineHour) / 60;
};

/** Rough everything before finishing anything, where several openings set stress free and the tolerance would show it. */
const whyItMoves = ({ options, material, tolerance }: RunQuestion): string | undefined => {
  const { plan } = options['unattended first'];
  const openings = plan.contours.filter((c) => c.kept === 'die').length;
  if (openings < 2 || plan.passes.length < 2 || tolerance > NOTICED || !HOLDS_STRESS.has(material.family)) return undefined;
  return `the block of ${material.name} may move when ${openings} openings come out of it, and ±${printNumber(tolerance)} mm would show it`;
};

/** What the run takes against the other, as far as they differ. */
const comparison = (options: RunQuestion['options'], run: RunKind): string => {
  const [one, other] = [options[run].clock, options[run === 'attended' ? 'unattended first' : 'attended'].clock];
  const minutes = (words: string, key: 'attended' | 'waiting'): string => {
    const [a, b] = [printDuration(Math.round(one.totals[key])), printDuration(Math.round(other.totals[key]))];
    return a === b ? `${words} ${a} either way` : `${words} ${a} instead of ${b}`;
  };
  const parts = [
    minutes('needs somebody for', 'attended'),
    ...(one.totals.waiting + other.totals.waiting < 1 ? [] : [minutes('waits', 'waiting')]),
    one.totals.threadings === other.totals.threadings
      ? `threads ${times(one.totals.threadings)} either way`
      : `threads ${times(one.totals.threadings)} instead of ${times(other.totals.threadings)}`,
  ];
  const [done, otherwise] = [printMoment(one.finish), printMoment(other.finish)];
  return `${parts.join(', ')}, and is done ${done}${done === otherwise ? ' as well' : ` instead of ${otherwise}`}`;
};

const times = (count: number): string => (count === 1 ? 'once' : `${count} times`);
