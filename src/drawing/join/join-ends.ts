/** Moves the ends that meet into one and the same point, so that a joined chain is joined exactly. */

import { FULL_TURN, turnBetween } from '../../geometry/angle.ts';
import { intersect } from '../../geometry/intersect.ts';
import { pointAt } from '../../geometry/measure.ts';
import type { Arc, Line, Point, Segment } from '../../geometry/segment.ts';
import { distanceBetween, isFullCircle, line, midpoint, samePoint } from '../../geometry/segment.ts';
import type { Piece } from '../piece/piece.ts';
import type { Node, Nodes } from './nodes.ts';
import { endPoint } from './nodes.ts';

/** The pieces with their ends on the nodes; those already there are handed back as they are. */
export const mendEnds = (pieces: readonly Piece[], { nodes, nodeOf }: Nodes): readonly Piece[] => {
  const places = nodes.map((node) => placeOf(node, pieces));
  return pieces.map((piece, i) => pieceBetween(piece, places[nodeOf[2 * i]!]!, places[nodeOf[2 * i + 1]!]!));
};

/**
 * Where the ends of a node are put. Two lines meet where they cross, when that is near, so that neither turns. A line gives
 * way to a curve, since turning a line a little harms it less than bending an arc. All else meets halfway.
 */
const placeOf = (node: Node, pieces: readonly Piece[]): Point => {
  const points = node.ends.map((end) => endPoint(pieces, end));
  if (points.every((p) => samePoint(p, points[0]!))) return points[0]!;
  const curved = node.ends.filter((end) => endSegment(pieces, end).kind === 'arc');
  if (curved.length === 1) return endPoint(pieces, curved[0]!);
  // A curve that meets itself keeps its start: halfway would lie off its circle.
  if (points.length === 2 && node.ends[0]! >> 1 === node.ends[1]! >> 1) return points[0]!;
  if (curved.length === 0 && points.length === 2) return cornerOf(node, pieces, points[0]!, points[1]!);
  return middleOf(curved.length > 0 ? curved.map((end) => endPoint(pieces, end)) : points);
};

const endSegment = (pieces: readonly Piece[], end: number): Segment => {
  const { segments } = pieces[end >> 1]!;
  return end % 2 === 0 ? segments[0]! : segments.at(-1)!;
};

/** Where two lines would cross if both were a little longer, or halfway when that is not near. */
const cornerOf = (node: Node, pieces: readonly Piece[], p: Point, q: Point): Point => {
  const gap = distanceBetween(p, q);
  const a = lengthened(pieces, node.ends[0]!, 2 * gap);
  const b = lengthened(pieces, node.ends[1]!, 2 * gap);
  const meeting = intersect(a, b, 0).find((c) => c.kind === 'crossing');
  return meeting && meeting.kind === 'crossing' ? meeting.at : midpoint(p, q);
};

/** The last stretch of a line around its end: so far into the line, and as far beyond. */
const lengthened = (pieces: readonly Piece[], end: number, by: number): Line => {
  const segment = endSegment(pieces, end);
  const [far, near] = end % 2 === 0 ? [segment.to, segment.from] : [segment.from, segment.to];
  const long = distanceBetween(far, near);
  const x = ((near.x - far.x) / long) * by;
  const y = ((near.y - far.y) / long) * by;
  return line({ x: near.x - x, y: near.y - y }, { x: near.x + x, y: near.y + y });
};

/** Sorted before they are summed: the sum of the same numbers in another order may differ in its last digit. */
const middleOf = (points: readonly Point[]): Point => {
  const sorted = [...points].sort((p, q) => p.x - q.x || p.y - q.y);
  const sum = sorted.reduce((s, p) => ({ x: s.x + p.x, y: s.y + p.y }), { x: 0, y: 0 });
  return { x: sum.x / points.length, y: sum.y / points.length };
};

/** A piece that starts and ends in the given points. */
export const pieceBetween = (piece: Piece, from: Point, to: Point): Piece => {
  const first = piece.segments[0]!;
  const last = piece.segments.at(-1)!;
  if (samePoint(first.from, from) && samePoint(last.to, to)) return piece;
  if (piece.segments.length === 1) return { ...piece, segments: segmentBetween(first, from, to) };
  const head = segmentBetween(first, from, first.to);
  const tail = segmentBetween(last, last.from, to);
  return { ...piece, segments: [...head, ...piece.segments.slice(1, -1), ...tail] };
};

/**
 * The segment with its ends moved. A line takes them as they are. An arc keeps its sense and takes the centre nearest to the
 * old one from which both ends are equally far; where that would bend it away by more than the ends were moved (a short
 * chord of a large circle), the arc is left as it is and short lines bridge the gaps.
 */
export const segmentBetween = (segment: Segment, from: Point, to: Point): readonly Segment[] => {
  if (samePoint(segment.from, from) && samePoint(segment.to, to)) return [segment];
  if (segment.kind === 'line') return samePoint(from, to) ? [] : [line(from, to)];
  if (samePoint(from, to)) return closedArc(segment, from);
  const moved = Math.max(distanceBetween(segment.from, from), distanceBetween(segment.to, to));
  const bent = arcBetween(segment, from, to);
  return bendOf(segment, bent) <= 3 * moved + SLACK ? [bent] : [...bridge(from, segment.from), segment, ...bridge(segment.to, to)];
};

/** mm: a nanometre of bend is never worth a bridge. */
const SLACK = 1e-6;

/** How far the bent arc comes away from the old one between its ends. */
const bendOf = (old: Arc, bent: Arc): number =>
  Math.max(...[0.25, 0.5, 0.75].map((share) => Math.abs(distanceBetween(pointAt(old, share), bent.centre) - bent.radius)));

const bridge = (from: Point, to: Point): Line[] => (samePoint(from, to) ? [] : [line(from, to)]);

/** An arc whose two ends were joined is a full circle when it went most of the way round, and nothing otherwise. */
const closedArc = (arc: Arc, at: Point): readonly Segment[] =>
  Math.abs(arc.sweep) < Math.PI
    ? []
    : [{ ...arc, from: at, to: at, radius: distanceBetween(arc.centre, at), sweep: Math.sign(arc.sweep) * FULL_TURN }];

const arcBetween = (arc: Arc, from: Point, to: Point): Arc => {
  if (isFullCircle(arc)) return arc;
  const middle = midpoint(from, to);
  const chord = distanceBetween(from, to);
  const acrossX = -(to.y - from.y) / chord;
  const acrossY = (to.x - from.x) / chord;
  const along = (arc.centre.x - middle.x) * acrossX + (arc.centre.y - middle.y) * acrossY;
  const centre = { x: middle.x + acrossX * along, y: middle.y + acrossY * along };
  const turn = turnBetween(from.x - centre.x, from.y - centre.y, to.x - centre.x, to.y - centre.y);
  const radius = (distanceBetween(centre, from) + distanceBetween(centre, to)) / 2;
  return { kind: 'arc', from, to, centre, radius, sweep: nearestTurn(turn, arc.sweep) };
};

/** The one of the turns that differ by whole circles that has the sense of the old sweep and its size at the nearest. */
const nearestTurn = (turn: number, sweep: number): number => {
  const choices = [turn, turn + FULL_TURN, turn - FULL_TURN].filter((t) => Math.sign(t) === Math.sign(sweep));
  return choices.reduce((best, t) => (Math.abs(t - sweep) < Math.abs(best - sweep) ? t : best), choices[0] ?? sweep);
};
