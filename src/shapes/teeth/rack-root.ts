/**
 * The root that a rack with rounded tips generates when it rolls on the reference circle. The rack's tip arc touches the root where its
 * normal passes the pitch point; all is told by the angle between that normal and the middle of the space. mm, rad.
 */
import type { FitCurve } from '../../geometry/make/fit-curve.ts';
import { type Point, point } from '../../geometry/segment.ts';
import { spun } from '../polar.ts';
import { inv } from './involute.ts';

export interface RackTip {
  /** Radius of the reference circle of the gear. */
  readonly reference: number;
  readonly teeth: number;
  readonly pressureAngle: number;
  /** Of the rack's tip line below its rolling line. */
  readonly depth: number;
  readonly tipRadius: number;
  /** Tooth thickness of the gear at the reference circle. */
  readonly thickness: number;
}

export type TrochoidRoot =
  /** `formRadius` is where it meets the involute; `undercut` when it cuts into it above its lowest place. */
  | { readonly kind: 'root'; readonly curve: FitCurve; readonly formRadius: number; readonly undercut: boolean }
  /** The rack's tip radii do not fit beside each other; `most` would. */
  | { readonly kind: 'tip too round'; readonly most: number }
  /** The root cuts the flank away up to the tip. */
  | { readonly kind: 'no flank' };

/** From the root circle up to the flank, on the schedulewise side of the space after the first tooth: counter-clockwise of that tooth. */
export const trochoidRoot = (rack: RackTip, tip: number): TrochoidRoot => {
  const { reference, teeth, pressureAngle, depth, tipRadius, thickness } = rack;
  const halfSpace = ((2 * Math.PI * reference) / teeth - thickness) / 2;
  const centreDepth = depth - tipRadius;
  const aside = halfSpace - centreDepth * Math.tan(pressureAngle) - tipRadius / Math.cos(pressureAngle);
  if (aside < -1e-12) return { kind: 'tip too round', most: mostTipRadius(rack, halfSpace) };
  const onSpace = (normal: number): Point => {
    const slid = centreDepth * Math.tan(normal);
    const turn = -(slid - aside) / reference;
    const x = reference - centreDepth - tipRadius * Math.cos(normal);
    const y = slid + tipRadius * Math.sin(normal);
    return spun(point(x, y), turn);
  };
  const last = Math.PI / 2 - pressureAngle;
  const base = reference * Math.cos(pressureAngle);
  const baseHalf = Math.PI / teeth - thickness / (2 * reference) - inv(pressureAngle);
  // Above nothing where the root lies within the tooth that the involute would leave.
  const into = (normal: number): number => {
    const p = onSpace(normal);
    const radius = Math.hypot(p.x, p.y);
    return Math.atan2(p.y, p.x) - (baseHalf + inv(Math.acos(Math.min(1, base / radius))));
  };
  const undercut = depthToContact(rack) > reference * Math.sin(pressureAngle) ** 2 + 1e-12;
  const end = undercut ? lastMeeting(into, last) : last;
  const top = onSpace(end);
  const formRadius = Math.hypot(top.x, top.y);
  if (formRadius >= tip) return { kind: 'no flank' };
  return { kind: 'root', curve: besideTooth(onSpace, { ...rack, aside, centreDepth }, end), formRadius, undercut };
};

/** The highest place at which the root comes out of the tooth again; looked for most closely where a slight undercut has it, at the end. */
const lastMeeting = (into: (normal: number) => number, last: number): number => {
  const steps = 400;
  const at = (i: number): number => last * (1 - (i / steps) ** 3);
  for (let i = 1; i < steps; i += 1) {
    if (into(at(i)) <= 1e-14) continue;
    let [inside, outside] = [at(i), at(i - 1)];
    for (let k = 0; k < 60; k += 1) {
      const middle = (inside + outside) / 2;
      if (into(middle) > 0) inside = middle;
      else outside = middle;
    }
    return outside;
  }
  return last;
};

/** The same seen from the first tooth, whose space has its middle half a pitch on: mirrored and turned. */
const besideTooth = (
  onSpace: (normal: number) => Point,
  { teeth, aside, centreDepth, reference }: RackTip & { readonly aside: number; readonly centreDepth: number },
  end: number,
): FitCurve => {
  const [c, n] = [Math.cos(Math.PI / teeth), Math.sin(Math.PI / teeth)];
  const beside = ({ x, y }: Point): Point => point(c * x + n * y, n * x - c * y);
  return {
    start: 0,
    end,
    pointAt: (normal) => beside(onSpace(normal)),
    tangentAt: (normal) => {
      const turn = -(centreDepth * Math.tan(normal) - aside) / reference;
      return beside(spun(point(Math.sin(normal), Math.cos(normal)), turn));
    },
  };
};

/** The tip radius at which the rack's tip is one round. */
const mostTipRadius = ({ depth, pressureAngle }: RackTip, halfSpace: number): number =>
  ((halfSpace - depth * Math.tan(pressureAngle)) * Math.cos(pressureAngle)) / (1 - Math.sin(pressureAngle));

/** How far below the rolling line the rack's flank is straight. */
export const depthToContact = ({ depth, tipRadius, pressureAngle }: Pick<RackTip, 'depth' | 'tipRadius' | 'pressureAngle'>): number =>
  depth - tipRadius * (1 - Math.sin(pressureAngle));
