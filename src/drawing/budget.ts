/** The limits of one reading, counted rather than timed so that the same file always ends in the same way. */
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
  const refuse = (code: Parameters<Ledger['add']>[0], sentence: string, remedy: string): false => {
    if (!over) told.add(code, sentence, { done: 'Nothing was read.', remedy });
    over = true;
    return false;
  };
  const tooMany = (): false =>
    refuse(
      'too-many-entities',
      `The drawing has more than ${limits.entities} pieces once its blocks are drawn out.`,
      'Save only what is to be cut.',
    );
  const tooMuch = (): false =>
    refuse(
      'too-much-work',
      `Reading the drawing needs more than ${limits.work} steps.`,
      'Explode large arrays of blocks and save only what is to be cut.',
    );
  return {
    spent: () => over,
    bytes: (count) =>
      count <= limits.bytes ||
      refuse(
        'file-too-large',
        `The file has ${count} bytes; the limit is ${limits.bytes}.`,
        'Save only the layers and blocks that are to be cut.',
      ),
    entity: () => ++entities <= limits.entities || tooMany(),
    expected: (pieces, coming) => (pieces <= limits.entities || tooMany()) && (coming <= limits.work || tooMuch()),
    nesting: (depth) =>
      depth <= limits.nesting ||
      refuse(
        'nested-too-deep',
        `Blocks or groups lie more than ${limits.nesting} deep within each other.`,
        'Explode the blocks, or ungroup, and save again.',
      ),
    work: (count) => {
      steps += count;
      return steps <= limits.work || tooMuch();
    },
  };
};
