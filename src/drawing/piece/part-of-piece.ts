/** A piece, or one of its segments, with its ends moved to given points. */

import { FULL_TURN, turnBetween } from '../../geometry/angle.ts';
import { pointAt } from '../../geometry/measure.ts';
import {
  type Arc,
  distanceBetween,
  isFullCircle,
  type Line,
  line,
  midpoint,
  type Point,
  type Segment,
  samePoint,
} from '../../geometry/segment.ts';
import { firstItem, lastItem } from '../../sequence/sequence.ts';
import type { DrawnPiece } from './piece.ts';

/** A piece that starts and ends in the given points. */
export const pieceBetween = (piece: DrawnPiece, from: Point, to: Point): DrawnPiece => {
  const first = firstItem(piece.segments);
  const last = lastItem(piece.segments);
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
