/** The figures of a gear's teeth, each made of those before it, so that every size can be asked why. */

import type { Figure } from '../../quantity/figure.ts';
import { apply } from '../../quantity/formula.ts';
import { say } from '../../text/say.ts';
import { asked } from '../figures.ts';
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
  /** Where the teeth were asked by it. */
  readonly diametralPitch?: number | undefined;
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
  const own = {
    module: moduleOf(size),
    teeth: asked('teeth', say('teeth.teeth')`teeth`, teeth, '1'),
    pressureAngle: asked('pressure-angle', say('teeth.pressure-angle')`pressure angle`, size.pressureAngle, 'rad'),
    shift: asked('profile-shift', say('teeth.profile-shift')`profile shift`, shift, '1'),
    backlash: asked('backlash', say('teeth.backlash')`backlash of this gear along the line of action`, backlash, 'mm'),
  };
  const reference = apply(referenceDiameter, own, { key: 'reference-diameter' });
  const base = apply(baseDiameter, { reference, pressureAngle: own.pressureAngle }, { key: 'base-diameter' });
  const thickness = apply(side === 'external' ? toothThickness : toothThicknessInside, own, { key: 'tooth-thickness' });
  return {
    ...own,
    diametralPitch: size.diametralPitch,
    reference,
    base,
    basePitch: apply(basePitch, { base, teeth: own.teeth }, { key: 'base-pitch' }),
    thickness,
    baseThickness: apply(baseThickness, { base, reference, thickness, pressureAngle: own.pressureAngle }, { key: 'base-thickness' }),
  };
};

export interface ModuleAsked {
  readonly module: number;
  /** Where it was asked by it; the module follows from it. */
  readonly diametralPitch?: number | undefined;
}

export const moduleOf = ({ module, diametralPitch }: ModuleAsked): Figure =>
  diametralPitch === undefined
    ? asked('module', say('teeth.module')`module`, module, 'mm')
    : apply(
        moduleOfPitch,
        { diametralPitch: asked('diametral-pitch', say('teeth.diametral-pitch')`diametral pitch`, diametralPitch, '1') },
        { key: 'module' },
      );
