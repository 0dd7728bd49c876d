/** Program text -> what the wire does, or the first block that breaks a rule. Knows nothing of how programs are written here. */

import type { Finding } from '../../text/finding.ts';
import { count, term } from '../../text/part.ts';
import { say } from '../../text/say.ts';
import type { Dialect } from '../dialect/dialect.ts';
import { type DialectWords, dialectWords } from './dialect-words.ts';
import { find } from './findings.ts';
import { control } from './interpret.ts';
import { isDigit, type Line, splitLine, type Word } from './line.ts';
import type { Action, Block, ReadProgram, Registers } from './program.ts';
import { at, fault, faultOf, namedWithin, type ReadFault } from './read-outcome.ts';
import { blankStatement, type Statement, understand } from './statement.ts';

/** Beyond these a program is refused, by name. */
export interface ProgramLimits {
  readonly characters: number;
  readonly blocks: number;
  readonly charactersInBlock: number;
  /** Of one comment, all the lines over which it goes on. */
  readonly charactersInComment: number;
  /** mm by which the ends of an arc may lie differently far from its centre beyond rounding; nothing when left out. */
  readonly arcEnds?: number | undefined;
}

export const programLimits: ProgramLimits = {
  characters: 100_000_000,
  blocks: 3_000_000,
  charactersInBlock: 1000,
  charactersInComment: 4000,
};

const LARGEST_SEQUENCE = 99_999;

type ReadLine =
  | { readonly kind: 'read'; readonly block: Block; readonly statement: Readonly<Statement>; readonly line: Line }
  | { readonly kind: 'refused'; readonly block: Block; readonly finding: Finding };

/**
 * Reads a program as the control would run it. Never throws. `registers` are the offsets by number, in mm; D0 is 0. The wire
 * begins at the datum, X0 Y0. On a broken rule `actions` end before the block at fault, which is the last of `blocks`.
 * No F is asked for: in wire cutting the condition sets the feed; only a feed of F0 is refused.
 */
export const readProgram = (text: string, dialect: Dialect, registers: Registers, limits: ProgramLimits = programLimits): ReadProgram => {
  const blocks: Block[] = [];
  const actions: Action[] = [];
  const findings: Finding[] = [];
  const own = dialectWords(dialect);
  const rules: LineRules = { dialect, own, limits };
  const machine = control({
    dialect,
    registers,
    conditionByComment: own.conditionByComment,
    decimals: decimalsOf(text, dialect),
    arcEnds: limits.arcEnds ?? 0,
    emit: (action) => actions.push(action),
  });
  const refused = (finding: Finding): ReadProgram => ({
    state: 'refused',
    blocks,
    actions,
    findings: [...findings, ...machine.remarks, finding],
  });
  if (text.length > limits.characters) return refused(tooManyCharacters(text.length, limits));
  const marks = { percents: 0, words: false, closed: false };
  let carried = '';
  for (const { line, source } of linesOf(text)) {
    if (isBlank(source)) continue;
    if (machine.hasEnded() || marks.closed) {
      if (isPercent(source)) closeBy(marks);
      else if (speaks(source, dialect, limits)) {
        if (marks.closed) return refused(wordsBehindPercent(line, source));
        if (!findings.some((f) => f.code === 'program-text-after-end')) findings.push(textAfterEnd(line, source));
      }
      continue;
    }
    if (blocks.length >= limits.blocks) return refused(tooManyBlocks(line, limits));
    const read = readLine(source, { line, index: blocks.length, atStart: !marks.words }, rules);
    blocks.push(read.block);
    if (read.kind === 'refused') return refused(read.finding);
    if (read.line.percent) closeBy(marks);
    if (read.line.words.length > 0) marks.words = true;
    if (read.line.skippable) {
      const skipped = skippedFinding(read);
      if (skipped.severity === 'refusal') return refused(skipped);
      if (!findings.some((f) => f.code === skipped.code)) findings.push(skipped);
    }
    const comment = [carried, ...read.block.comments].join(' ').trim();
    if (comment.length > limits.charactersInComment) return refused(endlessComment(read.block, limits));
    const outcome = machine.run(read.block, read.statement, comment);
    if (outcome.kind === 'fault') return refused(outcome.finding);
    carried = carriedOn(read, comment);
  }
  if (!machine.hasEnded()) return refused(endMissing(blocks));
  if (dialect.percent && marks.percents < 2)
    findings.push(
      find('percent-missing', say`The dialect asks for a line with % at both ends of the program, and one or both are missing.`),
    );
  return { state: 'read', blocks, actions, findings: [...findings, ...machine.remarks] };
};

/** Fewer than these no program of a wire machine writes by habit: one that happens to have whole coordinates is judged by them. */
const FEWEST_DECIMALS = { mm: 3, inch: 4 } as const;

/** How finely the program is written, by its longest fraction: one of 3 decimals is not judged by a dialect of 4. */
const decimalsOf = (text: string, { decimals, units, comments }: Dialect): number => {
  let most: number = FEWEST_DECIMALS[units];
  for (let at = 0; at < text.length && most < decimals; at += 1) {
    const code = text.charCodeAt(at);
    if (code === 40 && comments === 'round brackets') at = endOf(text, ')', at);
    else if (code === 59 && comments === 'semicolon') at = endOf(text, '\n', at);
    else if (code === 46) {
      let behind = 0;
      while (isDigit(text.charCodeAt(at + behind + 1))) behind += 1;
      most = Math.max(most, behind);
      at += behind;
    }
  }
  return Math.min(most, decimals);
};

const endOf = (text: string, sign: string, from: number): number => {
  const end = text.indexOf(sign, from);
  return end < 0 ? text.length : end;
};

interface Marks {
  percents: number;
  /** A block with words stood before. */
  words: boolean;
  /** A % behind the words: whatever comes later is another tape. */
  closed: boolean;
}

const closeBy = (marks: Marks): void => {
  marks.percents += 1;
  marks.closed ||= marks.words;
};

const isPercent = (source: string): boolean => source.trimStart().startsWith('%');

/** Whether a line behind the end says anything to a control; a comment and a number of the block do not. */
const speaks = (source: string, { comments }: Dialect, limits: ProgramLimits): boolean => {
  const split = splitLine(source.slice(0, limits.charactersInBlock), comments);
  return split.kind === 'bad' || split.line.words.some(({ letter }) => letter !== 'N');
};

/** What may be skipped without a change of the cut: a stop, which is then not relied upon, a wait, and what says nothing. */
const skippedFinding = ({ block, statement, line }: Extract<ReadLine, { kind: 'read' }>): Finding => {
  const harmless = line.words.every(
    ({ letter, value }) =>
      letter === 'N' || letter === 'P' || (letter === 'M' && (value === 0 || value === 1)) || (letter === 'G' && value === 4),
  );
  return harmless && statement.events.length === 0 ? mayBeSkipped(block) : moveMayBeSkipped(block);
};

/** A comment that ends in ... goes on in the next line; the stop behind it gets the whole of it. */
const carriedOn = (read: Extract<ReadLine, { kind: 'read' }>, comment: string): string =>
  read.line.words.length === 0 && comment.endsWith('...') ? comment.slice(0, -3).trimEnd() : '';

/** The lines of the text, without copying it. */
function* linesOf(text: string): Generator<{ readonly line: number; readonly source: string }> {
  let line = 1;
  let start = 0;
  while (start <= text.length) {
    let end = text.indexOf('\n', start);
    if (end < 0) end = text.length;
    const stop = end > start && text.charCodeAt(end - 1) === 13 ? end - 1 : end;
    yield { line, source: text.slice(start, stop) };
    line += 1;
    start = end + 1;
  }
}

const isBlank = (source: string): boolean => source.length === 0 || source.trim() === '';

const noWords: readonly Word[] = [];

interface LineRules {
  readonly dialect: Dialect;
  readonly own: DialectWords;
  readonly limits: ProgramLimits;
}

interface LinePlace {
  readonly line: number;
  readonly index: number;
  /** No block with words stands before: here the program may be given its number. */
  readonly atStart: boolean;
}

const readLine = (source: string, { line, index, atStart }: LinePlace, { dialect, own, limits }: LineRules): ReadLine => {
  const bare: Block = { index, line, text: source, comments: noWords as readonly never[] };
  if (source.length > limits.charactersInBlock) {
    return refusal({ ...bare, text: source.slice(0, 200) }, tooManyInBlock(bare, limits));
  }
  const split = splitLine(source, dialect.comments);
  if (split.kind === 'bad') return refusal(bare, faultOf(split, bare));
  const { words, comments } = split.line;
  const first = words[0];
  const numbered = first?.letter === 'N' && own.condition !== 'N';
  const plain: Block = numbered ? { index, line, text: source, sequence: first.value, comments } : { index, line, text: source, comments };
  const block: Block = split.line.skippable ? { ...plain, skippable: true } : plain;
  if (numbered && (!Number.isInteger(first.value) || first.value < 0 || first.value > LARGEST_SEQUENCE)) {
    return refusal(bare, sequenceBad(bare, first.value));
  }
  const said = numbered ? words.slice(1) : words;
  const [lead] = said;
  if (lead?.letter === 'O' && own.condition !== 'O' && !own.spellings.has('O')) {
    if (!atStart || said.length > 1) return refusal(block, subprogram(block));
    return { kind: 'read', block, statement: blankStatement(), line: { ...split.line, words: [] } };
  }
  const understood = understand(said, dialect, own);
  if (understood.kind === 'bad') return refusal(block, faultOf(understood, block));
  return { kind: 'read', block, statement: understood.statement, line: split.line };
};

const refusal = (block: Block, { finding }: ReadFault): ReadLine => ({ kind: 'refused', block, finding });

const tooManyCharacters = (characters: number, limits: ProgramLimits): Finding =>
  find(
    'program-too-long/characters',
    say`The program has ${{ characters: count(characters) }} characters; the limit is ${{ most: count(limits.characters) }}.`,
  );

const tooManyInBlock = (block: Block, { charactersInBlock }: ProgramLimits): ReadFault =>
  fault(
    'block-too-long',
    block,
    (named) =>
      say`${{ block: named }} has ${{ characters: count(block.text.length) }} characters; the limit is ${{ most: count(charactersInBlock) }}.`,
  );

const subprogram = (block: Block): ReadFault =>
  fault('subprogram', block, (named) => say`${{ block: named }} begins a subprogram, or another program, within this one.`, {
    remedy: say`Write out what the subprogram cuts, at every place where it is called, and give each program a file of its own.`,
  });

const sequenceBad = (block: Block, sequence: number): ReadFault =>
  fault(
    'sequence-number-bad',
    block,
    (named) =>
      say`${{ block: named }} has the sequence number ${{ number: term(`N${sequence}`) }}; it has to be a whole number from 0 to ${{ most: count(LARGEST_SEQUENCE) }}.`,
  );

const textAfterEnd = (line: number, source: string): Finding =>
  find('program-text-after-end', say`Line ${{ line: count(line) }} comes after the end of the program and is never run.`, {
    place: { kind: 'line', line, text: source.slice(0, 200) },
  });

const wordsBehindPercent = (line: number, source: string): Finding =>
  find(
    'words-behind-percent',
    say`Line ${{ line: count(line) }} has words behind the second % mark, where the program is over for some controls and goes on for others.`,
    {
      place: { kind: 'line', line, text: source.slice(0, 200) },
      remedy: say`Delete what stands behind the second % mark, or give it a file of its own.`,
    },
  );

const tooManyBlocks = (line: number, limits: ProgramLimits): Finding =>
  find('program-too-long/blocks', say`The program has more than ${{ most: count(limits.blocks, 'block') }}.`, {
    place: { kind: 'line', line },
  });

const mayBeSkipped = (block: Block): Finding =>
  at('block-may-be-skipped', block, (named) => say`${{ block: named }} starts with / and is run or skipped by a switch at the control.`, {
    done: say`It was read as if the switch were off, so that the block runs; a stop in it secures nothing.`,
  });

const moveMayBeSkipped = (block: Block): Finding =>
  at(
    'move-may-be-skipped',
    block,
    (named) => say`${{ block: named }} starts with / and does more than stop: run or skipped, the rest of the program is another one.`,
    { remedy: say`Take out the /, or the block.` },
  );

const endlessComment = (block: Block, limits: ProgramLimits): Finding =>
  at(
    'comment-bad/endless',
    block,
    (named) =>
      say`${{ block: named }} has a comment that goes on over more than ${{ most: count(limits.charactersInComment) }} characters.`,
  );

const endMissing = (blocks: readonly Block[]): Finding => {
  const last = blocks.at(-1);
  const remedy = say('program-end-missing.remedy')`Write M02 or M30 as the last block; a program without it may be cut short.`;
  if (last === undefined) return find('program-end-missing/empty', say`The program is empty.`, { remedy });
  return find('program-end-missing/ends', say`The program ends with ${{ block: namedWithin(last) }} and has no M02 or M30.`, {
    place: { kind: 'line', line: last.line, text: last.text.slice(0, 200) },
    remedy,
  });
};
