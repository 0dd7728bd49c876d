/** A tool's point and shank as one contour: the tip on the X axis, the shank below it. Lengths in mm, angles in rad. */
import { type Contour, contour } from '../../geometry/contour.ts';
import { reverse } from '../../geometry/cut.ts';
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

/** `no room`: the shank's shoulders are narrower than their rounds. `short`: nothing of the shank is left below the shoulders. */
export type Tool =
  | { readonly kind: 'tool'; readonly contour: Contour }
  | { readonly kind: 'no room' }
  | { readonly kind: 'short'; readonly least: number };

/** The profile with shoulders and shank below it; the shank is centred on the base of the profile. */
export const toolContour = (profile: readonly Segment[], { width, length, round }: Shank): Tool => {
  const [first, last] = [profile[0] as Segment, profile.at(-1) as Segment];
  const [up, down] = [startDirection(first), endDirection(last)];
  const middle = (first.from.x + last.to.x) / 2;
  const [west, east] = [middle - width / 2, middle + width / 2];
  // Where the point is as wide as the shank there are no shoulders to round.
  const radius = width - distanceBetween(first.from, last.to) > 1e-6 ? round : 0;
  const low = Math.min(last.to.y - radius * (1 + down.x), first.from.y - radius * (1 + up.x));
  const left = toShoulder(last.to, down, radius, low, -1);
  const right = toShoulder(first.from, point(-up.x, -up.y), radius, low, 1);
  if (left.end.x < west - 1e-9 || right.end.x > east + 1e-9) return { kind: 'no room' };
  if (-low >= length - 1e-6) return { kind: 'short', least: -low };
  const stops = [left.end, point(west, low), point(west, -length), point(east, -length), point(east, low), right.end];
  const lines = stops.slice(1).flatMap((p, i) => (distanceBetween(stops[i] as Point, p) > 1e-9 ? [line(stops[i] as Point, p)] : []));
  return { kind: 'tool', contour: closed([...profile, ...left.way, ...lines, ...right.way.map(reverse).toReversed()]) };
};

/** From the base of a flank, going down, on and round to the shoulder that goes out to one side (-1 left, 1 right) at a height. */
const toShoulder = (base: Point, down: Point, radius: number, height: number, side: 1 | -1) => {
  const on = (base.y - radius * (1 + side * -1 * down.x) - height) / -down.y;
  const from = on > 1e-9 ? point(base.x + on * down.x, base.y + on * down.y) : base;
  const straight = on > 1e-9 ? [line(base, from)] : [];
  if (!(radius > 0)) return { end: point(from.x, height), way: straight };
  const centre = point(from.x - side * radius * down.y, from.y + side * radius * down.x);
  const end = point(centre.x, height);
  return { end, way: [...straight, arc(from, end, centre, side * Math.acos(Math.max(-1, Math.min(1, side * down.x))))] };
};

/** Each segment starts with the very numbers that the one before ends with. */
const closed = (segments: readonly Segment[]): Contour =>
  contour(segments.map((s, i) => ({ ...s, from: (segments[(i + segments.length - 1) % segments.length] as Segment).to })));
