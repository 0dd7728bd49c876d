/** The two pieces every contour is made of: a straight line and a circular arc. Lengths in mm, angles in rad. */

export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface Line {
  readonly kind: 'line';
  readonly from: Point;
  readonly to: Point;
}

/**
 * A circular arc. `sweep` is the signed angle travelled: positive is counter-clockwise, and its size is more than 0 and at
 * most a full turn. A full circle has `from` equal to `to` and a sweep of plus or minus 2 pi; nothing else has to be
 * guessed. `centre` and `radius` agree with both ends to rounding.
 */
export interface Arc {
  readonly kind: 'arc';
  readonly from: Point;
  readonly to: Point;
  readonly centre: Point;
  readonly radius: number;
  readonly sweep: number;
}

export type Segment = Line | Arc;

export const point = (x: number, y: number): Point => ({ x, y });

export const line = (from: Point, to: Point): Line => ({ kind: 'line', from, to });

/** An arc whose ends, centre and sweep are all known already; the radius is taken from the start. */
export const arc = (from: Point, to: Point, centre: Point, sweep: number): Arc => ({
  kind: 'arc',
  from,
  to,
  centre,
  radius: Math.hypot(from.x - centre.x, from.y - centre.y),
  sweep,
});

/** A full circle that starts and ends at the point east of its centre. */
export const circle = (centre: Point, radius: number, sense: 'counter-clockwise' | 'clockwise' = 'counter-clockwise'): Arc => {
  const start = { x: centre.x + radius, y: centre.y };
  return { kind: 'arc', from: start, to: start, centre, radius, sweep: sense === 'clockwise' ? -2 * Math.PI : 2 * Math.PI };
};

/** True for an arc that ends where it starts after a whole turn. */
export const isFullCircle = (segment: Segment): boolean =>
  segment.kind === 'arc' && segment.from.x === segment.to.x && segment.from.y === segment.to.y;

export const samePoint = (p: Point, q: Point): boolean => p.x === q.x && p.y === q.y;

export const distanceBetween = (p: Point, q: Point): number => Math.sqrt((p.x - q.x) * (p.x - q.x) + (p.y - q.y) * (p.y - q.y));

export const midpoint = (p: Point, q: Point): Point => ({ x: p.x + (q.x - p.x) / 2, y: p.y + (q.y - p.y) / 2 });
