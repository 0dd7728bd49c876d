/** A tool's point and shank as one contour: the tip on the X axis, the shank below it. Lengths in mm, angles in rad. */
import { type Contour, contour } from '../../geometry/contour.ts';
import { endDirection, startDirection } from '../../geometry/measure.ts';
import { arc, distanceBetween, line, type Point, point, type Segment } from '../../geometry/segment.ts';

export interface ToolPoint {
  /** Angles of the flanks to the tool's axis; below 0 they lean inwards behind the tip. */
  readonly left: number;
  readonly right: number;
  /** Width of the tip between sharp corners; its middle is at X 0. */
  readonly flat: number;
  readonly nose: number;
}

/** At a depth behind the tip. */
export const edges = (
  { left, right, flat }: ToolPoint,
  depth: number,
): { readonly left: number; readonly right: number; readonly width: number } => {
  const [from, to] = [-flat / 2 - depth * Math.tan(left), flat / 2 + depth * Math.tan(right)];
  return { left: from, right: to, width: to - from };
};

/** The part of the flat that a nose takes at a flank. */
const taken = (nose: number, flank: number): number => (nose * (1 - Math.sin(flank))) / Math.cos(flank);

/** How much flat is left between the noses; below 0 they have no room. */
export const flatLeft = ({ left, right, flat, nose }: ToolPoint): number => flat - taken(nose, left) - taken(nose, right);

/** From the right flank at a depth, over the tip, down to the left flank at the same depth. */
export const pointProfile = (tool: ToolPoint, reach: number): readonly Segment[] => {
  const { left, right, flat, nose } = tool;
  const base = edges(tool, reach);
  const [from, to] = [point(base.right, -reach), point(base.left, -reach)];
  if (!(nose > 0)) {
    const [a, b] = [point(flat / 2, 0), point(-flat / 2, 0)];
    return flat > 1e-9 ? [line(from, a), line(a, b), line(b, to)] : [line(from, point(0, 0)), line(point(0, 0), to)];
  }
  const [onRight, onLeft] = [point(flat / 2 - taken(nose, right), -nose), point(taken(nose, left) - flat / 2, -nose)];
  const rise = point(onRight.x + nose * Math.cos(right), onRight.y + nose * Math.sin(right));
  const fall = point(onLeft.x - nose * Math.cos(left), onLeft.y + nose * Math.sin(left));
  if (flatLeft(tool) < 1e-9) return [line(from, rise), arc(rise, fall, onRight, Math.PI - right - left), line(fall, to)];
  const [a, b] = [point(onRight.x, 0), point(onLeft.x, 0)];
  return [
    line(from, rise),
    arc(rise, a, onRight, Math.PI / 2 - right),
    line(a, b),
    arc(b, fall, onLeft, Math.PI / 2 - left),
    line(fall, to),
  ];
};

export interface Shank {
  readonly width: number;
  /** From the tip to the end. */
  readonly length: number;
  /** Of the rounds between point and shoulders. */
  readonly round: number;
}

/** `no room`: the shoulders are narrower than their rounds; `most` would fit. `short`: nothing of the shank is left. */
export type Tool =
  | { readonly kind: 'tool'; readonly contour: Contour }
  | { readonly kind: 'no room'; readonly most: number }
  | { readonly kind: 'short'; readonly least: number };

/** The profile with shoulders and shank below it; the shank is centred on the base of the profile. */
export const toolContour = (profile: readonly Segment[], { width, length, round }: Shank): Tool => {
  const [first, last] = [profile[0] as Segment, profile.at(-1) as Segment];
  const [from, to] = [first.from, last.to];
  const middle = (from.x + to.x) / 2;
  const [west, east] = [middle - width / 2, middle + width / 2];
  const shoulder = (width - distanceBetween(from, to)) / 2;
  const [up, down] = [startDirection(first), endDirection(last)];
  // Each round turns from its flank to the shoulder, which it meets so far beside and below the base of the profile.
  const beside = Math.max(up.y, -down.y);
  const rounds = shoulder > 1e-6 ? round : 0;
  if (rounds * beside > shoulder + 1e-9) return { kind: 'no room', most: shoulder / beside };
  const low = Math.min(from.y - rounds * (1 + up.x), to.y - rounds * (1 + down.x));
  if (-low >= length - 1e-6) return { kind: 'short', least: -low };
  return { kind: 'tool', contour: closed([...profile, ...shank({ from, to, up, down, west, east, rounds, length })]) };
};

interface Below {
  readonly from: Point;
  readonly to: Point;
  readonly up: Point;
  readonly down: Point;
  readonly west: number;
  readonly east: number;
  readonly rounds: number;
  readonly length: number;
}

const shank = ({ from, to, up, down, west, east, rounds, length }: Below): readonly Segment[] => {
  const left = inner(to, down, rounds, -1);
  const right = inner(from, point(-up.x, -up.y), rounds, 1);
  const stops = [left.end, point(west, left.end.y), point(west, -length), point(east, -length), point(east, right.end.y), right.end];
  const lines = stops.slice(1).flatMap((p, i) => (distanceBetween(stops[i] as Point, p) > 1e-9 ? [line(stops[i] as Point, p)] : []));
  return [...left.round, ...lines, ...right.round.map((s) => ({ ...s, from: s.to, to: s.from, sweep: -s.sweep }))];
};

/** From the base of a flank, going down, round to the shoulder that goes out to one side (-1 left, 1 right). */
const inner = (base: Point, down: Point, radius: number, side: 1 | -1) => {
  if (!(radius > 0)) return { end: base, round: [] };
  const centre = point(base.x - side * radius * down.y, base.y + side * radius * down.x);
  const end = point(centre.x, centre.y - radius);
  const sweep = side * Math.acos(Math.max(-1, Math.min(1, side * down.x)));
  return { end, round: [arc(base, end, centre, sweep)] };
};

/** Each segment starts with the very numbers that the one before ends with. */
const closed = (segments: readonly Segment[]): Contour =>
  contour(segments.map((s, i) => ({ ...s, from: (segments[(i + segments.length - 1) % segments.length] as Segment).to })));
