/** Finds for each loop the smallest one around it. */

import { pointAt } from '../../geometry/measure.ts';
import { boxIndexOf } from '../../geometry/near/box-index.ts';
import type { Containment } from '../../geometry/near/inside.ts';
import { containsIn } from '../../geometry/near/inside.ts';
import type { Lookup } from '../../geometry/near/lookup.ts';
import { lookupOf } from '../../geometry/near/lookup.ts';
import { itemAt } from '../../sequence/sequence.ts';
import type { FoundLoop } from '../piece/loop-found.ts';
import type { WorkLimit } from '../piece/work-limit.ts';
import { spend } from '../piece/work-limit.ts';

export interface Nested {
  /** Number of the smallest loop around, -1 for none. */
  readonly parent: number;
  readonly depth: number;
}

/**
 * Loops that cross each other are not within each other; loops that touch may be. (`nest` in geometry takes loops that do not
 * cross: it asks one place of each, where here a drawing may still hold anything.)
 *
 * @param loops sorted by falling area
 * @param edge mm: what counts as on the edge
 */
export const nestingOf = (loops: readonly FoundLoop[], edge: number, work: WorkLimit): Nested[] => {
  const numbered = loops.map((loop, number) => ({ loop, number }));
  const index = boxIndexOf(numbered, ({ loop }) => loop.bounds);
  const lookups = new Map<number, Lookup>();
  const nested: Nested[] = [];
  loops.forEach((loop, i) => {
    const { minX, minY } = loop.bounds;
    // All boxes over one corner of this one, the smallest loop first: the first that holds it is its parent.
    const around = index
      .search(
        { minX: minX - edge, minY: minY - edge, maxX: minX + edge, maxY: minY + edge },
        (o) => o.number < i && covers(o.loop, loop, edge),
      )
      .sort((p, q) => q.number - p.number);
    spend(work, 1 + around.length);
    const parent = around.find((outer) => {
      const lookup = lookups.get(outer.number) ?? lookupOf(outer.loop.contour);
      lookups.set(outer.number, lookup);
      return isWithin(loop, lookup, edge);
    })?.number;
    nested.push(parent === undefined ? { parent: -1, depth: 0 } : { parent, depth: itemAt(nested, parent).depth + 1 });
  });
  return nested;
};

const covers = ({ bounds: a }: FoundLoop, { bounds: b }: FoundLoop, edge: number): boolean =>
  a.minX <= b.minX + edge && a.minY <= b.minY + edge && a.maxX >= b.maxX - edge && a.maxY >= b.maxY - edge;

/** Sixteen places of the loop or a few more: none may be outside and at least one must be inside. */
const isWithin = (loop: FoundLoop, lookup: Lookup, edge: number): boolean => {
  const { segments } = loop.contour;
  const stride = Math.max(1, Math.floor(segments.length / 16));
  const perSegment = Math.ceil(16 / segments.length);
  const seen = new Set<Containment>();
  for (let i = 0; i < segments.length; i += stride)
    for (let k = 0; k < perSegment; k += 1) {
      seen.add(containsIn(lookup, pointAt(itemAt(segments, i), (k + 0.5) / perSegment), edge));
      if (seen.has('outside')) return false;
    }
  return seen.has('inside');
};
