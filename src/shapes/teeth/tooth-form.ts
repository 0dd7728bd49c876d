/**
 * A ring of equal teeth with involute flanks as one contour of lines and arcs. One half of a tooth is fitted once; all others are
 * the same numbers mirrored and turned, so that every tooth is like every other. Lengths in mm, angles in rad.
 */
import type { Contour } from '../../geometry/contour.ts';
import { type FitCurve, fitArcs } from '../../geometry/make/fit-arcs.ts';
import { arc, line, type Point, point, type Segment } from '../../geometry/segment.ts';
import { linked } from '../linked.ts';
import { polar } from '../polar.ts';
import { involuteCurve, involutePoint } from './involute.ts';
import { ringOf } from './ring-of-teeth.ts';

/** What joins a flank to the root circle. Radii in mm; `deviation` is that of the fitting. */
export type Root =
  /** An arc tangent to flank and root circle; below the base circle the flank goes on straight towards the middle. */
  | { readonly kind: 'arc'; readonly radius: number }
  /** The corner taken off, along the radius and along the circle alike: the tip of an internal gear, whose spaces have this form. */
  | { readonly kind: 'chamfer'; readonly size: number }
  /** A curve from the root circle to the flank, as a rack's tip generates it; ends at the flank on `formRadius`. */
  | { readonly kind: 'curve'; readonly curve: FitCurve; readonly formRadius: number };

export interface ToothForm {
  readonly teeth: number;
  readonly base: number;
  /** Half the angle of a tooth on the base circle. */
  readonly halfAngle: number;
  readonly tip: number;
  readonly root: number;
  readonly rootForm: Root;
  /** What is taken off the corner between flank and tip, along the radius and along the circle alike; 0 for none. */
  readonly tipChamfer: number;
  /** Radius between flank and tip circle, in place of a chamfer: the root of an internal gear, whose spaces have this form. */
  readonly tipFillet?: number;
  /** Greatest amount the flank stands back at the tip, square to it, growing evenly from the radius `from`. */
  readonly tipRelief?: Relief | undefined;
  /** The same at the root circle, growing inwards: tip relief of an internal gear. */
  readonly footRelief?: Relief | undefined;
}

interface Relief {
  readonly amount: number;
  readonly from: number;
}

export type Toothed =
  | {
      readonly kind: 'toothed';
      readonly contour: Contour;
      readonly deviation: number;
      readonly formRadius: number;
      readonly half: readonly Segment[];
    }
  | { readonly kind: 'no room'; readonly what: 'root' | 'tip' | 'chamfer' | 'relief' };

/** The contour runs counter-clockwise; the middle of the first tooth lies on the X axis. */
export const toothed = (form: ToothForm, tolerance: number): Toothed => {
  const half = halfTooth(form, tolerance);
  if (half.kind === 'no room') return half;
  return {
    kind: 'toothed',
    contour: ringOf(half.segments, form.teeth),
    deviation: half.deviation,
    formRadius: half.formRadius,
    half: half.segments,
  };
};

export type Half =
  | { readonly kind: 'half'; readonly segments: readonly Segment[]; readonly deviation: number; readonly formRadius: number }
  | Extract<Toothed, { kind: 'no room' }>;

/** From the middle of the tip, on the X axis, over the flank down to the middle of the space. */
export const halfTooth = (asked: ToothForm, tolerance: number): Half => {
  const form = withoutSpecks(asked);
  const { base, tip, root, teeth, tipChamfer } = form;
  const rootSide = rootOf(form, tolerance);
  if (rootSide === undefined) return { kind: 'no room', what: 'root' };
  const end = tipEnd(form);
  if (end === undefined) return { kind: 'no room', what: tipChamfer > 0 ? 'chamfer' : 'tip' };
  const { upper, angle: tipAngle } = end;
  if (upper <= rootSide.formRadius) return { kind: 'no room', what: 'chamfer' };
  const { tipRelief, footRelief } = form;
  if (tipRelief !== undefined && tipRelief.from <= rootSide.formRadius) return { kind: 'no room', what: 'relief' };
  if (footRelief !== undefined && footRelief.from >= upper) return { kind: 'no room', what: 'relief' };
  const flank = fittedAll(flankCurves(form, Math.max(rootSide.formRadius, base), upper), tolerance);
  if (flank === undefined) return { kind: 'no room', what: 'tip' };
  const onTip = polar(tip, Math.max(0, tipAngle));
  const flankTop = flankPlace(form, upper);
  const down = flank.segments.map(reversed).reverse();
  const first = down[0]?.from ?? flankTop;
  const space = Math.PI / teeth;
  const bottom = rootSide.segments.at(-1)?.to ?? down.at(-1)?.to ?? flankTop;
  const bottomAngle = Math.atan2(bottom.y, bottom.x);
  if (bottomAngle > space + 1e-12) return { kind: 'no room', what: form.rootForm.kind === 'chamfer' ? 'chamfer' : 'root' };
  const segments: Segment[] = [
    ...(tipAngle > 1e-12 ? [arc(point(tip, 0), onTip, point(0, 0), tipAngle)] : []),
    ...(end.centre === undefined ? [] : [roundFrom(onTip, first, end.centre)]),
    ...(tipChamfer > 0 && end.centre === undefined ? [line(onTip, first)] : []),
    ...down,
    ...rootSide.segments,
    ...(space - bottomAngle > 1e-12 ? [arc(bottom, polar(root, space), point(0, 0), space - bottomAngle)] : []),
  ];
  return {
    kind: 'half',
    segments: linked(segments, false),
    deviation: Math.max(flank.deviation, rootSide.deviation),
    formRadius: rootSide.formRadius,
  };
};

/** Rounds and chamfers too small to be written down are none, mm. */
const SPECK = 1e-6;

const withoutSpecks = (form: ToothForm): ToothForm => {
  const { tipChamfer, tipFillet = 0, rootForm } = form;
  return {
    ...form,
    tipChamfer: tipChamfer < SPECK ? 0 : tipChamfer,
    tipFillet: tipFillet < SPECK ? 0 : tipFillet,
    rootForm:
      (rootForm.kind === 'arc' && rootForm.radius < SPECK) || (rootForm.kind === 'chamfer' && rootForm.size < SPECK)
        ? { kind: 'arc', radius: 0 }
        : rootForm,
  };
};

interface TipEnd {
  /** Radius at which the flank ends. */
  readonly upper: number;
  /** Half the angle of the tip's land. */
  readonly angle: number;
  /** Of the round between them. */
  readonly centre?: Point;
}

/** How flank and tip circle come together; nothing where there is no room for it. */
const tipEnd = (form: ToothForm): TipEnd | undefined => {
  const { base, halfAngle, tip, tipChamfer, tipFillet = 0 } = form;
  if (tipFillet > 0) {
    const reach = tip - tipFillet;
    if (reach <= base) return undefined;
    const string = Math.sqrt((reach / base) ** 2 - 1);
    const angle = halfAngle - tipFillet / base - (string - Math.atan(string));
    return angle < -1e-12
      ? undefined
      : { upper: base * Math.hypot(1, string + tipFillet / base), angle: Math.max(0, angle), centre: polar(reach, Math.max(0, angle)) };
  }
  const top = flankPlace(form, tip - tipChamfer);
  const angle = Math.atan2(top.y, top.x) - (tipChamfer > 0 ? tipChamfer / tip : 0);
  return angle < -1e-12 ? undefined : { upper: tip - tipChamfer, angle };
};

/** The largest round that touches both flanks and the tip circle. */
export const fullTipFillet = (form: Omit<ToothForm, 'rootForm' | 'tipFillet'>): number =>
  largest(form.tip - form.base, (radius) => tipEnd({ ...form, tipFillet: radius, rootForm: { kind: 'arc', radius: 0 } }) !== undefined);

/** The largest radius up to a most that still has room. */
const largest = (most: number, hasRoom: (radius: number) => boolean): number => {
  let [small, large] = [0, most];
  for (let i = 0; i < 200 && large - small > 1e-13 * large; i += 1) {
    const middle = (small + large) / 2;
    if (middle === small || middle === large) break;
    if (hasRoom(middle)) small = middle;
    else large = middle;
  }
  return small;
};

const roundFrom = (from: Point, to: Point, centre: Point): Segment => {
  const a = Math.atan2(from.y - centre.y, from.x - centre.x);
  const b = Math.atan2(to.y - centre.y, to.x - centre.x);
  return arc(from, to, centre, (((b - a) % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI));
};

const fittedAll = (curves: readonly FitCurve[], tolerance: number): { segments: readonly Segment[]; deviation: number } | undefined => {
  const fits = curves.map((curve) => fitArcs(curve, tolerance));
  const done = fits.filter((f) => f.kind === 'fitted');
  return done.length < fits.length
    ? undefined
    : { segments: done.flatMap((f) => f.segments), deviation: Math.max(...done.map((f) => f.deviation)) };
};

interface RootSide {
  /** From the flank down to the root circle. */
  readonly segments: readonly Segment[];
  readonly formRadius: number;
  readonly deviation: number;
}

const rootOf = (form: ToothForm, tolerance: number): RootSide | undefined => {
  const { rootForm } = form;
  if (rootForm.kind === 'arc') return arcRoot(form, rootForm.radius);
  if (rootForm.kind === 'chamfer') return chamferRoot(form, rootForm.size);
  const fitted = fitArcs(rootForm.curve, tolerance);
  if (fitted.kind !== 'fitted') return undefined;
  return { segments: fitted.segments.map(reversed).reverse(), formRadius: rootForm.formRadius, deviation: fitted.deviation };
};

/**
 * The centre of the arc lies `radius` above the root circle and, since parallels of an involute are involutes that leave the base
 * circle radius / base further on, on such a one. Where the flank would be met below the base circle, the straight piece is met.
 */
const arcRoot = ({ teeth, base, halfAngle, root }: ToothForm, radius: number): RootSide | undefined => {
  const space = Math.PI / teeth;
  if (!(radius > 0)) return sharpRoot({ base, halfAngle, root }, space);
  const reach = root + radius;
  const string = reach > base ? Math.sqrt((reach / base) ** 2 - 1) : 0;
  const roll = string - radius / base;
  const onFlank = reach > base && roll >= 0;
  const centreAngle = onFlank
    ? halfAngle + radius / base - (string - Math.atan(string))
    : halfAngle + Math.asin(Math.min(1, radius / reach));
  if (centreAngle > space + 1e-12) return undefined;
  const straight = Math.sqrt(Math.max(0, reach * reach - radius * radius));
  if (!onFlank && straight > base + 1e-12) return undefined;
  const centre = polar(reach, Math.min(centreAngle, space));
  const top = onFlank ? involutePoint(base, roll, halfAngle, -1) : polar(straight, halfAngle);
  const bottom = polar(root, Math.min(centreAngle, space));
  const from = Math.atan2(top.y - centre.y, top.x - centre.x);
  const to = Math.atan2(bottom.y - centre.y, bottom.x - centre.x);
  const sweep = ((to - from + 3 * Math.PI) % (2 * Math.PI)) - Math.PI;
  const below = !onFlank && base - straight > 1e-12 ? [line(polar(base, halfAngle), top)] : [];
  return {
    segments: [...below, arc(top, bottom, centre, sweep)],
    formRadius: onFlank ? Math.hypot(top.x, top.y) : base,
    deviation: 0,
  };
};

/** Nothing where the flank does not reach so far down. */
const chamferRoot = (form: ToothForm, size: number): RootSide | undefined => {
  const low = form.root + size;
  if (low < form.base) return undefined;
  const top = footPlace(form, low);
  return {
    segments: [line(top, polar(form.root, Math.atan2(top.y, top.x) + size / form.root))],
    formRadius: low,
    deviation: 0,
  };
};

/** Nothing where the flanks of a space meet above the root circle. */
const sharpRoot = ({ base, halfAngle, root }: Pick<ToothForm, 'base' | 'halfAngle' | 'root'>, space: number): RootSide | undefined => {
  const low = Math.max(root, base);
  const string = Math.sqrt(Math.max(0, (low / base) ** 2 - 1));
  if (halfAngle - (string - Math.atan(string)) > space + 1e-12) return undefined;
  return root >= base
    ? { segments: [], formRadius: root, deviation: 0 }
    : { segments: [line(polar(base, halfAngle), polar(root, halfAngle))], formRadius: base, deviation: 0 };
};

/** The largest arc that touches both flanks and the root circle: its centre lies in the middle of the space. */
export const fullFillet = (form: Omit<ToothForm, 'rootForm'>): number =>
  largest(form.tip - form.root, (radius) => arcRoot({ ...form, rootForm: { kind: 'arc', radius } }, radius) !== undefined);

/** The flank counter-clockwise of the tooth's middle, from the lower radius up: the involute, and the relieved rest of it at either end. */
const flankCurves = (form: ToothForm, from: number, to: number): readonly FitCurve[] => {
  const { base, halfAngle, tipRelief, footRelief } = form;
  const low = footRelief === undefined ? from : Math.max(from, Math.min(to, footRelief.from));
  const high = tipRelief === undefined ? to : Math.min(to, Math.max(low, tipRelief.from));
  return [
    ...(footRelief !== undefined && low > from ? [reliefCurve(form, footRelief, form.root, from, low)] : []),
    ...(high > low || low === from ? [involuteCurve(base, low, high, halfAngle, -1)] : []),
    ...(tipRelief !== undefined && to > high ? [reliefCurve(form, tipRelief, form.tip, high, to)] : []),
  ];
};

/** An involute that turns away evenly with its roll, from where the relief begins to the circle where it has all its amount. */
const reliefCurve = ({ base, halfAngle }: ToothForm, { amount, from }: Relief, end: number, low: number, high: number): FitCurve => {
  const plain = involuteCurve(base, low, high, halfAngle, -1);
  const begin = rollAt(base, from);
  const slope = amount / base / Math.abs(rollAt(base, end) - begin);
  // Past the begin to either side the flank turns back into the metal: a tooth becomes thinner outwards, a space wider inwards.
  const origin = (t: number): number => halfAngle - slope * (t - begin);
  const pointAt = (t: number): Point => involutePoint(base, t, origin(t), -1);
  return {
    ...plain,
    pointAt,
    tangentAt: (t) => {
      const p = pointAt(t);
      const along = origin(t) - t;
      return { x: base * t * Math.cos(along) + slope * p.y, y: base * t * Math.sin(along) - slope * p.x };
    },
  };
};

const rollAt = (base: number, radius: number): number => Math.sqrt(Math.max(0, (radius / base) ** 2 - 1));

/** Where the flank has a radius. */
const flankPlace = (form: ToothForm, radius: number): Point => {
  const curve = flankCurves(form, form.base, Math.max(radius, form.base)).at(-1) as FitCurve;
  return curve.pointAt(curve.end);
};

/** The same for its lower end. */
const footPlace = (form: ToothForm, radius: number): Point => {
  const curve = flankCurves(form, radius, Math.max(form.tip, radius))[0] as FitCurve;
  return curve.pointAt(curve.start);
};

const reversed = (s: Segment): Segment => (s.kind === 'line' ? line(s.to, s.from) : { ...s, from: s.to, to: s.from, sweep: -s.sweep });
