/** Measuring over and between pins: the pin that touches at a place, the size with it, and whether it rests on the flanks. mm, rad. */

import { type Point, point } from '../../geometry/segment.ts';
import type { Figure } from '../../quantity/figure.ts';
import { apply } from '../../quantity/formula.ts';
import { mm, upTo } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import { askedOrFound, found } from '../figures.ts';
import { polar } from '../polar.ts';
import type { Taking } from '../shape.ts';
import { betweenPins, overPins } from './formulas.ts';
import { inv, inverseInv, pinAngleExternal, pinAngleInternal } from './involute.ts';
import type { ToothFigures } from './tooth-figures.ts';

export interface PinSize {
  readonly size: Figure;
  readonly pin: number;
  /** Radius at which the pin touches the flanks. */
  readonly contact: number;
  /** Radius on which its centre lies. */
  readonly centre: number;
  readonly taking: Taking;
}

/**
 * The pin that touches both flanks of a space where they pass `radius`: its centre lies in the middle of the space, on the normals of
 * both, which are tangents of the base circle. External: φ = tan α_y + π/z - s_b/d_b; internal the other way round.
 */
export const touchingPin = (figures: ToothFigures, radius: number, side: 'external' | 'internal'): number => {
  const base = figures.base.value / 2;
  const z = figures.teeth.value;
  const at = Math.sqrt(Math.max(0, (radius / base) ** 2 - 1));
  const half = figures.baseThickness.value / (2 * base);
  const centre = side === 'external' ? at + Math.PI / z - half : at - spaceHalf(figures);
  const angle = side === 'external' ? centre : Math.max(0, centre);
  return Math.abs(2 * base * (Math.tan(angle) - at));
};

/** Half the angle of an internal gear's space on the base circle. */
const spaceHalf = ({ module, teeth, thickness, pressureAngle }: ToothFigures): number =>
  (Math.PI * module.value - thickness.value) / (module.value * teeth.value) + inv(pressureAngle.value);

/** What a size over or between two pins is called. */
export const pinned = phrases('pin-size', {
  over: (pin: number) => say`over two pins of ${{ pin: mm(pin, upTo(4)) }}`,
  between: (pin: number) => say`between two pins of ${{ pin: mm(pin, upTo(4)) }}`,
});

/** How a pin is chosen that nobody asks for. */
export const TOUCHING = say(
  'teeth.pin.by',
)`the pin in stock, by a list from memory, that touches nearest to the reference circle, or to the middle of the flank, and measures well`;

/** Where such a pin comes from. */
export const STOCK = { source: { file: 'measuring-pins' } } as const;

/** `role`: a pin that the request names, the best one beside it, or the best one alone. */
export const pinSize = (
  figures: ToothFigures,
  pin: number,
  side: 'external' | 'internal',
  role: 'asked' | 'best' | 'alone' = 'alone',
): PinSize | undefined => {
  const { module, teeth, pressureAngle, thickness, base } = figures;
  const diameter = askedOrFound(role === 'asked' ? pin : undefined, 'pin', say('teeth.pin')`pin`, pin, TOUCHING, STOCK);
  const formula = side === 'external' ? pinAngleExternal : pinAngleInternal;
  const turned = apply(formula, { thickness, teeth, module, pressureAngle, pin: diameter }, { key: 'pin-involute' });
  const angle = inverseInv(turned.value);
  if (angle === 'none' || !(angle > 0)) return undefined;
  const how = say('teeth.pin-angle.by')`the angle φ whose involute function tan φ - φ is that of the pin`;
  const pinAngle = found('pin-angle', say('teeth.pin-angle')`pressure angle at the centre of the pin`, angle, how, {
    unit: 'rad',
    source: { file: 'iso-21771' },
    from: [turned],
  });
  const size = apply(
    side === 'external' ? overPins : betweenPins,
    { base, pinAngle, teeth, pin: diameter },
    {
      key: `${side === 'external' ? 'over' : 'between'}-${role === 'best' ? 'best-' : ''}pins`,
      name: side === 'external' ? pinned.over(pin) : pinned.between(pin),
    },
  );
  const string = (base.value / 2) * Math.tan(angle) + (side === 'external' ? -1 : 1) * (pin / 2);
  return {
    size,
    pin,
    contact: Math.hypot(base.value / 2, string),
    centre: base.value / 2 / Math.cos(angle),
    taking: takingOf(figures, angle, pin, side),
  };
};

/** The first tooth (of an internal gear: its first space) lies on the X axis; pins lie in spaces opposite each other, or nearly. */
const takingOf = ({ base, teeth }: ToothFigures, angle: number, pin: number, side: 'external' | 'internal'): Taking => {
  const z = teeth.value;
  const radius = base.value / 2 / Math.cos(angle);
  const first = side === 'external' ? Math.PI / z : 0;
  const opposite = first + (2 * Math.PI * Math.floor(z / 2)) / z;
  const [a, b] = [first, opposite].map((t) => polar(radius, t)) as [Point, Point];
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  const reach = (side === 'external' ? 1 : -1) * (pin / 2 / length);
  return {
    kind: 'pins',
    centres: [a, b],
    diameter: pin,
    from: point(a.x - (b.x - a.x) * reach, a.y - (b.y - a.y) * reach),
    to: point(b.x + (b.x - a.x) * reach, b.y + (b.y - a.y) * reach),
  };
};
