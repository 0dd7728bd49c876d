/** Start holes in the waste between two parts, where one suits both: as near to either as a lead should be, and with room round it. */

import type { Contour } from '../../geometry/contour.ts';
import { boundsOf, lengthOf } from '../../geometry/measure.ts';
import { closestBetween } from '../../geometry/near/closest.ts';
import { lookupOf, segmentsNear } from '../../geometry/near/lookup.ts';
import { midpoint, type Point } from '../../geometry/segment.ts';
import { itemAt } from '../../sequence/sequence.ts';
import type { Finding } from '../../text/finding.ts';
import { contour as loopNamed } from '../../text/part.ts';
import { say } from '../../text/say.ts';
import { find } from '../findings.ts';
import type { KeptLoop } from '../kept-side.ts';
import { type Near, nearestPlace, pairsNear } from '../near-pairs.ts';
import type { ContourPlan } from '../plan.ts';
import type { GivenHole } from '../question.ts';
import { spot } from '../said.ts';
import { type HoleRules, LEAD, roomFor } from './holes.ts';

/** By loop id: the hole to be shared with its nearest neighbour. Each part has one at most, the nearest pairs first. */
export const sharedHoles = (parts: readonly KeptLoop[], rules: HoleRules): ReadonlyMap<string, readonly GivenHole[]> => {
  const least = 2 * roomFor(rules.diameter, rules);
  const most = 2 * LEAD;
  const pairs = pairsNear(parts, most)
    .flatMap(([i, j]) => {
      const [a, b] = [itemAt(parts, i).loop, itemAt(parts, j).loop];
      const near = a.parent === b.parent ? nearestPlace(a.contour, b.contour, most) : undefined;
      return near === undefined || near.width < least
        ? []
        : [{ a: a.id, b: b.id, width: near.width, at: middleOf(a.contour, b.contour, near) }];
    })
    .toSorted((p, q) => p.width - q.width);
  const holes = new Map<string, readonly GivenHole[]>();
  for (const { a, b, at } of pairs) {
    if (holes.has(a) || holes.has(b)) continue;
    const hole = { at, diameter: rules.diameter };
    holes.set(a, [hole]);
    holes.set(b, [hole]);
  }
  return holes;
};

/** Two straight sides that face each other are as near all along: the middle of the longest such stretch is best. */
const middleOf = (a: Contour, b: Contour, near: Near): Point => {
  const other = lookupOf(b);
  let best = { at: near.at, length: 0 };
  for (const s of a.segments) {
    for (const { segment: t } of segmentsNear(other, boundsOf(s), near.width + SAME)) {
      if (s.kind === 'arc' || t.kind === 'arc') continue;
      const { distance, first, second } = closestBetween(s, t, 0);
      const length = Math.min(lengthOf(s), lengthOf(t));
      const inside = first.share > 0 && first.share < 1 && second.share > 0 && second.share < 1;
      if (inside && distance <= near.width + SAME && length > best.length) best = { at: midpoint(first.at, second.at), length };
    }
  }
  return best.at;
};

/** mm by which places that are equally near may differ. */
const SAME = 1e-6;

/** Said where two contours really are begun from one hole. */
export const sharedFindings = (contours: readonly ContourPlan[]): readonly Finding[] => {
  const first = new Map<string, ContourPlan>();
  return contours.flatMap((c) => {
    const key = `${c.hole.at.x} ${c.hole.at.y}`;
    const other = first.get(key);
    if (other === undefined) first.set(key, c);
    if (other === undefined || c.hole.origin === 'block edge') return [];
    const { x, y } = c.hole.at;
    return [
      find(
        'hole-shared',
        say`${{ one: loopNamed(other.loop) }} and ${{ other: loopNamed(c.loop) }} start from one hole, at ${{ at: spot({ x, y }) }}.`,
        { place: { kind: 'spot', x, y, reach: c.hole.diameter, loop: c.loop } },
      ),
    ];
  });
};
