/** Tip and root of an external gear, and what is impossible about it before a tooth is drawn. Radii in mm. */

import type { Figure } from '../../quantity/figure.ts';
import { apply } from '../../quantity/formula.ts';
import type { Finding } from '../../text/finding.ts';
import { asked } from '../figures.ts';
import { find } from '../teeth/findings.ts';
import { rootDiameter, rootDiameterInside, tipDiameter, tipDiameterInside } from '../teeth/formulas.ts';
import { inverseInv } from '../teeth/involute.ts';
import { type Flanked, reliefBegin, reliefFault } from '../teeth/relief.ts';
import type { ToothFigures } from '../teeth/tooth-figures.ts';
import type { GearRequest } from './gear-keys.ts';

export interface Limits {
  readonly tip: number;
  readonly root: number;
  readonly tipFigure: Figure;
  readonly rootFigure: Figure;
}

const CIRCLES = {
  external: { tip: tipDiameter, root: rootDiameter },
  internal: { tip: tipDiameterInside, root: rootDiameterInside },
};

/** Of external and of internal teeth, whose tips lie inside of their roots. */
export const limitsOf = (
  request: Pick<GearRequest, 'addendum' | 'dedendum' | 'tipDiameter'>,
  figures: ToothFigures,
  side: 'external' | 'internal' = 'external',
): Limits => {
  const addendum = asked('addendum-factor', 'addendum as a multiple of the module', request.addendum, '1');
  const dedendum = asked('dedendum-factor', 'dedendum as a multiple of the module', request.dedendum, '1');
  const circles = CIRCLES[side];
  const tipFigure =
    request.tipDiameter === undefined
      ? apply(circles.tip, { ...figures, addendum }, { key: 'tip-diameter' })
      : asked('tip-diameter', 'tip diameter', request.tipDiameter, 'mm');
  const rootFigure = apply(circles.root, { ...figures, dedendum }, { key: 'root-diameter' });
  return { tip: tipFigure.value / 2, root: rootFigure.value / 2, tipFigure, rootFigure };
};

/** The flank before chamfer and relief are taken off it. */
export const flankedOf = ({ tipChamfer }: GearRequest, { tip, root }: Pick<Limits, 'tip' | 'root'>, { base }: ToothFigures): Flanked => ({
  tip,
  rootSide: Math.max(root, base.value / 2),
  tipSide: tip - tipChamfer,
  base: base.value / 2,
});

/** Where the involute ends towards the tip, a radius: where chamfer or relief begin. */
export const flankTop = (request: GearRequest, limits: Limits, figures: ToothFigures): number => {
  const flank = flankedOf(request, limits, figures);
  return request.reliefAmount > 0 ? Math.min(flank.tipSide, reliefBegin(request, flank)) : flank.tipSide;
};

export const faultsOf = (request: GearRequest, figures: ToothFigures, limits: Limits): readonly Finding[] => {
  const fault =
    sizeFault(request, figures, limits) ??
    reliefFault(request, flankedOf(request, limits, figures)) ??
    pointedFault(request, figures, limits);
  return fault === undefined ? [] : [fault];
};

const impossible = (path: string, sentence: string): Finding => find('gear-impossible', sentence, { place: { kind: 'field', path } });

const sizeFault = (request: GearRequest, figures: ToothFigures, { tip, root }: Limits): Finding | undefined => {
  const { thickness, module, base } = figures;
  const pitch = Math.PI * module.value;
  if (!(thickness.value > 0))
    return impossible(
      'clearance',
      `The teeth would be ${thickness.value.toFixed(3)} mm thick at the reference circle: the play is more than a tooth.`,
    );
  if (thickness.value >= pitch)
    return impossible(
      request.clearance < 0 ? 'clearance' : 'shift',
      `The teeth would be ${thickness.value.toFixed(3)} mm thick at the reference circle, where one follows the other after ${pitch.toFixed(3)} mm: there is no space between them.`,
    );
  if (!(root > 0)) return impossible('dedendum', `The root circle would have a radius of ${root.toFixed(3)} mm.`);
  const below = Math.max(root, base.value / 2);
  if (tip > below) return undefined;
  return impossible(
    request.tipDiameter === undefined ? 'addendum' : 'tipDiameter',
    `The tip circle of ${(2 * tip).toFixed(3)} mm lies below the root or base circle of ${(2 * below).toFixed(3)} mm.`,
  );
};

const pointedFault = (request: GearRequest, figures: ToothFigures, { tip }: Limits): Finding | undefined => {
  const point = inverseInv(figures.baseThickness.value / figures.base.value);
  const pointed = point === 'none' ? 0 : figures.base.value / 2 / Math.cos(point);
  if (tip < pointed) return undefined;
  return find(
    'gear-pointed',
    `The flanks meet at a diameter of ${(2 * pointed).toFixed(3)} mm, below the tip circle of ${(2 * tip).toFixed(3)} mm.`,
    {
      place: { kind: 'field', path: request.tipDiameter === undefined ? 'shift' : 'tipDiameter' },
      remedy: `A tip diameter below ${(2 * pointed).toFixed(2)} mm, or less profile shift.`,
    },
  );
};
