/** What the control remembers from block to block, and what one block makes it do. */

import type { Finding } from '../../finding/finding.ts';
import type { Point, Segment } from '../../geometry/segment.ts';
import type { Dialect } from '../dialect/dialect.ts';
import { type ArcOutcome, type ArcWords, arcByCentre, arcByRadius, millimetres } from './arc.ts';
import { type Compensator, compensator } from './compensate.ts';
import type { Meaning } from './dialect-words.ts';
import { at, done, fault, type Outcome } from './outcome.ts';
import type { Action, Block, Registers } from './program.ts';
import type { Motion, Statement } from './statement.ts';

export interface Control {
  /** Runs one block. `comment` is what the block says to the operator. */
  readonly run: (block: Block, statement: Readonly<Statement>, comment: string) => Outcome;
  readonly hasEnded: () => boolean;
  /** Warnings on the way, each kind once. */
  readonly remarks: readonly Finding[];
}

const INCH = 25.4;

/** Positions are kept to this part of a unit, so that a long incremental program adds up to what its digits say. */
const FINEST = 1e9;

/** Beyond this many units no machine travels, and numbers begin to lose their last digits. */
const FARTHEST = 100_000;

interface Memory {
  units: Dialect['units'] | 'not stated';
  distance: 'absolute' | 'incremental' | 'not stated';
  motion: Motion | 'not stated';
  system: number | 'not chosen';
  feed: number | 'not given';
  condition: number | undefined;
  /** Where the programmed path is, in program units. A program begins at the datum. */
  x: number;
  y: number;
  moved: boolean;
  ended: boolean;
}

export const control = (dialect: Dialect, registers: Registers, conditionByComment: boolean, emit: (action: Action) => void): Control => {
  const memory: Memory = {
    units: dialect.unitsWord === 'none' ? dialect.units : 'not stated',
    distance: 'not stated',
    motion: 'not stated',
    system: 'not chosen',
    feed: 'not given',
    condition: undefined,
    x: 0,
    y: 0,
    moved: false,
    ended: false,
  };
  const path = compensator(emit);
  const remarks: Finding[] = [];
  const remark = (finding: Finding): void => {
    if (!remarks.some((other) => other.code === finding.code)) remarks.push(finding);
  };

  const run = (block: Block, statement: Readonly<Statement>, comment: string): Outcome => {
    const lone = loneWords(block, statement);
    if (lone.kind === 'fault') return lone;
    if (statement.feed !== undefined) memory.feed = statement.feed;
    const settings = applySettings(block, statement, memory, path, dialect, remark);
    if (settings.kind === 'fault') return settings;
    const switched = switchCompensation(block, statement, memory, path, dialect, registers);
    if (switched.kind === 'fault') return switched;
    if (statement.condition !== undefined) choose(block, statement.condition);
    for (const meaning of statement.events) path.pass(eventOf(block, meaning));
    const moved = move(block, statement, memory, path, dialect);
    if (moved.kind === 'fault') return moved;
    if (statement.pointMissing)
      remark(
        at(
          block,
          'decimal-point-missing',
          'has a coordinate without a decimal point; some controls count it in last digits',
          'Write 10. where 10 is meant.',
        ),
      );
    return finishBlock(block, statement, comment);
  };

  const choose = (block: Block, condition: number): void => {
    memory.condition = condition;
    path.pass({ kind: 'condition', block: block.index, condition });
  };

  const finishBlock = (block: Block, statement: Readonly<Statement>, comment: string): Outcome => {
    if (statement.stop === undefined) return done;
    if (statement.stop !== 'end') {
      path.pass({ kind: 'stop', block: block.index, optional: statement.stop === 'optional stop', comment });
      const chosen = conditionByComment ? /^CONDITION (\d{1,6})\b/i.exec(comment) : undefined;
      if (chosen) choose(block, Number(chosen[1]));
      return done;
    }
    memory.ended = true;
    const finished = path.finish(block);
    if (finished.kind === 'done') emit({ kind: 'end', block: block.index });
    return finished;
  };

  return { run, hasEnded: () => memory.ended, remarks };
};

/** Words that mean something only beside another. */
const loneWords = (block: Block, s: Readonly<Statement>): Outcome => {
  const switches = s.compensation === 'left' || s.compensation === 'right';
  if (s.register !== undefined && !switches) {
    return fault(
      block,
      'register-idle',
      `names register D${s.register} without switching compensation on`,
      'Write D in the block of G41 or G42.',
    );
  }
  if (s.pause !== undefined && s.dwell === undefined) return fault(block, 'word-unknown', `has the word P${s.pause} without G04`);
  const moves = s.x !== undefined || s.y !== undefined;
  if (s.dwell !== undefined && (moves || s.motion !== undefined))
    return fault(block, 'word-twice', 'waits and moves in one block', 'Write G04 in a block of its own.');
  if (s.datum !== undefined && s.motion !== undefined)
    return fault(block, 'word-twice', 'sets the datum and moves in one block', 'Write G92 in a block of its own.');
  if (s.events.length > 0 && moves) {
    return fault(
      block,
      'word-beside-a-move',
      'has a word of the dialect and a move, and nothing says which comes first',
      'Write the word in a block of its own.',
    );
  }
  return done;
};

const applySettings = (
  block: Block,
  s: Readonly<Statement>,
  memory: Memory,
  path: Compensator,
  dialect: Dialect,
  remark: (finding: Finding) => void,
): Outcome => {
  if (path.isOn() && (s.units !== undefined || s.datum !== undefined || s.system !== undefined)) {
    const what = s.units === undefined ? 'the datum' : 'the unit';
    return fault(block, 'compensation-forbids', `states ${what} while compensation is on`, 'Switch compensation off first.');
  }
  if (s.units !== undefined) {
    convertPosition(memory, s.units);
    memory.units = s.units;
    if (s.units !== dialect.units)
      remark(at(block, 'units-differ', `states ${s.units} where the dialect writes ${dialect.units}; the program's word is followed`));
  }
  if (s.distance !== undefined) memory.distance = s.distance;
  if (s.system !== undefined) {
    if (memory.moved && memory.system !== s.system) {
      return fault(
        block,
        'datum-moved',
        `changes to G${s.system} after the wire has moved, and the program does not say where that datum is`,
        'Keep to one datum.',
      );
    }
    memory.system = s.system;
  }
  return done;
};

/** The place stays where it is when the unit changes. */
const convertPosition = (memory: Memory, units: Dialect['units']): void => {
  if (memory.units === 'not stated' || memory.units === units) return;
  const factor = units === 'mm' ? INCH : 1 / INCH;
  memory.x = rounded(memory.x * factor);
  memory.y = rounded(memory.y * factor);
};

const rounded = (value: number): number => Math.round(value * FINEST) / FINEST;

const switchCompensation = (
  block: Block,
  s: Readonly<Statement>,
  memory: Memory,
  path: Compensator,
  dialect: Dialect,
  registers: Registers,
): Outcome => {
  if (s.compensation === undefined) return done;
  if (s.compensation === 'off') {
    path.switchOff();
    return done;
  }
  const word = s.compensation === 'left' ? 'G41' : 'G42';
  if (path.isOn())
    return fault(block, 'compensation-already-on', `has ${word} while compensation is on`, 'Write G40 and a straight move first.');
  const register = s.register;
  if (register === undefined)
    return fault(block, 'register-not-named', `has ${word} without a register D`, 'Write D and the number of the offset register.');
  if (memory.units === 'not stated') return unitsNotStated(block, dialect);
  const offset = register === 0 ? 0 : registers.get(register);
  if (!Number.isInteger(register) || register < 0 || offset === undefined) {
    return fault(
      block,
      'register-unknown',
      `asks for register D${register}, which the offset table does not have`,
      'Enter it in the offset table, or name another.',
    );
  }
  if (!Number.isFinite(offset) || offset < 0) {
    return fault(block, 'register-unknown', `asks for register D${register}, whose value is ${offset}; an offset is 0 or more`);
  }
  const signed = s.compensation === 'left' ? offset : -offset;
  path.switchOn({
    side: s.compensation,
    register,
    offset,
    signed,
    digit: lastDigit(memory, dialect),
    outsideCorners: dialect.outsideCorners,
  });
  return done;
};

const lastDigit = (memory: Memory, dialect: Dialect): number => 10 ** -dialect.decimals * (memory.units === 'inch' ? INCH : 1);

const unitsNotStated = (block: Block, dialect: Dialect): Outcome =>
  fault(
    block,
    'units-not-stated',
    `moves before the unit is stated by ${dialect.unitsWord.replace('/', ' or ')}`,
    'Write the unit word at the start of the program.',
  );

const eventOf = (block: Block, meaning: Meaning): Action => {
  const index = block.index;
  if (meaning === 'thread') return { kind: 'thread', block: index };
  if (meaning === 'cutWire') return { kind: 'cut wire', block: index };
  return { kind: 'word', block: index, meaning: wordMeanings[meaning] };
};

const wordMeanings = {
  wireOn: 'wire on',
  wireOff: 'wire off',
  flushOn: 'flush on',
  flushOff: 'flush off',
  powerOn: 'power on',
  powerOff: 'power off',
} as const;

const move = (block: Block, s: Readonly<Statement>, memory: Memory, path: Compensator, dialect: Dialect): Outcome => {
  if (s.datum !== undefined) return setDatum(block, s, memory);
  if (s.motion !== undefined) memory.motion = s.motion;
  const arc = memory.motion === 'clockwise' || memory.motion === 'counter-clockwise';
  const arcWords = s.i !== undefined || s.j !== undefined || s.r !== undefined;
  if (s.x === undefined && s.y === undefined) {
    if (!arcWords) return done;
    return arc
      ? fault(block, 'arc-incomplete', 'has an arc without its end', 'Write X and Y also where they do not change.')
      : fault(block, 'arc-words-idle', 'has I, J or R and is no arc');
  }
  if (memory.motion === 'not stated')
    return fault(block, 'motion-not-stated', 'has coordinates before any of G00 to G03 has said how to move');
  if (arcWords && !arc) return fault(block, 'arc-words-idle', 'has I, J or R and is no arc', 'Write G02 or G03, or take them out.');
  if (memory.units === 'not stated') return unitsNotStated(block, dialect);
  if (memory.distance === 'not stated')
    return fault(block, 'distance-mode-not-stated', 'moves before G90 or G91 has said how coordinates count');
  if (memory.motion !== 'rapid' && memory.feed === 0)
    return fault(block, 'feed-zero', 'cuts with the feed set to F0', 'Leave F out (the condition sets the feed) or give one above 0.');
  return segmentsOf(block, s, memory, path, dialect);
};

const setDatum = (block: Block, s: Readonly<Statement>, memory: Memory): Outcome => {
  if (memory.moved) return fault(block, 'datum-moved', 'sets the datum by G92 after the wire has moved', 'Keep to one datum.');
  memory.x = s.x ?? memory.x;
  memory.y = s.y ?? memory.y;
  return done;
};

const segmentsOf = (block: Block, s: Readonly<Statement>, memory: Memory, path: Compensator, dialect: Dialect): Outcome => {
  const factor = memory.units === 'inch' ? INCH : 1;
  const relative = memory.distance === 'incremental';
  const x = s.x === undefined ? memory.x : relative ? rounded(memory.x + s.x) : s.x;
  const y = s.y === undefined ? memory.y : relative ? rounded(memory.y + s.y) : s.y;
  const farthest = Math.max(Math.abs(x), Math.abs(y), Math.abs(s.i ?? 0), Math.abs(s.j ?? 0), Math.abs(s.r ?? 0));
  if (farthest > FARTHEST) return fault(block, 'coordinate-too-large', `has a coordinate of ${farthest}, more than ${FARTHEST}`);
  const from: Point = { x: memory.x * factor, y: memory.y * factor };
  const to: Point = x === memory.x && y === memory.y ? from : { x: x * factor, y: y * factor };
  const rapid = memory.motion === 'rapid';
  memory.moved = true;
  let segments: readonly Segment[];
  if (rapid || memory.motion === 'straight') segments = from === to ? [] : [{ kind: 'line', from, to }];
  else {
    const words = { from, to, counterClockwise: memory.motion === 'counter-clockwise', digit: lastDigit(memory, dialect) };
    const made = arcOf(s, words, factor);
    if (made.kind === 'bad') return fault(block, made.code, made.predicate);
    segments = made.arcs;
  }
  memory.x = x;
  memory.y = y;
  for (const programmed of segments) {
    const moved = path.move({ block, rapid, condition: memory.condition, programmed });
    if (moved.kind === 'fault') return moved;
  }
  return done;
};

const arcOf = (s: Readonly<Statement>, words: ArcWords, factor: number): ArcOutcome => {
  const byCentre = s.i !== undefined || s.j !== undefined;
  if (byCentre && s.r !== undefined)
    return { kind: 'bad', code: 'arc-incomplete', predicate: 'gives an arc both by its centre and by its radius' };
  if (byCentre) return arcByCentre(words, { x: words.from.x + (s.i ?? 0) * factor, y: words.from.y + (s.j ?? 0) * factor });
  if (s.r !== undefined) return arcByRadius(words, s.r * factor);
  const predicate = `has an arc to ${millimetres(words.to.x)}, ${millimetres(words.to.y)} with neither centre nor radius`;
  return { kind: 'bad', code: 'arc-incomplete', predicate };
};
