/** The gear a gear runs with: centre distance, contact ratio, and whether tips run into roots. mm, rad; no backlash is counted. */
import type { Finding } from '../../finding/finding.ts';
import type { Formula } from '../../quantity/formula.ts';
import { apply } from '../../quantity/formula.ts';
import { inv, inverseInv } from '../involute.ts';
import type { ShapeSize } from '../shape.ts';
import { find } from './findings.ts';
import type { Radii } from './sizes.ts';
import { number, type ToothFigures } from './tooth-figures.ts';

export interface Mate {
  readonly teeth: number;
  readonly shift: number;
  /** Addendum as a multiple of the module; its tip is found with it. */
  readonly addendum: number;
}

export const centreDistance: Formula<'module' | 'teeth' | 'mateTeeth' | 'pressureAngle' | 'workingAngle'> = {
  name: 'centre distance',
  text: 'a = m (z1 + z2) / 2 · cos α / cos α_w, inv α_w = inv α + 2 tan α (x1 + x2) / (z1 + z2)',
  source: 'iso-21771',
  unit: 'mm',
  inputs: {
    module: { unit: 'mm', name: 'module' },
    teeth: { unit: '1', name: 'teeth' },
    mateTeeth: { unit: '1', name: 'teeth of the mate' },
    pressureAngle: { unit: 'rad', name: 'pressure angle' },
    workingAngle: { unit: 'rad', name: 'working pressure angle' },
  },
  compute: ({ module, teeth, mateTeeth, pressureAngle, workingAngle }) =>
    (Math.abs(teeth + mateTeeth) / 2) * module * (Math.cos(pressureAngle) / Math.cos(workingAngle)),
};

/** Working pressure angle of two gears; an internal one counts its teeth and its shift below nothing. */
export const workingAngle = (pressureAngle: number, teeth: number, shifts: number): number | 'none' =>
  inverseInv(inv(pressureAngle) + (2 * Math.tan(pressureAngle) * shifts) / teeth);

export interface Paired {
  readonly sizes: readonly ShapeSize[];
  readonly findings: readonly Finding[];
}

/** Two external gears. */
export const pairOf = (figures: ToothFigures, radii: Radii, mate: Mate): Paired => {
  const { module: m, teeth: z, pressureAngle, shift } = figures;
  const angle = workingAngle(pressureAngle.value, z.value + mate.teeth, shift.value + mate.shift);
  if (angle === 'none' || angle === 0)
    return {
      sizes: [],
      findings: [
        find('gear-impossible', `With profile shifts of ${shift.value} and ${mate.shift} the two gears cannot run without play.`, {
          severity: 'warning',
          place: { kind: 'field', path: 'mateShift' },
        }),
      ],
    };
  const distance = apply(
    centreDistance,
    {
      module: m,
      teeth: z,
      mateTeeth: number('mate-teeth', 'teeth of the mate', mate.teeth, '1'),
      pressureAngle,
      workingAngle: number('working-angle', 'working pressure angle', angle, 'rad'),
    },
    { key: 'centre-distance', name: `centre distance to a gear of ${mate.teeth} teeth` },
  );
  const mateBase = ((m.value * mate.teeth) / 2) * Math.cos(pressureAngle.value);
  const mateTip = m.value * (mate.teeth / 2 + mate.addendum + mate.shift);
  const base = figures.base.value / 2;
  const line = distance.value * Math.sin(angle);
  const reach = (tip: number, own: number): number => Math.sqrt(Math.max(0, tip * tip - own * own));
  const ratio = (reach(radii.tip, base) + reach(mateTip, mateBase) - line) / figures.basePitch.value;
  return {
    sizes: [{ figure: distance }, { figure: number('contact-ratio', 'contact ratio', ratio, '1') }],
    findings: [...interference(line - reach(mateTip, mateBase), base, radii.form, mate.teeth), ...short(ratio)],
  };
};

/** The mate's tip touches this flank where the string is so long; below the form radius there is no involute to touch. */
const interference = (string: number, base: number, form: number, teeth: number): readonly Finding[] => {
  const lowest = string <= 0 ? 0 : Math.hypot(base, string);
  if (lowest >= form - 1e-9) return [];
  return [
    find(
      'gear-mate-interferes',
      `The tips of the mate with ${teeth} teeth reach down to ${lowest === 0 ? 'below the base circle' : `a diameter of ${(2 * lowest).toFixed(3)} mm`}, but the involute ends at ${(2 * form).toFixed(3)} mm: they run into the root.`,
      {
        place: { kind: 'field', path: 'mate' },
        remedy: 'Give the mate a smaller tip, this gear more profile shift, or a deeper root with a smaller radius.',
      },
    ),
  ];
};

const short = (ratio: number): readonly Finding[] =>
  ratio >= 1
    ? []
    : [
        find('gear-contact-short', `The contact ratio is ${ratio.toFixed(2)}: between one pair of teeth and the next nothing carries.`, {
          place: { kind: 'field', path: 'mate' },
        }),
      ];
