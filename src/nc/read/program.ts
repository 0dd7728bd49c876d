/** What a program says when it is read: blocks of text, and the wire's doings in order. Lengths in mm. */

import type { Segment } from '../../geometry/segment.ts';
import type { Finding } from '../../text/finding.ts';
import type { Text } from '../../text/text.ts';
import type { StopSaid } from './stop-purpose.ts';

/** One line of the program text. */
export interface Block {
  /** Counted from 0 in `ReadProgram.blocks`. */
  readonly index: number;
  /** Line of the text, counted from 1. */
  readonly line: number;
  readonly text: string;
  readonly sequence?: number;
  readonly comments: readonly string[];
  /** It begins with a slash: a switch at the control decides whether it runs. */
  readonly skippable?: boolean;
}

/** Offset registers of the control, mm, by number. Register 0 is always 0. */
export type Registers = ReadonlyMap<number, number>;

/**
 * The wire's doings in order. A `move` has the segment as programmed and as the wire's centre runs it, with compensation
 * applied; a corner that the control rounds or fills gives moves of its own under the same block.
 */
export type Action =
  | {
      readonly kind: 'move';
      readonly block: number;
      readonly rapid: boolean;
      readonly programmed: Segment;
      readonly centre: Segment;
      /** Condition in force, or none when the program never chose one. */
      readonly condition?: number | undefined;
      /** Register of the compensation in force, or none. */
      readonly register?: number | undefined;
      readonly side?: 'left' | 'right' | undefined;
    }
  | ({
      readonly kind: 'stop';
      readonly block: number;
      /** A switch at the control decides whether the wire stops there. */
      readonly optional: boolean;
      readonly comment: string;
      /** The comment as data where the program is known to be of our own writing; it decides nothing. */
      readonly said?: Text | undefined;
      /** What stands before it on lines of its own, likewise. */
      readonly details?: readonly Text[] | undefined;
    } & StopSaid)
  | { readonly kind: 'thread'; readonly block: number }
  | { readonly kind: 'cut wire'; readonly block: number }
  | { readonly kind: 'condition'; readonly block: number; readonly condition: number }
  | {
      readonly kind: 'word';
      readonly block: number;
      readonly meaning: 'wire on' | 'wire off' | 'flush on' | 'flush off' | 'power on' | 'power off';
    }
  | { readonly kind: 'end'; readonly block: number };

export interface ReadProgram {
  /** `refused`: a rule was broken; the findings name the block, and `actions` stop before it. */
  readonly state: 'read' | 'refused';
  readonly blocks: readonly Block[];
  readonly actions: readonly Action[];
  readonly findings: readonly Finding[];
}
