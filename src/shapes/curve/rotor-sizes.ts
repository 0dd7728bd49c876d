/** The sizes a rotor of lobes is measured by. Lengths in mm. */

import { type Point, point } from '../../geometry/segment.ts';
import { apply, type Formula } from '../../quantity/formula.ts';
import { mm, upTo } from '../../text/part.ts';
import { phrases, say, symbols } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { asked, found } from '../figures.ts';
import { polar } from '../polar.ts';
import { insideSizes } from '../refused.ts';
import type { ShapeSize, Taking } from '../shape.ts';
import { leastPathRadius, type PinRing, shortening } from './pin-ring.ts';
import type { Holes, RotorRequest, Wall } from './rotor-request.ts';

export const reduction: Formula<'pins'> = {
  name: say('curve.reduction')`reduction`,
  text: say('curve.reduction.by')`i = z - 1, the disc turning against its eccentric`,
  source: 'trochoid-rotors',
  unit: '1',
  inputs: { pins: { unit: '1', name: 'pins' } },
  compute: ({ pins }) => pins - 1,
};

export const overRotorPins: Formula<'pinCircle' | 'eccentricity' | 'pins' | 'pin' | 'back'> = {
  name: say('curve.over-rotor-pins')`size over two pins in opposite valleys`,
  text: say('curve.over-rotor-pins.by')`M = 2 (R - e - j) + d, for odd lobes with (R - e - j) cos(90° / lobes)`,
  source: 'trochoid-rotors',
  unit: 'mm',
  inputs: {
    pinCircle: { unit: 'mm', name: 'pin circle' },
    eccentricity: { unit: 'mm', name: 'eccentricity' },
    pins: { unit: '1', name: 'pins' },
    pin: { unit: 'mm', name: 'pin' },
    back: { unit: 'mm', name: 'what the wall stands back' },
  },
  unchecked: 'it follows from where the pins stand; a test lays pins into the drawn valleys',
  compute: ({ pinCircle, eccentricity, pins, pin, back }) =>
    2 * (pinCircle / 2 - eccentricity - back) * (pins % 2 === 1 ? 1 : Math.cos(Math.PI / (2 * (pins - 1)))) + pin,
};

export interface RotorMade {
  readonly back: number;
  /** How far the wall stands inside of the pins' path. */
  readonly reach: number;
  readonly inside: number | undefined;
  readonly holes: Holes;
  readonly wall?: Wall | undefined;
}

export const rotorSizes = (request: RotorRequest, ring: PinRing, made: RotorMade): readonly ShapeSize[] => {
  const figures = {
    pinCircle: asked('pin-circle', say('curve.pin-circle')`circle of the pins`, request.pinCircle),
    radius: found(
      'pin-circle-radius',
      say('curve.pin-circle-radius')`radius of the pin circle`,
      ring.radius,
      say('curve.pin-circle-radius.by')`half the circle of the pins`,
      { source: { file: 'definition' } },
    ),
    eccentricity: asked('eccentricity', say('curve.eccentricity')`eccentricity`, ring.eccentricity),
    pins: asked('pins', request.part === 'disc' ? words.pins : words.teeth, ring.pins, '1'),
    pin: asked('pin', say('curve.pin')`pin`, request.pinDiameter),
    back: asked('back', say('curve.back')`what the wall stands back`, made.back),
  };
  const least = apply(leastPathRadius, figures, { key: 'path-radius' });
  const sharpest = found(
    'lobe-radius',
    say('curve.lobe-radius')`smallest outside radius of a lobe`,
    least.value - made.reach,
    symbols`ρ - d / 2 - j`,
    {
      source: { file: 'trochoid-rotors' },
      from: [least, figures.pin, figures.back],
    },
  );
  return [
    overPins(figures, ring, made, request.pinDiameter),
    ...acrossSizes(ring, made),
    { figure: figures.eccentricity },
    { figure: figures.pinCircle, taking: { kind: 'circle', centre: point(0, 0), radius: ring.radius, drawn: true } },
    { figure: apply(shortening, figures, { key: 'shortening' }) },
    ...(request.part === 'disc' ? [{ figure: apply(reduction, figures, { key: 'reduction' }) }] : []),
    ...openingSizes(request, made),
    { figure: sharpest },
    ...insideSizes(made.inside),
  ];
};

const overPins = (
  figures: Parameters<typeof apply<'pinCircle' | 'eccentricity' | 'pins' | 'pin' | 'back'>>[1],
  ring: PinRing,
  { back }: RotorMade,
  pin: number,
): ShapeSize => {
  const lobes = ring.pins - 1;
  const out = ring.radius - ring.eccentricity - back;
  const turn = (2 * Math.PI * Math.floor(lobes / 2)) / lobes;
  const centres: readonly [Point, Point] = [point(out, 0), polar(out, turn)];
  return {
    figure: apply(overRotorPins, figures, { key: 'over-pins', name: words.over(pin) }),
    taking: { kind: 'pins', centres, diameter: pin, ...beyond(centres, pin / 2) },
  };
};

const beyond = ([a, b]: readonly [Point, Point], by: number): { readonly from: Point; readonly to: Point } => {
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  const [x, y] = [((b.x - a.x) / length) * by, ((b.y - a.y) / length) * by];
  return { from: point(a.x - x, a.y - y), to: point(b.x + x, b.y + y) };
};

/** Circles through tops and valleys, and what a calliper takes across. */
const acrossSizes = ({ pins, radius, eccentricity }: PinRing, { reach }: RotorMade): readonly ShapeSize[] => {
  const lobes = pins - 1;
  const [top, valley] = [radius + eccentricity - reach, radius - eccentricity - reach];
  const rim = (at: number): Taking => ({ kind: 'circle', centre: point(0, 0), radius: at });
  const half = Math.PI / lobes;
  const from = polar(top, half);
  const over = lobes % 2 === 0 ? top : valley;
  const across = found(
    lobes % 2 === 0 ? 'over-lobes' : 'lobe-to-valley',
    lobes % 2 === 0 ? words.lobes : words.lobe,
    top + over,
    lobes % 2 === 0 ? symbols`2 (R + e - j) - d` : symbols`2 (R - j) - d`,
    { source: { file: 'trochoid-rotors' } },
  );
  return [
    { figure: across, taking: { kind: 'distance', from, to: polar(-over, half) } },
    {
      figure: found('lobe-diameter', say('curve.lobe-diameter')`circle over the lobes`, 2 * top, symbols`2 (R + e - j) - d`, {
        source: { file: 'trochoid-rotors' },
      }),
      taking: rim(top),
    },
    {
      figure: found('valley-diameter', say('curve.valley-diameter')`circle in the valleys`, 2 * valley, symbols`2 (R - e - j) - d`, {
        source: { file: 'trochoid-rotors' },
      }),
      taking: rim(valley),
    },
  ];
};

const openingSizes = ({ bore, outputCircle = 0 }: RotorRequest, { holes, wall }: RotorMade): readonly ShapeSize[] => [
  ...(bore === undefined
    ? []
    : [
        {
          figure: asked('bore', say('curve.bore')`bore`, bore),
          taking: { kind: 'circle', centre: point(0, 0), radius: bore / 2 },
        } as const,
      ]),
  ...holes.centres.slice(0, 1).flatMap((centre): readonly ShapeSize[] => [
    {
      figure: found(
        'output-hole',
        say('curve.output-hole')`holes for the output pins`,
        holes.diameter,
        say('curve.output-hole.by')`pin + 2 e + 2 j`,
        { source: { file: 'trochoid-rotors' } },
      ),
      taking: { kind: 'circle', centre, radius: holes.diameter / 2 },
    },
    {
      figure: asked('output-circle', say('curve.output-circle')`circle of the output holes`, outputCircle),
      taking: { kind: 'circle', centre: point(0, 0), radius: outputCircle / 2, drawn: true },
    },
  ]),
  ...(wall === undefined ? [] : [{ figure: found('least-wall', words.wall(wall.between), wall.thickness, words.off) }]),
];

const words = phrases('rotor-size', {
  pins: say`pins`,
  teeth: say`teeth of the outer rotor`,
  over: (pin: number) => say`over two pins of ${{ pin: mm(pin, upTo(6)) }} in opposite valleys`,
  lobes: say`over two lobes`,
  lobe: say`from the top of a lobe to the valley opposite`,
  wall: (between: Text) => say`thinnest wall, between ${{ between }}`,
  off: say`off the contour`,
});
