/** Which pin to measure with, and what is wrong with one that was asked for. Radii in mm. */
import { atField, type Finding, type Remedy, remedy } from '../../text/finding.ts';
import { fixed, mm, quantities } from '../../text/part.ts';
import { say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import type { ShapeSize } from '../shape.ts';
import { find } from './findings.ts';
import { bestPin, type PinSize, pinSize } from './pins.ts';
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

/** The size with the pin asked for, if there is one, and with the best one, if there is one. */
export const pinned = (figures: ToothFigures, flank: Flank, asked: number | undefined): Pinned => {
  const best = bestOn(figures, flank);
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
  remedy(say('gear-pin-off-flank.remedy')`A pin of ${{ pin: mm(pin) }} is the best.`, { field: 'pin', value: pin });

const sized = (found: PinSize | undefined): readonly ShapeSize[] =>
  found === undefined ? [] : [{ figure: found.size, taking: found.taking }];

/** Where on the flank it is tried to touch, from the middle outwards. */
const PLACES = [0.5, 0.55, 0.45, 0.6, 0.4, 0.7, 0.3, 0.8, 0.2, 0.9, 0.1];

/** To three digits, touching as near to the middle of the flank as lets it stand out and stay off the root. */
const bestOn = (figures: ToothFigures, flank: Flank): number | undefined =>
  PLACES.map((part) =>
    Number(bestPin(figures, Math.max(figures.base.value / 2, flank.low + part * (flank.high - flank.low)), flank.side).toPrecision(3)),
  ).find((pin) => pin > 0 && faultOf(pinSize(figures, pin, flank.side), pin, flank) === undefined);

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
