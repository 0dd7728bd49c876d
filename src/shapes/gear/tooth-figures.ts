/** The figures of a gear's teeth, each made of those before it, so that every size can be asked why. */

import { type Figure, given } from '../../quantity/figure.ts';
import { apply } from '../../quantity/formula.ts';
import type { Unit } from '../../quantity/unit.ts';
import { baseDiameter, basePitch, baseThickness, referenceDiameter, toothThickness } from './formulas.ts';
import type { Size } from './keys.ts';

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

/** `backlash` is what this gear gives of the play along the line of action, mm. */
export const toothFigures = ({ module, pressureAngle }: Size, teeth: number, shift: number, backlash: number): ToothFigures => {
  const asked = {
    module: number('module', 'module', module, 'mm'),
    teeth: number('teeth', 'teeth', teeth, '1'),
    pressureAngle: number('pressure-angle', 'pressure angle', pressureAngle, 'rad'),
    shift: number('shift', 'profile shift', shift, '1'),
    backlash: number('backlash', 'backlash of this gear along the line of action', backlash, 'mm'),
  };
  const reference = apply(referenceDiameter, asked, { key: 'reference-diameter' });
  const base = apply(baseDiameter, { reference, pressureAngle: asked.pressureAngle }, { key: 'base-diameter' });
  const thickness = apply(toothThickness, asked, { key: 'tooth-thickness' });
  return {
    ...asked,
    reference,
    base,
    basePitch: apply(basePitch, { base, teeth: asked.teeth }, { key: 'base-pitch' }),
    thickness,
    baseThickness: apply(baseThickness, { base, reference, thickness, pressureAngle: asked.pressureAngle }, { key: 'base-thickness' }),
  };
};

/** A number of the request, or one that follows from it without a formula of the trade. */
export const number = (key: string, name: string, value: number, unit: Unit): Figure =>
  given({ key, name, value, unit, basis: 'drawing', source: 'the request' });
