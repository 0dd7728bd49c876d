/**
 * What a round wire sweeps along a chain of moves, as one closed outline in whole units of 10 nm.
 *
 * The outline runs down the right side of the chain and back up the left side. Round the outer side of a corner it follows
 * the wire; on the inner side it passes through the corner itself. So the outline is the sum of one simple piece per move
 * and one sector per corner, all counter-clockwise: a point is swept exactly where it is encircled at least once.
 */

import type { Path64, Paths64 } from 'clipper2-ts';
import type { Point, Segment } from '../../geometry/segment.ts';
import { firstItem, lastItem } from '../../sequence/sequence.ts';

export const UNITS_PER_MM = 1e5;

/** Height of a chord under its arc, mm. Vertices stand half of it outside the arc, so the error is shared to both sides. */
export const SAGITTA = 2.8e-4;

/** Greatest error of a swept edge, mm: three quarters of the sagitta at an arc's ends, and the rounding to units. */
export const RESOLUTION = 2.5e-4;

/**
 * Outlines of the sweep, to be united with the non-zero rule.
 *
 * @param segments one chain: each begins where the one before ends, to rounding.
 * @param radius of the wire with its gap, mm.
 */
export const sweepOf = (segments: readonly Segment[], radius: number): Paths64 => {
  const chain = segments.filter((s) => s.kind === 'arc' || s.from.x !== s.to.x || s.from.y !== s.to.y);
  if (chain.length === 0) return segments.length === 0 ? [] : [discOf(firstItem(segments).from, radius)];
  const right = sideOf(chain, radius, -1);
  const left = sideOf(chain, radius, 1).reverse();
  const first = firstItem(chain);
  const last = lastItem(chain);
  const outline: Path64 = [];
  outline.push(...right);
  pushArc(outline, last.to, radius, angleOf(directionAt(last, 'end')) - Math.PI / 2, Math.PI);
  for (const p of left) outline.push(p);
  pushArc(outline, first.from, radius, angleOf(directionAt(first, 'start')) + Math.PI / 2, Math.PI);
  return [withoutJitter(outline), ...discsOfTightArcs(chain, radius)];
};

/**
 * Where a line goes on from an arc the same place may be rounded to two, a unit apart. On such a hair, doubled back upon itself, the polygon
 * library has left metal standing along the whole next side: the second of two such points goes.
 */
const withoutJitter = (outline: Path64): Path64 => {
  const kept: Path64 = [];
  for (const p of outline) {
    const before = kept[kept.length - 1];
    if (before === undefined || Math.abs(p.x - before.x) > 1 || Math.abs(p.y - before.y) > 1) kept.push(p);
  }
  return kept;
};

/** A full disc, for holes and for a wire that stands still. */
export const discOf = (at: Point, radius: number): Path64 => {
  const out: Path64 = [];
  pushArc(out, at, radius, 0, 2 * Math.PI);
  out.pop();
  return out;
};

/** A closed contour of the drawing or block as a polygon, in the sense in which it is drawn. */
export const polygonOf = (segments: readonly Segment[]): Path64 => {
  const out: Path64 = [];
  for (const s of segments) {
    if (s.kind === 'line') out.push(unitsOf(s.from.x, s.from.y));
    else {
      pushArc(out, s.centre, s.radius, Math.atan2(s.from.y - s.centre.y, s.from.x - s.centre.x), s.sweep);
      out.pop();
    }
  }
  return out;
};

export const unitsOf = (x: number, y: number): { x: number; y: number } => ({
  x: Math.round(x * UNITS_PER_MM),
  y: Math.round(y * UNITS_PER_MM),
});

/** The line that the wire's edge draws on one side: 1 left of travel, -1 right. */
const sideOf = (chain: readonly Segment[], radius: number, side: 1 | -1): Path64 => {
  const out: Path64 = [];
  chain.forEach((segment, i) => {
    const before = chain[i - 1];
    if (before !== undefined) joinAt(out, before, segment, radius, side);
    if (segment.kind === 'line') pushLine(out, segment.from, segment.to, radius, side);
    else pushArcSide(out, segment, radius, side);
  });
  return out;
};

const pushLine = (out: Path64, from: Point, to: Point, radius: number, side: number): void => {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const x = (-side * radius * (to.y - from.y)) / length;
  const y = (side * radius * (to.x - from.x)) / length;
  out.push(unitsOf(from.x + x, from.y + y), unitsOf(to.x + x, to.y + y));
};

/** An arc tighter than the wire has no inner side: there the outline passes through its centre. */
const pushArcSide = (out: Path64, arc: Extract<Segment, { kind: 'arc' }>, radius: number, side: number): void => {
  const start = Math.atan2(arc.from.y - arc.centre.y, arc.from.x - arc.centre.x);
  const offset = arc.radius - side * Math.sign(arc.sweep) * radius;
  if (offset > 1e-6) {
    pushArc(out, arc.centre, offset, start, arc.sweep);
    return;
  }
  const inward = (angle: number) => unitsOf(arc.centre.x + offset * Math.cos(angle), arc.centre.y + offset * Math.sin(angle));
  out.push(inward(start), unitsOf(arc.from.x, arc.from.y), unitsOf(arc.centre.x, arc.centre.y));
  out.push(unitsOf(arc.to.x, arc.to.y), inward(start + arc.sweep));
};

const isTight = (s: Segment, radius: number): boolean => s.kind === 'arc' && s.radius - radius <= 1e-6;

const discsOfTightArcs = (chain: readonly Segment[], radius: number): Paths64 =>
  chain.filter((s) => isTight(s, radius)).flatMap((s) => [discOf(s.from, radius), discOf(s.to, radius)]);

const joinAt = (out: Path64, before: Segment, after: Segment, radius: number, side: number): void => {
  const u = directionAt(before, 'end');
  const v = directionAt(after, 'start');
  const turn = Math.atan2(u.x * v.y - u.y * v.x, u.x * v.x + u.y * v.y);
  if (Math.abs(turn) * radius * UNITS_PER_MM < 2) return;
  if (turn * side > 0) out.push(unitsOf(after.from.x, after.from.y));
  else pushArc(out, after.from, radius, angleOf(u) + (side * Math.PI) / 2, turn);
};

/** Ends exact, vertices between them half a sagitta outside. */
const pushArc = (out: Path64, centre: Point, radius: number, start: number, sweep: number): void => {
  const chord = radius <= SAGITTA ? Math.PI / 2 : 2 * Math.acos(1 - SAGITTA / radius);
  // A single chord has no vertex to share its error with: from half a chord's turn on there are two.
  const count = Math.max(Math.ceil(Math.abs(sweep) / chord), Math.abs(sweep) > chord / 2 ? 2 : 1);
  const step = sweep / count;
  const between = radius + (radius * (1 - Math.cos(step / 2))) / 2;
  for (let i = 0; i <= count; i += 1) {
    const r = i === 0 || i === count ? radius : between;
    out.push(unitsOf(centre.x + r * Math.cos(start + i * step), centre.y + r * Math.sin(start + i * step)));
  }
};

const directionAt = (s: Segment, end: 'start' | 'end'): Point => {
  if (s.kind === 'line') return { x: s.to.x - s.from.x, y: s.to.y - s.from.y };
  const at = end === 'start' ? s.from : s.to;
  const sense = Math.sign(s.sweep);
  return { x: -sense * (at.y - s.centre.y), y: sense * (at.x - s.centre.x) };
};

const angleOf = (p: Point): number => Math.atan2(p.y, p.x);
