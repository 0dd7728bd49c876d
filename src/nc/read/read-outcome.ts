/** The two ways in which any step of reading ends: it is done, or a rule was broken and this is the finding. */
import type { Finding } from '../../text/finding.ts';
import { count, term } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { find, type ReadCode } from './findings.ts';
import type { Block } from './program.ts';

export interface ReadFault {
  readonly kind: 'fault';
  readonly finding: Finding;
}

export type BlockOutcome = { readonly kind: 'done' } | ReadFault;

export const done: BlockOutcome = { kind: 'done' };

/** A code, and which of its sentences where it has several. */
export type Key = ReadCode | `${ReadCode}/${string}`;

/** What is said of a block, by the words that name it. */
export type SaidOf = (block: Text) => Text;

/** What may be said beside it. */
export interface Beside {
  readonly remedy?: Text | undefined;
  readonly done?: Text | undefined;
}

const words = phrases('program-block', {
  inLine: (line: number) => say`The block in line ${{ line: count(line) }}`,
  numbered: (n: number, line: number) => say`Block ${{ number: term(`N${n}`) }} (line ${{ line: count(line) }})`,
  inLineWithin: (line: number) => say`the block in line ${{ line: count(line) }}`,
  numberedWithin: (n: number, line: number) => say`block ${{ number: term(`N${n}`) }} (line ${{ line: count(line) }})`,
  other: (line: number) => say`block in line ${{ line: count(line) }}`,
});

/** How a block is called at the head of a sentence: by its sequence number where it has one, by its line always. */
const named = ({ sequence, line }: Block): Text => (sequence === undefined ? words.inLine(line) : words.numbered(sequence, line));

/** How it is called within a sentence. */
export const namedWithin = ({ sequence, line }: Block): Text =>
  sequence === undefined ? words.inLineWithin(line) : words.numberedWithin(sequence, line);

/** How it is called behind a sentence, in brackets. */
export const namedBehind = ({ sequence, line }: Block): Text =>
  sequence === undefined ? words.other(line) : words.numberedWithin(sequence, line);

/** A finding that stands at a block. */
export const at = (key: Key, block: Block, said: SaidOf, beside: Beside = {}): Finding =>
  find(key, said(named(block)), { ...beside, place: { kind: 'line', line: block.line, text: block.text.slice(0, 200) } });

export const fault = (key: Key, block: Block, said: SaidOf, beside?: Beside): ReadFault => ({
  kind: 'fault',
  finding: at(key, block, said, beside),
});

/** A broken rule, found where the block itself is not known. */
export interface Broken extends Beside {
  readonly kind: 'bad';
  readonly key: Key;
  readonly said: SaidOf;
}

export const broken = (key: Key, said: SaidOf, beside: Beside = {}): Broken => ({ kind: 'bad', key, said, ...beside });

export const faultOf = ({ key, said, ...beside }: Broken, block: Block): ReadFault => fault(key, block, said, beside);
