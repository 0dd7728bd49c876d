/** The run of a job on the shop's clock: what happens when, who must be there, and how long the machine waits for somebody. */
import { atField, type Finding } from '../../text/finding.ts';
import type { Moment } from '../../text/moment.ts';
import { say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { find } from '../findings.ts';
import { type Sequence, type SequenceQuestion, sequenceOf, type Turn, turnsInARow } from './sequence.ts';
import { attendedBetween, type Calendar, calendarOf, isAttended, nextAttended, nightsBetween, type Shift } from './shifts.ts';
import { type StopOfTask, type Task, type TaskKind, type TasksQuestion, tasksOf, words } from './tasks.ts';

export interface ScheduleQuestion extends TasksQuestion, SequenceQuestion {
  readonly shifts: readonly Shift[];
  /** The moment at which the program could be started; where nobody is there, it waits for somebody. */
  readonly start: Moment;
  /** One standard deviation of the cutting times, as a share; none when left out. */
  readonly spread?: number;
}

/** One thing that happens. The next one begins when it ends. */
export interface ScheduleEvent {
  readonly kind: TaskKind | 'waiting for a person';
  readonly from: Moment;
  readonly to: Moment;
  /** What is done; at a stop of a program by others its comment. */
  readonly what: Text;
  /** The pass that cuts. */
  readonly pass?: number | undefined;
  readonly needsPerson: boolean;
  /** Begins when nobody is there. */
  readonly atNight: boolean;
  readonly piece: number;
  /** Block of the program it begins with; none for what no program says. */
  readonly block?: number | undefined;
  /** None for what is no stop of the program. */
  readonly stop?: StopOfTask | undefined;
}

/** Minutes. busy + waiting = total, attended + unattended = total. */
export interface ScheduleTotals {
  readonly total: number;
  /** The machine cuts, travels, threads or is being tended. */
  readonly busy: number;
  /** Somebody is needed and nobody there. */
  readonly waiting: number;
  /** Somebody is at the machine. */
  readonly attended: number;
  readonly unattended: number;
  readonly cutting: number;
  /** Of the cutting, what falls outside the shifts. */
  readonly cuttingAtNight: number;
  /** How often the wire is threaded, spool changes included. */
  readonly threadings: number;
}

export interface Schedule {
  readonly start: Moment;
  readonly finish: Moment;
  /** Between which the finish lies when cutting is faster or slower by one standard deviation. */
  readonly early: Moment;
  readonly late: Moment;
  /** The first events in order; `left` more follow. */
  readonly events: readonly ScheduleEvent[];
  readonly left: number;
  /** Each spool that runs out: when, whether nobody is there then, and the last moment before at which somebody was at the machine. */
  readonly spools: readonly SpoolEnd[];
  readonly totals: ScheduleTotals;
  /** Stretches of the run outside the shifts, the first of them. */
  readonly nights: readonly { readonly from: Moment; readonly to: Moment }[];
  readonly pieces: { readonly laid: number; readonly asked: number };
}

export interface SpoolEnd {
  readonly at: Moment;
  readonly atNight: boolean;
  readonly changed: Moment;
  readonly before: Moment;
}

export type LaidSchedule =
  | { readonly kind: 'schedule'; readonly schedule: Schedule }
  /** The shop has no shift in which a person could come. */
  | { readonly kind: 'nobody comes'; readonly finding: Finding }
  | { readonly kind: 'refused'; readonly finding: Finding };

const MOST_EVENTS = 20_000;
const MOST_NIGHTS = 60;

/**
 * Lays a program on the schedule. A task for a person begins only within a shift and is then finished, even past its end; all else
 * goes on day and night. Nothing happens at the same time as anything else.
 */
export const laySchedule = (question: ScheduleQuestion): LaidSchedule => {
  const prepared = prepareSchedule(question);
  if (prepared.kind !== 'ready') return prepared;
  const { sequence, calendar, tasks } = prepared;
  const laid = lay(sequence.turns, question.start, calendar);
  const ends = [laid.finish, ...otherEnds(tasks, question, sequence.pieces, calendar)];
  return {
    kind: 'schedule',
    schedule: {
      start: question.start,
      early: Math.min(...ends),
      late: Math.max(...ends),
      ...laid,
      nights: nightsBetween(calendar, question.start, laid.finish, MOST_NIGHTS),
      pieces: { laid: sequence.pieces, asked: question.quantity },
    },
  };
};

/** Where cutting is faster and slower. A spool that ends elsewhere may turn the two about: slower can be done sooner. */
const otherEnds = (tasks: readonly Task[], question: ScheduleQuestion, quantity: number, calendar: Calendar): readonly Moment[] => {
  const spread = Math.min(question.spread ?? 0, 0.9);
  if (spread === 0) return [];
  return [1 - spread, 1 + spread].map(
    (factor) => runThrough(turnsInARow(tasks, { ...question, quantity }, factor), question.start, calendar).finish,
  );
};

type Prepared =
  | {
      readonly kind: 'ready';
      readonly sequence: Sequence;
      readonly calendar: Calendar;
      readonly tasks: readonly Task[];
    }
  | Exclude<LaidSchedule, { kind: 'schedule' }>;

/** What does not depend on the start. */
export const prepareSchedule = (question: ScheduleQuestion, most?: number): Prepared => {
  const calendar = calendarOf(question.shifts);
  if (calendar.perWeek === 0) return { kind: 'nobody comes', finding: nobodyComes() };
  const found = tasksOf(question);
  if (found.kind === 'refused') return found;
  return { kind: 'ready', sequence: sequenceOf(found.tasks, question, 1, most), calendar, tasks: found.tasks };
};

const nobodyComes = (): Finding =>
  find('nobody-comes', say`The shop has no shift in which the machine could be started: the run cannot be scheduled.`, {
    place: atField('shifts'),
    remedy: say`Give the shop file at least one shift, or leave shifts out for Monday to Friday, 07:00 to 16:00.`,
  });

/** Told of each event as it is laid. */
type Listener = (turn: Turn, begin: Moment, from: Moment) => void;

export interface RunThrough {
  readonly finish: Moment;
  readonly waiting: number;
  readonly cuttingAtNight: number;
}

/** Goes through the turns from a start: each begins when the one before ends and, where it needs somebody, somebody is there. */
export const runThrough = (turns: Iterable<Turn>, start: Moment, calendar: Calendar, tell?: Listener): RunThrough => {
  // Whoever starts the program must be there, whatever comes first in it.
  let at = nextAttended(calendar, start);
  let waiting = at - start;
  let cuttingAtNight = 0;
  for (const turn of turns) {
    const from = turn.needsPerson ? nextAttended(calendar, at) : at;
    waiting += from - at;
    const to = from + turn.minutes;
    if (turn.kind === 'cutting') cuttingAtNight += turn.minutes - attendedBetween(calendar, from, to);
    tell?.(turn, at, from);
    at = to;
  }
  return { finish: at, waiting, cuttingAtNight: Math.max(0, cuttingAtNight) };
};

type About = Pick<Turn, 'what' | 'pass' | 'piece' | 'block' | 'stop'>;

type Laid = Pick<Schedule, 'finish' | 'events' | 'left' | 'spools' | 'totals'>;

const lay = (turns: readonly Turn[], start: Moment, calendar: Calendar): Laid => {
  const events: ScheduleEvent[] = [];
  const spools: SpoolEnd[] = [];
  let [left, before] = [0, start];
  const sums = { attended: 0, unattended: 0, cutting: 0, threadings: 0 };
  const put = (kind: ScheduleEvent['kind'], from: Moment, to: Moment, turn: About, needsPerson: boolean): void => {
    sums[needsPerson ? 'attended' : 'unattended'] += to - from;
    if (events.length >= MOST_EVENTS) left += 1;
    else {
      const { what, pass, piece, block, stop } = turn;
      events.push({ kind, from, to, what, needsPerson, atNight: !isAttended(calendar, from), piece, block, stop, pass });
    }
  };
  const wait = (from: Moment, to: Moment, turn: About): void => {
    if (to > from) put('waiting for a person', from, to, turn, false);
  };
  wait(start, nextAttended(calendar, start), { what: words.start, piece: 1 });
  const through = runThrough(turns, start, calendar, (turn, begin, from) => {
    wait(begin, from, turn);
    put(turn.kind, from, from + turn.minutes, turn, turn.needsPerson);
    if (turn.kind === 'cutting') sums.cutting += turn.minutes;
    if (turn.kind === 'threading' || turn.kind === 'spool change') sums.threadings += 1;
    if (turn.kind === 'spool change') spools.push({ at: begin, atNight: !isAttended(calendar, begin), changed: from, before });
    if (turn.needsPerson) before = from;
  });
  const total = through.finish - start;
  const totals = { total, busy: total - through.waiting, waiting: through.waiting, ...sums, cuttingAtNight: through.cuttingAtNight };
  return { finish: through.finish, events, left, spools, totals };
};
