/** What a job takes at least with a wire, before anything is laid out: from the contours alone, and never more than it really takes. */

import { perimeterOf } from '../../geometry/area.ts';
import { lengthOf } from '../../geometry/measure.ts';
import { pieceMass } from '../../physics/material/piece-mass.ts';
import { itemAt, sideBySide } from '../../sequence/sequence.ts';
import type { Finding } from '../../text/finding.ts';
import { coreDecision } from '../core/core-choice.ts';
import { sortLoops } from '../kept-side.ts';
import { layOut } from '../lay/lay-out.ts';
import { isFromEdge, type PlanQuestion } from '../question.ts';
import { kerfOf, reachOf } from '../rough-cut.ts';
import type { LikeLoops } from '../same-shape.ts';
import { pieceArea } from '../surroundings.ts';
import type { WireWithPasses } from '../wire/choose-wire.ts';
import { familyOf, rowOf } from '../wire/families.ts';
import { blockFor } from './block.ts';

export interface WireBound {
  /** Minutes of cutting. */
  readonly sparking: number;
  readonly threadings: number;
  /** Stops for slugs and parts. */
  readonly stops: number;
  /** Start holes to drill. */
  readonly drilled: number;
}

/**
 * Every pass goes once round every contour. Its path is parallel to what it leaves: shorter by 2π offsets inside an opening, no
 * shorter round a part. Ways in and out, overlaps, travel and the rings of a no-core core come on top and are left out.
 */
export const wireBound = (tried: WireWithPasses, shapes: readonly LikeLoops[], question: PlanQuestion): WireBound => {
  const sum = { sparking: 0, threadings: 0, stops: 0, drilled: 0 };
  for (const [shape, { opened }] of sideBySide(shapes, tried.fits)) {
    const { loop, holes } = shape.first;
    const count = shape.members.length;
    const opening = loop.kept === 'die';
    for (const [row, contour] of sideBySide(familyOf(tried, loop.loop.id).rows, opened)) {
      const shorter = opening ? 2 * Math.PI * row.offset.value : 0;
      sum.sparking += (count * ROUNDING * Math.max(0, perimeterOf(contour) - shorter)) / row.feed.value;
    }
    sum.threadings += count;
    if (!opening || !isWithoutCore(shape, tried, question)) sum.stops += 2 * count;
    // Only parts share holes, and an opening with a hole in it may need no other.
    if (opening && holes.length === 0 && !isFromEdge(question, loop.loop.id)) sum.drilled += count;
  }
  return sum;
};

/** `refused`: with this wire some contour cannot be laid out. */
export type LaidBound =
  | { readonly kind: 'bound'; readonly bound: WireBound }
  | { readonly kind: 'refused'; readonly findings: readonly Finding[] };

/**
 * A much closer bound, at the price of laying out one opening of each shape: all that the wire cuts, threads and stops for in
 * it, as often as the shape is there. Travel and open lines are still left out.
 */
export const laidBound = (tried: WireWithPasses, shapes: readonly LikeLoops[], question: PlanQuestion): LaidBound => {
  // What is around a part, or in the way from the edge of the block, is not the same for all: then nothing is left out.
  const alone = shapes.every((s) => s.first.loop.kept === 'die' && !isFromEdge(question, s.first.loop.loop.id));
  const few = alone ? shapes.map((s) => ({ ...s, members: s.members.slice(0, 1) })) : shapes;
  const block = blockFor(sortLoops(question), question);
  const laid = layOut({ shapes: few, best: tried, block, question });
  if (laid.findings.some((f) => f.severity === 'refusal')) return { kind: 'refused', findings: laid.findings };
  const counts = shapes.flatMap((s) => (alone ? [s.members.length] : s.members.map(() => 1)));
  const sum = { sparking: 0, threadings: 0, stops: 0, drilled: 0 };
  laid.visits.forEach(({ visits }, i) => {
    const count = itemAt(counts, i);
    for (const step of visits.flatMap((v) => v.steps)) {
      if (step.kind === 'thread') sum.threadings += count;
      else if (step.kind === 'stop') sum.stops += count;
      else if (step.kind === 'cut' && step.centre !== undefined)
        sum.sparking += (count * ROUNDING * lengthOf(step.centre)) / rowOf(tried, step.pass).feed.value;
    }
    if (alone && itemAt(laid.contours, i).hole.origin === 'placed') sum.drilled += count;
  });
  return { kind: 'bound', bound: sum };
};

/** A program rounds its places, and a hair of contour may be passed over at a corner. */
const ROUNDING = 0.999;

const isWithoutCore = (shape: LikeLoops, tried: WireWithPasses, question: PlanQuestion): boolean => {
  const { wire } = tried;
  const { rows } = familyOf(tried, shape.first.loop.loop.id);
  const [reach, kerf] = [reachOf({ rows, wire }), kerfOf({ rows, wire })];
  const area = pieceArea(shape.first, reach);
  const mass = pieceMass.compute({ area, height: question.height, density: question.material.density.value });
  return coreDecision({ shape, piece: { area, mass }, reach, kerf, rough: rows[0], wire, question }).kind === 'no-core';
};
