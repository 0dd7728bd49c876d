/** What the control remembers from block to block. */

import type { Point } from '../../geometry/segment.ts';
import type { Finding } from '../../text/finding.ts';
import { say } from '../../text/say.ts';
import type { Dialect } from '../dialect/dialect.ts';
import type { Compensator } from './compensate.ts';
import type { ReadCode } from './findings.ts';
import type { Action, Block, Registers } from './program.ts';
import { type BlockOutcome, fault } from './read-outcome.ts';
import { type Motion, type UnitWord, unitPair } from './statement.ts';

export const INCH = 25.4;

/** Positions are kept to this part of a unit, so that a long incremental program adds up to what its digits say. */
const FINEST = 1e9;

export const rounded = (value: number): number => Math.round(value * FINEST) / FINEST;

export interface Memory {
  units: Dialect['units'] | 'not stated';
  /** Of which pair the unit words so far are. */
  unitPair: UnitWord['pair'] | 'none yet';
  distance: 'absolute' | 'incremental' | 'not stated';
  motion: Motion | 'not stated';
  system: number | 'not chosen';
  feed: number | 'not given';
  condition: number | undefined;
  /** Where the programmed path is, in program units. A program begins at the datum. */
  x: number;
  y: number;
  /** Where the last move was programmed to end, mm. */
  reached: Point;
  moved: boolean;
  ended: boolean;
}

/** The control at work: what it was given, what it remembers, and where it sends what happens. */
export interface Machine {
  readonly dialect: Dialect;
  readonly registers: Registers;
  readonly conditionByComment: boolean;
  /** The last digit that the program writes, or the dialect's where that is the coarser. */
  readonly decimals: number;
  /** mm by which the ends of an arc may lie differently far from its centre, where that is more than rounding. */
  readonly arcEnds: number;
  readonly memory: Memory;
  readonly path: Compensator;
  readonly emit: (action: Action) => void;
  readonly remarks: Finding[];
}

export const freshMemory = (dialect: Dialect): Memory => ({
  units: dialect.unitsWord === 'none' ? dialect.units : 'not stated',
  unitPair: 'none yet',
  distance: 'not stated',
  motion: 'not stated',
  system: 'not chosen',
  feed: 'not given',
  condition: undefined,
  x: 0,
  y: 0,
  reached: { x: 0, y: 0 },
  moved: false,
  ended: false,
});

/** Last digit of the program, mm. */
export const lastDigit = ({ memory, decimals }: Machine): number => 10 ** -decimals * (memory.units === 'inch' ? INCH : 1);

export const unitsNotStated = (block: Block, dialect: Dialect): BlockOutcome =>
  fault(
    'units-not-stated',
    block,
    (named) => say`${{ block: named }} moves before the unit is stated by ${{ pair: unitPair(dialect.unitsWord) }}.`,
    { remedy: say`Write the unit word at the start of the program.` },
  );

/** Each code once: the sentence is made for the first of its kind only. */
export const remark = (code: ReadCode, made: () => Finding, { remarks }: Machine): void => {
  if (!remarks.some((other) => other.code === code)) remarks.push(made());
};
