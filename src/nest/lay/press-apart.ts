/**
 * Drives overlapping pieces apart: each in turn moves to where it overlaps the others least, and pairs that go on overlapping
 * weigh more with every round, so that none is left out. A guided local search; the idea is common in the literature on nesting.
 * Weights are numbers in a long array: `!` stands where one of those is read.
 */

import { itemAt } from '../../sequence/sequence.ts';
import type { Text } from '../../text/text.ts';
import { type CountedWork, goesOn } from '../counted-work.ts';
import { bestInRow, type CellPlace, type Crowd, putIn, sharedCells, type Tried, takeOut } from './crowd.ts';
import { type Chance, shuffled } from './seeded-random.ts';

export interface Parting {
  /** The first column that must stay free. */
  readonly limit: number;
  /** Rounds without less overlap after which it is given up. */
  readonly patience: number;
  readonly note: Text;
}

/** Spots tried by chance for each move, besides those near the present one. */
const TRIES = 4;
/** Weights of overlapping pairs grow by this to that factor, by how much they overlap; others shrink back. */
const GROWTH = { least: 1.2, more: 0.8, back: 0.95 };

/** Moves the pieces that are in the crowd at `spots`; true when none overlaps any more. The spots are changed in place. */
export const part = (crowd: Crowd, spots: CellPlace[], parting: Parting, chance: Chance, work: CountedWork): boolean => {
  const shared = new Float64Array(crowd.weights.length);
  crowd.weights.fill(1);
  let lowest = Infinity;
  for (let since = 0; since < parting.patience && goesOn(work, parting.note); since += 1) {
    const total = sharedCells(crowd, shared, work);
    if (total === 0) return true;
    if (total < lowest * 0.98) {
      lowest = total;
      since = 0;
    }
    for (const piece of shuffled(overlapping(spots.length, shared), chance)) {
      const now = itemAt(spots, piece);
      takeOut(crowd, piece, now);
      const best = bestSpot(crowd, piece, now, parting.limit, chance, work);
      spots[piece] = best;
      putIn(crowd, piece, best);
    }
    sharedCells(crowd, shared, work);
    reweigh(crowd.weights, shared);
  }
  return false;
};

/** The pieces that share a cell with another. */
const overlapping = (pieces: number, shared: Float64Array): readonly number[] => {
  const count = pieces + 1;
  const found: number[] = [];
  for (let i = 0; i < pieces; i += 1) if (shared.subarray(i * count, (i + 1) * count).some((cells) => cells > 0)) found.push(i);
  return found;
};

/** The best of the present row, of some rows by chance, and of what lies above and below the best of these. */
const bestSpot = (crowd: Crowd, piece: number, now: CellPlace, limit: number, chance: Chance, work: CountedWork): CellPlace => {
  const { ways } = itemAt(crowd.items, piece);
  let best: Tried = bestInRow(crowd, piece, now.way, now.y, limit, work);
  for (let k = 0; k < TRIES; k += 1) {
    const way = Math.floor(chance() * ways.length);
    const y = Math.floor(chance() * (crowd.grid.high - itemAt(ways, way).high + 1));
    best = better(best, bestInRow(crowd, piece, way, y, limit, work));
  }
  for (let step = 4; step >= 1 && best.overlap > 0; ) {
    const up = better(best, bestInRow(crowd, piece, best.way, best.y + step, limit, work));
    const next = up === best ? better(best, bestInRow(crowd, piece, best.way, best.y - step, limit, work)) : up;
    if (next === best) step = Math.floor(step / 2);
    best = next;
  }
  return best.overlap === Infinity ? now : best;
};

const better = (best: Tried, other: Tried): Tried => (other.overlap < best.overlap - 1e-9 ? other : best);

const reweigh = (weights: Float64Array, shared: Float64Array): void => {
  const most = shared.reduce((a, b) => Math.max(a, b), 0);
  for (let k = 0; k < weights.length; k += 1) {
    const [cells, weight] = [shared[k]!, weights[k]!];
    weights[k] = cells > 0 ? weight * (GROWTH.least + (GROWTH.more * cells) / most) : Math.max(1, weight * GROWTH.back);
  }
};
