/** Looks at finished loops for what cannot be cut as drawn: crossing themselves or each other, touching, sharing an edge. */

import { widened } from '../../geometry/area.ts';
import { boundsOf } from '../../geometry/measure.ts';
import { boxIndexOf } from '../../geometry/near/box-index.ts';
import type { ChainContact } from '../../geometry/near/crossings.ts';
import { crossingsWith, selfCrossings } from '../../geometry/near/crossings.ts';
import type { Lookup } from '../../geometry/near/lookup.ts';
import { lookupOf } from '../../geometry/near/lookup.ts';
import type { FoundLoop } from '../piece/loop-found.ts';
import type { Work } from '../piece/work-limit.ts';
import { spend } from '../piece/work-limit.ts';

/** One loop against itself (`second` equal to `first`) or against another, by their numbers; contacts are seen from `first`. */
export interface Conflict {
  readonly first: number;
  readonly second: number;
  readonly contacts: readonly ChainContact[];
}

/** @param within mm: what counts as touching */
export const conflictsOf = (loops: readonly FoundLoop[], within: number, work: Work): Conflict[] => {
  if (loops.length === 0) return [];
  const found: Conflict[] = [];
  loops.forEach((loop, i) => {
    spend(work, loop.contour.segments.length);
    const contacts = selfCrossings(loop.contour, within);
    if (contacts.length > 0) found.push({ first: i, second: i, contacts });
  });
  const lookups = new Map<number, Lookup>();
  for (const [first, second] of neighbours(loops, within, work)) {
    const [small, large] =
      loops[first]!.contour.segments.length <= loops[second]!.contour.segments.length ? [first, second] : [second, first];
    const lookup = lookups.get(large) ?? lookupOf(loops[large]!.contour);
    lookups.set(large, lookup);
    spend(work, loops[small]!.contour.segments.length);
    const contacts = crossingsWith(loops[small]!.contour, lookup, loops[large]!.contour, within);
    if (contacts.length > 0) found.push({ first: small, second: large, contacts });
  }
  return found;
};

/** Pairs of loops of which some segments come near each other: one index over all segments keeps this short of all pairs. */
const neighbours = (loops: readonly FoundLoop[], within: number, work: Work): [number, number][] => {
  const owned = loops.flatMap((loop, owner) => loop.contour.segments.map((segment) => ({ segment, owner })));
  const index = boxIndexOf(owned, ({ segment }) => boundsOf(segment));
  const pairs = new Set<number>();
  for (const one of owned) {
    const near = index.search(widened(boundsOf(one.segment), within));
    spend(work, near.length);
    for (const other of near) if (other.owner > one.owner) pairs.add(one.owner * loops.length + other.owner);
  }
  return [...pairs].sort((p, q) => p - q).map((pair) => [Math.floor(pair / loops.length), pair % loops.length]);
};
