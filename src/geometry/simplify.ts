/** Fewer segments for the same places: lines in line and arcs of one circle that follow each other become one. */
import { FULL_TURN, turnBetween } from './angle.ts';
import { fromBulge } from './bulge.ts';
import type { Chain } from './contour.ts';
import { distanceToSegment, pointAt } from './measure.ts';
import type { Arc, Line, Point, Segment } from './segment.ts';
import { distanceBetween, samePoint } from './segment.ts';

/**
 * Joins neighbours that continue each other. Every joint dropped stays within the tolerance of the segment that replaces
 * it. A closed chain may begin at another of its joints afterwards, so that its old start can be dropped as well.
 *
 * @param within mm
 */
export const simplify = <C extends Chain>(chain: C, within: number): C => {
  const start = chain.closed ? firstRealJoint(chain.segments, within) : 0;
  const turned = [...chain.segments.slice(start), ...chain.segments.slice(0, start)];
  const merged: Segment[] = [];
  for (let i = 0; i < turned.length; ) {
    const run = runFrom(turned, i, within);
    merged.push(run.segment);
    i = run.next;
  }
  return { ...chain, segments: merged };
};

/** A joint that must stay, to begin at; 0 where every joint can go, as in a circle drawn in parts. */
const firstRealJoint = (segments: readonly Segment[], within: number): number => {
  for (let i = 0; i < segments.length; i += 1) {
    const before = segments[(i + segments.length - 1) % segments.length]!;
    if (before === segments[i] || runFrom([before, segments[i]!], 0, within).next === 1) return i;
  }
  return 0;
};

interface Run {
  readonly segment: Segment;
  readonly next: number;
}

const runFrom = (segments: readonly Segment[], first: number, within: number): Run =>
  segments[first]!.kind === 'line' ? runOfLines(segments, first, within) : runOfArcs(segments, first, within);

/**
 * Walks on while the way from the run's start to the newest end passes every joint of the run within the tolerance. Each
 * joint leaves a wedge of directions, seen from the start; their intersection is kept, so that a run costs its length.
 */
const runOfLines = (segments: readonly Segment[], first: number, within: number): Run => {
  const start = segments[first]!.from;
  const ahead = segments[first] as Line;
  const [ux, uy] = [ahead.to.x - start.x, ahead.to.y - start.y];
  const turnTo = (p: Point): number => turnBetween(ux, uy, p.x - start.x, p.y - start.y);
  let [low, high] = [-Math.PI / 2, Math.PI / 2];
  let end = ahead.to;
  let next = first + 1;
  for (; next < segments.length; next += 1) {
    const s = segments[next]!;
    if (s.kind !== 'line' || (s.to.x - s.from.x) * ux + (s.to.y - s.from.y) * uy <= 0) break;
    const reach = distanceBetween(start, end);
    const width = reach > within ? Math.asin(within / reach) : Math.PI / 2;
    low = Math.max(low, turnTo(end) - width);
    high = Math.min(high, turnTo(end) + width);
    if (turnTo(s.to) < low || turnTo(s.to) > high) break;
    end = s.to;
  }
  return { segment: next === first + 1 ? ahead : { kind: 'line', from: start, to: end }, next };
};

/**
 * Walks on while the arcs stay on the circle of the first, then tries one arc for them all; where that fails, for the
 * first half of them, and so on, which is rare and keeps the cost of a run near its length.
 */
const runOfArcs = (segments: readonly Segment[], first: number, within: number): Run => {
  const lead = segments[first] as Arc;
  let sweep = lead.sweep;
  let next = first + 1;
  for (; next < segments.length; next += 1) {
    const s = segments[next]!;
    if (s.kind !== 'arc' || !continues(lead, s, within) || Math.abs(sweep + s.sweep) > FULL_TURN + 1e-9) break;
    sweep += s.sweep;
  }
  for (; next > first + 1; next = first + Math.ceil((next - first) / 2)) {
    const joined = joinedArc(segments.slice(first, next) as Arc[], within);
    if (joined.kind === 'joined') return { segment: joined.arc, next };
  }
  return { segment: lead, next: first + 1 };
};

const continues = (lead: Arc, s: Arc, within: number): boolean =>
  s.sweep > 0 === lead.sweep > 0 && [s.to, pointAt(s, 0.5)].every((p) => Math.abs(distanceBetween(p, lead.centre) - lead.radius) <= within);

/** One arc for a run of arcs when their joints and middles lie on it within the tolerance. */
const joinedArc = (run: readonly Arc[], within: number): { readonly kind: 'joined'; readonly arc: Arc } | { readonly kind: 'apart' } => {
  const lead = run[0]!;
  const end = run.at(-1)!.to;
  const sweep = run.reduce((sum, s) => sum + s.sweep, 0);
  const whole: Arc = { ...lead, to: lead.from, sweep: Math.sign(sweep) * FULL_TURN };
  const arc = samePoint(lead.from, end) ? whole : fromBulge(lead.from, end, Math.tan(sweep / 4));
  if (arc.kind !== 'arc') return { kind: 'apart' };
  const near = run.every((s) => distanceToSegment(arc, s.to) <= within && distanceToSegment(arc, pointAt(s, 0.5)) <= within);
  return near ? { kind: 'joined', arc } : { kind: 'apart' };
};
