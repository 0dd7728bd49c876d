/** What a program makes the machine do, counted from its actions as read back: lengths by pass, stops, threadings, travel. */

import { lengthOf } from '../geometry/measure.ts';
import type { Action, ReadProgram } from '../nc/read/program.ts';
import type { Pass } from '../plan/plan.ts';
import type { Finding } from '../text/finding.ts';
import { count } from '../text/part.ts';
import { say } from '../text/say.ts';
import type { StopPurpose } from '../text/stop-purpose.ts';
import { find } from './findings.ts';

export interface Tally {
  /** Length of the wire's path in each pass, mm; same order as the passes. */
  readonly lengths: readonly number[];
  /** Travel without the wire, mm. */
  readonly travel: number;
  readonly machineThreads: number;
  readonly handThreads: number;
  /** Conditions set by hand at a stop. */
  readonly handConditions: number;
  /** Stops at which a slug or part is secured or taken out, and every other stop. */
  readonly stops: number;
}

export type Tallied = { readonly kind: 'tally'; readonly tally: Tally } | { readonly kind: 'unknown pass'; readonly finding: Finding };

/** Counts a program. A cutting move whose condition or register belongs to no pass is an error that names its block. */
export const tallyOf = (program: ReadProgram, passes: readonly Pass[]): Tallied => {
  const lengths = passes.map(() => 0);
  const counts = { travel: 0, machineThreads: 0, handThreads: 0, handConditions: 0, stops: 0 };
  for (const action of program.actions) {
    if (action.kind === 'move' && action.rapid) counts.travel += lengthOf(action.centre);
    else if (action.kind === 'move') {
      const pass = passOf(action, passes);
      if (pass === undefined) return { kind: 'unknown pass', finding: unknownPass(program, action) };
      const index = passes.indexOf(pass);
      lengths[index] = (lengths[index] as number) + lengthOf(action.centre);
    } else if (action.kind === 'thread') counts.machineThreads += 1;
    else if (action.kind === 'stop') counts[kindOfStop(action.purpose)] += 1;
  }
  return { kind: 'tally', tally: { lengths, ...counts } };
};

type Move = Extract<Action, { kind: 'move' }>;

/** The pass a cutting move belongs to: by its condition, or by its register where the program chooses no condition. */
export const passOf = ({ condition, register }: Move, passes: readonly Pass[]): Pass | undefined =>
  passes.find((p) => (condition === undefined ? p.register === register : p.condition === condition));

/** Some stops stand in for a word that the dialect does not have. */
export const kindOfStop = (purpose: StopPurpose): 'handThreads' | 'handConditions' | 'stops' => {
  if (purpose === 'thread') return 'handThreads';
  return purpose === 'set condition' ? 'handConditions' : 'stops';
};

export const unknownPass = (program: ReadProgram, { block, condition, register }: Move): Finding => {
  const at = program.blocks[block];
  const place = { kind: 'line', line: at?.line ?? 1, text: at?.text ?? '' } as const;
  const line = count(place.line);
  const number = condition ?? register;
  return number === undefined
    ? find('pass-unknown/nothing', say`Line ${{ line }} of the program cuts with neither a condition nor a register.`, { place })
    : find(
        'pass-unknown/number',
        say`Line ${{ line }} of the program cuts with number ${{ number: count(number) }}, which belongs to no pass.`,
        {
          place,
        },
      );
};
