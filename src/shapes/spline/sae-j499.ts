/** Straight-sided splines of SAE J499: widths and depths as parts of the outer diameter, by number of splines and fit. */

import type { Formula } from '../../quantity/formula.ts';
import { say, symbols } from '../../text/say.ts';

/** A permanent, B to slide when not under load, C to slide under load; four splines have no C. */
export const SAE_FITS = ['4A', '4B', '6A', '6B', '6C', '10A', '10B', '10C', '16A', '16B', '16C'] as const;

export type SaeFit = (typeof SAE_FITS)[number];

const WIDTH: Readonly<Record<number, number>> = { 4: 0.241, 6: 0.25, 10: 0.156, 16: 0.098 };

/** Depth of a spline, by number of splines, for the fits A, B and C. */
const DEPTH: Readonly<Record<number, Readonly<Record<string, number>>>> = {
  4: { A: 0.075, B: 0.125 },
  6: { A: 0.05, B: 0.075, C: 0.1 },
  10: { A: 0.045, B: 0.07, C: 0.095 },
  16: { A: 0.045, B: 0.07, C: 0.095 },
};

export interface SaeSizes {
  readonly splines: number;
  /** mm, as are the rest. */
  readonly width: number;
  readonly inner: number;
}

export const saeSizes = (fit: SaeFit, outer: number): SaeSizes => {
  const splines = Number.parseInt(fit, 10);
  const depth = DEPTH[splines]?.[fit.slice(-1)] as number;
  return {
    splines,
    width: saePart.compute({ part: WIDTH[splines] as number, outer }),
    inner: saePart.compute({ part: 1 - 2 * depth, outer }),
  };
};

/** The largest corner radius that the standard allows, mm. */
export const SAE_CORNER = 0.015 * 25.4;

export const saePart: Formula<'part' | 'outer'> = {
  name: say('spline.sae-part')`part of the outer diameter`,
  text: symbols`W = w D; d = D - 2 h, h = k D`,
  source: 'sae-j499',
  unit: 'mm',
  inputs: { part: { unit: '1', name: 'part' }, outer: { unit: 'mm', name: 'outer diameter' } },
  compute: ({ part, outer }) => part * outer,
};
