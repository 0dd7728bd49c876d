/** Takes off open chains what runs along a closed loop, and tells which chains end on a loop. */

import type { Contour } from '../../geometry/contour.ts';
import type { Lookup } from '../../geometry/near/lookup.ts';
import { lookupOfSegments, nearestIn } from '../../geometry/near/lookup.ts';
import type { Point } from '../../geometry/segment.ts';
import { firstItem, lastItem } from '../../sequence/sequence.ts';
import type { Doubled } from '../piece/doubled-pieces.ts';
import type { Step } from '../piece/piece.ts';
import { fromOf, pieceAt, pieceLength, toOf } from '../piece/piece.ts';

export interface Stripped {
  readonly chains: readonly (readonly Step[])[];
  readonly doubled: readonly Doubled[];
  /** Chains that start on a loop and were drawn there and back: the outline went out of its way and returned. */
  readonly spurs: readonly (readonly Step[])[];
  /** Of each chain, those of its ends that lie on a loop. */
  readonly ending: readonly (readonly Point[])[];
}

/** @param within mm: this near to a loop all along is on it */
export const stripChains = (chains: readonly (readonly Step[])[], loops: readonly Contour[], within: number): Stripped => {
  const segments = loops.flatMap((loop) => loop.segments);
  if (segments.length === 0 || chains.length === 0) return { chains, doubled: [], spurs: [], ending: chains.map(() => []) };
  const lookup = lookupOfSegments(segments);
  const doubled: Doubled[] = [];
  const left: Step[][] = [];
  for (const chain of chains) {
    let run: Step[] = [];
    for (const step of chain) {
      if (!liesOn(lookup, step, within)) run.push(step);
      else {
        doubled.push({ at: pieceAt(step.piece, 0.5), size: pieceLength(step.piece), copies: 1 });
        if (run.length > 0) left.push(run);
        run = [];
      }
    }
    if (run.length > 0) left.push(run);
  }
  const ends = (chain: readonly Step[]): Point[] =>
    [startOf(firstItem(chain)), endOf(lastItem(chain))].filter((p) => isOn(lookup, p, within));
  const isSpur = (chain: readonly Step[]): boolean => chain.every((step) => step.piece.copied) && ends(chain).length > 0;
  const chainsLeft = left.filter((chain) => !isSpur(chain));
  return { chains: chainsLeft, doubled, spurs: left.filter(isSpur), ending: chainsLeft.map(ends) };
};

export const startOf = ({ piece, forward }: Step): Point => (forward ? fromOf(piece) : toOf(piece));

export const endOf = ({ piece, forward }: Step): Point => (forward ? toOf(piece) : fromOf(piece));

/** Eight places of the piece, both ends among them. */
const liesOn = (lookup: Lookup, { piece }: Step, within: number): boolean => {
  for (const share of [0, 0.5, 1, 0.25, 0.75, 0.13, 0.37, 0.91]) if (!isOn(lookup, pieceAt(piece, share), within)) return false;
  return true;
};

const isOn = (lookup: Lookup, p: Point, within: number): boolean => {
  const b = lookup.bounds;
  if (p.x < b.minX - within || p.x > b.maxX + within || p.y < b.minY - within || p.y > b.maxY + within) return false;
  return nearestIn(lookup, p).distance <= within;
};
