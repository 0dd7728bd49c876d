/** The teeth of one spline as figures: as they are cut, and the limits that class and fit give them. mm, rad. */

import { apply, type Formula } from '../../quantity/formula.ts';
import { phrases, say, symbols } from '../../text/say.ts';
import { asked, found } from '../figures.ts';
import { inMm, inRad, plain } from '../inputs.ts';
import type { ShapeSize } from '../shape.ts';
import { baseDiameter, basePitch, baseThickness, referenceDiameter } from '../teeth/formulas.ts';
import { moduleOf, type ToothFigures } from '../teeth/tooth-figures.ts';
import type { ClassRoom } from './classes.ts';

/** Of metal: a hub's tooth is thinner by what its space is wider. */
export const splineThickness: Formula<'module' | 'widening' | 'away' | 'backlash' | 'pressureAngle'> = {
  name: say('spline.thickness')`tooth thickness at the pitch circle`,
  text: symbols`s = m (π / 2 + w) - v - j / cos α`,
  source: 'involute-splines',
  unit: 'mm',
  inputs: {
    module: inMm('module'),
    widening: plain('widening of the basic tooth, in modules'),
    away: inMm('from the basic tooth to the middle of the limits'),
    backlash: inMm('play of this part between two flanks'),
    pressureAngle: inRad('pressure angle'),
  },
  compute: ({ module, widening, away, backlash, pressureAngle }) =>
    module * (Math.PI / 2 + widening) - away - backlash / Math.cos(pressureAngle),
};

/** From the effective limit of the tooth down to the middle of the limits of its size. */
export const awayFromEffective: Formula<'total' | 'variation' | 'deviation'> = {
  name: say('spline.away-from-effective')`from the basic tooth to the middle of the limits`,
  text: symbols`v = (T + λ) / 2 + λ / 2 - es`,
  source: 'iso-4156-classes',
  unit: 'mm',
  inputs: {
    total: inMm('total tolerance'),
    variation: inMm('effective variation'),
    deviation: inMm('fundamental deviation'),
  },
  unchecked: 'the middle between the largest tooth, S + es - λ, and the smallest, S + es - (T + λ)',
  compute: ({ total, variation, deviation }) => (total + variation) / 2 - deviation,
};

export interface TeethAsked {
  readonly part: 'shaft' | 'hub';
  readonly module: number;
  /** Teeth per inch, where the module was worked out of them. */
  readonly diametralPitch?: number | undefined;
  readonly teeth: number;
  readonly pressureAngle: number;
  /** In modules, of the basic space and tooth. */
  readonly widening: number;
  /** What this part gives of the play between two flanks, mm. */
  readonly backlash: number;
}

/** As they are cut: at the middle of the limits where there is a class. */
export const splineFigures = (wanted: TeethAsked, room?: ClassRoom): ToothFigures => {
  const module = moduleOf(wanted);
  const teeth = asked('teeth', say('spline.teeth')`teeth`, wanted.teeth, '1');
  const pressureAngle = asked('pressure-angle', say('spline.pressure-angle')`pressure angle`, wanted.pressureAngle, 'rad');
  const reference = apply(
    referenceDiameter,
    { module, teeth },
    { key: 'reference-diameter', name: say('spline.reference-diameter')`pitch diameter` },
  );
  const base = apply(baseDiameter, { reference, pressureAngle }, { key: 'base-diameter' });
  const away =
    room === undefined
      ? asked('away', say('spline.away')`from the basic tooth`, 0, 'mm')
      : apply(awayFromEffective, { ...room }, { key: 'away' });
  const thickness = apply(
    splineThickness,
    {
      module,
      widening: asked(
        'widening',
        say('spline.widening')`widening of the basic tooth, in modules`,
        wanted.part === 'shaft' ? wanted.widening : -wanted.widening,
        '1',
      ),
      away,
      backlash: asked('backlash', say('spline.backlash')`play of this part between two flanks`, wanted.backlash, 'mm'),
      pressureAngle,
    },
    { key: 'tooth-thickness' },
  );
  return {
    module,
    teeth,
    pressureAngle,
    shift: asked('profile-shift', say('spline.profile-shift')`profile shift`, 0, '1'),
    reference,
    base,
    basePitch: apply(basePitch, { base, teeth }, { key: 'base-pitch' }),
    thickness,
    baseThickness: apply(baseThickness, { base, reference, thickness, pressureAngle }, { key: 'base-thickness' }),
  };
};

/** The same teeth thicker by so much. */
export const thickerBy = (figures: ToothFigures, by: number): ToothFigures => {
  const thickness = { ...figures.thickness, value: figures.thickness.value + by };
  return { ...figures, thickness, baseThickness: apply(baseThickness, { ...figures, thickness }, { key: 'base-thickness' }) };
};

/** Half of what the thickness as cut may be off, mm; nothing without a class. */
export const halfRoom = (room: ClassRoom | undefined): number | undefined =>
  room === undefined ? undefined : (room.total.value - room.variation.value) / 2;

/** Tooth of a shaft, or space of a hub, to pins and to a gauge that feels all flanks at once. */
export const widths = (figures: ToothFigures, part: 'shaft' | 'hub', room: ClassRoom | undefined): readonly ShapeSize[] => {
  const { thickness, module } = figures;
  const space = found(
    'space-width',
    say('spline.space-width')`space width at the pitch circle`,
    Math.PI * module.value - thickness.value,
    symbols`π m - s`,
    {
      source: { file: 'involute-splines' },
      from: [module, thickness],
    },
  );
  const own = part === 'shaft' ? thickness : space;
  const half = halfRoom(room);
  if (room === undefined || half === undefined) return [{ figure: own }];
  const felt = own.value + (part === 'shaft' ? 1 : -1) * room.variation.value;
  const effective = found(
    part === 'shaft' ? 'effective-thickness' : 'effective-space',
    part === 'shaft' ? effectives.tooth : effectives.space,
    felt,
    part === 'shaft' ? symbols`s + λ` : symbols`e - λ`,
    { source: room.variation.source, from: [own, room.variation] },
  );
  const moves = 2 / Math.cos(figures.pressureAngle.value);
  const about = (value: number) => ({ limits: { low: value - half, high: value + half }, moves });
  return [{ figure: own, ...about(own.value) }, { figure: effective, ...about(felt) }, { figure: room.total }, { figure: room.variation }];
};

const effectives = phrases('effective-size', {
  tooth: say`effective tooth thickness, as a ring gauge feels it`,
  space: say`effective space width, as a plug gauge feels it`,
});
