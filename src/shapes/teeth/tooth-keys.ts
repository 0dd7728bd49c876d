/** The numbers that gears inside and outside share, and what they come to before a tooth is drawn. */
import { z } from 'zod';
import { type Finding, type Remedy, remedy } from '../../text/finding.ts';
import { fixed, mm, number, upTo } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { find } from './findings.ts';

const positive = z.number().positive();

export const toothKeys = {
  module: positive.max(100).optional().meta({ description: 'Module, mm; or give diametralPitch', unit: 'mm' }),
  diametralPitch: positive.min(0.2).max(400).optional().describe('Teeth per inch of the reference diameter, in place of the module'),
  teeth: z.int().min(4).max(2000).describe('How many teeth'),
  pressureAngle: z.number().min(10).max(45).default(20).describe('Pressure angle at the reference circle, °'),
  shift: z
    .number()
    .min(-2)
    .max(3)
    .default(0)
    .describe('Profile shift as a multiple of the module; above 0 the teeth become thicker at the root'),
  helix: z.number().min(-60).max(60).default(0).describe('Helix angle, °; a straight wall only has 0'),
  addendum: positive.max(3).default(1).describe('Tip beyond the reference circle as a multiple of the module, before the profile shift'),
  dedendum: positive.max(3).default(1.25).describe('Root below the reference circle as a multiple of the module, before the profile shift'),
  tipDiameter: positive
    .max(2000)
    .optional()
    .meta({ description: 'Tip diameter, mm, in place of what addendum and shift give', unit: 'mm' }),
  tipChamfer: z
    .number()
    .min(0)
    .max(20)
    .default(0)
    .meta({ description: 'Taken off the edge between flank and tip, along and across alike, mm', unit: 'mm' }),
  reliefAmount: z
    .number()
    .min(0)
    .max(1)
    .default(0)
    .meta({ description: 'Tip relief: how far the flank stands back at the tip, mm', unit: 'mm' }),
  reliefFrom: positive.max(2000).optional().meta({
    description:
      'Where the tip relief begins: its diameter, of a rack its height above the reference line, mm; halfway up the flank when left out',
    unit: 'mm',
  }),
  pin: positive
    .max(200)
    .optional()
    .meta({ description: 'Diameter of the measuring pins, mm; the best in stock is chosen when left out', unit: 'mm' }),
  mate: z.int().min(4).max(2000).optional().describe('Teeth of the gear it runs with, to say centre distance and contact ratio'),
  mateAddendum: positive
    .max(3)
    .optional()
    .describe('Addendum of the mate as a multiple of the module; as for this gear, or 1 beside an internal one, when left out'),
  mateShift: z.number().min(-2).max(3).default(0).describe('Profile shift of the mate, as a multiple of the module'),
};

/** For teeth that point outwards. */
export const spanTeethKey = z
  .int()
  .min(2)
  .max(1000)
  .optional()
  .describe('How many teeth to span; as many as touch nearest the middle of the flanks when left out');

/** What the keys come to: module in mm, pressure angle in rad. */
export interface Size {
  readonly module: number;
  readonly pressureAngle: number;
  /** Where it was asked by it; the module follows from it. */
  readonly diametralPitch?: number;
  /** 'module 2 mm' or 'diametral pitch 12', as it was asked. */
  readonly words: Text;
}

export type Sized = { readonly kind: 'sized'; readonly size: Size } | { readonly kind: 'refused'; readonly finding: Finding };

interface Asked {
  readonly module?: number | undefined;
  readonly diametralPitch?: number | undefined;
  readonly pressureAngle: number;
  readonly helix: number;
  readonly teeth: number;
}

export const sizeOf = ({ module, diametralPitch, pressureAngle, helix, teeth }: Asked, form: 'round' | 'rack' = 'round'): Sized => {
  if ((module === undefined) === (diametralPitch === undefined))
    return refused(
      'gear-size-twice',
      module === undefined || diametralPitch === undefined
        ? say('gear-size-twice/none')`The size of the teeth is missing: give the module or the diametral pitch.`
        : say`Module ${{ module: mm(module, upTo(6)) }} and diametral pitch ${{ pitch: number(diametralPitch) }} are both given; one of them says the size of the teeth.`,
      'module',
    );
  if (helix !== 0)
    return form === 'rack'
      ? refused('gear-helical', slanted(helix), 'helix', askew(helix))
      : refused('gear-helical', twisted(module ?? 25.4 / (diametralPitch as number), teeth, helix), 'helix', AS_SPUR);
  const angle = (pressureAngle * Math.PI) / 180;
  if (module !== undefined) return { kind: 'sized', size: { module, pressureAngle: angle, words: toothSize.module(module) } };
  const pitch = diametralPitch as number;
  return {
    kind: 'sized',
    size: { module: 25.4 / pitch, diametralPitch: pitch, pressureAngle: angle, words: toothSize.diametralPitch(pitch) },
  };
};

const toothSize = phrases('tooth-size', {
  module: (module: number) => say`module ${{ module: mm(module, upTo(6)) }}`,
  diametralPitch: (pitch: number) => say`diametral pitch ${{ pitch: number(pitch) }}`,
});

const AS_SPUR: Remedy = remedy(
  say(
    'gear-helical/wheel.remedy',
  )`Cut it as a spur gear, or have it hobbed or ground; narrow gears may be sliced out of a helical blank that was cut elsewhere.`,
  { field: 'helix', value: 0 },
);

/** The reference circle of helical teeth has the diameter m z / cos β; `module` is that square to the teeth. */
const twisted = (module: number, teeth: number, helix: number): Text => {
  const beta = (Math.abs(helix) * Math.PI) / 180;
  const aside = 10 * Math.tan(beta);
  const degrees = ((aside / ((module * teeth) / 2 / Math.cos(beta))) * 180) / Math.PI;
  return say(
    'gear-helical/wheel',
  )`With a helix of ${{ helix: number(helix) }}° the teeth turn by ${{ turn: number(degrees, fixed(2)) }}°, or ${{ aside: mm(aside, fixed(3)) }} along the reference circle, over every ${{ height: mm(10) }} of height. A wire is straight: it can lean, but then it cuts walls of straight lines, and a flank that turns about the middle of the gear is none.`;
};

/** The teeth of a rack are straight all the same, only not square to its sides. */
const slanted = (helix: number): Text => {
  const aside = 10 * Math.tan((Math.abs(helix) * Math.PI) / 180);
  return say(
    'gear-helical/rack',
  )`With a helix of ${{ helix: number(helix) }}° the teeth of the rack run aside by ${{ aside: mm(aside, fixed(3)) }} over every ${{ width: mm(10) }} of width. The walls of this drawing stand square to it.`;
};

const askew = (helix: number): Remedy =>
  remedy(
    say(
      'gear-helical/rack.remedy',
    )`Turn the blank by ${{ helix: number(Math.abs(helix)) }}° in the plane of its teeth, so that the wire runs along them, and cut a helix of 0 with the module and the pressure angle square to the teeth.`,
    { field: 'helix', value: 0 },
  );

const refused = (code: Parameters<typeof find>[0], text: Text, path: string, help?: Remedy): Sized => ({
  kind: 'refused',
  finding: find(code, text, { place: { kind: 'field', path }, remedy: help }),
});
