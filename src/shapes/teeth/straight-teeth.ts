/** A ring of equal teeth with straight flanks, parallel or leaning, as one contour of lines and arcs. Lengths in mm, angles in rad. */
import type { Contour } from '../../geometry/contour.ts';
import { arc, line, type Point, point, type Segment } from '../../geometry/segment.ts';
import { linked } from '../linked.ts';
import { polar } from '../polar.ts';
import { ringOf } from './ring-of-teeth.ts';

/** `chamfer` takes its size off along the flank and along the circle alike; `round` is tangent to both. */
export type ToothCorner =
  | { readonly kind: 'sharp' }
  | { readonly kind: 'chamfer'; readonly size: number }
  | { readonly kind: 'round'; readonly radius: number };

/** `relief`: a groove that runs on from the flank below the root circle, its middle on that circle, so that nothing stands in the corner. */
export type RootCorner = ToothCorner | { readonly kind: 'relief'; readonly radius: number };

/** A tooth on the X axis; of an opening its space, which has the same form. */
export interface StraightForm {
  readonly teeth: number;
  /** How far a flank leans towards the middle of its tooth on the way out; 0 for parallel sides. */
  readonly lean: number;
  /** Distance of the line of a flank from the middle of the ring. */
  readonly reach: number;
  /** Radii. */
  readonly tip: number;
  readonly root: number;
  readonly tipCorner: ToothCorner;
  readonly rootCorner: RootCorner;
}

export type StraightTeeth =
  /** `low` and `high` are the radii between which the flank is straight. */
  | { readonly kind: 'toothed'; readonly contour: Contour; readonly low: number; readonly high: number }
  /** `tip`: the flanks meet before the tip circle; `root`: teeth run into each other; `flank`: the corners leave nothing of it. */
  | { readonly kind: 'no room'; readonly where: 'tip' | 'root' | 'flank' };

export const straightTeeth = (asked: StraightForm): StraightTeeth => {
  const form = { ...asked, tipCorner: withoutSpeck(asked.tipCorner), rootCorner: withoutSpeck(asked.rootCorner) };
  const tip = tipOf(form);
  if (tip === undefined) return { kind: 'no room', where: 'tip' };
  const root = rootOf(form);
  if (root === undefined) return { kind: 'no room', where: 'root' };
  if (!(tip.along - root.along > 1e-9)) return { kind: 'no room', where: 'flank' };
  const [onTip, onRoot] = [polar(form.tip, tip.angle), polar(form.root, root.angle)];
  const [high, low] = [onFlank(form, tip.along), onFlank(form, root.along)];
  const space = Math.PI / form.teeth;
  const half: Segment[] = [
    ...(tip.angle > 1e-12 ? [arc(point(form.tip, 0), onTip, point(0, 0), tip.angle)] : []),
    ...cornerFrom(onTip, high, tip.centre, 1),
    line(high, low),
    ...cornerFrom(low, onRoot, root.centre, -1),
    ...(space - root.angle > 1e-12 ? [arc(onRoot, polar(form.root, space), point(0, 0), space - root.angle)] : []),
  ];
  return {
    kind: 'toothed',
    contour: ringOf(linked(half, false), form.teeth),
    low: Math.hypot(low.x, low.y),
    high: Math.hypot(high.x, high.y),
  };
};

/** Corners too small to be written down are sharp, mm. */
const SPECK = 1e-6;

const withoutSpeck = <C extends RootCorner>(corner: C): C | ToothCorner =>
  corner.kind !== 'sharp' && (corner.kind === 'chamfer' ? corner.size : corner.radius) < SPECK ? { kind: 'sharp' } : corner;

/** A place on the line of the flank, by its distance from where that line is nearest to the middle of the ring, outwards. */
export const onFlank = ({ lean, reach }: Pick<StraightForm, 'lean' | 'reach'>, along: number): Point =>
  point(reach * Math.sin(lean) + along * Math.cos(lean), reach * Math.cos(lean) - along * Math.sin(lean));

/** How far along its line the flank has a radius; below its nearest place it has none. */
export const alongAt = (reach: number, radius: number): number => Math.sqrt(Math.max(0, radius * radius - reach * reach));

interface End {
  /** Where the flank ends, along its line. */
  readonly along: number;
  /** Where tip or root circle goes on. */
  readonly angle: number;
  readonly centre?: Point;
}

const angleOf = ({ x, y }: Point): number => Math.atan2(y, x);

const tipOf = (form: StraightForm): End | undefined => {
  const { tip, reach, tipCorner } = form;
  if (tipCorner.kind === 'round') {
    const { radius } = tipCorner;
    if (tip - radius <= Math.abs(reach - radius)) return undefined;
    const along = alongAt(reach - radius, tip - radius);
    const centre = onFlank({ ...form, reach: reach - radius }, along);
    return withinTooth({ along, angle: angleOf(centre), centre });
  }
  if (tip <= reach) return undefined;
  const along = alongAt(reach, tip);
  const off = tipCorner.kind === 'chamfer' ? tipCorner.size : 0;
  return withinTooth({ along: along - off, angle: angleOf(onFlank(form, along)) - off / tip });
};

const withinTooth = (end: End): End | undefined => (end.angle < -1e-9 ? undefined : { ...end, angle: Math.max(0, end.angle) });

const rootOf = (form: StraightForm): End | undefined => {
  const { root, reach, rootCorner, teeth } = form;
  const end = rootEnd(form, rootCorner, root, reach);
  const space = Math.PI / teeth;
  return end === undefined || end.angle > space + 1e-9 ? undefined : { ...end, angle: Math.min(space, end.angle) };
};

const rootEnd = (form: StraightForm, corner: RootCorner, root: number, reach: number): End | undefined => {
  if (corner.kind === 'round') {
    const along = alongAt(reach + corner.radius, root + corner.radius);
    const centre = onFlank({ ...form, reach: reach + corner.radius }, along);
    return root <= reach ? undefined : { along, angle: angleOf(centre), centre };
  }
  if (corner.kind === 'relief') {
    if (root <= reach + corner.radius || corner.radius >= root) return undefined;
    const along = alongAt(reach + corner.radius, root);
    const centre = onFlank({ ...form, reach: reach + corner.radius }, along);
    return { along, angle: angleOf(centre) + 2 * Math.asin(corner.radius / (2 * root)), centre };
  }
  if (root <= reach) return undefined;
  const along = alongAt(reach, root);
  const off = corner.kind === 'chamfer' ? corner.size : 0;
  return { along: along + off, angle: angleOf(onFlank(form, along)) + off / root };
};

/** A chamfer where there is no centre, nothing where both places are one. */
const cornerFrom = (from: Point, to: Point, centre: Point | undefined, sense: 1 | -1): readonly Segment[] => {
  if (centre === undefined) return Math.hypot(to.x - from.x, to.y - from.y) > 1e-12 ? [line(from, to)] : [];
  const turn = angleOf(point(to.x - centre.x, to.y - centre.y)) - angleOf(point(from.x - centre.x, from.y - centre.y));
  const sweep = ((sense * turn) % (2 * Math.PI)) + (sense * turn < 0 ? 2 * Math.PI : 0);
  return [arc(from, to, centre, sense * sweep)];
};
