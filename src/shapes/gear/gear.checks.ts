/** What others print of gears: the involute function, spans, pins, chords (CHECKS H). */
import type { CheckRow } from '../../quantity/check.ts';
import { inv, inverseInv, pinAngleExternal, pinAngleInternal } from '../involute.ts';
import {
  baseDiameter,
  betweenPins,
  chordalHeight,
  chordalThickness,
  leastShift,
  moduleOfPitch,
  overPins,
  rackPitch,
  referenceDiameter,
  rootDiameter,
  rootDiameterInside,
  spanContact,
  spanSize,
  thicknessAt,
  tipDiameter,
  tipDiameterInside,
  toothThickness,
  virtualTeeth,
} from './formulas.ts';
import { centreDistance, workingAngle } from './mate.ts';
import { bestPin } from './pins.ts';
import { type ToothFigures, toothFigures } from './tooth-figures.ts';

const RAD = Math.PI / 180;
const teeth = (module: number, z: number, shift = 0, pressureAngle = 20 * RAD): ToothFigures =>
  toothFigures({ module, pressureAngle, words: '' }, z, shift, 0);
const span = (figures: ToothFigures, spanned: number): number =>
  spanSize.compute({ basePitch: figures.basePitch.value, baseThickness: figures.baseThickness.value, spanned });
/** Pressure angle at the centre of a pin, rad. */
const pinAngle = ({ module, teeth: z, pressureAngle, thickness }: ToothFigures, pin: number, formula: typeof pinAngleExternal): number => {
  const values = { module: module.value, teeth: z.value, pressureAngle: pressureAngle.value, thickness: thickness.value, pin };
  const angle = inverseInv(formula.compute(values));
  return angle === 'none' ? Number.NaN : angle;
};
const over = (figures: ToothFigures, pin: number): number =>
  overPins.compute({ base: figures.base.value, teeth: figures.teeth.value, pin, pinAngle: pinAngle(figures, pin, pinAngleExternal) });
const between = (figures: ToothFigures, pin: number): number =>
  betweenPins.compute({ base: figures.base.value, teeth: figures.teeth.value, pin, pinAngle: pinAngle(figures, pin, pinAngleInternal) });
/** Where no shift is needed any more. */
const teethWithoutUndercut = (degrees: number): number => {
  const at = (z: number): number => leastShift.compute({ depth: 1, module: 1, teeth: z, pressureAngle: degrees * RAD });
  return at(0) / (at(0) - at(1));
};
const working = (z: number, shifts: number): number => {
  const angle = workingAngle(20 * RAD, z, shifts);
  return angle === 'none' ? Number.NaN : angle;
};

const involutes: readonly (readonly [degrees: number, printed: string])[] = [
  [14.5, '0.0055448'],
  [20, '0.0149044'],
  [22.5, '0.0215145'],
  [25, '0.0299753'],
  [30, '0.0537515'],
  [37.5, '0.1128285'],
  [45, '0.2146018'],
];

const onePinSizes: readonly (readonly [z: number, pin: number, printed: string])[] = [
  [6, 1.728, '8.3032'],
  [10, 1.728, '12.3445'],
  [17, 1.728, '19.3053'],
  [20, 1.728, '22.3900'],
  [21, 1.728, '23.3321'],
  [50, 1.728, '52.4292'],
  [100, 1.728, '102.4456'],
];

const metric = 'elements-of-metric-gears';
const spur = { module: 10, teeth: 12, thickness: toothThickness.compute({ module: 10, shift: 0.3, pressureAngle: 20 * RAD, backlash: 0 }) };
const helicalTeeth = virtualTeeth.compute({ teeth: 16, helix: 25 * RAD });
const helical = {
  module: 5,
  teeth: helicalTeeth,
  thickness: toothThickness.compute({ module: 5, shift: 0.2, pressureAngle: 20 * RAD, backlash: 0 }),
};

export const checks: readonly CheckRow[] = [
  ...involutes.map(([degrees, printed], i) => ({
    id: `H-01${'abcdefg'[i]}`,
    source: 'iso-21771',
    place: 'involute function',
    question: `inv ${degrees}°`,
    printed,
    ours: () => inv(degrees * RAD),
  })),
  {
    id: 'H-02a',
    source: 'iso-21771',
    place: 'base tangent length',
    question: 'm 2, z 20, 20°: span over 3 teeth, mm',
    printed: '15.3209',
    ours: () => span(teeth(2, 20), 3),
  },
  {
    id: 'H-02b',
    source: 'iso-21771',
    place: 'base pitch',
    question: 'm 2, 20°: base pitch, mm',
    printed: '5.9043',
    ours: () => teeth(2, 20).basePitch.value,
  },
  {
    id: 'H-02c',
    source: 'iso-21771',
    place: 'base tangent length',
    question: 'm 2, z 20, k 3: diameter at which it is taken, mm',
    printed: '40.590',
    ours: () => spanContact.compute({ base: teeth(2, 20).base.value, span: span(teeth(2, 20), 3) }),
  },
  {
    id: 'H-03a',
    source: metric,
    place: 'section 10, span',
    question: 'm 3, z 24, x 0.4, k 4: span, mm',
    printed: '32.8266',
    ours: () => span(teeth(3, 24, 0.4), 4),
  },
  {
    id: 'H-03b',
    source: 'iso-21771',
    place: 'base tangent length',
    question: 'm 1, z 30, k 4: span, mm',
    printed: '10.7526',
    ours: () => span(teeth(1, 30), 4),
  },
  {
    id: 'H-03c',
    source: 'iso-21771',
    place: 'base tangent length',
    question: 'm 1, z 17, k 2: span, mm',
    printed: '4.6663',
    ours: () => span(teeth(1, 17), 2),
  },
  {
    id: 'H-03d',
    source: 'iso-21771',
    place: 'base tangent length',
    question: 'm 2.5, z 40, k 5: span, mm',
    printed: '34.6120',
    ours: () => span(teeth(2.5, 40), 5),
  },
  {
    id: 'H-04a',
    source: metric,
    place: 'table 10-1',
    question: 'm 10, z 12, x 0.3: tooth thickness, mm',
    printed: '17.8918',
    ours: () => spur.thickness,
  },
  {
    id: 'H-04b',
    source: metric,
    place: 'table 10-1',
    question: 'the same: chord, mm',
    printed: '17.8256',
    ours: () => chordalThickness.compute(spur),
  },
  {
    id: 'H-04c',
    source: metric,
    place: 'table 10-1',
    question: 'the same: height of the chord, mm',
    printed: '13.6657',
    ours: () => chordalHeight.compute({ ...spur, addendum: 13 }),
  },
  {
    id: 'H-05a',
    source: metric,
    place: 'table 10-3',
    question: 'm_n 5, β 25°, z 16, x_n 0.2: tooth thickness, mm',
    printed: '8.5819',
    ours: () => helical.thickness,
  },
  { id: 'H-05b', source: metric, place: 'table 10-3', question: 'the same: virtual teeth', printed: '21.4928', ours: () => helicalTeeth },
  {
    id: 'H-05c',
    source: metric,
    place: 'table 10-3',
    question: 'the same: chord, mm',
    printed: '8.5728',
    ours: () => chordalThickness.compute(helical),
  },
  {
    id: 'H-05d',
    source: metric,
    place: 'table 10-3',
    question: 'the same: height of the chord, mm',
    printed: '6.1712',
    ours: () => chordalHeight.compute({ ...helical, addendum: 6 }),
  },
  {
    id: 'H-06a',
    source: 'iso-21771',
    place: 'size over pins',
    question: 'm 1, z 20, pin 1.7: size over pins, mm',
    printed: '22.2941',
    ours: () => over(teeth(1, 20), 1.7),
  },
  {
    id: 'H-06b',
    source: 'iso-21771',
    place: 'size over pins',
    question: 'the same: angle at the centre of the pin, °',
    printed: '24.1350',
    ours: () => pinAngle(teeth(1, 20), 1.7, pinAngleExternal) / RAD,
  },
  {
    id: 'H-06c',
    source: 'iso-21771',
    place: 'size over pins',
    question: 'm 3, z 24, x 0.4, pin 5.5: size over pins, mm',
    printed: '82.1072',
    ours: () => over(teeth(3, 24, 0.4), 5.5),
  },
  {
    id: 'H-06d',
    source: 'iso-21771',
    place: 'ideal pin',
    question: 'm 1, z 20: pin that touches at the reference circle, mm',
    printed: '1.72445',
    ours: () => bestPin(teeth(1, 20), 10, 'external'),
  },
  {
    id: 'H-06e',
    source: 'iso-21771',
    place: 'tooth thickness on a circle',
    question: 'm 1, z 20: thickness at the tip, mm',
    printed: '0.69488',
    ours: () => thicknessAt.compute({ radius: 11, base: teeth(1, 20).base.value, baseThickness: teeth(1, 20).baseThickness.value }),
  },
  ...onePinSizes.map(([z, pin, printed], i) => ({
    id: `H-07${'abcdefg'[i]}`,
    source: 'machinery-pins',
    place: '1.728 inch pins at 1 diametral pitch, 20°',
    question: `z ${z}: size over pins of ${pin}`,
    printed,
    ours: () => over(teeth(1, z), pin),
  })),
  {
    id: 'H-08a',
    source: 'involute-splines',
    place: 'basic sizes',
    question: 'm 2, z 20, 30°: pitch diameter, mm',
    printed: '40',
    ours: () => referenceDiameter.compute({ module: 2, teeth: 20 }),
  },
  {
    id: 'H-08b',
    source: 'involute-splines',
    place: 'basic sizes',
    question: 'm 2, z 20, 30°: base diameter, mm',
    printed: '34.6410',
    ours: () => baseDiameter.compute({ reference: 40, pressureAngle: 30 * RAD }),
  },
  {
    id: 'H-09a',
    source: 'iso-21771',
    place: 'size over pins',
    question: 'spline m 2, z 20, 30°, pins 4.0: over pins, mm',
    printed: '46.3696',
    ours: () => over(teeth(2, 20, 0, 30 * RAD), 4),
  },
  {
    id: 'H-09b',
    source: 'iso-21771',
    place: 'size between pins',
    question: 'spline m 2, z 20, 30°, pins 3.5: between pins, mm',
    printed: '34.8264',
    ours: () => between(teeth(2, 20, 0, 30 * RAD), 3.5),
  },
  {
    id: 'H-13a',
    source: metric,
    place: 'section 4, shifted spur gears',
    question: 'm 3, z 12 and 24, x 0.6 and 0.36: working pressure angle, °',
    printed: '26.0886',
    ours: () => working(36, 0.96) / RAD,
  },
  {
    id: 'H-13b',
    source: metric,
    place: 'section 4, shifted spur gears',
    question: 'the same: centre distance, mm',
    printed: '56.4999',
    ours: () => centreDistance.compute({ module: 3, teeth: 12, mateTeeth: 24, pressureAngle: 20 * RAD, workingAngle: working(36, 0.96) }),
  },
  {
    id: 'H-14a',
    source: metric,
    place: 'section 5, internal gears',
    question: 'm 3, z 16 in 24, x 0 and 0.5: working pressure angle, °',
    printed: '31.0937',
    ours: () => working(8, 0.5) / RAD,
    wider: { tolerance: 1e-4, reason: 'the example goes on with the involute function rounded to six digits' },
  },
  {
    id: 'H-14b',
    source: metric,
    place: 'section 5, internal gears',
    question: 'the same: centre distance, mm',
    printed: '13.1683',
    ours: () => centreDistance.compute({ module: 3, teeth: 16, mateTeeth: -24, pressureAngle: 20 * RAD, workingAngle: working(8, 0.5) }),
  },
  {
    id: 'H-15a',
    source: 'gear-textbooks',
    place: 'undercut',
    question: 'teeth without undercut by a rack, 20°',
    printed: '17.1',
    ours: () => teethWithoutUndercut(20),
  },
  {
    id: 'H-15b',
    source: 'gear-textbooks',
    place: 'undercut',
    question: 'teeth without undercut by a rack, 14.5°',
    printed: '31.9',
    ours: () => teethWithoutUndercut(14.5),
  },
  {
    id: 'H-15c',
    source: 'gear-textbooks',
    place: 'undercut',
    question: 'teeth without undercut by a rack, 25°',
    printed: '11.2',
    ours: () => teethWithoutUndercut(25),
  },
  {
    id: 'H-18a',
    source: 'gear-textbooks',
    place: 'diameters',
    question: 'm 2, z 20: tip diameter, mm',
    printed: '44',
    ours: () => tipDiameter.compute({ module: 2, teeth: 20, addendum: 1, shift: 0 }),
  },
  {
    id: 'H-18b',
    source: 'gear-textbooks',
    place: 'diameters',
    question: 'm 2, z 20: root diameter, mm',
    printed: '35',
    ours: () => rootDiameter.compute({ module: 2, teeth: 20, dedendum: 1.25, shift: 0 }),
  },
  {
    id: 'H-18c',
    source: 'gear-textbooks',
    place: 'diameters',
    question: 'm 2, z 40 inside: tip diameter, mm',
    printed: '76',
    ours: () => tipDiameterInside.compute({ module: 2, teeth: 40, addendum: 1, shift: 0 }),
  },
  {
    id: 'H-18d',
    source: 'gear-textbooks',
    place: 'diameters',
    question: 'm 2, z 40 inside: root diameter, mm',
    printed: '85',
    ours: () => rootDiameterInside.compute({ module: 2, teeth: 40, dedendum: 1.25, shift: 0 }),
  },
  {
    id: 'H-18e',
    source: 'gear-textbooks',
    place: 'pitch',
    question: 'm 2: pitch of a rack, mm',
    printed: '6.2832',
    ours: () => rackPitch.compute({ module: 2 }),
  },
  {
    id: 'H-18f',
    source: 'inch',
    place: 'module and diametral pitch',
    question: 'module of 12 DP, mm',
    printed: '2.1167',
    ours: () => moduleOfPitch.compute({ diametralPitch: 12 }),
  },
];
