/**
 * Union, difference and the like of contours, arcs kept as arcs. All contours are cut where they meet; a piece stays where
 * the inside changes across it, which the winding numbers on both sides tell; pieces that stay are followed round.
 */
import { areaOf } from '../area.ts';
import { reverseChain } from '../chain.ts';
import { type Contour, contour } from '../contour.ts';
import { reverse } from '../cut.ts';
import { pointAt, tangentAt } from '../measure.ts';
import { windingIn } from '../near/inside.ts';
import { type Lookup, lookupOfSegments } from '../near/lookup.ts';
import type { Point } from '../segment.ts';
import { simplify } from '../simplify.ts';
import { type CutPiece, cutPieces } from './cut-pieces.ts';
import { followed } from './follow.ts';

/** Contours run counter-clockwise round what is inside and clockwise round holes; `broken` where rounding left a piece without a next one. */
export type Combined =
  | { readonly kind: 'combined'; readonly contours: readonly Contour[] }
  | { readonly kind: 'broken'; readonly at: Point };

/**
 * What `isInside` says is inside, told by how often the contours of each group run round a place.
 *
 * @param within mm: what is this near is one place. 1e-6 suits drawings. Where contours graze each other by just that much, pieces
 * and their sides can contradict each other: a tenth, ten times and a hundredth of it are tried then.
 */
export const combine = (groups: readonly (readonly Contour[])[], isInside: IsInside, within: number): Combined => {
  if (groups.every((g) => g.length === 0)) return { kind: 'combined', contours: [] };
  let outcome = combinedWithin(groups, isInside, within);
  for (const factor of [0.1, 10, 0.01]) {
    if (outcome.kind === 'combined') break;
    outcome = combinedWithin(groups, isInside, factor * within);
  }
  return outcome;
};

/** What lies inside any of the contours, whichever way round they run against each other: places wound round by none are outside. */
export const united = (contours: readonly Contour[], within: number): Combined => combine([contours], ([w]) => w !== 0, within);

/** The first without the second. */
export const without = (contours: readonly Contour[], taken: readonly Contour[], within: number): Combined =>
  combine([contours, taken], ([w, t]) => w !== 0 && t === 0, within);

type IsInside = (windings: readonly number[]) => boolean;

const combinedWithin = (groups: readonly (readonly Contour[])[], isInside: IsInside, within: number): Combined => {
  const lookups = groups.map((g) => (g.length === 0 ? undefined : lookupOfSegments(g.flatMap((c) => c.segments))));
  const { whole, pieces } = cutPieces(groups.flat(), within);
  const sideOf = (p: CutPiece | Contour): Side => sideHeld(middleOf(p), lookups, isInside, within);
  const kept = whole.flatMap((c) => {
    const side = sideOf(c);
    return side === 'none' ? [] : [side === 'left' ? c : reverseChain(c)];
  });
  const edges = pieces.flatMap((p): CutPiece[] => {
    const side = sideOf(p);
    if (side === 'none') return [];
    return [side === 'left' ? p : { segment: reverse(p.segment), from: p.to, to: p.from }];
  });
  const walked = followed(edges);
  if (walked.kind === 'broken') return walked;
  const joined = walked.rounds.map((r) => simplify(contour(r), within / 10)).filter((c) => Math.abs(areaOf(c)) > within * within);
  return { kind: 'combined', contours: [...kept, ...joined] };
};

type Side = 'left' | 'right' | 'none';

const middleOf = (p: CutPiece | Contour): { readonly at: Point; readonly along: Point } => {
  const segment = 'closed' in p ? p.segments[0] : p.segment;
  return { at: pointAt(segment, 0.5), along: tangentAt(segment, 0.5) };
};

/** On which side of a piece the inside lies, where it lies on one of them only. Looked at a few tolerances off the piece. */
const sideHeld = (
  { at, along }: { readonly at: Point; readonly along: Point },
  lookups: readonly (Lookup | undefined)[],
  isInside: IsInside,
  within: number,
): Side => {
  const off = OFF * within;
  const inside = [1, -1].map((way) => {
    const p = { x: at.x - way * off * along.y, y: at.y + way * off * along.x };
    return isInside(lookups.map((l) => (l === undefined ? 0 : windingIn(l, p))));
  });
  return inside[0] === inside[1] ? 'none' : inside[0] ? 'left' : 'right';
};

const OFF = 3;
