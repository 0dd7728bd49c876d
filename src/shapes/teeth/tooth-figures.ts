/** The figures of a gear's teeth, each made of those before it, so that every size can be asked why. */

import { type Figure, given } from '../../quantity/figure.ts';
import { apply } from '../../quantity/formula.ts';
import type { Unit } from '../../text/unit.ts';
import {
  baseDiameter,
  basePitch,
  baseThickness,
  moduleOfPitch,
  referenceDiameter,
  toothThickness,
  toothThicknessInside,
} from './formulas.ts';
import type { Size } from './tooth-keys.ts';

export interface ToothFigures {
  readonly module: Figure;
  readonly teeth: Figure;
  readonly pressureAngle: Figure;
  readonly shift: Figure;
  readonly reference: Figure;
  readonly base: Figure;
  readonly basePitch: Figure;
  /** Of metal: of the gear's own tooth at the reference circle. */
  readonly thickness: Figure;
  readonly baseThickness: Figure;
}

/** `backlash` is what this gear gives of the play along the line of action, mm. A shift above 0 moves teeth outwards on either side. */
export const toothFigures = (
  size: Size,
  teeth: number,
  shift: number,
  backlash: number,
  side: 'external' | 'internal' = 'external',
): ToothFigures => {
  const asked = {
    module: moduleOf(size),
    teeth: number('teeth', 'teeth', teeth, '1'),
    pressureAngle: number('pressure-angle', 'pressure angle', size.pressureAngle, 'rad'),
    shift: number('profile-shift', 'profile shift', shift, '1'),
    backlash: number('backlash', 'backlash of this gear along the line of action', backlash, 'mm'),
  };
  const reference = apply(referenceDiameter, asked, { key: 'reference-diameter' });
  const base = apply(baseDiameter, { reference, pressureAngle: asked.pressureAngle }, { key: 'base-diameter' });
  const thickness = apply(side === 'external' ? toothThickness : toothThicknessInside, asked, { key: 'tooth-thickness' });
  return {
    ...asked,
    reference,
    base,
    basePitch: apply(basePitch, { base, teeth: asked.teeth }, { key: 'base-pitch' }),
    thickness,
    baseThickness: apply(baseThickness, { base, reference, thickness, pressureAngle: asked.pressureAngle }, { key: 'base-thickness' }),
  };
};

export const moduleOf = ({ module, diametralPitch }: Size): Figure =>
  diametralPitch === undefined
    ? number('module', 'module', module, 'mm')
    : apply(moduleOfPitch, { diametralPitch: number('diametral-pitch', 'diametral pitch', diametralPitch, '1') }, { key: 'module' });

/** A number of the request. */
export const number = (key: string, name: string, value: number, unit: Unit): Figure =>
  given({ key, name, value, unit, basis: 'drawing', source: 'the request' });

/** A number that follows from others by more than a formula: by a search, or off the contour. `how` tells the way. */
export const derived = (key: string, name: string, value: number, unit: Unit, how: string, from: readonly Figure[]): Figure => ({
  ...number(key, name, value, unit),
  basis: 'computed',
  source: 'iso-21771',
  formula: how,
  from,
});
