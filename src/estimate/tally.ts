/** What a program makes the machine do, counted from its actions as read back: lengths by pass, stops, threadings, travel. */
import type { Finding } from '../finding/finding.ts';
import { lengthOf } from '../geometry/measure.ts';
import type { ReadProgram } from '../nc/read/program.ts';
import type { Pass } from '../plan/plan.ts';
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
      const pass = passes.findIndex((p) =>
        action.condition === undefined ? p.register === action.register : p.condition === action.condition,
      );
      if (pass < 0) return { kind: 'unknown pass', finding: unknownPass(program, action.block, action.condition ?? action.register) };
      lengths[pass] = (lengths[pass] as number) + lengthOf(action.centre);
    } else if (action.kind === 'thread') counts.machineThreads += 1;
    else if (action.kind === 'stop') counts[kindOfStop(action.comment)] += 1;
  }
  return { kind: 'tally', tally: { lengths, ...counts } };
};

/** Stops that stand in for a word the dialect does not have say so at the start of their comment. */
const kindOfStop = (comment: string): 'handThreads' | 'handConditions' | 'stops' => {
  if (/^thread/i.test(comment)) return 'handThreads';
  return /^condition/i.test(comment) ? 'handConditions' : 'stops';
};

const unknownPass = (program: ReadProgram, block: number, number: number | undefined): Finding => {
  const at = program.blocks[block];
  const which = number === undefined ? 'neither a condition nor a register' : `number ${number}, which belongs to no pass`;
  return find('pass-unknown', `Line ${at?.line ?? '?'} of the program cuts with ${which}.`, {
    place: { kind: 'line', line: at?.line ?? 1, text: at?.text ?? '' },
  });
};
