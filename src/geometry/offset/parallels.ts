/**
 * The raw parallel curves of a source: every curve shifted to the left, opening corners bridged, closing ones left loose. It runs over
 * long arrays of plain numbers: `!` stands where one of those is read.
 */

import type { Curves } from '../flat/curves.ts';
import { addArc, addLine, BX, BY, CX, CY, emptyCurves, join, LENGTH, RADIUS, STRIDE, WIDEST_ARC } from '../flat/curves.ts';
import type { SourceCorner } from '../flat/source-corners.ts';
import { ARC_BRIDGE, isJoint, JOINT, LOOSE_ENDS, measureCorner, newCorner, REACH_BRIDGE } from '../flat/source-corners.ts';
import type { Point } from '../segment.ts';
import type { Layout } from './flat-source.ts';

/** What corners get on the side that opens: an arc always, or an extension that reaches at most `reach` offsets from the corner. */
export interface Bridging {
  readonly join: 'arc' | 'intersection';
  readonly reach: number;
}

export interface Parallels {
  readonly curves: Curves;
  /** Extended corners, eight numbers each: corner, end of the shifted side before, tip, start of the shifted side after. */
  readonly kites: readonly number[];
  /** Corners whose extension would have reached too far. */
  readonly rounded: readonly Point[];
}

/** mm: an arc that shrinks to less than this is a point, and its neighbours join in it. */
const POINT_RADIUS = 1e-9;

/** How a curve came through the shift: gone, a point, or a curve. */
const GONE = 0;
const POINT = 1;
const CURVE = 2;

/** The shifted source before it is joined up. Four numbers for each curve: start and end. */
interface Shifted {
  readonly ends: Float64Array;
  readonly radius: Float64Array;
  readonly length: Float64Array;
  readonly state: Uint8Array;
  /** For the corner at the end of each curve. */
  readonly corner: Uint8Array;
  /** For an extended corner, its tip. */
  readonly tips: Float64Array;
}

export const parallelsOf = (layout: Layout, distance: number, bridging: Bridging): Parallels => {
  const source = layout.curves;
  const kites: number[] = [];
  const rounded: Point[] = [];
  const shifted = shiftAll(source, distance);
  const corner = newCorner();
  for (let i = 0; i < source.count; i++) {
    measureCorner(source, i, source.next[i]!, layout.halfTurns[i]!, corner);
    treatCorner(source, shifted, i, distance, corner, bridging, rounded);
  }
  const curves = emptyCurves(source.count * 3, source.rounding + distance * 1e-15);
  for (let c = 0; c + 1 < layout.chainStarts.length; c++) {
    layChain(source, shifted, curves, layout.chainStarts[c]!, layout.chainStarts[c + 1]!, distance, kites);
  }
  return { curves, kites, rounded };
};

const shiftAll = (source: Curves, distance: number): Shifted => {
  const n = source.count;
  const shifted: Shifted = {
    ends: new Float64Array(4 * n),
    radius: new Float64Array(n),
    length: new Float64Array(n),
    state: new Uint8Array(n),
    corner: new Uint8Array(n),
    tips: new Float64Array(2 * n),
  };
  const d = source.data;
  for (let i = 0; i < n; i++) {
    const o = i * STRIDE;
    const turn = source.turn[i]!;
    shifted.length[i] = d[o + LENGTH]!;
    shifted.state[i] = CURVE;
    if (turn === 0) continue;
    const radius = d[o + RADIUS]! - turn * distance;
    shifted.radius[i] = Math.abs(radius);
    shifted.length[i] = (d[o + LENGTH]! * Math.abs(radius)) / d[o + RADIUS]!;
    if (radius <= POINT_RADIUS) shifted.state[i] = radius >= -POINT_RADIUS ? POINT : GONE;
  }
  return shifted;
};

/** Shifts the end of curve i and the start of the next, and decides what lies between. */
const treatCorner = (
  source: Curves,
  shifted: Shifted,
  i: number,
  distance: number,
  corner: SourceCorner,
  bridging: Bridging,
  rounded: Point[],
): void => {
  const j = source.next[i]!;
  const u = corner.directions;
  const x = source.data[i * STRIDE + BX]!;
  const y = source.data[i * STRIDE + BY]!;
  const ends = shifted.ends;
  ends[4 * i + 2] = x - u[1]! * distance;
  ends[4 * i + 3] = y + u[0]! * distance;
  ends[4 * j] = x - u[3]! * distance;
  ends[4 * j + 1] = y + u[2]! * distance;
  // The bisector of the two normals, long enough to reach the meeting of the tangents.
  const scale = distance / (1 + u[0]! * u[2]! + u[1]! * u[3]!);
  const tipX = x - (u[1]! + u[3]!) * scale;
  const tipY = y + (u[0]! + u[2]!) * scale;
  if (isJoint(corner.turn, distance, Math.min(lengthFor(shifted, i), lengthFor(shifted, j)))) {
    shifted.corner[i] = JOINT;
    ends[4 * i + 2] = tipX;
    ends[4 * i + 3] = tipY;
    ends[4 * j] = tipX;
    ends[4 * j + 1] = tipY;
  } else if (corner.turn > 0) shifted.corner[i] = LOOSE_ENDS;
  else if (bridging.join === 'arc' || 1 / Math.cos(corner.turn / 2) > bridging.reach) {
    shifted.corner[i] = ARC_BRIDGE;
    if (bridging.join === 'intersection') rounded.push({ x, y });
  } else {
    shifted.corner[i] = REACH_BRIDGE;
    shifted.tips[2 * i] = tipX;
    shifted.tips[2 * i + 1] = tipY;
  }
};

/** A point has no length that a joint could use up; it only asks that its neighbours end in it. */
const lengthFor = (shifted: Shifted, i: number): number => (shifted.state[i] === POINT ? POINT_RADIUS : shifted.length[i]!);

/** No curve to join onto; and none yet, at the start of a chain. */
const NONE = -1;
const NOT_YET = -2;

/** Lays the shifted curves and bridges of one chain one after another, joined where they meet. */
const layChain = (source: Curves, shifted: Shifted, curves: Curves, from: number, to: number, distance: number, kites: number[]): void => {
  let tail = NOT_YET;
  let head = NONE;
  const append = (first: number, last: number): void => {
    if (tail >= 0) join(curves, tail, first);
    else if (tail === NOT_YET) head = first;
    tail = last;
  };
  for (let i = from; i < to; i++) {
    const state = shifted.state[i]!;
    if (state === GONE) tail = NONE;
    else if (state === CURVE) {
      const k = laySide(source, shifted, curves, i);
      append(k, k);
    }
    const kind = shifted.corner[i]!;
    if (kind === LOOSE_ENDS) tail = NONE;
    else if (kind !== JOINT) {
      const first = curves.count;
      if (kind === ARC_BRIDGE) layArcBridge(source, shifted, curves, i, distance);
      else layReachBridge(source, shifted, curves, i, kites);
      append(first, curves.count - 1);
    }
  }
  if (tail >= 0 && head >= 0) join(curves, tail, head);
};

/** Origins of shifted curves are even, those of bridges odd. */
const laySide = (source: Curves, shifted: Shifted, curves: Curves, i: number): number => {
  const e = shifted.ends;
  const o = i * STRIDE;
  const k = 4 * i;
  const origin = 2 * source.origin[i]!;
  if (source.turn[i] === 0) return addLine(curves, e[k]!, e[k + 1]!, e[k + 2]!, e[k + 3]!, origin);
  const cx = source.data[o + CX]!;
  const cy = source.data[o + CY]!;
  return addArc(curves, e[k]!, e[k + 1]!, e[k + 2]!, e[k + 3]!, cx, cy, shifted.radius[i]!, source.turn[i]!, origin);
};

/** An arc about the corner, clockwise since such corners turn to the right; cut in two when it is wide. */
const layArcBridge = (source: Curves, shifted: Shifted, curves: Curves, i: number, distance: number): void => {
  const x = source.data[i * STRIDE + BX]!;
  const y = source.data[i * STRIDE + BY]!;
  const e = shifted.ends;
  const j = 4 * source.next[i]!;
  const k = 4 * i;
  const ax = e[k + 2]!;
  const ay = e[k + 3]!;
  const bx = e[j]!;
  const by = e[j + 1]!;
  const origin = 2 * source.origin[i]! + 1;
  const cosine = ((ax - x) * (bx - x) + (ay - y) * (by - y)) / (distance * distance);
  if (cosine > Math.cos(WIDEST_ARC)) {
    addArc(curves, ax, ay, bx, by, x, y, distance, -1, origin);
    return;
  }
  // The middle of the way round lies along the direction of travel before the corner less that after it.
  const mx = ay - y - (by - y);
  const my = bx - x - (ax - x);
  const scale = distance / Math.sqrt(mx * mx + my * my);
  const first = addArc(curves, ax, ay, x + mx * scale, y + my * scale, x, y, distance, -1, origin);
  const second = addArc(curves, x + mx * scale, y + my * scale, bx, by, x, y, distance, -1, origin);
  join(curves, first, second);
};

/** Two lines that carry both sides on to where they meet. */
const layReachBridge = (source: Curves, shifted: Shifted, curves: Curves, i: number, kites: number[]): void => {
  const e = shifted.ends;
  const j = source.next[i]!;
  const tipX = shifted.tips[2 * i]!;
  const tipY = shifted.tips[2 * i + 1]!;
  const x = source.data[i * STRIDE + BX]!;
  const y = source.data[i * STRIDE + BY]!;
  const before = source.turn[i] === 0 ? 2 * source.origin[i]! : 2 * source.origin[i]! + 1;
  const after = source.turn[j] === 0 ? 2 * source.origin[j]! : 2 * source.origin[j]! + 1;
  const first = addLine(curves, e[4 * i + 2]!, e[4 * i + 3]!, tipX, tipY, before);
  const second = addLine(curves, tipX, tipY, e[4 * j]!, e[4 * j + 1]!, after);
  join(curves, first, second);
  kites.push(x, y, e[4 * i + 2]!, e[4 * i + 3]!, tipX, tipY, e[4 * j]!, e[4 * j + 1]!);
};
