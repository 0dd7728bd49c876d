/** One tooth of a rack by heights above its reference line, and the whole contour. mm, rad. */
import { type Rounded, type RoundedCorner, rounded } from '../rounded.ts';

export interface RackForm {
  readonly teeth: number;
  readonly pitch: number;
  readonly pressureAngle: number;
  /** At the reference line. */
  readonly thickness: number;
  /** Above and below the reference line. */
  readonly addendum: number;
  readonly dedendum: number;
  readonly rootRadius: number;
  readonly tipChamfer: number;
  /** What the flank stands back at the tip line, square to it, growing evenly from the height `from`. */
  readonly tipRelief?: { readonly amount: number; readonly from: number };
  /** From the reference line down to the back. */
  readonly back: number;
}

type Flank = Pick<RackForm, 'thickness' | 'pressureAngle'> & Partial<Pick<RackForm, 'addendum' | 'tipRelief'>>;

/** Half the tooth at a height, from flank to flank; the chamfer is not counted. */
export const halfFlank = ({ thickness, pressureAngle, addendum = 0, tipRelief }: Flank, height: number): number => {
  const plain = thickness / 2 - height * Math.tan(pressureAngle);
  if (tipRelief === undefined || height <= tipRelief.from) return plain;
  return plain - ((tipRelief.amount / Math.cos(pressureAngle)) * (height - tipRelief.from)) / (addendum - tipRelief.from);
};

/** Height at which the flank ends towards the tip: where chamfer or relief begin. */
export const flankTop = ({ addendum, tipChamfer, tipRelief }: RackForm): number =>
  Math.min(addendum - tipChamfer, tipRelief?.from ?? Number.POSITIVE_INFINITY);

/** The round that touches both flanks of a space and the root line; below nothing where the flanks meet above it. */
export const fullRound = (form: Pick<RackForm, 'thickness' | 'pressureAngle' | 'pitch' | 'dedendum'>): number =>
  ((form.pitch / 2 - halfFlank(form, -form.dedendum)) * Math.cos(form.pressureAngle)) / (1 - Math.sin(form.pressureAngle));

/** Height at which the flank becomes the round of the root. */
export const formHeight = ({ dedendum, rootRadius, pressureAngle }: Pick<RackForm, 'dedendum' | 'rootRadius' | 'pressureAngle'>): number =>
  -dedendum + rootRadius * (1 - Math.sin(pressureAngle));

/** Half the width of the tip line. */
export const halfTip = (form: RackForm): number => halfFlank(form, form.addendum - form.tipChamfer) - form.tipChamfer;

/** Half the tooth at a height between root and tip line, rounds and chamfers counted. */
export const halfAtHeight = (form: RackForm, height: number): number => {
  const low = formHeight(form);
  const chamfered = height - (form.addendum - form.tipChamfer);
  if (chamfered > 0) return halfFlank(form, form.addendum - form.tipChamfer) - chamfered;
  if (height >= low) return halfFlank(form, height);
  const centre = halfFlank(form, low) + form.rootRadius * Math.cos(form.pressureAngle);
  return centre - Math.sqrt(Math.max(0, form.rootRadius ** 2 - (height - form.rootRadius + form.dedendum) ** 2));
};

/** Teeth upwards, the reference line on X, the middle of its length at 0; half a space at either end. */
export const rackContour = (form: RackForm): Rounded => {
  const { teeth, pitch, dedendum, addendum, rootRadius, tipChamfer, back } = form;
  const end = (teeth * pitch) / 2;
  const sharp = (x: number, y: number): RoundedCorner => ({ x, y, radius: 0 });
  const foot = halfFlank(form, -dedendum);
  const shoulder = halfFlank(form, addendum - tipChamfer);
  const tip = halfTip(form);
  const half: readonly RoundedCorner[] = [
    { x: foot, y: -dedendum, radius: rootRadius },
    ...(form.tipRelief === undefined ? [] : [sharp(halfFlank(form, form.tipRelief.from), form.tipRelief.from)]),
    ...(tipChamfer > 0 ? [sharp(shoulder, addendum - tipChamfer)] : []),
    sharp(tip, addendum),
  ];
  const tooth = [...half, ...half.map((c) => ({ ...c, x: -c.x })).reverse()];
  const all = Array.from({ length: teeth }, (_, i) => tooth.map((c) => ({ ...c, x: c.x + ((teeth - 1) / 2 - i) * pitch }))).flat();
  return rounded([sharp(-end, -back), sharp(end, -back), sharp(end, -dedendum), ...all, sharp(-end, -dedendum)]);
};
