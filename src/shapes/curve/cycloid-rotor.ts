/** Rotors that roll on round pins or teeth: the disc of a cycloidal drive, and both rotors of a gerotor pump. */
import type { Finding } from '../../text/finding.ts';
import { standBack } from '../common-keys.ts';
import { shapeKind } from '../kind.ts';
import { refusedWith } from '../refused.ts';
import type { MadeShape } from '../shape.ts';
import { find } from './findings.ts';
import { leastPathRadius, type PinRing, pathRadius, pinCentre } from './pin-ring.ts';
import { ringShape } from './ring-shape.ts';
import { type RotorRequest, rotorSchema } from './rotor-request.ts';
import { rotorShape } from './rotor-shape.ts';

export const cycloidRotor = shapeKind({
  title: 'Cycloid rotor',
  what: 'Disc of a cycloidal drive, or inner or outer rotor of a gerotor pump',
  schema: rotorSchema,
  example: { pins: 12, pinCircle: 80, pinDiameter: 8, eccentricity: 2, bore: 26, outputPins: 6, outputCircle: 48, outputPin: 6 },
  make: (request): MadeShape => {
    const ring: PinRing = { pins: request.pins, radius: request.pinCircle / 2, eccentricity: request.eccentricity };
    const fault = faultOf(request, ring);
    if (fault !== undefined) return refusedWith(fault);
    return request.part === 'ring' ? ringShape(request, ring) : rotorShape(request, ring);
  },
});

const at = (path: keyof RotorRequest) => ({ place: { kind: 'field', path } }) as const;
const mm = (value: number): string => `${Number(value.toFixed(3))} mm`;

/** What no part of such a set can have. */
const faultOf = (request: RotorRequest, ring: PinRing): Finding | undefined => {
  const { pins, radius, eccentricity } = ring;
  const most = radius / pins;
  if (eccentricity >= most)
    return find(
      'rotor-impossible',
      `With an eccentricity of ${mm(eccentricity)} the path of a pin makes loops; with ${pins} pins on a circle of ${mm(2 * radius)} it has to stay below ${mm(most)}.`,
      { ...at('eccentricity'), remedy: `An eccentricity below ${mm(most)}, some 0.5 to 0.8 of it as a rule.` },
    );
  const apart = 2 * radius * Math.sin(Math.PI / pins);
  if (request.pinDiameter >= apart)
    return find(
      'rotor-pins-meet',
      `${pins} pins of ${mm(request.pinDiameter)} do not fit beside each other: their middles are ${mm(apart)} apart.`,
      at('pinDiameter'),
    );
  return undercutOf(request, ring);
};

/** The wall would run back on itself where the path bends more closely than the pin. */
const undercutOf = (request: RotorRequest, ring: PinRing): Finding | undefined => {
  const back = request.part === 'ring' ? 0 : standBack(request);
  const reach = request.pinDiameter / 2 + back;
  if (reach <= 0)
    return find(
      'rotor-impossible',
      'The rotor would reach beyond the middles of the pins: they press by more than their radius.',
      at('clearance'),
    );
  const least = leastPathRadius.compute(ring);
  if (reach < least) return undefined;
  const { angle, radius } = sharpest(ring);
  return find(
    'rotor-undercut',
    `Pins of ${mm(request.pinDiameter)} cut the lobes away: ${((angle * 180) / Math.PI).toFixed(2)}° beside the bottom of each valley, ${mm(radius)} from the middle, the path of a pin has a radius of only ${mm(least)}${back === 0 ? '' : `, and the wall stands back by ${mm(back)} more`}.`,
    {
      ...at('pinDiameter'),
      remedy: `Pins below ${mm(2 * (least - back))}, less eccentricity, or a larger circle of pins.`,
    },
  );
};

/** Where the pin's path bends outwards most closely: how far round from a valley, and how far out. */
const sharpest = (ring: PinRing): { readonly angle: number; readonly radius: number } => {
  const half = Math.PI / (ring.pins - 1);
  let best = { least: Number.POSITIVE_INFINITY, angle: half };
  for (let i = 0; i <= 2000; i += 1) {
    const angle = (half * i) / 2000;
    const bend = pathRadius(ring, angle);
    if (bend > 0 && bend < best.least) best = { least: bend, angle };
  }
  const { x, y } = pinCentre(ring, best.angle);
  return { angle: Math.atan2(y, x), radius: Math.hypot(x, y) };
};
