/** Reads the loops out of pieces of which every one lies on a loop: the faces they divide the plane into. */

import { reverse } from '../../geometry/cut.ts';
import { tangentAt } from '../../geometry/measure.ts';
import type { Point, Segment } from '../../geometry/segment.ts';
import { firstItem, itemAt, lastItem, roundPairs } from '../../sequence/sequence.ts';
import { areaUnder } from '../piece/area-under.ts';
import type { DrawnPiece } from '../piece/piece.ts';
import type { Graph } from './graph.ts';

/** The loops as half edges, each counter-clockwise and through no node twice. */
export const facesOf = (graph: Graph, loose: Uint8Array): number[][] => {
  const next = onwards(graph, loose);
  const done = new Uint8Array(loose.length * 2);
  const loops: number[][] = [];
  for (let start = 0; start < done.length; start += 1) {
    if (loose[start >> 1] || done[start]) continue;
    const walk: number[] = [];
    for (let half = start; !done[half]; half = itemAt(next, half)) {
      done[half] = 1;
      walk.push(half);
    }
    const area = areaOf(graph, walk);
    if (walk.every((half) => coreDegree(graph, loose, half) === 2)) {
      // A plain ring: both ways round are the same loop, also where it crosses itself and encloses nothing on balance.
      for (const half of walk) done[half ^ 1] = 1;
      loops.push(area < 0 ? walk.map((half) => half ^ 1).reverse() : walk);
    } else if (area > 0) loops.push(...simpleLoops(graph, walk));
    // A walk with the clock, left out here, goes round several faces from outside.
  }
  return loops;
};

/** How many pieces that are not loose meet where a half edge starts. */
const coreDegree = (graph: Graph, loose: Uint8Array, half: number): number => {
  let degree = 0;
  for (const other of itemAt(graph.leaving, itemAt(graph.nodeOf, half))) if (!loose[other >> 1]) degree += 1;
  return degree;
};

/** For each half edge the one that follows it round the face on its left: the first with the clock from where it came. */
const onwards = (graph: Graph, loose: Uint8Array): Int32Array => {
  const next = new Int32Array(loose.length * 2);
  graph.leaving.forEach((all) => {
    const ends = all.filter((half) => !loose[half >> 1]);
    const sorted = ends.length > 2 ? sortedRound(graph.pieces, ends) : ends;
    for (const [before, half] of roundPairs(sorted)) next[half ^ 1] = before;
  });
  return next;
};

/**
 * Half edges by the direction in which they lie, against the clock. Not by their tangents, which are often the same where an
 * arc leaves a line, but by where they are at a small distance that is the same for all.
 */
const sortedRound = (pieces: readonly DrawnPiece[], ends: readonly number[]): number[] => {
  const firsts = ends.map((half) => ({ half, segment: firstSegment(itemAt(pieces, half >> 1), half) }));
  const reach = 0.5 * Math.min(...firsts.map(({ segment }) => reachOf(segment)));
  return firsts
    .map(({ half, segment }) => ({ half, angle: angleAt(segment, reach) }))
    .sort((p, q) => p.angle - q.angle || p.half - q.half)
    .map((p) => p.half);
};

const firstSegment = (piece: DrawnPiece, half: number): Segment =>
  half % 2 === 0 ? firstItem(piece.segments) : reverse(lastItem(piece.segments));

/** How far from its start a segment surely comes. */
const reachOf = (segment: Segment): number => {
  const x = segment.to.x - segment.from.x;
  const y = segment.to.y - segment.from.y;
  return segment.kind === 'arc' && Math.abs(segment.sweep) > Math.PI ? segment.radius : Math.sqrt(x * x + y * y);
};

/** Direction from the start to the place at the given distance; on an arc the chord turns off the tangent by half the angle. */
const angleAt = (segment: Segment, reach: number): number => {
  const tangent = tangentAt(segment, 0);
  const direction = Math.atan2(tangent.y, tangent.x);
  const turn = segment.kind === 'line' ? 0 : Math.sign(segment.sweep) * Math.asin(Math.min(1, reach / (2 * segment.radius)));
  const angle = direction + turn;
  return angle > Math.PI ? angle - 2 * Math.PI : angle <= -Math.PI ? angle + 2 * Math.PI : angle;
};

/** Cuts a walk at the nodes it passes more than once; keeps what runs counter-clockwise. */
const simpleLoops = (graph: Graph, walk: readonly number[]): number[][] => {
  const loops: number[][] = [];
  const trail: number[] = [];
  const at = new Map<number, number>();
  for (const half of walk) {
    at.set(itemAt(graph.nodeOf, half), trail.length);
    trail.push(half);
    const back = at.get(itemAt(graph.nodeOf, half ^ 1));
    if (back === undefined) continue;
    const loop = trail.splice(back);
    for (const passed of loop) at.delete(itemAt(graph.nodeOf, passed));
    if (areaOf(graph, loop) > 0) loops.push(loop);
  }
  return loops;
};

/** Signed area in mm², measured from the first point so that far-off coordinates cost no digits. */
const areaOf = (graph: Graph, halves: readonly number[]): number => {
  const origin = startOf(graph, firstItem(halves));
  let area = 0;
  for (const half of halves) {
    const piece = itemAt(graph.pieces, half >> 1);
    let part = 0;
    for (const segment of piece.segments) part += areaUnder(segment, origin);
    area += half % 2 === 0 ? part : -part;
  }
  return area;
};

const startOf = (graph: Graph, half: number): Point => {
  const { segments } = itemAt(graph.pieces, half >> 1);
  return half % 2 === 0 ? firstItem(segments).from : lastItem(segments).to;
};
