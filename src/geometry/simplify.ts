/** Fewer segments for the same places: lines in line and arcs of one circle that follow each other become one. */
import { aroundAt, lastOf, type NonEmpty } from '../sequence/sequence.ts';
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
  let i = 0;
  for (let lead = turned[i]; lead !== undefined; lead = turned[i]) {
    const run = runFrom(lead, turned, i + 1, within);
    merged.push(run.segment);
    i = run.next;
  }
  return { ...chain, segments: merged };
};

/** A joint that must stay, to begin at; 0 where every joint can go, as in a circle drawn in parts. */
const firstRealJoint = (segments: NonEmpty<Segment>, within: number): number => {
  const i = segments.findIndex((segment, at) => {
    const before = aroundAt(segments, at - 1);
    return before === segment || runFrom(before, [before, segment], 1, within).next === 1;
  });
  return Math.max(i, 0);
};

interface StraightenedRun {
  readonly segment: Segment;
  readonly next: number;
}

/** The run that begins with `lead`, which stands before number `second`. */
const runFrom = (lead: Segment, segments: readonly Segment[], second: number, within: number): StraightenedRun =>
  lead.kind === 'line' ? runOfLines(lead, segments, second, within) : runOfArcs(lead, segments, second, within);

/**
 * Walks on while the way from the run's start to the newest end passes every joint of the run within the tolerance. Each
 * joint leaves a wedge of directions, seen from the start; their intersection is kept, so that a run costs its length.
 */
const runOfLines = (ahead: Line, segments: readonly Segment[], second: number, within: number): StraightenedRun => {
  const start = ahead.from;
  const [ux, uy] = [ahead.to.x - start.x, ahead.to.y - start.y];
  const turnTo = (p: Point): number => turnBetween(ux, uy, p.x - start.x, p.y - start.y);
  let [low, high] = [-Math.PI / 2, Math.PI / 2];
  let end = ahead.to;
  let next = second;
  for (; next < segments.length; next += 1) {
    const s = segments[next];
    if (s?.kind !== 'line' || (s.to.x - s.from.x) * ux + (s.to.y - s.from.y) * uy <= 0) break;
    const reach = distanceBetween(start, end);
    const width = reach > within ? Math.asin(within / reach) : Math.PI / 2;
    low = Math.max(low, turnTo(end) - width);
    high = Math.min(high, turnTo(end) + width);
    if (turnTo(s.to) < low || turnTo(s.to) > high) break;
    end = s.to;
  }
  return { segment: next === second ? ahead : { kind: 'line', from: start, to: end }, next };
};

/**
 * Walks on while the arcs stay on the circle of the first, then tries one arc for them all; where that fails, for the
 * first half of them, and so on, which is rare and keeps the cost of a run near its length.
 */
const runOfArcs = (lead: Arc, segments: readonly Segment[], second: number, within: number): StraightenedRun => {
  let sweep = lead.sweep;
  let more: readonly Arc[] = arcsFrom(segments, second, (s) => {
    if (!continues(lead, s, within) || Math.abs(sweep + s.sweep) > FULL_TURN + 1e-9) return false;
    sweep += s.sweep;
    return true;
  });
  for (; more.length > 0; more = more.slice(0, Math.ceil((more.length + 1) / 2) - 1)) {
    const joined = joinedArc(lead, more, within);
    if (joined.kind === 'joined') return { segment: joined.arc, next: second + more.length };
  }
  return { segment: lead, next: second };
};

/** Arcs that follow each other, as long as `goesOn` says. */
const arcsFrom = (segments: readonly Segment[], second: number, goesOn: (s: Arc) => boolean): Arc[] => {
  const arcs: Arc[] = [];
  for (let next = second; next < segments.length; next += 1) {
    const s = segments[next];
    if (s?.kind !== 'arc' || !goesOn(s)) break;
    arcs.push(s);
  }
  return arcs;
};

const continues = (lead: Arc, s: Arc, within: number): boolean =>
  s.sweep > 0 === lead.sweep > 0 && [s.to, pointAt(s, 0.5)].every((p) => Math.abs(distanceBetween(p, lead.centre) - lead.radius) <= within);

/** One arc for a run of arcs when their joints and middles lie on it within the tolerance. */
const joinedArc = (
  lead: Arc,
  more: readonly Arc[],
  within: number,
): { readonly kind: 'joined'; readonly arc: Arc } | { readonly kind: 'apart' } => {
  const run: NonEmpty<Arc> = [lead, ...more];
  const end = lastOf(run).to;
  const sweep = run.reduce((sum, s) => sum + s.sweep, 0);
  const whole: Arc = { ...lead, to: lead.from, sweep: Math.sign(sweep) * FULL_TURN };
  const arc = samePoint(lead.from, end) ? whole : fromBulge(lead.from, end, Math.tan(sweep / 4));
  if (arc.kind !== 'arc') return { kind: 'apart' };
  const near = run.every((s) => distanceToSegment(arc, s.to) <= within && distanceToSegment(arc, pointAt(s, 0.5)) <= within);
  return near ? { kind: 'joined', arc } : { kind: 'apart' };
};
