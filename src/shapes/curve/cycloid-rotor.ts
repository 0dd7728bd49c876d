/** Rotors that roll on round pins or teeth: the disc of a cycloidal drive, and both rotors of a gerotor pump. */
import { type Finding, remedy } from '../../text/finding.ts';
import { count, fixed, mm, number, quantities, upTo } from '../../text/part.ts';
import { say } from '../../text/say.ts';
import { standBack } from '../common-keys.ts';
import { shapeKind } from '../kind.ts';
import { refusedWith } from '../refused.ts';
import type { MadeShape } from '../shape.ts';
import { find } from './findings.ts';
import { leastPathRadius, type PinRing, pathRadius, pinCentre } from './pin-ring.ts';
import { ringShape } from './ring-shape.ts';
import { cycloidRotorQuestion, type RotorRequest } from './rotor-request.ts';
import { rotorShape } from './rotor-shape.ts';

export const cycloidRotor = shapeKind({
  ...cycloidRotorQuestion,
  make: (request): MadeShape => {
    const ring: PinRing = { pins: request.pins, radius: request.pinCircle / 2, eccentricity: request.eccentricity };
    const fault = faultOf(request, ring);
    if (fault !== undefined) return refusedWith(fault);
    return request.part === 'ring' ? ringShape(request, ring) : rotorShape(request, ring);
  },
});

const at = (path: keyof RotorRequest) => ({ place: { kind: 'field', path } }) as const;

/** What no part of such a set can have. */
const faultOf = (request: RotorRequest, ring: PinRing): Finding | undefined => {
  const { pins, radius, eccentricity } = ring;
  const most = radius / pins;
  if (eccentricity >= most)
    return find(
      'rotor-impossible/loops',
      say`With an eccentricity of ${{ eccentricity: mm(eccentricity, upTo(3)) }} the path of a pin makes loops; with ${{ pins: count(pins, 'pin') }} on a circle of ${{ circle: mm(2 * radius, upTo(3)) }} it has to stay below ${{ most: mm(most, upTo(3)) }}.`,
      {
        ...at('eccentricity'),
        remedy: remedy(
          say`An eccentricity below ${{ most: mm(most, upTo(3)) }}, some ${{ usual: quantities([0.5, 0.8], 'to', '1') }} of it as a rule.`,
          { field: 'eccentricity' },
        ),
      },
    );
  const apart = 2 * radius * Math.sin(Math.PI / pins);
  if (request.pinDiameter >= apart)
    return find(
      'rotor-pins-meet',
      say`${{ pins: count(pins, 'pin') }} of ${{ size: mm(request.pinDiameter, upTo(3)) }} do not fit beside each other: their middles are ${{ apart: mm(apart, upTo(3)) }} apart.`,
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
      'rotor-impossible/pressed',
      say`The rotor would reach beyond the middles of the pins: they press by more than their radius.`,
      at('clearance'),
    );
  const least = leastPathRadius.compute(ring);
  if (reach < least) return undefined;
  const { angle, radius } = sharpest(ring);
  const [pins, beside] = [mm(request.pinDiameter, upTo(3)), number((angle * 180) / Math.PI, fixed(2))];
  const [out, bend] = [mm(radius, upTo(3)), mm(least, upTo(3))];
  const text =
    back === 0
      ? say(
          'rotor-undercut',
        )`Pins of ${{ pins }} cut the lobes away: ${{ beside }}° beside the bottom of each valley, ${{ out }} from the middle, the path of a pin has a radius of only ${{ bend }}.`
      : say(
          'rotor-undercut/back',
        )`Pins of ${{ pins }} cut the lobes away: ${{ beside }}° beside the bottom of each valley, ${{ out }} from the middle, the path of a pin has a radius of only ${{ bend }}, and the wall stands back by ${{ back: mm(back, upTo(3)) }} more.`;
  return find('rotor-undercut', text, {
    ...at('pinDiameter'),
    remedy: remedy(say`Pins below ${{ pins: mm(2 * (least - back), upTo(3)) }}, less eccentricity, or a larger circle of pins.`, {
      field: 'pinDiameter',
    }),
  });
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
