/** Foresees how much a drawing grows when its blocks are drawn out, so that a bomb is refused before it goes off. */
import type { Block, EntityRecord } from './records.ts';

export interface Forecast {
  /** Lines, arcs, curves and points. */
  readonly pieces: number;
  /** These and every copy of a block, empty ones too. */
  readonly steps: number;
}

/** Each block is counted once. A block within itself counts as nothing there, as it is not drawn there. */
export const forecastOf = (model: readonly EntityRecord[], blocks: ReadonlyMap<string, Block>): Forecast => {
  const known = new Map<string, Forecast>();
  const ofBlock = (key: string, depth: number): Forecast => {
    const block = blocks.get(key);
    // Deeper than any limit: drawing will refuse it.
    if (block === undefined || depth > DEEP) return NOTHING;
    const before = known.get(key);
    if (before !== undefined) return before;
    known.set(key, NOTHING);
    const sum = ofRecords(block.records, depth);
    known.set(key, sum);
    return sum;
  };
  const ofRecords = (records: readonly EntityRecord[], depth: number): Forecast => {
    let [pieces, steps] = [0, 0];
    for (const record of records) {
      if (record.kind === 'shape') {
        const count = record.flat.length + record.space.length;
        pieces += count;
        steps += 1 + count;
      } else if (record.kind === 'insert') {
        const copies = record.columns * record.rows;
        const inner = ofBlock(record.key, depth + 1);
        pieces += copies * inner.pieces;
        steps += copies * (COPY_STEPS + inner.steps);
      } else {
        pieces += 1;
        steps += 1;
      }
    }
    return { pieces, steps };
  };
  return ofRecords(model, 0);
};

/** Placing one copy of a block, even of an empty one, costs about as much as so many pieces. */
export const COPY_STEPS = 4;

const NOTHING: Forecast = { pieces: 0, steps: 0 };
const DEEP = 500;
