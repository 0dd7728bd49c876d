/** Spots on a contour where it might be begun: on straight or at least smooth stretches, with how far the next corners are. */

import { turnBetween } from '../../geometry/angle.ts';
import { centroidOf } from '../../geometry/area.ts';
import type { Contour } from '../../geometry/contour.ts';
import { besides } from '../../geometry/frame.ts';
import { endDirection, lengthOf, pointAt, startDirection, tangentAt } from '../../geometry/measure.ts';
import type { Point, Segment } from '../../geometry/segment.ts';
import { itemAt, roundPairs } from '../../sequence/sequence.ts';
import type { Kept } from '../plan.ts';

export interface EntryPlace {
  readonly segment: number;
  readonly share: number;
  readonly at: Point;
  /** Unit vector forward along the contour, and to the wire's side. */
  readonly along: Point;
  readonly aside: Point;
  readonly straight: boolean;
  /** mm along the contour to the corner before and after. */
  readonly back: number;
  readonly ahead: number;
}

/** What must lie on one smooth stretch: `back` before the entry (the tab), `ahead` after it, each with its way to a corner. */
export interface StretchWanted {
  readonly back: number;
  readonly ahead: number;
  /** Arcs that curve towards the wire with less radius than this count as corners. */
  readonly tightest: number;
}

/** A joint that turns by more than this (rad) is a corner. */
const CORNER = 0.05;

/** How many segments are looked at, the longest straight ones first, and how many of those furthest out where a part has them. */
export interface Effort {
  readonly segments: number;
  /** Such as the tips of teeth, where the waste around is open. */
  readonly outward: number;
}

/** Nearly always enough. */
export const QUICK: Effort = { segments: 12, outward: 8 };

/** Before a contour is given up. */
export const THOROUGH: Effort = { segments: 80, outward: 40 };

export const spotsOf = (contour: Contour, kept: Kept, wanted: StretchWanted, effort: Effort, towards?: Point): readonly EntryPlace[] => {
  const side = kept === 'die' ? 1 : -1;
  const walls = wallsOf(contour, side, wanted.tightest);
  const all = contour.segments.map((s, i) => ({ s, i, length: lengthOf(s) }));
  const smooth = all.filter(({ s, length }) => length > LEAST_LENGTH && !isTight(s, side, wanted.tightest));
  const usable = smooth.length > 0 ? smooth : all;
  const best = usable.toSorted((a, b) => rank(b.s, b.length, wanted, towards) - rank(a.s, a.length, wanted, towards) || a.i - b.i);
  const outward = kept === 'punch' && usable.length > effort.segments ? mostOutward(usable, centroidOf(contour)) : [];
  const chosen = new Set([...best.slice(0, effort.segments), ...outward.slice(0, effort.outward)]);
  return [...chosen].flatMap(({ s, i, length }) =>
    sharesOf(s, length, wanted, towards).map((share) => spotAt({ s, i, length }, share, walls, side)),
  );
};

/** The spot at a place that somebody chose, good or bad. */
export const spotAtPlace = (
  contour: Contour,
  kept: Kept,
  { tightest }: StretchWanted,
  { segment, share }: { readonly segment: number; readonly share: number },
): EntryPlace => {
  const side = kept === 'die' ? 1 : -1;
  const s = itemAt(contour.segments, segment);
  return spotAt({ s, i: segment, length: lengthOf(s) }, share, wallsOf(contour, side, tightest), side);
};

/** Nothing is begun on a segment shorter than this, mm, while there are longer ones. */
const LEAST_LENGTH = 0.05;

interface Usable {
  readonly s: Segment;
  readonly i: number;
  readonly length: number;
}

const mostOutward = (usable: readonly Usable[], middle: Point): readonly Usable[] => {
  const out = ({ s }: Usable): number => {
    const p = pointAt(s, 0.5);
    return Math.hypot(p.x - middle.x, p.y - middle.y);
  };
  return usable.toSorted((a, b) => out(b) - out(a) || a.i - b.i);
};

const isTight = (s: Segment, side: number, tightest: number): boolean =>
  s.kind === 'arc' && Math.sign(s.sweep) === side && s.radius < tightest;

/** Long and straight is best; length beyond what is wanted is worth nothing; with a hole given, near it. */
const rank = (s: Segment, length: number, wanted: StretchWanted, towards: Point | undefined): number => {
  const enough = Math.min(1, length / (wanted.back + wanted.ahead));
  const straight = s.kind === 'line' ? 1 : 0;
  if (towards === undefined) return enough + straight + length * 1e-6;
  const middle = pointAt(s, 0.5);
  return enough + straight - Math.max(0, Math.hypot(middle.x - towards.x, middle.y - towards.y) - length / 2) * 0.05;
};

/** Spots with room behind and ahead: the middle of what is allowed, its ends, and the foot of the hole where one is given. */
const sharesOf = (s: Segment, length: number, wanted: StretchWanted, towards: Point | undefined): readonly number[] => {
  const low = wanted.back / length;
  const high = 1 - wanted.ahead / length;
  if (low >= high) {
    const share = wanted.back / (wanted.back + wanted.ahead);
    return [share];
  }
  const shares = [(low + high) / 2, low + (high - low) * 0.02, high - (high - low) * 0.02];
  if (towards === undefined || s.kind !== 'line') return shares;
  const along = tangentAt(s, 0);
  const foot = ((towards.x - s.from.x) * along.x + (towards.y - s.from.y) * along.y) / length;
  return [Math.min(high, Math.max(low, foot)), ...shares];
};

const spotAt = ({ s, i: segment, length }: Usable, share: number, walls: Walls, side: 1 | -1): EntryPlace => ({
  segment,
  share,
  at: pointAt(s, share),
  along: tangentAt(s, share),
  aside: besides(tangentAt(s, share), side),
  straight: s.kind === 'line',
  back: itemAt(walls.back, segment) + share * length,
  ahead: itemAt(walls.ahead, segment) + (1 - share) * length,
});

interface Walls {
  /** Per segment, mm from its start back to the nearest corner, and from its end ahead; infinite where there is no corner. */
  readonly back: readonly number[];
  readonly ahead: readonly number[];
}

const wallsOf = (contour: Contour, side: number, tightest: number): Walls => {
  const { segments } = contour;
  const count = segments.length;
  const corner = roundPairs(segments).map(([s, next]) => {
    const u = endDirection(s);
    const v = startDirection(next);
    return Math.abs(turnBetween(u.x, u.y, v.x, v.y)) > CORNER || isTight(s, side, tightest) || isTight(next, side, tightest);
  });
  const run = (step: 1 | -1): number[] => {
    const reach = new Array<number>(count).fill(Number.POSITIVE_INFINITY);
    // Two rounds: the first finds a corner to start from, the second carries on across the seam.
    let since = Number.POSITIVE_INFINITY;
    for (let n = 0; n < 2 * count; n += 1) {
      const i = (((step * n) % count) + count) % count;
      const joint = step === 1 ? (i - 1 + count) % count : i;
      if (corner[joint]) since = 0;
      reach[i] = since;
      since += lengthOf(itemAt(segments, i));
    }
    return reach;
  };
  return { back: run(1), ahead: run(-1) };
};
