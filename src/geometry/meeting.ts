/** Single meetings of two segments by formula: crossings of lines and circles, and where they are tangent. */
import { orient2d } from 'robust-predicates';
import { shareOfDirection } from './measure.ts';
import type { Arc, Line, Point, Segment } from './segment.ts';

/** One place where two segments meet, with the share of each; `touching end` where it is an end of one of them or both. */
export interface Meeting {
  readonly kind: 'crossing' | 'tangent' | 'touching end';
  readonly at: Point;
  readonly first: number;
  readonly second: number;
}

const NOWHERE: readonly Meeting[] = [];

/** Crossings and tangencies that fall on both segments, whether or not near an end. */
export const candidates = (a: Segment, b: Segment, within: number): readonly Meeting[] => {
  if (a.kind === 'line') return b.kind === 'line' ? lineWithLine(a, b) : lineWithArc(a, b, within);
  return b.kind === 'line' ? swapped(lineWithArc(b, a, within)) : arcWithArc(a, b, within);
};

const swapped = (meetings: readonly Meeting[]): readonly Meeting[] =>
  meetings.length === 0 ? meetings : meetings.map((m) => ({ kind: m.kind, at: m.at, first: m.second, second: m.first }));

/** Two lines cross where the ends of each lie on different sides of the other, which exact predicates decide. */
const lineWithLine = (a: Line, b: Line): readonly Meeting[] => {
  const b0 = orient2d(a.from.x, a.from.y, a.to.x, a.to.y, b.from.x, b.from.y);
  const b1 = orient2d(a.from.x, a.from.y, a.to.x, a.to.y, b.to.x, b.to.y);
  if (!(b0 < 0 && b1 > 0) && !(b0 > 0 && b1 < 0)) return NOWHERE;
  const a0 = orient2d(b.from.x, b.from.y, b.to.x, b.to.y, a.from.x, a.from.y);
  const a1 = orient2d(b.from.x, b.from.y, b.to.x, b.to.y, a.to.x, a.to.y);
  if (!(a0 < 0 && a1 > 0) && !(a0 > 0 && a1 < 0)) return NOWHERE;
  const first = a0 / (a0 - a1);
  const second = b0 / (b0 - b1);
  const at = { x: a.from.x + (a.to.x - a.from.x) * first, y: a.from.y + (a.to.y - a.from.y) * first };
  return [{ kind: 'crossing', at, first, second }];
};

const lineWithArc = (line: Line, arc: Arc, within: number): readonly Meeting[] => {
  const dx = line.to.x - line.from.x;
  const dy = line.to.y - line.from.y;
  const length = Math.sqrt(dx * dx + dy * dy);
  if (length === 0) return NOWHERE;
  const ux = dx / length;
  const uy = dy / length;
  const cx = arc.centre.x - line.from.x;
  const cy = arc.centre.y - line.from.y;
  const height = ux * cy - uy * cx;
  const room = arc.radius - Math.abs(height);
  if (room < -within) return NOWHERE;
  const foot = ux * cx + uy * cy;
  const found: Meeting[] = [];
  if (room <= within) addOnLine(found, 'tangent', line, arc, foot, length);
  else {
    const half = Math.sqrt(room * (arc.radius + Math.abs(height)));
    addOnLine(found, 'crossing', line, arc, foot - half, length);
    addOnLine(found, 'crossing', line, arc, foot + half, length);
  }
  return found;
};

/** Keeps a place `along` mm from the start of the line when it lies on the line and on the arc. */
const addOnLine = (found: Meeting[], kind: 'crossing' | 'tangent', line: Line, arc: Arc, along: number, length: number): void => {
  if (along < 0 || along > length) return;
  const first = along / length;
  const at = { x: line.from.x + (line.to.x - line.from.x) * first, y: line.from.y + (line.to.y - line.from.y) * first };
  const second = shareOfDirection(arc, at.x - arc.centre.x, at.y - arc.centre.y);
  if (second <= 1) found.push({ kind, at, first, second });
};

const arcWithArc = (a: Arc, b: Arc, within: number): readonly Meeting[] => {
  const dx = b.centre.x - a.centre.x;
  const dy = b.centre.y - a.centre.y;
  const apart = Math.sqrt(dx * dx + dy * dy);
  const outside = a.radius + b.radius - apart;
  const inside = apart - Math.abs(a.radius - b.radius);
  // Concentric within the tolerance: no single place stands out, and ends and overlaps tell the rest.
  if (outside < -within || inside < -within || apart <= within) return NOWHERE;
  const ux = dx / apart;
  const uy = dy / apart;
  const found: Meeting[] = [];
  if (outside <= within) addOnArcs(found, 'tangent', a, b, ux * a.radius, uy * a.radius);
  else if (inside <= within) {
    const way = a.radius >= b.radius ? a.radius : -a.radius;
    addOnArcs(found, 'tangent', a, b, ux * way, uy * way);
  } else {
    const along = (apart + ((a.radius - b.radius) * (a.radius + b.radius)) / apart) / 2;
    const across = Math.sqrt(Math.max(0, (a.radius - along) * (a.radius + along)));
    addOnArcs(found, 'crossing', a, b, ux * along - uy * across, uy * along + ux * across);
    addOnArcs(found, 'crossing', a, b, ux * along + uy * across, uy * along - ux * across);
  }
  return found;
};

/** Keeps the place at (x, y) from the centre of `a` when it lies on both arcs. */
const addOnArcs = (found: Meeting[], kind: 'crossing' | 'tangent', a: Arc, b: Arc, x: number, y: number): void => {
  const first = shareOfDirection(a, x, y);
  if (first > 1) return;
  const at = { x: a.centre.x + x, y: a.centre.y + y };
  const second = shareOfDirection(b, at.x - b.centre.x, at.y - b.centre.y);
  if (second <= 1) found.push({ kind, at, first, second });
};
