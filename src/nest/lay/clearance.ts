/** How far apart two shapes must be so that one lies wholly beside or above the other, and whether two shapes overlap. */

import type { Point } from '../../geometry/segment.ts';
import { firstFrom, firstItem, itemAt, lastItem, neighbours, roundPairs, sideBySide } from '../../sequence/sequence.ts';
import type { Polygons } from '../spans.ts';

/** Left and right at the lower and at the upper end of a band. */
type Trapezoid = readonly [left: number, right: number, leftAbove: number, rightAbove: number];

/** Between two heights with no corner between them a shape is trapezoids side by side, from the left. */
interface Band {
  readonly low: number;
  readonly high: number;
  readonly trapezoids: readonly Trapezoid[];
}

/** A shape made ready for questions along x, in bands from below. */
export interface Outline {
  readonly bands: readonly Band[];
  readonly polygons: Polygons;
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

export const outlineOf = (polygons: Polygons): Outline => {
  const points = polygons.flat();
  const xs = points.map((p) => p.x);
  const ys = points.map((p) => p.y);
  const heights = [...new Set(ys)].toSorted((a, b) => a - b);
  const bands = neighbours(heights).map(([low, high]): Band => ({ low, high, trapezoids: [] }));
  const box = { minX: xs.reduce(least), minY: ys.reduce(least), maxX: xs.reduce(most), maxY: ys.reduce(most) };
  return { bands: withTrapezoids(bands, polygons), polygons, ...box };
};

const least = (a: number, b: number): number => Math.min(a, b);
const most = (a: number, b: number): number => Math.max(a, b);

/** Inside and outside take turns along a band, so its sides make trapezoids two by two. Level sides lie between bands. */
const withTrapezoids = (bands: readonly Band[], polygons: Polygons): readonly Band[] => {
  const crossing: (readonly [number, number])[][] = bands.map(() => []);
  for (const polygon of polygons)
    for (const [p, q] of roundPairs(polygon)) {
      const [low, high] = p.y < q.y ? [p, q] : [q, p];
      for (let k = bandAt(bands, low.y); k < bands.length; k += 1) {
        const band = itemAt(bands, k);
        if (band.high > high.y) break;
        itemAt(crossing, k).push([across(low, high, band.low), across(low, high, band.high)]);
      }
    }
  return sideBySide(bands, crossing).map(([band, crossed]) => {
    const sides = crossed.toSorted((a, b) => a[0] + a[1] - b[0] - b[1]);
    const pairs = Array.from({ length: sides.length >> 1 }, (_, i) => [itemAt(sides, 2 * i), itemAt(sides, 2 * i + 1)] as const);
    return { ...band, trapezoids: pairs.map(([left, right]): Trapezoid => [left[0], right[0], left[1], right[1]]) };
  });
};

/** The first band that ends above a height. */
const bandAt = (bands: readonly Band[], y: number): number => firstFrom(bands, ({ high }) => high > y);

const across = (low: Point, high: Point, y: number): number =>
  y <= low.y ? low.x : y >= high.y ? high.x : low.x + ((y - low.y) / (high.y - low.y)) * (high.x - low.x);

/** The same shape with x and y changed over: questions along y become questions along x. */
export const changedOver = ({ polygons }: Outline): Outline =>
  outlineOf(polygons.map((polygon) => polygon.map(({ x, y }) => ({ x: y, y: x }))));

/** mm by which shapes may reach into each other by rounding and still only touch. */
const TOUCH = 1e-9;

/**
 * How far right of `a` shape `b`, raised by `up`, must be moved at least so that at every height all of it lies right of all of `a`;
 * below every number where the two have no height in common. What bounds both are straight lines, so the ends of strips decide.
 */
export const clearance = (a: Outline, b: Outline, up: number): number => {
  let widest = Number.NEGATIVE_INFINITY;
  strips(a, b, up, (p, q, low, high) => {
    const [right, left] = [lastItem(p.trapezoids), firstItem(q.trapezoids)];
    widest = Math.max(widest, at(right, 1, p, low) - at(left, 0, q, low - up), at(right, 1, p, high) - at(left, 0, q, high - up));
    return false;
  });
  return widest;
};

/** Whether `b`, moved by (x, y), reaches into `a` by more than rounding. */
export const overlap = (a: Outline, b: Outline, x: number, y: number): boolean => {
  if (b.minX + x >= a.maxX - TOUCH || b.maxX + x <= a.minX + TOUCH) return false;
  return strips(a, b, y, (p, q, low, high) => {
    const others = q.trapezoids.map((t) => cut(t, q, x, low - y, high - y));
    return p.trapezoids.some((t) => {
      const one = cut(t, p, 0, low, high);
      return others.some((other) => widestShared(one, other) > TOUCH);
    });
  });
};

/** Asks about every strip in which neither shape has a corner, from below, until the answer is yes. */
const strips = (a: Outline, b: Outline, up: number, ask: (p: Band, q: Band, low: number, high: number) => boolean): boolean => {
  let i = bandAt(a.bands, b.minY + up);
  let j = bandAt(b.bands, a.minY - up);
  while (i < a.bands.length && j < b.bands.length) {
    const [p, q] = [itemAt(a.bands, i), itemAt(b.bands, j)];
    const low = Math.max(p.low, q.low + up);
    const high = Math.min(p.high, q.high + up);
    if (high - low > TOUCH && p.trapezoids.length > 0 && q.trapezoids.length > 0 && ask(p, q, low, high)) return true;
    if (p.high <= q.high + up) i += 1;
    else j += 1;
  }
  return false;
};

/** A side of a trapezoid at a share of its height. */
const between = (t: Trapezoid, side: 0 | 1, share: number): number => t[side] + share * ((side === 0 ? t[2] : t[3]) - t[side]);

/** A side of a trapezoid at a height in its band. */
const at = (t: Trapezoid, side: 0 | 1, { low, high }: Band, y: number): number => {
  const share = Math.min(1, Math.max(0, (y - low) / (high - low)));
  return between(t, side, share);
};

const cut = (t: Trapezoid, band: Band, x: number, low: number, high: number): Trapezoid => [
  at(t, 0, band, low) + x,
  at(t, 1, band, low) + x,
  at(t, 0, band, high) + x,
  at(t, 1, band, high) + x,
];

/** What two trapezoids of one strip share is widest at one of its ends, or where the slanting sides of both cross. */
const widestShared = (p: Trapezoid, q: Trapezoid): number => {
  const shared = (share: number): number => {
    return Math.min(between(p, 1, share), between(q, 1, share)) - Math.max(between(p, 0, share), between(q, 0, share));
  };
  const [one, oneAbove] = [p[1] - q[0], p[3] - q[2]];
  const [other, otherAbove] = [q[1] - p[0], q[3] - p[2]];
  const turn = one - other - (oneAbove - otherAbove);
  const share = turn === 0 ? 0 : Math.min(1, Math.max(0, (one - other) / turn));
  return Math.max(shared(0), shared(1), shared(share));
};
