/**
 * A wheel as its mate meets it, and how deep the edge of one goes into the metal of the other while they roll without play. Flanks
 * are conjugate; only the edges between flank and tip circle can run into something. Lengths in mm, angles in rad.
 */
import { path } from '../../geometry/contour.ts';
import { flatten } from '../../geometry/flatten.ts';
import type { Segment } from '../../geometry/segment.ts';

interface Polar {
  readonly radius: number;
  readonly angle: number;
}

export interface Wheel {
  readonly teeth: number;
  /** Of `outline`: `inside` for half a tooth of external teeth, `outside` for half a space of internal ones. */
  readonly metal: 'inside' | 'outside';
  readonly base: number;
  /** From the outer end inwards, about the middle of the tooth or space. */
  readonly outline: readonly Polar[];
  /** Between flank and tip circle. */
  readonly edge: Polar;
  readonly tip: number;
  readonly root: number;
  /** Between these the flank is an involute. */
  readonly low: number;
  readonly high: number;
}

/** `play` mm along the line of action is taken back by turning: this gear's share of the backlash, halved between the flanks. */
export const wheelOf = (
  wheel: Pick<Wheel, 'teeth' | 'metal' | 'base' | 'tip' | 'root' | 'low' | 'high'>,
  half: readonly Segment[],
  play: number,
): Wheel => {
  const turn = ((wheel.metal === 'inside' ? 1 : -1) * play) / 2 / wheel.base;
  const outline = flatten(path(half), 1e-5 * wheel.tip).map(({ x, y }) => ({ radius: Math.hypot(x, y), angle: Math.atan2(y, x) + turn }));
  const atTip = outline.filter(({ radius }) => Math.abs(radius - wheel.tip) < 1e-9 * wheel.tip);
  const edge = (wheel.metal === 'inside' ? atTip.at(-1) : atTip[0]) ?? { radius: wheel.tip, angle: turn };
  return { ...wheel, outline, edge };
};

/** How far a place about the middle of a wheel lies in its metal, mm; below 0 outside of it. Angles count from a tooth or space. */
export const depthIn = ({ teeth, metal, outline, tip, root }: Wheel, { radius, angle }: Polar): number => {
  const out = metal === 'inside' ? 1 : -1;
  if (out * (radius - tip) > 0) return -out * (radius - tip);
  if (out * (radius - root) < 0) return out * (root - radius);
  const pitch = (2 * Math.PI) / teeth;
  return out * radius * (halfAt(outline, radius) - Math.abs(angle - pitch * Math.round(angle / pitch)));
};

const halfAt = (outline: readonly Polar[], radius: number): number => {
  const i = Math.max(
    1,
    outline.findIndex((p) => p.radius <= radius),
  );
  const [a, b] = [outline[i - 1] as Polar, outline[i] as Polar];
  const part = a.radius - b.radius < 1e-12 ? 1 : (a.radius - radius) / (a.radius - b.radius);
  return a.angle + Math.min(1, Math.max(0, part)) * (b.angle - a.angle);
};

/** The most of a depth over a way, looked at closely enough for edges that pass. */
const STEPS = 720;

export const deepest = (from: number, to: number, depth: (turn: number) => number): number => {
  let most = Number.NEGATIVE_INFINITY;
  for (let i = 0; i <= STEPS; i += 1) most = Math.max(most, depth(from + ((to - from) * i) / STEPS));
  return most;
};

const about = (x: number, y: number): Polar => ({ radius: Math.hypot(x, y), angle: Math.atan2(y, x) });

/** Half the angle at which a circle about a centre at a distance comes within a radius of the origin. */
const reachOf = (distance: number, circle: number, within: number): number =>
  Math.acos(Math.min(1, Math.max(-1, (distance ** 2 + circle ** 2 - within ** 2) / (2 * distance * circle))));

/** How deep the edge of `mate` goes into `wheel`, both external. */
export const edgeInExternal = (wheel: Wheel, mate: Wheel, distance: number): number => {
  const { radius, angle } = mate.edge;
  const reach = reachOf(distance, radius, wheel.tip);
  return deepest(-reach - angle, reach - angle, (turn) => {
    const at = about(distance - radius * Math.cos(turn + angle), -radius * Math.sin(turn + angle));
    return depthIn(wheel, { radius: at.radius, angle: at.angle + turn * (mate.teeth / wheel.teeth) - Math.PI / wheel.teeth });
  });
};

/** How deep the edge of a pinion goes into the ring about it, over a whole turn: it may foul the tips far from the mesh. */
export const edgeInRing = (ring: Wheel, pinion: Wheel, distance: number): number => {
  const { radius, angle } = pinion.edge;
  const reach = Math.PI - reachOf(distance, radius, ring.tip);
  return deepest(-reach - angle, reach - angle, (turn) => {
    const at = about(distance + radius * Math.cos(turn + angle), radius * Math.sin(turn + angle));
    return depthIn(ring, { radius: at.radius, angle: at.angle - turn * (pinion.teeth / ring.teeth) });
  });
};

/** How deep the edge of the ring's teeth goes into the pinion. */
export const edgeInPinion = (pinion: Wheel, ring: Wheel, distance: number): number => {
  const { radius, angle } = ring.edge;
  const reach = reachOf(distance, radius, pinion.tip);
  return deepest(-reach - angle, reach - angle, (turn) => {
    const at = about(radius * Math.cos(turn + angle) - distance, radius * Math.sin(turn + angle));
    return depthIn(pinion, { radius: at.radius, angle: at.angle - turn * (ring.teeth / pinion.teeth) });
  });
};

/** Length of the string from the base circle to the involute at a radius. */
export const stringTo = (radius: number, base: number): number => Math.sqrt(Math.max(0, radius ** 2 - base ** 2));
