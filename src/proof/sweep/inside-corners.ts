/** Inside corners of the wanted metal: where a round wire leaves more than the drawing says, and how round they came out. */

import type { Path64, Paths64 } from 'clipper2-ts';
import { ClipType, FillRule } from 'clipper2-ts/dist/Core.js';
import { Clipper64 } from 'clipper2-ts/dist/Engine.js';
import { ClipperOffset, EndType, JoinType } from 'clipper2-ts/dist/Offset.js';
import { turnBetween } from '../../geometry/angle.ts';
import { areaOf } from '../../geometry/area.ts';
import type { Contour } from '../../geometry/contour.ts';
import { endDirection, pointAt, startDirection } from '../../geometry/measure.ts';
import type { Point } from '../../geometry/segment.ts';
import { roundPairs } from '../../sequence/sequence.ts';
import type { Edges } from './edges.ts';
import { edgesOf } from './edges.ts';
import { polygonOf, SAGITTA, UNITS_PER_MM } from './sweep.ts';

export interface InsideCorner {
  readonly at: Point;
  /** Radius drawn, 0 where it is sharp. */
  readonly wanted: number;
  /** Angle through which the contour turns there, rad, over 0. */
  readonly turn: number;
}

/** A turn smaller than this leaves less than 0.1 µm and is no corner. */
const LEAST_TURN = 0.05;

/** 1 where the metal to be cut away lies left of the contour's travel, -1 where it lies right. */
export const cutSide = (contour: Contour, kept: 'die' | 'punch'): 1 | -1 => (areaOf(contour) > 0 === (kept === 'die') ? 1 : -1);

/** Sharp corners, and arcs of any radius up to `largest` mm, that hollow the wanted metal. */
export const insideCorners = (contour: Contour, kept: 'die' | 'punch', largest: number): readonly InsideCorner[] => {
  const side = cutSide(contour, kept);
  const { segments } = contour;
  return roundPairs(segments).flatMap(([s, next]) => {
    const corners: InsideCorner[] = [];
    if (s.kind === 'arc' && s.sweep * side > 0 && s.radius <= largest && Math.abs(s.sweep) > LEAST_TURN)
      corners.push({ at: pointAt(s, 0.5), wanted: s.radius, turn: Math.abs(s.sweep) });
    const u = endDirection(s);
    const v = startDirection(next);
    const turn = turnBetween(u.x, u.y, v.x, v.y) * side;
    if (turn > LEAST_TURN) corners.push({ at: s.to, wanted: 0, turn });
    return corners;
  });
};

/** Turns nearer to a half turn than this, rad, are counted as this: a notch of two hundredths of a degree. */
const SHARPEST = 3e-4;

/** Half of a turn of less than half a circle. */
export const halfOf = (turn: number): number => Math.min(turn, Math.PI - SHARPEST) / 2;

/** mm from a corner to where a round touches its sides, so far its metal may be left: hundreds of radii in a notch like a needle. */
export const roundReach = (turn: number, radius: number): number => radius * Math.tan(halfOf(turn));

/**
 * Radius that came out, from the metal left in the middle of the corner: a round of radius r between two sides that turn by t
 * stands r (1 / cos(t/2) - 1) off the point where the sides meet.
 */
export const radiusFrom = (corner: InsideCorner, left: number): number => {
  return corner.wanted + left / (1 / Math.cos(halfOf(corner.turn)) - 1);
};

/**
 * The edge of what a wire of the given radius could clear of the side to be cut away: the drawing opened by that radius.
 * Distances to it are negative inside the cleared place and positive beyond it.
 */
export const openedBy = (contour: Contour, kept: 'die' | 'punch', radius: number): Edges => {
  const polygon = polygonOf(contour.segments);
  const loop = areaOf(contour) > 0 ? polygon : polygon.reverse();
  const inwards = kept === 'die' ? -radius : radius;
  const there = offset([loop], inwards);
  const back = offset(there, -inwards);
  return edgesOf(kept === 'die' ? back : outsideOf(back));
};

const offset = (loops: Paths64, by: number): Paths64 => {
  const offsetter = new ClipperOffset(2, SAGITTA * UNITS_PER_MM);
  offsetter.addPaths(loops, JoinType.Round, EndType.Polygon);
  const out: Paths64 = [];
  offsetter.execute(by * UNITS_PER_MM, out);
  return out;
};

/** Everything within a wide frame but the loops: for a punch the side to be cut away lies outside. */
const outsideOf = (loops: Paths64): Paths64 => {
  let reach = 1e6;
  for (const loop of loops) for (const p of loop) reach = Math.max(reach, 4 * Math.abs(p.x), 4 * Math.abs(p.y));
  const frame: Path64 = [
    { x: -reach, y: -reach },
    { x: reach, y: -reach },
    { x: reach, y: reach },
    { x: -reach, y: reach },
  ];
  const clipper = new Clipper64();
  clipper.addSubject([frame]);
  clipper.addClip(loops);
  const out: Paths64 = [];
  clipper.execute(ClipType.Difference, FillRule.NonZero, out);
  return out;
};
