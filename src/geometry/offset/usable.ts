/** Whether chains keep the promises of their type, as far as an offset relies on them. */
import { lastOf } from '../../sequence/sequence.ts';
import type { Chain } from '../contour.ts';
import type { Arc, Point, Segment } from '../segment.ts';
import type { Unsound } from './offset-outcome.ts';

/** mm: how far the ends of an arc may be off its circle. */
const OFF_CIRCLE = 1e-6;

/** The first broken promise, if any. */
export const soundnessOf = (chains: readonly Chain[]): Unsound | undefined => {
  for (const chain of chains) {
    let before = chain.closed ? lastOf(chain.segments).to : chain.segments[0].from;
    for (const segment of chain.segments) {
      const broken = brokenIn(segment, before);
      if (broken) return broken;
      before = segment.to;
    }
  }
  return undefined;
};

export const unsound = (what: Unsound['what'], at: Point, amount?: number): Unsound => ({ kind: 'unsound', what, at, amount });

const brokenIn = (s: Segment, before: Point): Unsound | undefined => {
  const numbers = s.from.x + s.from.y + s.to.x + s.to.y + (s.kind === 'arc' ? s.centre.x + s.centre.y + s.radius + s.sweep : 0);
  if (!Number.isFinite(numbers)) return unsound('not a number', { x: 0, y: 0 });
  if (s.from.x !== before.x || s.from.y !== before.y) {
    const gap = Math.hypot(s.from.x - before.x, s.from.y - before.y);
    return unsound('not joined', s.from, gap);
  }
  if (s.kind === 'arc') return brokenArc(s);
  if (s.from.x === s.to.x && s.from.y === s.to.y) return unsound('zero-length segment', s.from);
  return undefined;
};

const brokenArc = (s: Arc): Unsound | undefined => {
  if (s.sweep === 0 || !(s.radius > 0)) return unsound('zero-length segment', s.from);
  const turned = Math.abs(s.sweep) > 2 * Math.PI + 1e-9;
  if (turned) return unsound('arc of more than a turn', s.from, s.sweep);
  const cosine = Math.cos(s.sweep);
  const sine = Math.sin(s.sweep);
  const x = s.from.x - s.centre.x;
  const y = s.from.y - s.centre.y;
  const off = Math.max(
    Math.abs(s.centre.x + x * cosine - y * sine - s.to.x),
    Math.abs(s.centre.y + x * sine + y * cosine - s.to.y),
    Math.abs(Math.sqrt(x * x + y * y) - s.radius),
  );
  // From a centre far away no place is told more finely than this.
  if (off > Math.max(OFF_CIRCLE, s.radius * 1e-15)) return unsound('arc does not fit its ends', s.from, off);
  return undefined;
};
