/** Looks at finished loops for what cannot be cut as drawn: crossing themselves or each other, touching, sharing an edge. */

import { widened } from '../../geometry/area.ts';
import { boundsOf } from '../../geometry/measure.ts';
import { boxIndexOf } from '../../geometry/near/box-index.ts';
import type { ChainContact } from '../../geometry/near/crossings.ts';
import { crossingsWith, selfCrossings } from '../../geometry/near/crossings.ts';
import type { Lookup } from '../../geometry/near/lookup.ts';
import { lookupOf } from '../../geometry/near/lookup.ts';
import { isFilled, itemAt, type NonEmpty } from '../../sequence/sequence.ts';
import type { FoundLoop } from '../piece/loop-found.ts';
import type { WorkLimit } from '../piece/work-limit.ts';
import { spend } from '../piece/work-limit.ts';

/** One loop against itself (`second` equal to `first`) or against another, by their numbers; contacts are seen from `first`. */
export interface Conflict {
  readonly first: number;
  readonly second: number;
  readonly contacts: NonEmpty<ChainContact>;
  /** The search was ended: there are more of them. */
  readonly endless: boolean;
}

/** @param within mm: what counts as touching */
export const conflictsOf = (loops: readonly FoundLoop[], within: number, work: WorkLimit): Conflict[] => {
  if (loops.length === 0) return [];
  const found: Conflict[] = [];
  const limit = { most: MOST_CROSSINGS, looked: (pairs: number) => spend(work, pairs) };
  loops.forEach((loop, i) => {
    spend(work, loop.contour.segments.length);
    const contacts = selfCrossings(loop.contour, within, limit);
    if (isFilled(contacts)) found.push({ first: i, second: i, contacts, endless: isEndless(contacts) });
  });
  const lookups = new Map<number, Lookup>();
  // Whom a tangle meets besides says nothing more, and would take as long as all its own crossings.
  const tangled = new Set(found.flatMap(({ first, endless }) => (endless ? [first] : [])));
  for (const [first, second] of nearPairs(loops, tangled, within, work)) {
    const shorterFirst = first.loop.contour.segments.length <= second.loop.contour.segments.length;
    const [small, large] = shorterFirst ? [first, second] : [second, first];
    const lookup = lookups.get(large.number) ?? lookupOf(large.loop.contour);
    lookups.set(large.number, lookup);
    spend(work, small.loop.contour.segments.length);
    const contacts = crossingsWith(small.loop.contour, lookup, large.loop.contour, within, limit);
    if (isFilled(contacts)) found.push({ first: small.number, second: large.number, contacts, endless: isEndless(contacts) });
  }
  return found;
};

const isEndless = (contacts: readonly ChainContact[]): boolean =>
  contacts.filter((c) => c.contact.kind === 'crossing').length >= MOST_CROSSINGS;

/** A loop that crosses itself so often cannot be cut, and it helps nobody to know of more. The first place, and the hundred others that are told. */
const MOST_CROSSINGS = 101;

interface NumberedLoop {
  readonly number: number;
  readonly loop: FoundLoop;
}

/** Pairs of loops of which some segments come near each other: one index over all segments keeps this short of all pairs. */
const nearPairs = (
  loops: readonly FoundLoop[],
  without: ReadonlySet<number>,
  within: number,
  work: WorkLimit,
): readonly (readonly [NumberedLoop, NumberedLoop])[] => {
  const owned = loops.flatMap((loop, owner) => (without.has(owner) ? [] : loop.contour.segments.map((segment) => ({ segment, owner }))));
  const index = boxIndexOf(owned, ({ segment }) => boundsOf(segment));
  const pairs = new Set<number>();
  for (const one of owned) {
    const near = index.search(widened(boundsOf(one.segment), within));
    spend(work, near.length);
    for (const other of near) if (other.owner > one.owner) pairs.add(one.owner * loops.length + other.owner);
  }
  const numbered = (number: number): NumberedLoop => ({ number, loop: itemAt(loops, number) });
  return [...pairs].sort((p, q) => p - q).map((pair) => [numbered(Math.floor(pair / loops.length)), numbered(pair % loops.length)]);
};
