/** Which pin to measure with, and what is wrong with one that was asked for. Radii in mm. */
import { atField, type Finding, type Remedy, remedy } from '../../text/finding.ts';
import { fixed, mm, quantities } from '../../text/part.ts';
import { say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import type { ShapeSize } from '../shape.ts';
import { find } from './findings.ts';
import { type PinSize, pinSize, touchingPin } from './pins.ts';
import { standardPin } from './standard-pins.ts';
import type { ToothFigures } from './tooth-figures.ts';

export interface Flank {
  readonly side: 'external' | 'internal';
  readonly tip: number;
  readonly root: number;
  /** Between these the flank is an involute. */
  readonly low: number;
  readonly high: number;
}

export interface Pinned {
  readonly sizes: readonly ShapeSize[];
  readonly findings: readonly Finding[];
}

/** The size with the pin asked for, if there is one, and with the best one in stock, if there is one. */
export const pinned = (figures: ToothFigures, flank: Flank, asked: number | undefined): Pinned => {
  const best = pinOn(figures, flank);
  const ours = best === undefined ? [] : sized(pinSize(figures, best, flank.side, asked === undefined ? 'alone' : 'best'));
  if (asked === undefined) return { sizes: ours, findings: [] };
  const found = pinSize(figures, asked, flank.side, 'asked');
  const fault = faultOf(found, asked, flank);
  if (fault === undefined) return { sizes: [...sized(found), ...ours], findings: [] };
  const help =
    best === undefined
      ? say('gear-pin-off-flank/none.remedy')`No pin touches the involute of both flanks here: take the span.`
      : bestPinIs(best);
  return {
    sizes: [...sized(found), ...ours],
    findings: [find('gear-pin-off-flank', fault, { place: atField('pin'), remedy: help })],
  };
};

export const bestPinIs = (pin: number): Remedy =>
  remedy(say('gear-pin-off-flank.remedy')`A standard pin of ${{ pin: mm(pin) }} measures best.`, { field: 'pin', value: pin });

const sized = (found: PinSize | undefined): readonly ShapeSize[] =>
  found === undefined ? [] : [{ figure: found.size, taking: found.taking }];

/** The pin in stock that touches nearest to where the profile shift puts the reference circle, stands out and stays off the root. */
export const pinOn = (figures: ToothFigures, flank: Flank): number | undefined => {
  const shifted = figures.reference.value / 2 + figures.shift.value * figures.module.value;
  const ideal = touchingPin(figures, Math.min(flank.high, Math.max(flank.low, shifted)), flank.side);
  return standardPin(ideal, (pin) => faultOf(pinSize(figures, pin, flank.side), pin, flank) === undefined, figures.diametralPitch);
};

/** Nothing where it measures well. */
const faultOf = (found: PinSize | undefined, pin: number, { side, tip, root, low, high }: Flank): Text | undefined => {
  if (found === undefined) return say('gear-pin-off-flank/falls')`A pin of ${{ pin: mm(pin) }} falls to the bottom of the space.`;
  const { contact, centre } = found;
  if (!(contact >= low - 1e-9 && contact <= high + 1e-9))
    return say(
      'gear-pin-off-flank/beside',
    )`A pin of ${{ pin: mm(pin) }} would touch at a diameter of ${{ contact: mm(2 * contact, fixed(3)) }}; the involute reaches from ${{ flank: quantities([2 * low, 2 * high], 'to', 'mm', fixed(3)) }}.`;
  const out = side === 'external' ? 1 : -1;
  if (out * (centre - root) < pin / 2)
    return say(
      'gear-pin-off-flank/on-root',
    )`A pin of ${{ pin: mm(pin) }} rests on the root circle of ${{ root: mm(2 * root, fixed(3)) }} before it touches the flanks.`;
  if (out * (tip - centre) >= pin / 2)
    return say(
      'gear-pin-off-flank/below-tips',
    )`A pin of ${{ pin: mm(pin) }} lies below the tip circle of ${{ tip: mm(2 * tip, fixed(3)) }}, where flat anvils do not reach it.`;
  return undefined;
};
