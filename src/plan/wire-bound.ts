/** What a job takes at least with a wire, before anything is laid out: from the contours alone, and never more than it really takes. */
import { perimeterOf } from '../geometry/area.ts';
import { pieceMass } from '../physics/mass.ts';
import { coreDecision } from './core-choice.ts';
import { isFromEdge, type PlanQuestion } from './question.ts';
import type { Shape } from './shapes.ts';
import { pieceArea } from './surroundings.ts';
import type { WireTried } from './wires.ts';

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
 * shorter round a part. Ways in and out, overlaps, travel and the rings of a burnt core come on top and are left out.
 */
export const wireBound = (tried: WireTried, shapes: readonly Shape[], question: PlanQuestion): WireBound => {
  const sum = { sparking: 0, threadings: 0, stops: 0, drilled: 0 };
  shapes.forEach((shape, i) => {
    const { loop, holes } = shape.first;
    const count = shape.members.length;
    const opening = loop.kept === 'die';
    tried.rows.forEach((row, pass) => {
      const shorter = opening ? 2 * Math.PI * row.offset.value : 0;
      sum.sparking += (count * ROUNDING * Math.max(0, perimeterOf(tried.fits[i]!.opened[pass]!) - shorter)) / row.feed.value;
    });
    sum.threadings += count;
    if (!opening || !isBurnt(shape, tried, question)) sum.stops += 2 * count;
    // Only parts share holes, and an opening with a hole in it may need no other.
    if (opening && holes.length === 0 && !isFromEdge(question, loop.loop.id)) sum.drilled += count;
  });
  return sum;
};

/** A program rounds its places, and a hair of contour may be passed over at a corner. */
const ROUNDING = 0.999;

const isBurnt = (shape: Shape, { rows, wire }: WireTried, question: PlanQuestion): boolean => {
  const rough = rows[0]!;
  const reach = rough.offset.value + wire.diameter / 2 + rough.gap.value;
  const kerf = wire.diameter + 2 * rough.gap.value;
  const area = pieceArea(shape.first, reach);
  const mass = pieceMass.compute({ area, height: question.height, density: question.material.density.value });
  return coreDecision({ shape, piece: { area, mass }, reach, kerf, rough, wire, question }).kind === 'burn';
};
