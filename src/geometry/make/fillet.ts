/** Rounding the corner between two segments with an arc that is tangent to both. */
import { turnBetween } from '../angle.ts';
import { slice } from '../cut.ts';
import { turnAt } from '../joints.ts';
import { shareOfDirection } from '../measure.ts';
import type { Arc, Line, Point, Segment } from '../segment.ts';
import { distanceBetween } from '../segment.ts';

/**
 * `rounded`: the two segments, shortened, with the arc between them; a segment used up entirely is left out. `tangent`:
 * there is no corner. `does not fit`: no arc of this radius touches both segments.
 */
export type Fillet =
  | { readonly kind: 'rounded'; readonly segments: readonly Segment[]; readonly arc: Arc }
  | { readonly kind: 'tangent' }
  | { readonly kind: 'does not fit' };

/**
 * Rounds the corner where `a` ends and `b` begins.
 *
 * @param radius mm, above 0.
 * @param within rad: a turn up to this counts as tangent.
 */
export const fillet = (a: Segment, b: Segment, radius: number, within = 1e-9): Fillet => {
  if (!(radius > 0)) throw new RangeError(`a corner is rounded with a radius above 0 mm, not ${radius}`);
  const turn = turnAt(a, b);
  if (Math.abs(turn) <= within) return { kind: 'tangent' };
  const side = turn > 0 ? 1 : -1;
  const fits = centresAt(carrier(a, side * radius), carrier(b, side * radius))
    .map((centre) => ({ centre, first: footShare(a, centre), second: footShare(b, centre) }))
    .filter((f) => f.first >= 0 && f.first < 1 && f.second > 0 && f.second <= 1)
    .sort((p, q) => distanceBetween(p.centre, a.to) - distanceBetween(q.centre, a.to));
  const best = fits[0];
  return best === undefined ? { kind: 'does not fit' } : rounded(a, b, best.centre, best.first, best.second, side * radius);
};

const rounded = (a: Segment, b: Segment, centre: Point, first: number, second: number, bend: number): Fillet => {
  const before = first > 0 ? [slice(a, 0, first)] : [];
  const after = second < 1 ? [slice(b, second, 1)] : [];
  const from = before[0]?.to ?? a.from;
  const to = after[0]?.from ?? b.to;
  const turn = turnBetween(from.x - centre.x, from.y - centre.y, to.x - centre.x, to.y - centre.y);
  const sweep = turn * bend > 0 ? turn : turn + Math.sign(bend) * 2 * Math.PI;
  const arc: Arc = { kind: 'arc', from, to, centre, radius: Math.abs(bend), sweep };
  return { kind: 'rounded', segments: [...before, arc, ...after], arc };
};

/** The line or circle on which the centre lies: the segment moved by `by` mm to the left and carried on beyond its ends. */
type Carrier =
  | { readonly kind: 'line'; readonly through: Point; readonly x: number; readonly y: number }
  | { readonly kind: 'circle'; readonly centre: Point; readonly radius: number };

const carrier = (s: Segment, by: number): Carrier => {
  if (s.kind === 'arc') return { kind: 'circle', centre: s.centre, radius: s.radius - Math.sign(s.sweep) * by };
  const length = distanceBetween(s.from, s.to);
  const x = (s.to.x - s.from.x) / length;
  const y = (s.to.y - s.from.y) / length;
  return { kind: 'line', through: { x: s.from.x - y * by, y: s.from.y + x * by }, x, y };
};

const centresAt = (a: Carrier, b: Carrier): Point[] => {
  if ((a.kind === 'circle' && a.radius <= 0) || (b.kind === 'circle' && b.radius <= 0)) return [];
  if (a.kind === 'line') return b.kind === 'line' ? lines(a, b) : lineAndCircle(a, b);
  return b.kind === 'line' ? lineAndCircle(b, a) : circles(a, b);
};

type Straight = Extract<Carrier, { kind: 'line' }>;
type Round = Extract<Carrier, { kind: 'circle' }>;

const lines = (a: Straight, b: Straight): Point[] => {
  const cross = a.x * b.y - a.y * b.x;
  if (cross === 0) return [];
  const along = ((b.through.x - a.through.x) * b.y - (b.through.y - a.through.y) * b.x) / cross;
  return [{ x: a.through.x + a.x * along, y: a.through.y + a.y * along }];
};

const lineAndCircle = (a: Straight, b: Round): Point[] => {
  const x = b.centre.x - a.through.x;
  const y = b.centre.y - a.through.y;
  const height = a.x * y - a.y * x;
  const square = (b.radius - height) * (b.radius + height);
  if (square < 0) return [];
  const foot = a.x * x + a.y * y;
  return [foot - Math.sqrt(square), foot + Math.sqrt(square)].map((t) => ({ x: a.through.x + a.x * t, y: a.through.y + a.y * t }));
};

const circles = (a: Round, b: Round): Point[] => {
  const x = b.centre.x - a.centre.x;
  const y = b.centre.y - a.centre.y;
  const apart = Math.sqrt(x * x + y * y);
  if (apart === 0) return [];
  const along = (apart + ((a.radius - b.radius) * (a.radius + b.radius)) / apart) / 2;
  const square = (a.radius - along) * (a.radius + along);
  if (square < 0) return [];
  const [ux, uy] = [x / apart, y / apart];
  return [Math.sqrt(square), -Math.sqrt(square)].map((t) => ({ x: a.centre.x + ux * along - uy * t, y: a.centre.y + uy * along + ux * t }));
};

/** Share at which the segment, carried on, touches a circle about `centre`; outside 0 to 1 beyond its ends. */
const footShare = (s: Segment, centre: Point): number => (s.kind === 'line' ? footOnLine(s, centre) : footOnArc(s, centre));

const footOnLine = (s: Line, p: Point): number => {
  const x = s.to.x - s.from.x;
  const y = s.to.y - s.from.y;
  return snapped(((p.x - s.from.x) * x + (p.y - s.from.y) * y) / (x * x + y * y));
};

const footOnArc = (s: Arc, p: Point): number => {
  const share = snapped(shareOfDirection(s, p.x - s.centre.x, p.y - s.centre.y));
  // A foot a hair before the start shows as nearly a whole turn.
  return share * Math.abs(s.sweep) > 2 * Math.PI - 1e-12 ? 0 : share;
};

/** A share within rounding of an end is that end, so that an arc that just fits is not lost. */
const snapped = (share: number): number => (Math.abs(share) < 1e-13 ? 0 : Math.abs(share - 1) < 1e-13 ? 1 : share);
