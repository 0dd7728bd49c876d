/** What one block makes the control do. */
import type { Finding } from '../../text/finding.ts';
import { asGiven, term } from '../../text/part.ts';
import { say } from '../../text/say.ts';
import type { Dialect } from '../dialect/dialect.ts';
import { compensator } from './compensate.ts';
import type { Meaning } from './dialect-words.ts';
import { freshMemory, INCH, lastDigit, type Machine, type Memory, remark, rounded, unitsNotStated } from './memory.ts';
import { move } from './motion.ts';
import type { Action, Block } from './program.ts';
import { at, type BlockOutcome, done, fault } from './read-outcome.ts';
import { type Statement, type UnitWord, unitPair } from './statement.ts';
import { stopSaid } from './stop-purpose.ts';

export interface Control {
  /** Runs one block. `comment` is what the block says to the operator. */
  readonly run: (block: Block, statement: Readonly<Statement>, comment: string) => BlockOutcome;
  readonly hasEnded: () => boolean;
  /** Warnings on the way, each kind once. */
  readonly remarks: readonly Finding[];
}

export type Ready = Pick<Machine, 'dialect' | 'registers' | 'conditionByComment' | 'decimals' | 'arcEnds' | 'emit'>;

export const control = (ready: Ready): Control => {
  const memory = freshMemory(ready.dialect);
  const machine: Machine = { ...ready, memory, path: compensator(ready.emit), remarks: [] };
  return {
    run: (block, statement, comment) => run(block, statement, comment, machine),
    hasEnded: () => memory.ended,
    remarks: machine.remarks,
  };
};

/** In the order in which a control does what one block says: settings, compensation, condition, words, move, stop. */
const run = (block: Block, statement: Readonly<Statement>, comment: string, machine: Machine): BlockOutcome => {
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
    remark('decimal-point-missing', () => pointMissing(block), machine);
  }
  return finishBlock(block, statement, comment, machine);
};

const pointMissing = (block: Block): Finding =>
  at(
    'decimal-point-missing',
    block,
    (named) => say`${{ block: named }} has a coordinate without a decimal point; some controls count it in last digits.`,
    { remedy: say`Write 10. where 10 is meant.` },
  );

const mayNotStop = (block: Block): Finding =>
  at('stop-may-not-stop', block, (named) => say`${{ block: named }} has M01, which stops only when a switch at the control says so.`, {
    done: say`It was read as a stop that secures nothing and asks for nothing.`,
    remedy: say`Write M00 where the operator has to do something.`,
  });

const choose = (block: Block, condition: number, { memory, path }: Machine): void => {
  memory.condition = condition;
  path.pass({ kind: 'condition', block: block.index, condition });
};

const finishBlock = (block: Block, statement: Readonly<Statement>, comment: string, machine: Machine): BlockOutcome => {
  const { memory, path, emit } = machine;
  if (statement.stop === undefined) return done;
  if (statement.stop !== 'end') {
    const optional = statement.stop === 'optional stop' || block.skippable === true;
    if (statement.stop === 'optional stop') remark('stop-may-not-stop', () => mayNotStop(block), machine);
    path.pass({ kind: 'stop', block: block.index, optional, comment, ...stopSaid(comment) });
    const chosen = machine.conditionByComment && !optional ? /^CONDITION (\d{1,6})\b/i.exec(comment) : undefined;
    if (chosen) choose(block, Number(chosen[1]), machine);
    return done;
  }
  memory.ended = true;
  const finished = path.finish(block);
  if (finished.kind === 'done') emit({ kind: 'end', block: block.index });
  return finished;
};

/** Words that mean something only beside another. */
const loneWords = (block: Block, s: Readonly<Statement>): BlockOutcome => {
  const switches = s.compensation === 'left' || s.compensation === 'right';
  if (s.register !== undefined && !switches) {
    const register = term(`D${s.register}`);
    return fault(
      'register-idle',
      block,
      (named) => say`${{ block: named }} names register ${{ register }} without switching compensation on.`,
      {
        remedy: say`Write D in the block of G41 or G42.`,
      },
    );
  }
  if (s.pause !== undefined && s.dwell === undefined) {
    const pause = term(`P${s.pause}`);
    return fault('word-unknown/pause', block, (named) => say`${{ block: named }} has the word ${{ pause }} without G04.`);
  }
  const moves = s.x !== undefined || s.y !== undefined;
  if (s.dwell !== undefined && (moves || s.motion !== undefined))
    return fault('word-twice/waits', block, (named) => say`${{ block: named }} waits and moves in one block.`, {
      remedy: say`Write G04 in a block of its own.`,
    });
  if (s.datum !== undefined && s.motion !== undefined)
    return fault('word-twice/datum', block, (named) => say`${{ block: named }} sets the program zero and moves in one block.`, {
      remedy: say`Write G92 in a block of its own.`,
    });
  if (s.events.length > 0 && moves) {
    return fault(
      'word-beside-a-move',
      block,
      (named) => say`${{ block: named }} has a word of the dialect and a move, and nothing says which comes first.`,
      { remedy: say`Write the word in a block of its own.` },
    );
  }
  return done;
};

const applySettings = (block: Block, s: Readonly<Statement>, machine: Machine): BlockOutcome => {
  const { memory, path } = machine;
  if (path.isOn() && (s.units !== undefined || s.datum !== undefined || s.system !== undefined)) {
    return statedTooLate(block, s.units === undefined ? 'datum' : 'unit');
  }
  if (s.units !== undefined) {
    const outcome = stateUnit(block, s.units, machine);
    if (outcome.kind !== 'done') return outcome;
  }
  if (s.distance !== undefined) memory.distance = s.distance;
  if (s.system !== undefined) {
    if (memory.moved && memory.system !== s.system) {
      const system = term(`G${s.system}`);
      return fault(
        'datum-moved/system',
        block,
        (named) => say`${{ block: named }} changes to ${{ system }} after the wire has moved, and the program does not define that zero.`,
        { remedy: say`Keep to one datum.` },
      );
    }
    memory.system = s.system;
    remark('zero-of-control', () => zeroOfControl(block, s.system ?? 0), machine);
  }
  return done;
};

const zeroOfControl = (block: Block, system: number): Finding =>
  at(
    'zero-of-control',
    block,
    (named) =>
      say`${{ block: named }} takes the zero that the control keeps under ${{ system: term(`G${system}`) }}, which the program does not state.`,
    {
      done: say`It was read as the datum of the set-up sheet.`,
      remedy: say`See that the control keeps the datum of the set-up sheet there.`,
    },
  );

const statedTooLate = (block: Block, what: 'datum' | 'unit'): BlockOutcome => {
  const remedy = say('compensation-forbids.remedy')`Switch compensation off first.`;
  return what === 'datum'
    ? fault('compensation-forbids/datum', block, (named) => say`${{ block: named }} sets the program zero with compensation on.`, {
        remedy,
      })
    : fault('compensation-forbids/unit', block, (named) => say`${{ block: named }} states the unit while compensation is on.`, { remedy });
};

/**
 * A program is read with either pair of unit words, which mean the same, but not with both: where one of them is the control's, the other
 * is perhaps something else to it. That the pair is not the dialect's is asked, since the program may be meant for another control.
 */
const stateUnit = (block: Block, { unit, pair, word }: UnitWord, machine: Machine): BlockOutcome => {
  const { memory, dialect } = machine;
  if (memory.unitPair !== 'none yet' && memory.unitPair !== pair) return bothPairs(block, word);
  memory.unitPair = pair;
  convertPosition(memory, unit);
  memory.units = unit;
  if (pair !== dialect.unitsWord) remark('units-of-other-pair', () => otherPair(block, word, dialect), machine);
  if (unit !== dialect.units) remark('units-differ', () => unitsDiffer(block, unit, dialect), machine);
  return done;
};

const bothPairs = (block: Block, word: UnitWord['word']): BlockOutcome =>
  fault(
    'units-of-both-pairs',
    block,
    (named) => say`${{ block: named }} states the unit by ${{ word: term(word) }}, and the program stated it by the other pair before.`,
    { remedy: say`Keep to one pair of unit words, the one in the manual of the control.` },
  );

const otherPair = (block: Block, word: UnitWord['word'], { unitsWord }: Dialect): Finding =>
  at(
    'units-of-other-pair',
    block,
    (named) => say`${{ block: named }} states the unit by ${{ word: term(word) }}, where the dialect has ${{ pair: unitPair(unitsWord) }}.`,
    {
      done: say`It was read as the unit that its own standard gives it.`,
      remedy: say`See in the manual of the control which pair it has, and set unitsWord in the dialect to it.`,
    },
  );

const unitsDiffer = (block: Block, stated: Dialect['units'], { units }: Dialect): Finding =>
  at(
    'units-differ',
    block,
    (named) =>
      say`${{ block: named }} states ${{ stated: term(stated) }} where the dialect writes ${{ own: term(units) }}; the program's word applies.`,
  );

/** The place stays where it is when the unit changes. */
const convertPosition = (memory: Memory, units: Dialect['units']): void => {
  if (memory.units === 'not stated' || memory.units === units) return;
  const factor = units === 'mm' ? INCH : 1 / INCH;
  memory.x = rounded(memory.x * factor);
  memory.y = rounded(memory.y * factor);
};

const switchCompensation = (block: Block, s: Readonly<Statement>, machine: Machine): BlockOutcome => {
  const { memory, path, dialect, registers } = machine;
  if (s.compensation === undefined) return done;
  if (s.compensation === 'off') {
    path.switchOff();
    return done;
  }
  const word = term(s.compensation === 'left' ? 'G41' : 'G42');
  if (path.isOn())
    return fault('compensation-already-on', block, (named) => say`${{ block: named }} has ${{ word }} while compensation is on.`, {
      remedy: say`Write G40 and a straight move first.`,
    });
  const register = s.register;
  if (register === undefined)
    return fault('register-not-named', block, (named) => say`${{ block: named }} has ${{ word }} without a register D.`, {
      remedy: say`Write D and the number of the offset register.`,
    });
  if (memory.units === 'not stated') return unitsNotStated(block, dialect);
  const offset = register === 0 ? 0 : registers.get(register);
  if (!Number.isInteger(register) || register < 0 || offset === undefined) return registerMissing(block, register);
  if (!Number.isFinite(offset) || offset < 0) return offsetBelowZero(block, register, offset);
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

const registerMissing = (block: Block, register: number): BlockOutcome =>
  fault(
    'register-unknown/missing',
    block,
    (named) => say`${{ block: named }} asks for register ${{ register: term(`D${register}`) }}, which the offset table does not have.`,
    { remedy: say`Enter it in the offset table, or name another.` },
  );

const offsetBelowZero = (block: Block, register: number, offset: number): BlockOutcome =>
  fault(
    'register-unknown/value',
    block,
    (named) =>
      say`${{ block: named }} asks for register ${{ register: term(`D${register}`) }}, whose value is ${{ offset: asGiven(offset) }}; an offset is 0 or more.`,
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
