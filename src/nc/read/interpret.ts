/** What one block makes the control do. */
import type { Finding } from '../../text/finding.ts';
import type { Dialect } from '../dialect/dialect.ts';
import { compensator } from './compensate.ts';
import type { Meaning } from './dialect-words.ts';
import { freshMemory, INCH, lastDigit, type Machine, type Memory, rounded, unitsNotStated } from './memory.ts';
import { move } from './motion.ts';
import type { Action, Block, Registers } from './program.ts';
import { at, done, fault, type Outcome } from './read-outcome.ts';
import type { Statement } from './statement.ts';
import { stopSaid } from './stop-purpose.ts';

export interface Control {
  /** Runs one block. `comment` is what the block says to the operator. */
  readonly run: (block: Block, statement: Readonly<Statement>, comment: string) => Outcome;
  readonly hasEnded: () => boolean;
  /** Warnings on the way, each kind once. */
  readonly remarks: readonly Finding[];
}

export const control = (dialect: Dialect, registers: Registers, conditionByComment: boolean, emit: (action: Action) => void): Control => {
  const memory = freshMemory(dialect);
  const machine: Machine = { dialect, registers, conditionByComment, memory, path: compensator(emit), emit, remarks: [] };
  return {
    run: (block, statement, comment) => run(block, statement, comment, machine),
    hasEnded: () => memory.ended,
    remarks: machine.remarks,
  };
};

/** In the order in which a control does what one block says: settings, compensation, condition, words, move, stop. */
const run = (block: Block, statement: Readonly<Statement>, comment: string, machine: Machine): Outcome => {
  const { memory, path } = machine;
  const lone = loneWords(block, statement);
  if (lone.kind === 'fault') return lone;
  if (statement.feed !== undefined) memory.feed = statement.feed;
  const settings = applySettings(block, statement, machine);
  if (settings.kind === 'fault') return settings;
  const switched = switchCompensation(block, statement, machine);
  if (switched.kind === 'fault') return switched;
  if (statement.condition !== undefined) choose(block, statement.condition, machine);
  for (const meaning of statement.events) path.pass(eventOf(block, meaning));
  const moved = move(block, statement, machine);
  if (moved.kind === 'fault') return moved;
  if (statement.pointMissing) {
    const predicate = 'has a coordinate without a decimal point; some controls count it in last digits';
    remark(at(block, 'decimal-point-missing', predicate, 'Write 10. where 10 is meant.'), machine);
  }
  return finishBlock(block, statement, comment, machine);
};

const remark = (finding: Finding, { remarks }: Machine): void => {
  if (!remarks.some((other) => other.code === finding.code)) remarks.push(finding);
};

const choose = (block: Block, condition: number, { memory, path }: Machine): void => {
  memory.condition = condition;
  path.pass({ kind: 'condition', block: block.index, condition });
};

const finishBlock = (block: Block, statement: Readonly<Statement>, comment: string, machine: Machine): Outcome => {
  const { memory, path, emit } = machine;
  if (statement.stop === undefined) return done;
  if (statement.stop !== 'end') {
    path.pass({ kind: 'stop', block: block.index, optional: statement.stop === 'optional stop', comment, ...stopSaid(comment) });
    const chosen = machine.conditionByComment ? /^CONDITION (\d{1,6})\b/i.exec(comment) : undefined;
    if (chosen) choose(block, Number(chosen[1]), machine);
    return done;
  }
  memory.ended = true;
  const finished = path.finish(block);
  if (finished.kind === 'done') emit({ kind: 'end', block: block.index });
  return finished;
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

const applySettings = (block: Block, s: Readonly<Statement>, machine: Machine): Outcome => {
  const { memory, path, dialect } = machine;
  if (path.isOn() && (s.units !== undefined || s.datum !== undefined || s.system !== undefined)) {
    const what = s.units === undefined ? 'the datum' : 'the unit';
    return fault(block, 'compensation-forbids', `states ${what} while compensation is on`, 'Switch compensation off first.');
  }
  if (s.units !== undefined) {
    convertPosition(memory, s.units);
    memory.units = s.units;
    if (s.units !== dialect.units)
      remark(
        at(block, 'units-differ', `states ${s.units} where the dialect writes ${dialect.units}; the program's word is followed`),
        machine,
      );
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

const switchCompensation = (block: Block, s: Readonly<Statement>, machine: Machine): Outcome => {
  const { memory, path, dialect, registers } = machine;
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
    digit: lastDigit(machine),
    outsideCorners: dialect.outsideCorners,
  });
  return done;
};

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
