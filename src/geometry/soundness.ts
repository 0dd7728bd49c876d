/** Whether a chain keeps the promises of its type: finite, joined exactly, no zero lengths, arcs that agree with their ends. */
import { FULL_TURN, sineCosine } from './angle.ts';
import type { Chain } from './contour.ts';
import type { Arc, Segment } from './segment.ts';
import { distanceBetween, isFullCircle, samePoint } from './segment.ts';

export interface SegmentFault {
  readonly kind: 'not finite' | 'gap' | 'zero length' | 'bad sweep' | 'ends off the circle';
  /** Number of the segment; for a gap the one after it. */
  readonly segment: number;
  /** How far off, mm (rad for a sweep). */
  readonly amount: number;
}

export type Soundness = { readonly kind: 'sound' } | { readonly kind: 'unsound'; readonly faults: readonly SegmentFault[] };

/**
 * Looks a chain over at a door.
 *
 * @param within mm by which the ends of an arc may be off the place its centre, radius and sweep say.
 */
export const soundness = (chain: Chain, within: number): Soundness => {
  const faults = faultsOf(chain, within);
  return faults.length === 0 ? { kind: 'sound' } : { kind: 'unsound', faults };
};

const fault = (kind: SegmentFault['kind'], segment: number, amount: number): SegmentFault => ({ kind, segment, amount });

const faultsOf = (chain: Chain, within: number): SegmentFault[] => {
  const faults: SegmentFault[] = [];
  chain.segments.forEach((s, i) => {
    const before = i > 0 ? chain.segments[i - 1] : chain.closed ? chain.segments.at(-1) : undefined;
    if (!allFinite(s)) faults.push(fault('not finite', i, Number.POSITIVE_INFINITY));
    else if (s.kind === 'line' && samePoint(s.from, s.to)) faults.push(fault('zero length', i, 0));
    else if (s.kind === 'arc') faults.push(...arcFaults(s, i, within));
    if (before && !samePoint(before.to, s.from)) faults.push(fault('gap', i, distanceBetween(before.to, s.from)));
  });
  return faults;
};

const allFinite = (s: Segment): boolean => {
  const numbers = [s.from.x, s.from.y, s.to.x, s.to.y, ...(s.kind === 'arc' ? [s.centre.x, s.centre.y, s.radius, s.sweep] : [])];
  return numbers.every(Number.isFinite);
};

const arcFaults = (s: Arc, i: number, within: number): SegmentFault[] => {
  const size = Math.abs(s.sweep);
  if (size === 0 || s.radius <= 0) return [fault('zero length', i, 0)];
  if (size > FULL_TURN * (1 + 1e-15)) return [fault('bad sweep', i, size - FULL_TURN)];
  if (isFullCircle(s) && size < FULL_TURN * (1 - 1e-15)) return [fault('bad sweep', i, FULL_TURN - size)];
  const { sine, cosine } = sineCosine(s.sweep);
  const x = s.from.x - s.centre.x;
  const y = s.from.y - s.centre.y;
  const end = { x: s.centre.x + x * cosine - y * sine, y: s.centre.y + x * sine + y * cosine };
  const off = Math.max(Math.abs(Math.hypot(x, y) - s.radius), distanceBetween(end, s.to));
  return off > within ? [fault('ends off the circle', i, off)] : [];
};
