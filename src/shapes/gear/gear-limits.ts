/** Tip and root of an external gear, and what is impossible about it before a tooth is drawn. Radii in mm. */

import type { Figure } from '../../quantity/figure.ts';
import { apply } from '../../quantity/formula.ts';
import { type Finding, remedy } from '../../text/finding.ts';
import { fixed, mm } from '../../text/part.ts';
import { say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
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
  const addendum = asked('addendum-factor', say('gear.addendum-factor')`addendum as a multiple of the module`, request.addendum, '1');
  const dedendum = asked('dedendum-factor', say('gear.dedendum-factor')`dedendum as a multiple of the module`, request.dedendum, '1');
  const circles = CIRCLES[side];
  const tipFigure =
    request.tipDiameter === undefined
      ? apply(circles.tip, { ...figures, addendum }, { key: 'tip-diameter' })
      : asked('tip-diameter', say('gear.tip-diameter')`tip diameter`, request.tipDiameter, 'mm');
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

const impossible = (path: string, text: Text): Finding => find('gear-impossible', text, { place: { kind: 'field', path } });

const sizeFault = (request: GearRequest, figures: ToothFigures, { tip, root }: Limits): Finding | undefined => {
  const { thickness, module, base } = figures;
  const pitch = Math.PI * module.value;
  if (!(thickness.value > 0))
    return impossible(
      'clearance',
      say(
        'gear-impossible/play-more-than-tooth',
      )`The teeth would be ${{ thickness: mm(thickness.value, fixed(3)) }} thick at the reference circle: the play is more than a tooth.`,
    );
  if (thickness.value >= pitch)
    return impossible(
      request.clearance < 0 ? 'clearance' : 'shift',
      say(
        'gear-impossible/no-space',
      )`The teeth would be ${{ thickness: mm(thickness.value, fixed(3)) }} thick at the reference circle, where one follows the other after ${{ pitch: mm(pitch, fixed(3)) }}: there is no space between them.`,
    );
  if (!(root > 0))
    return impossible('dedendum', say('gear-impossible/no-root')`The root circle would have a radius of ${{ root: mm(root, fixed(3)) }}.`);
  const below = Math.max(root, base.value / 2);
  if (tip > below) return undefined;
  return impossible(
    request.tipDiameter === undefined ? 'addendum' : 'tipDiameter',
    say(
      'gear-impossible/tip-below',
    )`The tip circle of ${{ tip: mm(2 * tip, fixed(3)) }} lies below the root or base circle of ${{ below: mm(2 * below, fixed(3)) }}.`,
  );
};

const pointedFault = (request: GearRequest, figures: ToothFigures, { tip }: Limits): Finding | undefined => {
  const point = inverseInv(figures.baseThickness.value / figures.base.value);
  const pointed = point === 'none' ? 0 : figures.base.value / 2 / Math.cos(point);
  if (tip < pointed) return undefined;
  return find(
    'gear-pointed/wheel',
    say`The flanks meet at a diameter of ${{ meet: mm(2 * pointed, fixed(3)) }}, below the tip circle of ${{ tip: mm(2 * tip, fixed(3)) }}.`,
    {
      place: { kind: 'field', path: request.tipDiameter === undefined ? 'shift' : 'tipDiameter' },
      remedy: remedy(say`A tip diameter below ${{ meet: mm(2 * pointed, fixed(2)) }}, or less profile shift.`, { field: 'tipDiameter' }),
    },
  );
};
