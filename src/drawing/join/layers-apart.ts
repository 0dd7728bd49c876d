/** Finds layers that make whole loops by themselves where lines of several layers meet: those are joined apart from all others. */

import type { Point } from '../../geometry/segment.ts';
import { grouped, isFilled, type NonEmpty } from '../../sequence/sequence.ts';
import type { DrawnPiece } from '../piece/piece.ts';
import type { JoinedLoose } from './loose.ts';

/** What was joined apart, and where it meets the rest. */
export interface LayersApart {
  /** Each of them makes whole loops by itself. */
  readonly whole: NonEmpty<string>;
  /** Others that meet them there. */
  readonly others: readonly string[];
  readonly places: NonEmpty<Point>;
}

export interface Separated {
  readonly groups: readonly (readonly DrawnPiece[])[];
  readonly apart: LayersApart;
}

/**
 * Where three or more ends meet and are of several layers, a layer that closes by itself says what belongs together better than the
 * faces that all of them divide the plane into: an outline and a centre line from corner to corner of it, or one part laid over another.
 *
 * @param together what all pieces make. @param alone joins some of them by themselves
 */
export const separatedLayers = (
  pieces: readonly DrawnPiece[],
  together: JoinedLoose,
  alone: (some: readonly DrawnPiece[]) => JoinedLoose,
): Separated | undefined => {
  const mixed = together.branches.filter((b) => !b.settled && b.layers.length > 1);
  const met = [...new Set(mixed.flatMap((b) => b.layers))].sort();
  const places = mixed.map((b) => b.at);
  if (!isFilled(places)) return undefined;
  const byLayer = grouped(pieces, (piece) => piece.layer);
  const whole = met.filter((layer) => isWhole(alone(byLayer.get(layer) ?? [])));
  if (!isFilled(whole)) return undefined;
  const rest = pieces.filter((piece) => !whole.includes(piece.layer));
  const groups = [...whole.map((layer) => byLayer.get(layer) ?? []), rest].filter(isFilled);
  return { groups, apart: { whole, others: met.filter((layer) => !whole.includes(layer)), places } };
};

const isWhole = ({ loops, chains, branches }: JoinedLoose): boolean =>
  loops.length > 0 && chains.length === 0 && branches.every((b) => b.settled);
