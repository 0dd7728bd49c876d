/** What may be asked of a straight-sided spline, and the nominal sizes it comes to. */

import { z } from 'zod';
import type { Citation } from '../../quantity/source.ts';
import type { Finding } from '../../text/finding.ts';
import { count, mm, number, term, upTo } from '../../text/part.ts';
import { only, phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { commonKeys } from '../common-keys.ts';
import { shapeQuestion } from '../kind.ts';
import { find } from './findings.ts';
import { hubZones, ISO_14, SHAFT_ZONES, symmetryOf, usualCorners, type Zones } from './iso-14.ts';
import { SAE_CORNER, SAE_FITS, saeSizes } from './sae-j499.ts';

export const straightSchema = z.strictObject({
  kind: z.literal('straight-spline'),
  part: z.enum(['shaft', 'hub']).default('hub').describe('shaft: ridges, a piece; hub: grooves, an opening'),
  standard: z
    .enum(['ISO 14', 'SAE J499', 'none'])
    .default('ISO 14')
    .describe('ISO 14 by its size; SAE J499 by fit and outer diameter; none: by free numbers'),
  size: z
    .enum([...ISO_14.keys()] as [string, ...string[]])
    .optional()
    .describe('ISO 14: splines x inner x outer diameter, light and medium series'),
  saeFit: z.enum(SAE_FITS).optional().describe('SAE J499: splines, and A permanent, B to slide when not under load, C to slide under load'),
  splines: z.int().min(2).max(100).optional().describe('How many splines, for free numbers'),
  innerDiameter: z.number().positive().max(2000).optional().meta({ description: 'Inner diameter d, mm, for free numbers', unit: 'mm' }),
  outerDiameter: z
    .number()
    .positive()
    .max(2000)
    .optional()
    .meta({ description: 'Outer diameter D, mm, for free numbers and SAE J499', unit: 'mm' }),
  width: z.number().positive().max(500).optional().meta({ description: 'Width B of a spline, mm, for free numbers', unit: 'mm' }),
  seat: z
    .enum(['sliding', 'close', 'fixed', 'nominal'])
    .optional()
    .describe(
      'How the shaft sits by ISO 14, cut at the middle of its tolerances: sliding, close or fixed; nominal: sizes as they are said. When left out sliding for ISO 14, else nominal',
    ),
  treated: z.boolean().default(false).describe('The hub is hardened after it is cut: width H11 in place of H9'),
  root: z
    .enum(['radius', 'relief'])
    .default('radius')
    .describe('Corner at the foot of a ridge of the shaft: a radius, or a groove of that radius below the inner diameter'),
  rootRadius: z
    .number()
    .min(0)
    .max(20)
    .optional()
    .meta({ description: 'Radius in the inner corners, mm; the usual one of the size when left out', unit: 'mm' }),
  chamfer: z.number().min(0).max(20).optional().meta({
    description: 'Chamfer on the outer edges of ridges, in the hub on the edges of its bore, mm; the usual one of the size when left out',
    unit: 'mm',
  }),
  pin: z
    .number()
    .positive()
    .max(200)
    .optional()
    .meta({ description: 'Diameter of the measuring pins of a shaft, mm; the best in stock is chosen when left out', unit: 'mm' }),
  outside: z
    .number()
    .positive()
    .max(3000)
    .optional()
    .meta({ description: 'Outside diameter of the hub, mm, where it is cut as well', unit: 'mm' }),
  ...commonKeys,
});

export const straightSplineQuestion = shapeQuestion({
  ...phrases('straight-spline', {
    title: say`Straight-sided spline`,
    what: say`Shaft or hub with parallel-sided splines by ISO 14 or SAE J499, or by free numbers`,
  }),
  schema: straightSchema,
  example: { size: '8x36x40' },
});

export type StraightRequest = z.output<typeof straightSchema>;

export interface StraightNominal {
  readonly kind: 'nominal';
  /** 'ISO 14 light series, 8 × 36 × 40, sliding' */
  readonly words: Text;
  /** What the numbers are taken from; the request itself when it is left out. */
  readonly source?: Citation | undefined;
  readonly splines: number;
  readonly inner: number;
  readonly outer: number;
  readonly width: number;
  readonly zones?: Zones;
  readonly symmetry?: number;
  readonly chamfer: number;
  readonly radius: number;
}

export type NominalAnswer = StraightNominal | { readonly kind: 'refused'; readonly findings: readonly Finding[] };

export const refused = (text: Text, path: string): Extract<NominalAnswer, { kind: 'refused' }> => ({
  kind: 'refused',
  findings: [find('straight-spline-impossible', text, { place: { kind: 'field', path } })],
});

export const nominalOf = (request: StraightRequest): NominalAnswer => {
  const fault = contradiction(request);
  if (fault !== undefined) return fault;
  const made = request.standard === 'ISO 14' ? isoOf(request) : request.standard === 'SAE J499' ? saeOf(request) : freeOf(request);
  if (made.kind === 'refused') return made;
  if (made.outer <= made.inner)
    return refused(
      say(
        'straight-spline-impossible/diameters',
      )`An outer diameter of ${{ outer: mm(made.outer) }} is no more than the inner one of ${{ inner: mm(made.inner) }}.`,
      'outerDiameter',
    );
  if (made.width >= made.inner * Math.sin(Math.PI / made.splines))
    return refused(
      say(
        'straight-spline-impossible/width',
      )`${{ splines: count(made.splines, 'spline') }} ${{ width: mm(made.width) }} wide leave nothing between them on an inner diameter of ${{ inner: mm(made.inner) }}.`,
      request.standard === 'none' ? 'width' : 'outerDiameter',
    );
  return made;
};

/** Numbers that belong to another standard than the one that is asked for. */
const USED: Readonly<Record<StraightRequest['standard'], readonly string[]>> = {
  'ISO 14': ['size'],
  'SAE J499': ['saeFit', 'outerDiameter'],
  none: ['splines', 'innerDiameter', 'outerDiameter', 'width'],
};

const numbers = phrases('straight-spline-number', {
  size: say`a size of the table`,
  saeFit: say`a fit such as ${{ fit: term('6B') }}`,
  splines: say`the number of splines`,
  innerDiameter: say`the inner diameter`,
  outerDiameter: say`the outer diameter`,
  width: say`the width of a spline`,
});

const sizes = phrases('straight-spline-size', {
  free: say`A spline by free numbers`,
  isoLight: (size: string, seat: Text) => say`ISO 14 light series, ${{ size: term(size) }}, ${{ seat }}`,
  isoMedium: (size: string, seat: Text) => say`ISO 14 medium series, ${{ size: term(size) }}, ${{ seat }}`,
  sae: (fit: string, outer: number) =>
    say`SAE J499, fit ${{ fit: term(fit) }}, outer diameter ${{ inches: number(outer / 25.4, upTo(4)) }} in`,
  numbers: (splines: number, inner: number, outer: number, width: number) =>
    say`${{ splines: count(splines) }} × ${{ inner: number(inner, upTo(4)) }} × ${{ outer: number(outer, upTo(4)) }}, width ${{ width: mm(width) }}`,
  seated: (size: Text, seat: Text) => say`${{ size }}, ${{ seat }}`,
});

const seats = phrases('straight-spline-seat', {
  sliding: say`sliding`,
  close: say`close`,
  fixed: say`fixed`,
  nominal: say`nominal`,
});

const contradiction = (request: StraightRequest): Extract<NominalAnswer, { kind: 'refused' }> | undefined => {
  const { standard } = request;
  const called = standard === 'none' ? sizes.free : only(term(standard));
  for (const [key, words] of Object.entries(numbers)) {
    const given = request[key as keyof StraightRequest] !== undefined;
    if (given === USED[standard].includes(key)) continue;
    return refused(
      given
        ? say(
            'straight-spline-impossible/not-asked',
          )`${{ standard: called }} does not ask for ${{ number: words }}: leave it out, or take another standard.`
        : say('straight-spline-impossible/needed')`${{ standard: called }} needs ${{ number: words }}.`,
      key,
    );
  }
  if (standard === 'SAE J499' && request.seat !== undefined && request.seat !== 'nominal')
    return refused(
      say('straight-spline-impossible/sae-seat')`SAE J499 has no sliding, close or fixed shaft of ISO 14: its fits are A, B and C.`,
      'seat',
    );
  if (request.part === 'hub' && request.root === 'relief')
    return refused(say('straight-spline-impossible/relief')`A relief belongs to the feet of the shaft’s ridges; a hub has none.`, 'root');
  return undefined;
};

const isoOf = (request: StraightRequest): NominalAnswer => {
  const row = ISO_14.get(request.size as string) as NonNullable<ReturnType<typeof ISO_14.get>>;
  const seat = request.seat ?? 'sliding';
  return {
    kind: 'nominal',
    words: (row.series === 'light' ? sizes.isoLight : sizes.isoMedium)(row.size.replaceAll('x', ' × '), seats[seat]),
    source: { file: 'iso-14' },
    ...row,
    ...zonesOf(request, seat),
    symmetry: symmetryOf(row.width),
    ...usualCorners(row.inner),
  };
};

const zonesOf = ({ part, treated }: StraightRequest, seat: NonNullable<StraightRequest['seat']>): { readonly zones?: Zones } =>
  seat === 'nominal' ? {} : { zones: part === 'hub' ? hubZones(treated) : SHAFT_ZONES[seat] };

const saeOf = ({ saeFit, outerDiameter }: StraightRequest): NominalAnswer => {
  const [fit, outer] = [saeFit as NonNullable<typeof saeFit>, outerDiameter as number];
  const corners = cornersOf(outer - saeSizes(fit, outer).inner, outer);
  return {
    kind: 'nominal',
    words: sizes.sae(fit, outer),
    source: { file: 'sae-j499' },
    ...saeSizes(fit, outer),
    outer,
    ...corners,
    radius: Math.min(corners.radius, SAE_CORNER),
  };
};

const freeOf = (request: StraightRequest): NominalAnswer => {
  const [inner, outer] = [request.innerDiameter as number, request.outerDiameter as number];
  const seat = request.seat ?? 'nominal';
  if (seat !== 'nominal' && Math.max(outer, request.width as number) > 500)
    return refused(
      say('straight-spline-impossible/zones')`Tolerance zones are known up to ${{ most: mm(500) }}; take the seat nominal.`,
      'seat',
    );
  const size = sizes.numbers(request.splines as number, inner, outer, request.width as number);
  return {
    kind: 'nominal',
    words: seat === 'nominal' ? size : sizes.seated(size, seats[seat]),
    splines: request.splines as number,
    inner,
    outer,
    width: request.width as number,
    ...zonesOf(request, seat),
    ...cornersOf(outer - inner, inner),
  };
};

/** The usual corners, where the ridges are high enough for them. */
const cornersOf = (twiceDepth: number, diameter: number): { readonly chamfer: number; readonly radius: number } => {
  const { chamfer, radius } = usualCorners(diameter);
  return { chamfer: Math.max(0, Math.min(chamfer, twiceDepth / 5)), radius: Math.max(0, Math.min(radius, twiceDepth / 8)) };
};
