/** What a wire that keeps a given distance leaves of a wanted contour: inside corners rounded, necks it cannot pass lost. */

import type { Contour } from '../../geometry/contour.ts';
import { close, open } from '../../geometry/offset/opening.ts';
import type { Point } from '../../geometry/segment.ts';
import { firstItem } from '../../sequence/sequence.ts';
import type { Kept } from '../plan.ts';
import type { NotFollowed } from './not-followed.ts';

export type Opened =
  | { readonly kind: 'whole'; readonly contour: Contour }
  /** The wire cannot pass a neck: this is what it would leave. */
  | { readonly kind: 'parts'; readonly contours: readonly Contour[] }
  | { readonly kind: 'vanished'; readonly widest: number; readonly at: Point }
  /** The drawing layer lets no such contour through. */
  | { readonly kind: 'unsound'; readonly why: NotFollowed; readonly at: Point };

/** The contour counter-clockwise; `distance` mm from the wire centre to the wanted surface. */
export const openedBy = (contour: Contour, kept: Kept, distance: number): Opened => {
  const outcome = kept === 'die' ? open(contour, distance) : close(contour, distance);
  if (outcome.kind === 'vanished') return { kind: 'vanished', widest: outcome.widest, at: outcome.at };
  if (outcome.kind === 'self-crossing') return { kind: 'unsound', why: 'crosses itself', at: outcome.places[0].at };
  if (outcome.kind === 'unsound') return { kind: 'unsound', why: outcome.what, at: outcome.at };
  const contours = outcome.regions.flatMap((r) => [r.outer, ...r.holes]);
  return contours.length === 1 ? { kind: 'whole', contour: firstItem(contours) } : { kind: 'parts', contours };
};
