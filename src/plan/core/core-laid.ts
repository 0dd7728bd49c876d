/** Burning an opening out, laid out for one shape: its rings, the way over them from a hole to the entry, and what that comes to. */

import type { Contour } from '../../geometry/contour.ts';
import { from } from '../../geometry/frame.ts';
import { lengthOf } from '../../geometry/measure.ts';
import { offsetContour } from '../../geometry/offset/offset.ts';
import { firstItem } from '../../sequence/sequence.ts';
import type { Layout } from '../path/contour-layout.ts';
import { facing } from '../path/leads.ts';
import type { NoCoreCut, StartHole } from '../plan.ts';
import { drilledRoom } from '../start/holes.ts';
import { type CoreAsked, type CoreDecision, type CoreNeeded, coreReason, isCheaper } from './core-choice.ts';
import { type CorePath, corePath } from './core-path.ts';
import { type Ring, ringsWithin } from './core-rings.ts';

export type RingsOf = { readonly kind: 'rings'; readonly rings: Ring } | { readonly kind: 'none'; readonly why: CoreNeeded };

/** @param opened what the rough cut is programmed on. @param offset of the rough cut. */
export const ringsOf = (opened: Contour, offset: number, kerf: number): RingsOf => {
  const outcome = offsetContour(opened, offset);
  const outermost = outcome.kind === 'offset' && outcome.contours.length === 1 ? firstItem(outcome.contours) : undefined;
  const found = outermost === undefined ? ({ kind: 'untraceable' } as const) : ringsWithin(outermost, kerf);
  if (found.kind === 'rings') return { kind: 'rings', rings: found.outermost };
  return { kind: 'none', why: found.kind === 'too many' ? 'tooMany' : 'untraceable' };
};

/** The way from a hole over all rings to in front of the entry of a layout. */
export const corePathFrom = (asked: {
  readonly layout: Layout;
  readonly rings: Ring;
  readonly hole: StartHole;
  readonly height: number;
}): CorePath | 'no way' => {
  const { layout, rings, hole, height } = asked;
  const rough = layout.laps[0];
  const entry = facing(rough, 0, 1);
  const path = corePath({
    outermost: rings,
    hole: hole.at,
    drilled: drilledRoom(hole.diameter, height),
    half: layout.measures.kerf / 2,
    over: from(entry, 0, rough.lap.offset),
    aside: entry.aside,
  });
  return path ?? 'no way';
};

/** What is told of it; none where it turns out dearer than the slug it was to save. */
export const noCoreOf = (
  asked: CoreAsked,
  rings: Ring,
  { segments }: CorePath,
  because: Extract<CoreDecision, { kind: 'no-core' }>['because'],
): NoCoreCut | undefined => {
  const length = segments.reduce((sum, s) => sum + lengthOf(s), 0);
  if (because === 'cheaper' && !isCheaper(asked, length)) return undefined;
  const bites = bitesOf(rings);
  return { rings: bites.length - 1, length, bites, kerf: asked.kerf, reason: coreReason(asked, because) };
};

/** Those inside before those around them. */
const bitesOf = (ring: Ring): readonly number[] => [...ring.inside.flatMap(bitesOf), ring.bite];
