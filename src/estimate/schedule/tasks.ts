/** What the machine and its people do for one piece, in order, each with its minutes: taken from the program as read back. */

import { lengthOf } from '../../geometry/measure.ts';
import type { Action, ReadProgram } from '../../nc/read/program.ts';
import type { StopSaid } from '../../nc/read/stop-purpose.ts';
import type { Machine } from '../../physics/cut/machine.ts';
import type { Pass } from '../../plan/plan.ts';
import type { Finding } from '../../text/finding.ts';
import { count, name } from '../../text/part.ts';
import { only, phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import type { Rates } from '../rates.ts';
import { kindOfStop, passOf, unknownPass } from '../tally.ts';

export type TaskKind = 'cutting' | 'stop' | 'threading' | 'travel' | 'spool change' | 'loading';

export interface Task {
  readonly kind: TaskKind;
  readonly minutes: number;
  /** What is done; at a stop of a program by others its comment. */
  readonly what: Text;
  /** The pass that cuts. */
  readonly pass?: number | undefined;
  readonly needsPerson: boolean;
  /** Block of the program it begins with; none for what no program says. */
  readonly block?: number | undefined;
  readonly stop?: StopOfTask | undefined;
}

/** What the program stops for, at which contour, and what its comment says. */
export interface StopOfTask extends StopSaid {
  readonly comment: string;
}

export type Tasks = { readonly kind: 'tasks'; readonly tasks: readonly Task[] } | { readonly kind: 'refused'; readonly finding: Finding };

export interface TasksQuestion {
  readonly program: ReadProgram;
  readonly passes: readonly Pass[];
  readonly machine: Machine;
  readonly minutes: Rates['minutes'];
}

/** Moves of one pass that follow each other are one task. Refused when the program cuts with a pass nobody planned. */
export const tasksOf = (question: TasksQuestion): Tasks => {
  const tasks: Task[] = [];
  let run: { kind: 'cutting' | 'travel'; pass: number; minutes: number; block: number } | undefined;
  const close = (): void => {
    if (run !== undefined && run.minutes > 0) tasks.push(moved(run.kind, run.pass, run.minutes, run.block));
    run = undefined;
  };
  for (const action of question.program.actions) {
    if (action.kind === 'move') {
      const pass = action.rapid ? undefined : passOf(action, question.passes);
      if (!action.rapid && pass === undefined) return { kind: 'refused', finding: unknownPass(question.program, action) };
      const kind = pass === undefined ? 'travel' : 'cutting';
      const number = pass?.number ?? 0;
      const minutes = lengthOf(action.centre) / (pass?.feed.value ?? question.machine.travelFeed);
      if (run?.kind === kind && run.pass === number) run.minutes += minutes;
      else {
        close();
        run = { kind, pass: number, minutes, block: action.block };
      }
    } else {
      const task = taskFor(action, question);
      if (task === undefined) continue;
      close();
      tasks.push(task);
    }
  }
  close();
  return { kind: 'tasks', tasks };
};

export const words = phrases('schedule', {
  travel: say`rapid, wire out`,
  pass: (pass: number) => say`pass ${{ pass: count(pass) }}`,
  thread: say`thread the wire`,
  load: (piece: number) => say`load piece ${{ piece: count(piece) }}`,
  spool: say`fit a full spool and rethread`,
  start: say`start the program`,
});

const moved = (kind: 'cutting' | 'travel', pass: number, minutes: number, block: number): Task => ({
  kind,
  minutes,
  ...(kind === 'travel' ? { what: words.travel } : { what: words.pass(pass), pass }),
  needsPerson: false,
  block,
});

/** None for what takes no time worth counting. */
const taskFor = (action: Exclude<Action, { kind: 'move' }>, { machine, minutes }: TasksQuestion): Task | undefined => {
  const { block } = action;
  if (action.kind === 'thread')
    return { kind: 'threading', minutes: machine.threadMinutes, what: words.thread, needsPerson: !machine.autoThreading, block };
  if (action.kind !== 'stop') return undefined;
  const { comment, said = only(name(comment)), purpose, loop } = action;
  const kind = kindOfStop(purpose);
  const asked = { what: said, needsPerson: true, block, stop: { purpose, loop, comment } };
  if (kind === 'handThreads') return { kind: 'threading', minutes: minutes.handThread, ...asked };
  return { kind: 'stop', minutes: kind === 'handConditions' ? minutes.condition : minutes.stop, ...asked };
};
