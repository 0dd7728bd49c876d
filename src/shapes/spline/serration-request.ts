/** What may be asked of a serration, and the nominal sizes it comes to. */

import { z } from 'zod';
import type { Formula } from '../../quantity/formula.ts';
import { zoneLimits } from '../../quantity/limits-and-fits.ts';
import type { Citation } from '../../quantity/source.ts';
import type { Finding } from '../../text/finding.ts';
import { count, fixed, mm, number, quantities, term, upTo } from '../../text/part.ts';
import { phrases, say, symbols } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { commonKeys } from '../common-keys.ts';
import { shapeQuestion } from '../kind.ts';
import { DIN_5481, DIN_5481_ANGLE, type SerrationRow, USUAL_ROOT } from './din-5481.ts';
import { find } from './findings.ts';

export const serrationSchema = z.strictObject({
  kind: z.literal('serration'),
  part: z.enum(['shaft', 'hub']).default('hub').describe('shaft: teeth outside, a piece; hub: teeth inside, an opening'),
  size: z
    .enum([...DIN_5481.keys()] as [string, ...string[]])
    .optional()
    .describe('Nominal size of DIN 5481, bore x shaft; by free numbers when left out'),
  teeth: z.int().min(6).max(400).optional().describe('How many teeth, for free numbers'),
  pitchDiameter: z
    .number()
    .positive()
    .max(2000)
    .optional()
    .meta({ description: 'Diameter on which teeth and spaces are measured, mm, for free numbers', unit: 'mm' }),
  boreDiameter: z
    .number()
    .positive()
    .max(2000)
    .optional()
    .meta({ description: 'Diameter over the tips of the hub’s teeth, mm, for free numbers', unit: 'mm' }),
  shaftDiameter: z
    .number()
    .positive()
    .max(2000)
    .optional()
    .meta({ description: 'Diameter over the tips of the shaft’s teeth, mm, for free numbers', unit: 'mm' }),
  angle: z.number().min(20).max(120).optional().describe('Angle between the flanks of a space of the shaft, °; 60 when left out'),
  toothThickness: z
    .number()
    .positive()
    .max(100)
    .optional()
    .meta({ description: 'Tooth of the shaft, along the pitch circle, mm; half the pitch when left out', unit: 'mm' }),
  rootRadius: z
    .number()
    .min(0)
    .max(10)
    .optional()
    .meta({ description: 'Radius in the bottom of a space, mm; 0.08 of the pitch when left out', unit: 'mm' }),
  rootDiameter: z.number().positive().max(2000).optional().meta({
    description: 'Diameter of flat roots, mm, with the root radius in their corners; one round between the flanks when left out',
    unit: 'mm',
  }),
  tipRadius: z
    .number()
    .min(0)
    .max(10)
    .default(0)
    .meta({ description: 'Radius on both edges of the tips, mm; 0 for flat tips with sharp edges', unit: 'mm' }),
  pin: z
    .number()
    .positive()
    .max(100)
    .optional()
    .meta({ description: 'Diameter of the measuring pins, mm; the best in stock is chosen when left out', unit: 'mm' }),
  outside: z
    .number()
    .positive()
    .max(3000)
    .optional()
    .meta({ description: 'Outside diameter of the hub, mm, where it is cut as well', unit: 'mm' }),
  ...commonKeys,
});

export const serrationQuestion = shapeQuestion({
  ...phrases('serration', {
    title: say`Serration`,
    what: say`Shaft or hub with V-shaped teeth by the sizes of DIN 5481, or by free numbers`,
  }),
  schema: serrationSchema,
  example: { size: '15x17' },
});

export type SerrationRequest = z.output<typeof serrationSchema>;

export interface Limits {
  readonly low: number;
  readonly high: number;
}

export interface SerrationNominal {
  readonly kind: 'nominal';
  /** 'DIN 5481 15 × 17, 32 teeth' */
  readonly words: Text;
  readonly source?: Citation | undefined;
  readonly teeth: number;
  readonly pitchDiameter: number;
  /** Half the angle of the shaft's space and of the hub's, rad. */
  readonly shaftHalf: number;
  readonly hubHalf: number;
  /** Distance of a flank's line from the middle, without any play. */
  readonly reach: number;
  /** Diameters over tips at the middle of their tolerance. */
  readonly bore: number;
  readonly shaft: number;
  readonly limits: { readonly bore?: Limits; readonly shaft?: Limits };
  readonly rootRadius: number;
}

export type NominalAnswer = SerrationNominal | { readonly kind: 'refused'; readonly findings: readonly Finding[] };

export const refused = (text: Text, path: string): Extract<NominalAnswer, { kind: 'refused' }> => ({
  kind: 'refused',
  findings: [find('serration-impossible', text, { place: { kind: 'field', path } })],
});

const FREE = ['teeth', 'pitchDiameter', 'boreDiameter', 'shaftDiameter'] as const;

export const serrationNominal = (request: SerrationRequest): NominalAnswer => {
  const { size } = request;
  if (size !== undefined) {
    const both = [...FREE, 'angle' as const, 'toothThickness' as const].find((key) => request[key] !== undefined);
    if (both !== undefined)
      return refused(
        say('serration-impossible/twice')`The size ${{ size: term(size) }} of DIN 5481 says this number already: leave one of both out.`,
        both,
      );
    return sized(request, DIN_5481.get(size) as SerrationRow);
  }
  const missing = FREE.find((key) => request[key] === undefined);
  if (missing !== undefined)
    return refused(
      say('serration-impossible/none')`A serration needs a size of DIN 5481, or teeth and its three diameters.`,
      missing === 'teeth' ? 'size' : missing,
    );
  return free(request);
};

const sized = (request: SerrationRequest, row: SerrationRow): NominalAnswer => {
  const bore = limitsOf('A11', row.bore);
  const shaft = limitsOf('a11', row.outer);
  return {
    kind: 'nominal',
    words: words.din(row),
    source: { file: 'din-5481' },
    bore: (bore.low + bore.high) / 2,
    shaft: (shaft.low + shaft.high) / 2,
    limits: { bore, shaft },
    ...flanksOf(row.teeth, row.pitchDiameter, DIN_5481_ANGLE, undefined),
    rootRadius: request.rootRadius ?? usualRoot(row),
  };
};

const words = phrases('serration-size', {
  din: ({ size, teeth }: SerrationRow) => say`DIN 5481 ${{ size: term(size.replace('x', ' × ')) }}, ${{ teeth: count(teeth, 'tooth') }}`,
  free: (teeth: number, pitchDiameter: number, angle: number) =>
    say`${{ teeth: count(teeth, 'tooth') }} on ${{ pitch: mm(pitchDiameter) }}, ${{ angle: number(angle) }}°`,
});

const limitsOf = (zone: string, size: number): Limits => {
  const found = zoneLimits(zone, size);
  return found.kind === 'limits' ? { low: size + found.low / 1000, high: size + found.high / 1000 } : { low: size, high: size };
};

const usualRoot = ({ pitchDiameter, teeth }: { readonly pitchDiameter: number; readonly teeth: number }): number =>
  Number(((USUAL_ROOT * Math.PI * pitchDiameter) / teeth).toFixed(2));

const free = (request: SerrationRequest): NominalAnswer => {
  const { angle = 60, toothThickness } = request;
  const [teeth, pitchDiameter] = [request.teeth as number, request.pitchDiameter as number];
  const [bore, shaft] = [request.boreDiameter as number, request.shaftDiameter as number];
  const half = (angle * Math.PI) / 360;
  if (half - Math.PI / teeth < Math.PI / 180)
    return refused(
      say(
        'serration-impossible/angle',
      )`With ${{ teeth: count(teeth, 'tooth') }} and ${{ angle: number(angle) }}° between the flanks of the shaft, those of the hub are parallel or undercut: the angle has to be more than ${{ least: number(360 / teeth + 2, fixed(1)) }}°.`,
      'angle',
    );
  const pitch = (Math.PI * pitchDiameter) / teeth;
  if (toothThickness !== undefined && toothThickness >= pitch)
    return refused(
      say(
        'serration-impossible/thickness',
      )`A tooth ${{ thickness: mm(toothThickness) }} thick fills the whole pitch of ${{ pitch: mm(pitch, fixed(3)) }}.`,
      'toothThickness',
    );
  if (!(bore < shaft))
    return refused(
      say('serration-impossible/loose')`A bore of ${{ bore: mm(bore) }} clears a shaft of ${{ shaft: mm(shaft) }}: nothing would hold.`,
      'boreDiameter',
    );
  if (!(bore < pitchDiameter && pitchDiameter < shaft))
    return refused(
      say(
        'serration-impossible/pitch',
      )`A pitch diameter of ${{ pitch: mm(pitchDiameter) }} lies beside the teeth, which reach from ${{ teeth: quantities([bore, shaft], 'to', 'mm', upTo(4)) }}.`,
      'pitchDiameter',
    );
  return {
    kind: 'nominal',
    words: words.free(teeth, pitchDiameter, angle),
    bore,
    shaft,
    limits: {},
    ...flanksOf(teeth, pitchDiameter, 2 * half, toothThickness),
    rootRadius: request.rootRadius ?? (USUAL_ROOT * Math.PI * pitchDiameter) / teeth,
  };
};

/** Angle of a space of the hub. */
export const hubAngle: Formula<'angle' | 'teeth'> = {
  name: say('spline.hub-angle')`angle between the flanks of a space of the hub`,
  text: symbols`γ = α - 360° / z`,
  source: 'din-5481',
  unit: 'rad',
  inputs: { angle: { unit: 'rad', name: 'angle between the flanks of a space of the shaft' }, teeth: { unit: '1', name: 'teeth' } },
  compute: ({ angle, teeth }) => angle - (2 * Math.PI) / teeth,
};

/** The flank passes the pitch circle where a tooth of the shaft is as thick as it is said. */
const flanksOf = (
  teeth: number,
  pitchDiameter: number,
  angle: number,
  thickness: number | undefined,
): Pick<SerrationNominal, 'teeth' | 'pitchDiameter' | 'shaftHalf' | 'hubHalf' | 'reach'> => {
  const hubHalf = hubAngle.compute({ angle, teeth }) / 2;
  const half = thickness === undefined ? Math.PI / (2 * teeth) : thickness / pitchDiameter;
  return { teeth, pitchDiameter, shaftHalf: angle / 2, hubHalf, reach: (pitchDiameter / 2) * Math.sin(hubHalf + half) };
};
