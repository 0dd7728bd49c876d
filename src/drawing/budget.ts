/** The limits of one reading, counted rather than timed so that the same file always ends in the same way. */

import { count } from '../text/part.ts';
import { phrases, say } from '../text/say.ts';
import type { Text } from '../text/text.ts';
import type { ReadLimits } from './drawing.ts';
import type { Ledger } from './ledger.ts';

/** What a drawing may need at most unless the caller says otherwise: far beyond any part a shop cuts. */
export const usualLimits: ReadLimits = { bytes: 256_000_000, entities: 1_000_000, nesting: 64, work: 10_000_000 };

export interface Budget {
  /** True once a limit was passed: stop reading and hand out nothing. */
  readonly spent: () => boolean;
  /** Each returns false when the limit is passed, having told so. */
  readonly bytes: (count: number) => boolean;
  readonly entity: () => boolean;
  /** The same before the work is done, for what is known to be coming. */
  readonly expected: (pieces: number, steps: number) => boolean;
  readonly nesting: (depth: number) => boolean;
  readonly work: (steps: number) => boolean;
}

export const budget = (limits: ReadLimits, told: Ledger): Budget => {
  let over = false;
  let entities = 0;
  let steps = 0;
  const refuse = (code: Parameters<Ledger['add']>[0], sentence: Text, remedy: Text): false => {
    if (!over) told.add(code, sentence, { done: words.nothingRead, remedy });
    over = true;
    return false;
  };
  const tooMany = (): false =>
    refuse(
      'too-many-entities',
      say`The drawing has more than ${{ limit: count(limits.entities) }} pieces once its blocks are drawn out.`,
      words.onlyWhatIsCut,
    );
  const tooMuch = (): false =>
    refuse(
      'too-much-work',
      say('too-much-work/reading')`Reading the drawing needs more than ${{ limit: count(limits.work) }} steps.`,
      words.noArrays,
    );
  return {
    spent: () => over,
    bytes: (given) =>
      given <= limits.bytes ||
      refuse(
        'file-too-large',
        say`The file has ${{ bytes: count(given) }} bytes; the limit is ${{ limit: count(limits.bytes) }}.`,
        words.onlyLayersCut,
      ),
    entity: () => ++entities <= limits.entities || tooMany(),
    expected: (pieces, coming) => (pieces <= limits.entities || tooMany()) && (coming <= limits.work || tooMuch()),
    nesting: (depth) =>
      depth <= limits.nesting ||
      refuse(
        'nested-too-deep',
        say`Blocks or groups lie more than ${{ limit: count(limits.nesting) }} deep within each other.`,
        words.explode,
      ),
    work: (taken) => {
      steps += taken;
      return steps <= limits.work || tooMuch();
    },
  };
};

const words = phrases('reading-limits', {
  nothingRead: say`Nothing was read.`,
  onlyWhatIsCut: say`Save only what is to be cut.`,
  noArrays: say`Explode large arrays of blocks and save only what is to be cut.`,
  onlyLayersCut: say`Save only the layers and blocks that are to be cut.`,
  explode: say`Explode the blocks, or ungroup, and save again.`,
});
