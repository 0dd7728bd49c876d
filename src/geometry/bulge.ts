/** Arcs from other descriptions of them: the bulge of a polyline, three points, start angle and end angle. */
import { FULL_TURN, sineCosine, sineCosineOfDegrees, turnBetween } from './angle.ts';
import type { Arc, Point, Segment } from './segment.ts';
import { arc, distanceBetween, line } from './segment.ts';

/**
 * The segment of a polyline from `a` to `b`: bulge is the tangent of a quarter of the sweep, positive counter-clockwise,
 * 0 for a line, beyond 1 for more than half a circle. Source: dxf-reference.
 */
export const fromBulge = (a: Point, b: Point, bulge: number): Segment => {
  const chord = distanceBetween(a, b);
  if (Math.abs(bulge) < STRAIGHT || chord === 0) return line(a, b);
  // The centre lies (1 - bulge²)/(4 bulge) chords to the left of the middle of the chord.
  const left = (1 / bulge - bulge) / 4;
  const centre = { x: (a.x + b.x) / 2 - (b.y - a.y) * left, y: (a.y + b.y) / 2 + (b.x - a.x) * left };
  const radius = (chord * (1 / Math.abs(bulge) + Math.abs(bulge))) / 4;
  return { kind: 'arc', from: a, to: b, centre, radius, sweep: 4 * Math.atan(bulge) };
};

/**
 * Below this bulge the rounding of a circle so large (a part in 1e16 of its radius) is more than the arc rises over its
 * chord, and the line is the truer of the two.
 */
const STRAIGHT = 1e-8;

/** Bulge of a segment; of a full circle there is none, and it is refused as our own mistake. */
export const bulgeOf = (segment: Segment): number => {
  if (segment.kind === 'line') return 0;
  if (Math.abs(segment.sweep) >= FULL_TURN) throw new RangeError('a full circle has no bulge: split it first');
  return Math.tan(segment.sweep / 4);
};

/** Counter-clockwise arc by centre, radius and angles in degrees, as drawing files give it; equal angles mean a full circle. */
export const arcByDegrees = (centre: Point, radius: number, start: number, end: number): Arc => {
  const turn = (((end - start) % 360) + 360) % 360;
  const from = onCircle(centre, radius, start);
  if (turn === 0) return { kind: 'arc', from, to: from, centre, radius, sweep: FULL_TURN };
  return { kind: 'arc', from, to: onCircle(centre, radius, end), centre, radius, sweep: (turn * Math.PI) / 180 };
};

const onCircle = (centre: Point, radius: number, degrees: number): Point => {
  const { sine, cosine } = sineCosineOfDegrees(degrees);
  return { x: centre.x + radius * cosine, y: centre.y + radius * sine };
};

/** The arc that leaves `a` in a unit direction and ends at `b`; a line where `b` is straight ahead. Behind is refused. */
export const arcFromTangent = (a: Point, direction: Point, b: Point): Segment => {
  const half = turnBetween(direction.x, direction.y, b.x - a.x, b.y - a.y);
  if (Math.abs(half) >= Math.PI * (1 - 1e-12)) throw new RangeError('no arc leaves a point in one direction and ends straight behind it');
  return Math.abs(half) < 1e-12 ? line(a, b) : fromBulge(a, b, Math.tan(half / 2));
};

/** An arc by its centre and ends, in the given sense; equal ends are a full circle. */
export const arcAbout = (centre: Point, from: Point, to: Point, sense: 'counter-clockwise' | 'clockwise'): Arc => {
  const turn = turnBetween(from.x - centre.x, from.y - centre.y, to.x - centre.x, to.y - centre.y);
  const way = sense === 'clockwise' ? -1 : 1;
  const sweep = turn * way > 0 ? turn : turn + way * FULL_TURN;
  return from.x === to.x && from.y === to.y ? arc(from, from, centre, way * FULL_TURN) : arc(from, to, centre, sweep);
};

/** Height of an arc over its chord in mm: how far a straight cut across would be off. */
export const heightOverChord = (segment: Arc): number => segment.radius * (1 - sineCosine(segment.sweep / 2).cosine);
