/** The deviation along a contour made visible: how many times magnified, on which side, in which step of the colour scale. */
import type { ContourView, DeviationView } from '../work/views.ts';
import { roundBelow } from './scale-bar.ts';
import type { Spot } from './view.ts';

/** Steps of the scale on either side of the middle one: to a quarter, to half, to the whole of the span, and beyond. */
export const STEPS = 3;
const ENDS: readonly number[] = [0.25, 0.5, 1];

/** Peaks beyond so many spans are cut off where they are drawn. */
export const HIGHEST = 2;

export interface DeviationScale {
  /** How many times larger than it is the deviation is drawn: 1, 2 or 5 times a power of ten. */
  readonly factor: number;
  /** mm: what is allowed either side, or the largest amount where all is much better than that. */
  readonly span: number;
  /** Largest amount, mm. */
  readonly most: number;
}

/** The span is drawn at most `pixels` off at a scale in pixels per mm. None where nothing deviates or nothing was measured. */
export const deviationScale = (
  profiles: readonly DeviationView[],
  tolerance: number,
  scale: number,
  pixels: number,
): DeviationScale | undefined => {
  const most = profiles.reduce((all, profile) => Math.max(all, mostOf(profile)), 0);
  if (!(most > 0) || !Number.isFinite(most)) return undefined;
  const span = tolerance > 0 && most >= tolerance / 4 ? tolerance : most;
  return { factor: Math.max(1, roundBelow(pixels / (span * scale))), span, most };
};

const mosts = new WeakMap<DeviationView, number>();

/** Found once for each profile: it is asked for in every frame. */
const mostOf = (profile: DeviationView): number => {
  const known = mosts.get(profile) ?? profile.deviation.reduce((most, d) => Math.max(most, Math.abs(d)), 0);
  mosts.set(profile, known);
  return known;
};

/** Step of the scale, -3 to 3; positive where metal is left. */
export const stepOf = (deviation: number, span: number): number => {
  const size = Math.abs(deviation) / span;
  const step = ENDS.findIndex((end) => size <= end * (1 + 1e-9));
  return Math.sign(deviation) * (step === -1 ? STEPS : step) || 0;
};

/** Between which amounts each step lies, mm, from metal left down to cut too deep; without the last where nothing is beyond the span. */
export const stepRows = ({
  span,
  most,
}: Pick<DeviationScale, 'span' | 'most'>): readonly { readonly step: number; readonly from: number; readonly to: number }[] => {
  const beyond = most > span * (1 + 1e-9);
  const up = [1, 2, ...(beyond ? [3] : [])].map((step) => ({
    step,
    from: span * ENDS[step - 1],
    to: step === STEPS ? most : span * ENDS[step],
  }));
  const down = up.map(({ step, from, to }) => ({ step: -step, from: -to, to: -from }));
  return [...up.toReversed(), { step: 0, from: -span * ENDS[0], to: span * ENDS[0] }, ...down];
};

/** Unit vectors towards the side that was cut away, where metal left stands; one for each place. */
export const towardsCut = ({ x, y }: DeviationView, kept: ContourView['kept'], closed: boolean): readonly Spot[] => {
  const side = sideOf(x, y, kept);
  const n = x.length;
  return Array.from({ length: n }, (_, i) => {
    const before = closed ? (i + n - 1) % n : Math.max(0, i - 1);
    const after = closed ? (i + 1) % n : Math.min(n - 1, i + 1);
    const [tx, ty] = [x[after] - x[before], y[after] - y[before]];
    const long = Math.hypot(tx, ty) || 1;
    return { x: (-side * ty) / long, y: (side * tx) / long };
  });
};

/** 1 where the metal was cut away left of the way along the places, -1 right of it. */
const sideOf = (x: Float64Array, y: Float64Array, kept: ContourView['kept']): 1 | -1 => {
  if (kept === 'left') return -1;
  if (kept === 'right' || kept === 'slit') return 1;
  let twice = 0;
  for (let i = 0; i < x.length; i += 1) {
    const next = (i + 1) % x.length;
    twice += x[i] * y[next] - x[next] * y[i];
  }
  const insideIsLeft = twice > 0;
  return (kept === 'punch') === insideIsLeft ? -1 : 1;
};

/** The places where most metal is left and where most was cut too deep, worth a number each. */
export const extremes = ({
  x,
  y,
  deviation,
}: DeviationView): readonly { readonly at: Spot; readonly deviation: number; readonly index: number }[] => {
  let [most, least] = [0, 0];
  for (let i = 1; i < deviation.length; i += 1) {
    if (deviation[i] > deviation[most]) most = i;
    if (deviation[i] < deviation[least]) least = i;
  }
  const all = deviation.length === 0 ? [] : most === least ? [most] : [most, least];
  return all.map((index) => ({ at: { x: x[index], y: y[index] }, deviation: deviation[index], index }));
};
