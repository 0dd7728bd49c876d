/** Worked examples of gears that were read where others print them (CHECKS H, from 21 on), and how formulas are put together to answer them. */

import type { Point } from '../../geometry/segment.ts';
import type { CheckRow } from '../../quantity/check.ts';
import { apply } from '../../quantity/formula.ts';
import { NOTHING } from '../../text/say.ts';
import {
  baseDiameter,
  baseThickness,
  betweenPins,
  chordalThickness,
  contactRatio,
  overPins,
  overRackPin,
  spanSize,
  toothThickness,
} from '../teeth/formulas.ts';
import { inv, inverseInv, involutePoint, pinAngleExternal, pinAngleInternal } from '../teeth/involute.ts';
import { type ToothFigures, toothFigures } from '../teeth/tooth-figures.ts';
import { centreDistance } from './mate.ts';
import { stringTo } from './rolling.ts';

const metric = 'elements-of-metric-gears';

export const RAD = Math.PI / 180;
export const teeth = (module: number, z: number, shift = 0, pressureAngle = 20 * RAD): ToothFigures =>
  toothFigures({ module, pressureAngle, words: NOTHING }, z, shift, 0);
export const span = (figures: ToothFigures, spanned: number): number =>
  spanSize.compute({ basePitch: figures.basePitch.value, baseThickness: figures.baseThickness.value, spanned });
/** Pressure angle at the centre of a pin, rad. */
export const pinAngle = (
  { module, teeth: z, pressureAngle, thickness }: ToothFigures,
  pin: number,
  formula: typeof pinAngleExternal,
): number => {
  const values = { module: module.value, teeth: z.value, pressureAngle: pressureAngle.value, thickness: thickness.value, pin };
  const angle = inverseInv(formula.compute(values));
  return angle === 'none' ? Number.NaN : angle;
};
export const over = (figures: ToothFigures, pin: number): number =>
  overPins.compute({ base: figures.base.value, teeth: figures.teeth.value, pin, pinAngle: pinAngle(figures, pin, pinAngleExternal) });
export const between = (figures: ToothFigures, pin: number): number =>
  betweenPins.compute({ base: figures.base.value, teeth: figures.teeth.value, pin, pinAngle: pinAngle(figures, pin, pinAngleInternal) });
export const spur = {
  module: 10,
  teeth: 12,
  thickness: toothThickness.compute({ module: 10, shift: 0.3, pressureAngle: 20 * RAD, backlash: 0 }),
};
/** Seen square to its helix; the virtual teeth are printed with it. */
export const helical = {
  module: 5,
  teeth: 21.4928,
  thickness: toothThickness.compute({ module: 5, shift: 0.2, pressureAngle: 20 * RAD, backlash: 0 }),
};

/** Degrees, from the chord back. */
const halfAngle = (tooth: Parameters<typeof chordalThickness.compute>[0]): number =>
  Math.asin(chordalThickness.compute(tooth) / (tooth.module * tooth.teeth)) / RAD;
/** Of teeth told across the gear: module and thickness are taken square to the teeth. */
const [lean, across] = [22.5 * RAD, toothThickness.compute({ module: 4, shift: 0.3, pressureAngle: 20 * RAD, backlash: 0 })];
const sunderland = {
  module: 4 * Math.cos(lean),
  teeth: 25.362,
  thickness: across * Math.cos(lean),
};

const references = [
  { z: 51, thickness: 1.719, size: '17.090', pins: '53.846' },
  { z: 52, thickness: 1.8, size: '17.180', pins: '55.064' },
];
const withTooth = (z: number, thickness: number): ToothFigures => {
  const plain = teeth(1, z);
  const tooth = { ...plain.thickness, value: thickness };
  return { ...plain, thickness: tooth, baseThickness: apply(baseThickness, { ...plain, thickness: tooth }, { key: 'base-thickness' }) };
};
/** Of 20 teeth of m 3, the involute begun on X. */
const flankEnd = (): Point => {
  const base = teeth(3, 20).base.value / 2;
  return involutePoint(base, stringTo(33, base) / base, 0, 1);
};
const pathOfContact = (module: number, z: number, mate: number): number => {
  const line = ((module * (z + mate)) / 2) * Math.sin(20 * RAD);
  const string = (n: number): number => stringTo((module * (n + 2)) / 2, ((module * n) / 2) * Math.cos(20 * RAD));
  return string(z) + string(mate) - line;
};

export const checks: readonly CheckRow[] = [
  {
    id: 'H-21a',
    source: 'machinery-pins',
    place: 'worked example',
    how: 'secondary page' as const,
    question: '1 DP, 20°, z 32: size over pins of 1.728 in, in',
    value: '34.4130',
    ours: () => over(teeth(1, 32), 1.728),
  },
  {
    id: 'H-21b',
    source: 'machinery-pins',
    place: 'worked example',
    how: 'secondary page' as const,
    question: '4 DP, 20°, z 32: size over pins of 0.432 in, in',
    value: '8.6032',
    ours: () => over(teeth(1 / 4, 32), 1.728 / 4),
  },
  {
    id: 'H-22a',
    source: metric,
    place: 'table 10-1',
    how: 'secondary page' as const,
    question: 'm 10, z 12, x 0.3: half the angle of the tooth, °',
    value: '8.54270',
    ours: () => halfAngle(spur),
  },
  {
    id: 'H-22b',
    source: metric,
    place: 'table 10-2',
    how: 'secondary page' as const,
    question: 'rack of m 3: chordal thickness, mm',
    value: '4.7124',
    ours: () => toothThickness.compute({ module: 3, shift: 0, pressureAngle: 20 * RAD, backlash: 0 }),
  },
  {
    id: 'H-22c',
    source: metric,
    place: 'table 10-3',
    how: 'secondary page' as const,
    question: 'm_n 5, β 25°, z 16, x_n 0.2: half the angle of the virtual tooth, °',
    value: '4.57556',
    ours: () => halfAngle(helical),
  },
  {
    id: 'H-22d',
    source: metric,
    place: 'table 10-4',
    how: 'secondary page' as const,
    question: 'm_t 4, β 22.5°, z 20, x_t 0.3: tooth thickness square to the teeth, mm',
    value: '6.6119',
    ours: () => sunderland.thickness,
  },
  {
    id: 'H-22f',
    source: metric,
    place: 'table 10-4',
    how: 'secondary page' as const,
    question: 'the same: half the angle of the virtual tooth, °',
    value: '4.04196',
    ours: () => halfAngle(sunderland),
    wider: { tolerance: 1e-5, reason: 'worked with the virtual teeth as printed, four digits behind the point' },
  },
  {
    id: 'H-22g',
    source: metric,
    place: 'size over a pin, racks',
    how: 'recomputed' as const,
    question: 'rack of m 1, back 14 mm below the reference line, pin 1.7: size over it, mm',
    value: '15.1774',
    ours: () => overRackPin.compute({ back: 14, pitch: Math.PI, thickness: Math.PI / 2, pressureAngle: 20 * RAD, pin: 1.7 }),
  },
  {
    id: 'H-23a',
    source: 'shifted-pair',
    place: 'items 13 and 20',
    how: 'printed and seen' as const,
    question: 'm 3, z 12: base diameter, mm',
    value: '33.8289',
    ours: () => baseDiameter.compute({ reference: 36, pressureAngle: 20 * RAD }),
  },
  {
    id: 'H-23b',
    source: 'shifted-pair',
    place: 'items 13 and 20',
    how: 'printed and seen' as const,
    question: 'm 3, z 24: base diameter, mm',
    value: '67.6579',
    ours: () => baseDiameter.compute({ reference: 72, pressureAngle: 20 * RAD }),
  },
  {
    id: 'H-23c',
    source: 'shifted-pair',
    place: 'items 4, 10, 18 and 20',
    how: 'printed and seen' as const,
    question: 'm 3, z 12 and 24, tips of 44.84 and 79.4 mm, 56.5 mm apart at 26.0888°: contact ratio',
    value: '1.202',
    ours: () => {
      const line = 56.5 * Math.sin(26.0888 * RAD);
      const begins = line - stringTo(79.4 / 2, 36 * Math.cos(20 * RAD));
      return contactRatio.compute({
        begins,
        ends: stringTo(44.84 / 2, 18 * Math.cos(20 * RAD)),
        basePitch: 3 * Math.PI * Math.cos(20 * RAD),
      });
    },
  },
  {
    id: 'H-24a',
    source: 'generating-shift',
    place: 'involute functions',
    how: 'printed and seen' as const,
    question: 'inv 21.2990642859°',
    value: '0.0181260949',
    ours: () => inv(21.2990642859 * RAD),
  },
  {
    id: 'H-24b',
    source: 'generating-shift',
    place: 'involute functions',
    how: 'printed and seen' as const,
    question: 'the angle whose involute function is 0.0259052382, °',
    value: '23.8707609654',
    ours: () => Number(inverseInv(0.0259052382)) / RAD,
    wider: { tolerance: 2e-8, reason: 'the involute function is printed to ten places, which leave so much of the angle open' },
  },
  {
    id: 'H-25',
    source: 'between-pins',
    place: 'test case',
    how: 'printed and seen' as const,
    question: '24 DP, 20°, z 12 inside, tooth 0.06545 in, pins 0.060 in: size between them, in',
    value: '0.444260',
    ours: () => between({ ...teeth(1 / 24, 12), thickness: { ...teeth(1 / 24, 12).thickness, value: 0.06545 } }, 0.06),
  },
  ...references.flatMap(({ z, thickness, size, pins }) => [
    {
      id: `H-26b-${z}`,
      source: 'reference-pair',
      place: 'inspection sizes',
      how: 'printed and seen' as const,
      question: `m 1, z ${z}, tooth of ${thickness} mm: span over 6 teeth, mm`,
      value: size,
      ours: () => span(withTooth(z, thickness), 6),
    },
    {
      id: `H-26c-${z}`,
      source: 'reference-pair',
      place: 'inspection sizes',
      how: 'printed and seen' as const,
      question: `m 1, z ${z}, tooth of ${thickness} mm: over pins of 1.75, mm`,
      value: pins,
      ours: () => over(withTooth(z, thickness), 1.75),
      wider: { tolerance: 0.0013, reason: 'the tooth is printed to a thousandth, and the size moves 2.5 times as far as the tooth' },
    },
  ]),
  {
    id: 'H-26d',
    source: 'reference-pair',
    place: 'inspection sizes',
    how: 'printed and seen' as const,
    question: 'm 1, 20°: base pitch, mm',
    value: '2.952',
    ours: () => teeth(1, 51).basePitch.value,
  },
  ...(
    [
      ['H-27a', 1.75, 20, '13.381'],
      ['H-27b', 1.75, 25, '13.360'],
      ['H-27c', 1, 20, '7.646'],
    ] as const
  ).map(([id, module, angle, value]) => ({
    id,
    source: 'open-gear-tests',
    place: 'spans checked by hand',
    how: 'printed and seen' as const,
    question: `m ${module}, z 19, ${angle}°: span over 3 teeth, mm`,
    value,
    ours: () => span(teeth(module, 19, 0, angle * RAD), 3),
  })),
  {
    id: 'H-28a',
    source: 'open-gear-tests',
    place: 'm 3, 20 teeth',
    how: 'printed and seen' as const,
    question: 'base diameter, mm',
    value: '56.382',
    ours: () => teeth(3, 20).base.value,
  },
  {
    id: 'H-28b',
    source: 'open-gear-tests',
    place: 'm 3, 20 teeth',
    how: 'printed and seen' as const,
    question: 'an involute that leaves its base circle on X ends at the tip circle of 66 mm at x =, mm',
    value: '32.9369',
    ours: () => flankEnd().x,
  },
  {
    id: 'H-28c',
    source: 'open-gear-tests',
    place: 'm 3, 20 teeth',
    how: 'printed and seen' as const,
    question: 'the same: y, mm',
    value: '2.0399',
    ours: () => flankEnd().y,
    wider: { tolerance: 2e-4, reason: 'the test there allows a thousandth' },
  },
  {
    id: 'H-28d',
    source: 'open-gear-tests',
    place: '24 DP, 30 teeth',
    how: 'printed and seen' as const,
    question: 'base diameter, in',
    value: '1.1746',
    ours: () => teeth(1 / 24, 30).base.value,
  },
  {
    id: 'H-29a',
    source: 'gear-exercises',
    place: 'path of contact',
    how: 'printed and seen' as const,
    question: 'm 8, z 20 and 60, 20°: path of contact, mm',
    value: '39.458',
    ours: () => pathOfContact(8, 20, 60),
    wider: { tolerance: 0.001, reason: 'the printed digits are cut off, not rounded' },
  },
  {
    id: 'H-29b',
    source: 'gear-exercises',
    place: 'path of contact',
    how: 'printed and seen' as const,
    question: 'm 6, z 20 and 60, 15°: path between the base circles, mm',
    value: '62.116',
    ours: () =>
      centreDistance.compute({ module: 6, teeth: 20, mateTeeth: 60, pressureAngle: 15 * RAD, workingAngle: 15 * RAD }) * Math.sin(15 * RAD),
    wider: { tolerance: 0.001, reason: 'the printed digits are cut off, not rounded' },
  },
];
