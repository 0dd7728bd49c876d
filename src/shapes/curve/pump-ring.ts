/**
 * The outer rotor of a gerotor pump: teeth that are arcs, a root circle that lets the lobes pass, rounds between them. mm, rad.
 * The ring's middle at 0, 0, a tooth on X.
 */
import type { Contour } from '../../geometry/contour.ts';
import { arc, type Point, point, type Segment } from '../../geometry/segment.ts';
import { spun } from '../polar.ts';
import { copiedRound } from './lobes.ts';
import { halfLobe, type PinRing, shortening } from './pin-ring.ts';

export interface RingForm extends PinRing {
  /** Of the tooth's arc. */
  readonly tooth: number;
  /** Radius of the root circle. */
  readonly root: number;
  /** Of the rounds between tooth and root circle; 0 for a sharp corner. */
  readonly round: number;
}

/** `teeth apart`: the root circle lies beyond the teeth. `no room`: the rounds of a root meet. `in contact`: they take what the lobes touch. */
export type PumpRing =
  | { readonly kind: 'ring'; readonly contour: Contour }
  | { readonly kind: 'teeth apart' }
  | { readonly kind: 'no room' }
  | { readonly kind: 'in contact' };

export const pumpRing = (form: RingForm): PumpRing => {
  const { radius, tooth, root, round, pins } = form;
  if (!(root < radius + tooth && root > radius - tooth)) return { kind: 'teeth apart' };
  const corner = cornerOf(form);
  if (corner === undefined || corner.angle >= Math.PI / pins - 1e-12) return { kind: 'no room' };
  // The common normal of tooth and lobe passes the pitch point, so no contact lies farther round the tooth than this.
  if (corner.onTooth < Math.asin(Math.min(1, shortening.compute(form))) - 1e-9) return { kind: 'in contact' };
  const mirror = ({ x, y }: Point): Point => point(x, -y);
  const next = (2 * Math.PI) / pins;
  const [middle, flank, foot] = [point(radius, 0), corner.flank, corner.foot];
  const segments: Segment[] = [arc(mirror(flank), flank, middle, -2 * corner.onTooth)];
  if (round > 0) segments.push(arc(flank, foot, corner.centre, corner.sweep));
  const along = next - 2 * corner.angle;
  const far = spun(mirror(foot), next);
  segments.push(arc(foot, far, point(0, 0), along));
  if (round > 0) segments.push(arc(far, spun(mirror(flank), next), spun(mirror(corner.centre), next), corner.sweep));
  return { kind: 'ring', contour: copiedRound(segments, pins) };
};

interface RingCorner {
  readonly centre: Point;
  /** Where the round leaves tooth and root circle. */
  readonly flank: Point;
  readonly foot: Point;
  /** Of the foot, from the middle of the tooth. */
  readonly angle: number;
  /** Half the angle that the tooth's arc takes. */
  readonly onTooth: number;
  readonly sweep: number;
}

/** Between the tooth on X and the root circle, above X. */
const cornerOf = ({ radius, tooth, root, round }: RingForm): RingCorner | undefined => {
  const [out, beside] = [root - round, tooth + round];
  const cosine = (out * out + radius * radius - beside * beside) / (2 * out * radius);
  if (!(Math.abs(cosine) < 1) || out <= 0) return undefined;
  const angle = Math.acos(cosine);
  const centre = point(out * cosine, out * Math.sin(angle));
  const foot = point((centre.x / out) * root, (centre.y / out) * root);
  const [x, y] = [(centre.x - radius) / beside, centre.y / beside];
  const flank = point(radius + tooth * x, tooth * y);
  const onTooth = Math.atan2(y, -x);
  return { centre, flank, foot, angle, onTooth, sweep: onTooth + angle };
};

/** How deep a lobe runs into root circle or rounds while it passes, mm; 0 or less where it clears them. `reach` makes the rotor's wall. */
export const fouled = (form: RingForm, reach: number): number => {
  const corner = cornerOf(form);
  if (corner === undefined) return Number.POSITIVE_INFINITY;
  const lobes = form.pins - 1;
  const half = halfLobe(form, reach);
  const wall = Array.from({ length: 161 }, (_, i) => half.pointAt((2 * half.end * i) / 160));
  let most = Number.NEGATIVE_INFINITY;
  for (let k = -80; k <= 80; k += 1) {
    // At k = 0 the lobe after the first valley stands deepest in the root after the first tooth.
    const orbit = Math.PI / form.pins + (Math.PI * k) / 80;
    const turn = -orbit / lobes;
    for (const p of wall) {
      const q = spun(p, turn);
      const at = point(q.x + form.eccentricity * Math.cos(orbit), q.y + form.eccentricity * Math.sin(orbit));
      most = Math.max(most, inMetal(form, corner, at));
    }
  }
  return most;
};

const inMetal = ({ pins, root, round }: RingForm, { centre, foot, onTooth }: RingCorner, p: Point): number => {
  const beside = Math.abs(Math.PI / pins - Math.atan2(p.y, p.x));
  const angle = Math.PI / pins - beside;
  if (angle < 0) return Number.NEGATIVE_INFINITY;
  const reach = Math.hypot(p.x, p.y);
  const overRoot = reach - root;
  if (!(round > 0)) return overRoot;
  const q = point(reach * Math.cos(angle) - centre.x, reach * Math.sin(angle) - centre.y);
  const way = Math.atan2(q.y, q.x);
  return way > -onTooth && way < Math.atan2(foot.y, foot.x) ? Math.max(overRoot, Math.hypot(q.x, q.y) - round) : overRoot;
};
