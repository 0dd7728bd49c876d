/** How sure a promise is: so many standard deviations (k) of what is random, and the share of all cuts that then hold it. */

import { fixed, number, quantity, upTo } from '../text/part.ts';
import { say } from '../text/say.ts';
import type { Text } from '../text/text.ts';
import { type Figure, given } from './figure.ts';
import { saidBy } from './source.ts';

/** Unless somebody asks for more: of a hundred contours about 95 hold. */
export const usualConfidence = 2;

/** Share of a normal spread that lies below `z` standard deviations. Abramowitz and Stegun 26.2.17, off by less than 1e-7. */
export const normalShare = (z: number): number => {
  const t = 1 / (1 + 0.2316419 * Math.abs(z));
  const series = t * (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  const tail = (Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI)) * series;
  return z < 0 ? tail : 1 - tail;
};

/**
 * Share of cuts within ± (bias + k · sigma) of the drawing, where each is off by the bias and at random by sigma.
 *
 * @param bias in standard deviations of what is random.
 */
export const heldShare = (k: number, bias = 0): number => normalShare(k) - normalShare(-k - 2 * bias);

export const confidenceOf = (k: number): Figure =>
  given({
    key: 'job.confidence',
    name: say('confidence.k')`k, the standard deviations that a promise holds`,
    value: k,
    unit: '1',
    basis: 'job',
    source: saidBy.job,
  });

/** To stand beside every number that is promised. */
export const confidenceTold = (k: number): Text =>
  say(
    'confidence.told',
  )`k = ${{ k: number(k, upTo(2)) }}, about ${{ share: quantity(100 * heldShare(k), '%', k < 2.6 ? fixed(0) : fixed(1)) }}`;

/** What the chance that all contours of a part hold depends on. */
export interface Together {
  /** In standard deviations of what is random. */
  readonly bias: number;
  /** Share of the variance that is common to all contours of a job, as a wrong gap is. */
  readonly shared: number;
  readonly contours: number;
}

/** Chance that every contour of a part holds: what is common is taken in steps, and the contours are independent beside it. */
export const heldTogether = (k: number, { bias, shared, contours }: Together): number => {
  const [common, own] = [Math.sqrt(shared), Math.sqrt(Math.max(1 - shared, 1e-9))];
  const limit = bias + k;
  let sum = 0;
  for (let z = -REACH; z < REACH; z += STEP) {
    const off = bias + common * (z + STEP / 2);
    const one = normalShare((limit - off) / own) - normalShare((-limit - off) / own);
    sum += (normalShare(z + STEP) - normalShare(z)) * one ** contours;
  }
  return sum;
};

/** Standard deviations of what is common that are looked at, and how finely. */
const REACH = 5;
const STEP = 0.05;
