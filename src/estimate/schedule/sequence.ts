/** All pieces of a job in a row, with the loading between them and the spool changed where it runs out. */

import type { Wire } from '../../physics/wire/wire.ts';
import { metresOfWire } from '../../physics/wire/wire-use.ts';
import type { Rates } from '../rates.ts';
import { type Task, words } from './tasks.ts';

export interface SequenceQuestion {
  readonly wire: Wire;
  /** Wire on the machine at the start; a full spool when left out. */
  readonly spoolLeft?: SpoolLeft | undefined;
  readonly quantity: number;
  readonly minutes: Rates['minutes'];
}

export type SpoolLeft = { readonly unit: 'kg' | 'm'; readonly amount: number };

/** A task with the piece it belongs to, counted from 1. */
export interface Turn extends Task {
  readonly piece: number;
}

export interface Sequence {
  readonly turns: readonly Turn[];
  /** Pieces that are in it whole. */
  readonly pieces: number;
}

/** Putting on a full spool and threading again; from memory, where the shop does not say. */
const SPOOL_MINUTES = 10;
/** More turns than this are not laid out: the first piece is always whole, later ones are left out. */
const MOST_TURNS = 20_000;

/**
 * @param cutting factor on all cutting times: for an early and a late end of the same run.
 * @param most turns beyond which no further piece is begun.
 */
export const sequenceOf = (tasks: readonly Task[], question: SequenceQuestion, cutting = 1, most = MOST_TURNS): Sequence => {
  const turns: Turn[] = [];
  const spool = new Spool(question);
  let piece = 0;
  while (piece < question.quantity && (piece === 0 || turns.length + tasks.length < most)) {
    piece += 1;
    for (const turn of turnsOfPiece(piece, tasks, question, spool, cutting)) turns.push(turn);
  }
  return { turns, pieces: piece };
};

/** The turns of all pieces, one by one: for whoever only wants to know when they end. */
export function* turnsInARow(tasks: readonly Task[], question: SequenceQuestion, cutting: number): Generator<Turn> {
  const spool = new Spool(question);
  for (let piece = 1; piece <= question.quantity; piece += 1) yield* turnsOfPiece(piece, tasks, question, spool, cutting);
}

function* turnsOfPiece(
  piece: number,
  tasks: readonly Task[],
  { minutes }: SequenceQuestion,
  spool: Spool,
  cutting: number,
): Generator<Turn> {
  if (piece > 1) yield { kind: 'loading', minutes: minutes.load, what: words.load(piece), needsPerson: true, piece };
  for (const task of tasks) {
    if (task.kind !== 'cutting') yield { ...task, piece };
    else for (const part of spool.cut(task, task.minutes * cutting)) yield { ...part, piece };
  }
}

/** Metres on a full spool. */
export const spoolMetres = (wire: Wire): number => metresOfWire.compute({ ...wire, mass: wire.spool });

/** The spool on the machine while the pieces are gone through; it never leaves this file. */
class Spool {
  readonly #speed: number;
  readonly #full: number;
  readonly #change: Omit<Task, 'block'>;
  #left: number;

  constructor({ wire, spoolLeft, minutes }: SequenceQuestion) {
    this.#speed = wire.speed;
    this.#full = spoolMetres(wire);
    this.#left =
      spoolLeft === undefined
        ? this.#full
        : spoolLeft.unit === 'm'
          ? spoolLeft.amount
          : metresOfWire.compute({ ...wire, mass: spoolLeft.amount });
    this.#change = { kind: 'spool change', minutes: minutes.spool ?? SPOOL_MINUTES, what: words.spool, needsPerson: true };
  }

  /** A cutting task of so many minutes, told in the parts that the spools give. */
  *cut(task: Task, minutes: number): Generator<Task> {
    let rest = minutes;
    // A spool that lasts no time at all would be changed for ever: it is left out of account then.
    const endless = this.#full <= 0 || rest * this.#speed > MOST_SPOOLS * this.#full;
    while (!endless && rest * this.#speed > this.#left + LEAST) {
      const part = this.#left / this.#speed;
      if (part > 0) yield { ...task, minutes: part };
      yield { ...this.#change, block: task.block };
      rest -= part;
      this.#left = this.#full;
    }
    this.#left -= endless ? 0 : rest * this.#speed;
    if (rest > 0) yield rest === task.minutes ? task : { ...task, minutes: rest };
  }
}

/** A micrometre of wire is rounding, m. */
const LEAST = 1e-6;
const MOST_SPOOLS = 1000;
