/** Pins between straight flanks: over a shaft, between the teeth of a hub. Lengths in mm, angles in rad. */

import { type Point, point } from '../../geometry/segment.ts';
import { apply, type Formula } from '../../quantity/formula.ts';
import { fixed, mm, quantities } from '../../text/part.ts';
import { say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { askedOrFound, found } from '../figures.ts';
import { polar } from '../polar.ts';
import type { ShapeSize } from '../shape.ts';
import { pinned, STOCK, TOUCHING } from '../teeth/pins.ts';
import { standardPin } from '../teeth/standard-pins.ts';
import { alongAt, onFlank, type StraightForm } from '../teeth/straight-teeth.ts';

const inputs = {
  reach: { unit: 'mm', name: 'distance of a flank’s line from the middle' },
  half: { unit: 'rad', name: 'half the angle between the flanks of the space' },
  teeth: { unit: '1', name: 'teeth' },
  pin: { unit: 'mm', name: 'pin' },
} as const;

/** Two pins do not lie opposite each other where the number of teeth is odd. */
const apart = (centre: number, teeth: number): number => 2 * centre * (teeth % 2 === 0 ? 1 : Math.cos(Math.PI / (2 * teeth)));

const unchecked = 'plane geometry; the tests lay the pins into the drawn contour';

export const overStraight: Formula<keyof typeof inputs> = {
  name: say('spline.over-straight')`size over two pins between straight flanks`,
  text: say('spline.over-straight.by')`M = (2 c + D_M) / sin σ + D_M, for odd z the first part with cos(90° / z)`,
  source: 'plane-geometry',
  unit: 'mm',
  inputs,
  unchecked,
  compute: ({ reach, half, teeth, pin }) => apart((reach + pin / 2) / Math.sin(half), teeth) + pin,
};

export const betweenStraight: Formula<keyof typeof inputs> = {
  name: say('spline.between-straight')`size between two pins between straight flanks`,
  text: say('spline.between-straight.by')`M = (2 c - D_M) / sin σ - D_M, for odd z the first part with cos(90° / z)`,
  source: 'plane-geometry',
  unit: 'mm',
  inputs,
  unchecked,
  compute: ({ reach, half, teeth, pin }) => apart((reach - pin / 2) / Math.sin(half), teeth) - pin,
};

export interface StraightFlanks extends Pick<StraightForm, 'teeth' | 'lean' | 'reach' | 'tip' | 'root'> {
  /** Radii between which the flank is straight. */
  readonly low: number;
  readonly high: number;
  readonly part: 'shaft' | 'hub';
}

/** Half the angle between the flanks of the space that a pin lies in. */
const halfSpace = ({ part, lean, teeth }: StraightFlanks): number => (part === 'shaft' ? lean + Math.PI / teeth : lean);

/** The pin that touches both flanks where they have this radius, below 0 where there is none. */
export const pinTouching = (flanks: StraightFlanks, radius: number): number => {
  const at = onFlank(flanks, alongAt(flanks.reach, radius));
  const space = flanks.part === 'shaft' ? Math.PI / flanks.teeth : 0;
  const aside = (p: Point): number => Math.cos(space) * p.y - Math.sin(space) * p.x;
  return 2 * Math.abs(aside(at) / aside(point(Math.sin(flanks.lean), Math.cos(flanks.lean))));
};

interface Lying {
  readonly centre: number;
  readonly contact: number;
}

const lying = (flanks: StraightFlanks, pin: number): Lying => {
  const out = flanks.part === 'shaft' ? 1 : -1;
  const centre = (flanks.reach + (out * pin) / 2) / Math.sin(halfSpace(flanks));
  return { centre, contact: Math.hypot(flanks.reach, Math.sqrt(Math.max(0, centre ** 2 - (flanks.reach + (out * pin) / 2) ** 2))) };
};

/** Nothing where it measures well. `proud`: how far it has to stand out at least, mm. */
export const pinFault = (flanks: StraightFlanks, pin: number, proud = 0): Text | undefined => {
  if (!(halfSpace(flanks) > 1e-6)) return say('straight-pin-off-flank/parallel')`Between parallel flanks no pin finds a seat.`;
  const { centre, contact } = lying(flanks, pin);
  const { low, high, tip, root, part } = flanks;
  if (!(contact >= low - 1e-9 && contact <= high + 1e-9))
    return say(
      'straight-pin-off-flank/beside',
    )`A pin of ${{ pin: mm(pin) }} would touch at a diameter of ${{ contact: mm(2 * contact, fixed(3)) }}; the flanks are straight from ${{ flank: quantities([2 * low, 2 * high], 'to', 'mm', fixed(3)) }}.`;
  const [bottom, top] =
    part === 'shaft' ? [centre - pin / 2 - root, centre + pin / 2 - tip] : [tip - centre - pin / 2, root - centre + pin / 2];
  if (bottom <= 0)
    return say(
      'straight-pin-off-flank/bottom',
    )`A pin of ${{ pin: mm(pin) }} rests on the bottom of the space before it touches the flanks.`;
  if (top <= proud)
    return say('straight-pin-off-flank/below-tips')`A pin of ${{ pin: mm(pin) }} lies below the tips, where flat anvils do not reach it.`;
  return undefined;
};

/** The pin in stock that touches nearest to the middle of the flank, best where it stands out clearly; none where no pin does. */
export const bestStraightPin = (flanks: StraightFlanks): number | undefined => {
  const ideal = pinTouching(flanks, (flanks.low + flanks.high) / 2);
  const fits = (proud: number) => (pin: number) => pinFault(flanks, pin, proud * pin) === undefined;
  return standardPin(ideal, fits(1 / 20)) ?? standardPin(ideal, fits(0));
};

/** The size over or between two pins, as it is taken. `wanted` is the pin that the request names. */
export const straightPinSize = (flanks: StraightFlanks, pin: number, wanted: number | undefined): ShapeSize => {
  const { part, teeth, reach } = flanks;
  const shaft = part === 'shaft';
  const { centre } = lying(flanks, pin);
  const first = shaft ? Math.PI / teeth : 0;
  const opposite = first + (2 * Math.PI * Math.floor(teeth / 2)) / teeth;
  const [a, b] = [first, opposite].map((t) => polar(centre, t)) as [Point, Point];
  const figure = apply(
    shaft ? overStraight : betweenStraight,
    {
      reach: found(
        'flank-distance',
        say('spline.flank-distance')`distance of a flank’s line from the middle`,
        reach,
        say('spline.flank-distance.by')`off the flanks as they are cut`,
      ),
      half: found(
        'half-space',
        say('spline.half-space')`half the angle between the flanks of the space`,
        halfSpace(flanks),
        say('spline.half-space.by')`off the flanks`,
        { unit: 'rad' },
      ),
      teeth: found('teeth', say('spline.teeth')`teeth`, teeth, say('spline.teeth-cut')`as many as are cut`, {
        unit: '1',
        source: { file: 'definition' },
      }),
      pin: askedOrFound(wanted, 'pin', say('spline.pin')`pin`, pin, TOUCHING, STOCK),
    },
    { key: shaft ? 'over-pins' : 'between-pins', name: shaft ? pinned.over(pin) : pinned.between(pin) },
  );
  const beyond = ((shaft ? 1 : -1) * pin) / 2 / Math.hypot(b.x - a.x, b.y - a.y);
  const [x, y] = [(b.x - a.x) * beyond, (b.y - a.y) * beyond];
  return {
    figure,
    taking: { kind: 'pins', centres: [a, b], diameter: pin, from: point(a.x - x, a.y - y), to: point(b.x + x, b.y + y) },
  };
};
