/** Plain shapes with their parallels worked out by hand: every side moves by the offset, every round changes its radius by it. */

import { type Contour, contour, polygon } from '../../src/geometry/contour.ts';
import type { Point, Segment } from '../../src/geometry/segment.ts';
import { line, point } from '../../src/geometry/segment.ts';
import { roundPairs } from '../../src/sequence/sequence.ts';

/** A contour that begins and ends at its entry, counter-clockwise, and the same at a distance: positive is inward. */
export interface Shape {
  readonly name: string;
  readonly contour: (inward: number) => Contour;
}

const quarter = (from: Point, to: Point, centre: Point, radius: number): Segment => ({
  kind: 'arc',
  from,
  to,
  centre,
  radius,
  sweep: Math.PI / 2,
});

/** Begins in the middle of its lower side. With radius 0 the corners are sharp inwards; outwards they are only offset in the path. */
export const rectangle = (x0: number, y0: number, x1: number, y1: number, radius: number): Shape => ({
  name: radius > 0 ? 'rounded rectangle' : 'rectangle',
  contour: (o) => {
    const [a, b, c, d] = [x0 + o, y0 + o, x1 - o, y1 - o];
    const r = radius === 0 ? 0 : radius - o;
    const entry = point((x0 + x1) / 2, b);
    if (r <= 0) return polygon([entry, point(c, b), point(c, d), point(a, d), point(a, b)]);
    return {
      closed: true,
      segments: [
        line(entry, point(c - r, b)),
        quarter(point(c - r, b), point(c, b + r), point(c - r, b + r), r),
        line(point(c, b + r), point(c, d - r)),
        quarter(point(c, d - r), point(c - r, d), point(c - r, d - r), r),
        line(point(c - r, d), point(a + r, d)),
        quarter(point(a + r, d), point(a, d - r), point(a + r, d - r), r),
        line(point(a, d - r), point(a, b + r)),
        quarter(point(a, b + r), point(a + r, b), point(a + r, b + r), r),
        line(point(a + r, b), entry),
      ],
    };
  },
});

/** Two half circles and two straight sides; begins in the middle of the lower side. */
export const slot = (x: number, y: number, length: number, radius: number): Shape => ({
  name: 'slot',
  contour: (o) => {
    const r = radius - o;
    const [left, right] = [x - length / 2, x + length / 2];
    const end = (from: Point, to: Point, centre: Point): Segment => ({ kind: 'arc', from, to, centre, radius: r, sweep: Math.PI });
    return {
      closed: true,
      segments: [
        line(point(x, y - r), point(right, y - r)),
        end(point(right, y - r), point(right, y + r), point(right, y)),
        line(point(right, y + r), point(left, y + r)),
        end(point(left, y + r), point(left, y - r), point(left, y)),
        line(point(left, y - r), point(x, y - r)),
      ],
    };
  },
});

/** Four quarters, beginning at the lowest point. */
export const round = (x: number, y: number, radius: number): Shape => ({
  name: 'round',
  contour: (o) => {
    const r = radius - o;
    const at = [point(x, y - r), point(x + r, y), point(x, y + r), point(x - r, y)];
    return contour(roundPairs(at).map(([p, q]) => quarter(p, q, point(x, y), r)));
  },
});

/** An L with sharp corners, one of them turning the other way; its parallels are not needed. */
export const angle = (x: number, y: number, size: number): Shape => ({
  name: 'angle',
  contour: () =>
    polygon([
      point(x + size / 2, y),
      point(x + size, y),
      point(x + size, y + size / 2),
      point(x + size / 2, y + size / 2),
      point(x + size / 2, y + size),
      point(x, y + size),
      point(x, y),
    ]),
});
