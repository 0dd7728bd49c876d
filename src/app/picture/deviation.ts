/** The deviation along a contour made visible: how many times magnified, on which side, in which step of the colour scale. */

import type { Point } from '../../geometry/segment.ts';
import { roundBelow } from '../../picture/round-length.ts';
import { indexOfLeast, isFilled, lastOf, neighbours, roundPairs, sideBySide } from '../../sequence/sequence.ts';
import type { ContourView, DeviationView } from '../work/views.ts';

/** Steps of the scale on either side of the middle one: to a quarter, to half, to the whole of the span, and beyond. */
export const STEPS = 3;
const ENDS = [0.25, 0.5, 1] as const;

/** Peaks beyond so many spans are cut off where they are drawn. */
export const HIGHEST = 1.5;

export interface DeviationScale {
  /** How many times larger than it is the deviation is drawn: 1, 2 or 5 times a power of ten. */
  readonly factor: number;
  /** mm: what is allowed either side, or the largest amount where all is much better than that. */
  readonly span: number;
  /** Largest amount, mm; most metal left and deepest cut, both 0 or more. */
  readonly most: number;
  readonly left: number;
  readonly deep: number;
}

/** The span is drawn at most `pixels` off at a scale in pixels per mm. None where nothing deviates or nothing was measured. */
export const deviationScale = (
  profiles: readonly DeviationView[],
  tolerance: number,
  scale: number,
  pixels: number,
): DeviationScale | undefined => {
  const ends = profiles.map(endsOf);
  const left = Math.max(0, ...ends.map((e) => e.left));
  const deep = Math.max(0, ...ends.map((e) => e.deep));
  const most = Math.max(left, deep);
  if (!(most > 0) || !Number.isFinite(most)) return undefined;
  const span = tolerance > 0 && most >= tolerance / 4 ? tolerance : most;
  return { factor: Math.max(1, roundBelow(pixels / (span * scale))), span, most, left, deep };
};

interface Ends {
  readonly left: number;
  readonly deep: number;
}

const known = new WeakMap<DeviationView, Ends>();

/** Found once for each profile: it is asked for in every frame. */
const endsOf = (profile: DeviationView): Ends => {
  const before = known.get(profile);
  if (before !== undefined) return before;
  const found = profile.deviation.reduce((e, d) => ({ left: Math.max(e.left, d), deep: Math.max(e.deep, -d) }), { left: 0, deep: 0 });
  known.set(profile, found);
  return found;
};

/** Step of the scale, -3 to 3; positive where metal is left. */
export const stepOf = (deviation: number, span: number): number => {
  const size = Math.abs(deviation) / span;
  const step = ENDS.findIndex((end) => size <= end * (1 + 1e-9));
  return Math.sign(deviation) * (step === -1 ? STEPS : step) || 0;
};

/** Between which amounts each step lies, mm, from metal left down to cut too deep; the last only where something is beyond the span. */
export const stepRows = ({
  span,
  left,
  deep,
}: Pick<DeviationScale, 'span' | 'left' | 'deep'>): readonly { readonly step: number; readonly from: number; readonly to: number }[] => {
  const side = (most: number) => {
    const ends = [...ENDS.map((end) => span * end), ...(most > span * (1 + 1e-9) ? [most] : [])];
    return neighbours(ends).map(([from, to], i) => ({ step: i + 1, from, to }));
  };
  const down = side(deep).map(({ step, from, to }) => ({ step: -step, from: -to, to: -from }));
  return [...side(left).toReversed(), { step: 0, from: -span * ENDS[0], to: span * ENDS[0] }, ...down];
};

/** A place of a profile with the unit vector towards the side that was cut away, where metal left stands. */
export interface Standing {
  readonly at: Point;
  readonly out: Point;
  readonly deviation: number;
}

/** All places of a profile. */
export const towardsCut = (profile: DeviationView, kept: ContourView['kept'], closed: boolean): readonly Standing[] => {
  const places = placesOf(profile);
  if (!isFilled(places)) return [];
  const side = sideOf(places, kept);
  const [first, last] = [places[0], lastOf(places)];
  const befores = [closed ? last : first, ...places.slice(0, -1)];
  const afters = [...places.slice(1), closed ? first : last];
  return sideBySide(places, sideBySide(befores, afters)).map(([place, [before, after]]) => {
    const [tx, ty] = [after.at.x - before.at.x, after.at.y - before.at.y];
    const long = Math.hypot(tx, ty) || 1;
    return { ...place, out: { x: (-side * ty) / long, y: (side * tx) / long } };
  });
};

const placesOf = ({ x, y, deviation }: DeviationView): readonly Omit<Standing, 'out'>[] =>
  sideBySide(sideBySide(Array.from(x), Array.from(y)), Array.from(deviation)).map(([[px, py], d]) => ({
    at: { x: px, y: py },
    deviation: d,
  }));

/** 1 where the metal was cut away left of the way along the places, -1 right of it. */
const sideOf = (places: readonly Omit<Standing, 'out'>[], kept: ContourView['kept']): 1 | -1 => {
  if (kept === 'left') return -1;
  if (kept === 'right' || kept === 'slit') return 1;
  const twice = roundPairs(places).reduce((sum, [a, b]) => sum + a.at.x * b.at.y - b.at.x * a.at.y, 0);
  const insideIsLeft = twice > 0;
  return (kept === 'punch') === insideIsLeft ? -1 : 1;
};

export interface Extreme {
  readonly at: Point;
  readonly deviation: number;
  readonly index: number;
}

const named = new WeakMap<DeviationView, readonly Extreme[]>();

/** The places where most metal is left and where most was cut too deep, worth a number each; found once for each profile. */
export const extremes = (profile: DeviationView): readonly Extreme[] => {
  const before = named.get(profile);
  if (before !== undefined) return before;
  const most = indexOfLeast(profile.deviation, (d) => -d);
  const least = indexOfLeast(profile.deviation, (d) => d);
  const found = [...new Set([most, least])].flatMap((index) => extremeAt(profile, index));
  named.set(profile, found);
  return found;
};

/** What is found at a place of a profile; nothing beyond its ends. */
const extremeAt = ({ x, y, deviation }: DeviationView, index: number): readonly Extreme[] => {
  const [px, py, d] = [x[index], y[index], deviation[index]];
  return px === undefined || py === undefined || d === undefined ? [] : [{ at: { x: px, y: py }, deviation: d, index }];
};
