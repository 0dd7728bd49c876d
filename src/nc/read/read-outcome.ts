/** The two ways in which any step of reading ends: it is done, or a rule was broken and this is the finding. */
import type { Finding } from '../../text/finding.ts';
import { find, type ReadCode } from './findings.ts';
import type { Block } from './program.ts';

export interface Fault {
  readonly kind: 'fault';
  readonly finding: Finding;
}

export type Outcome = { readonly kind: 'done' } | Fault;

export const done: Outcome = { kind: 'done' };

/** How a block is called in a sentence: by its sequence number where it has one, by its line always. */
export const named = (block: Block): string =>
  block.sequence === undefined ? `The block in line ${block.line}` : `Block N${block.sequence} (line ${block.line})`;

/** A finding that stands at a block; the sentence goes on after the block's name. */
export const at = (block: Block, code: ReadCode, predicate: string, remedy?: string): Finding =>
  find(code, `${named(block)} ${predicate}.`, {
    place: { kind: 'line', line: block.line, text: block.text.slice(0, 200) },
    ...(remedy === undefined ? {} : { remedy }),
  });

export const fault = (block: Block, code: ReadCode, predicate: string, remedy?: string): Fault => ({
  kind: 'fault',
  finding: at(block, code, predicate, remedy),
});
