/** What may be asked of a straight-sided spline, and the nominal sizes it comes to. */
import { z } from 'zod';
import type { Finding } from '../../text/finding.ts';
import { commonKeys } from '../common-keys.ts';
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
  innerDiameter: z.number().positive().max(2000).optional().describe('Inner diameter d, mm, for free numbers'),
  outerDiameter: z.number().positive().max(2000).optional().describe('Outer diameter D, mm, for free numbers and SAE J499'),
  width: z.number().positive().max(500).optional().describe('Width B of a spline, mm, for free numbers'),
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
  rootRadius: z.number().min(0).max(20).optional().describe('Radius in the inner corners, mm; the usual one of the size when left out'),
  chamfer: z
    .number()
    .min(0)
    .max(20)
    .optional()
    .describe('Chamfer on the outer edges of ridges, in the hub on the edges of its bore, mm; the usual one of the size when left out'),
  pin: z
    .number()
    .positive()
    .max(200)
    .optional()
    .describe('Diameter of the measuring pins of a shaft, mm; the best is chosen when left out'),
  outside: z.number().positive().max(3000).optional().describe('Outside diameter of the hub, mm, where it is cut as well'),
  ...commonKeys,
});

export type StraightRequest = z.output<typeof straightSchema>;

export interface StraightNominal {
  readonly kind: 'nominal';
  readonly words: string;
  /** What the numbers are taken from, a file in sources/, or 'the request'. */
  readonly source: string;
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

export const refused = (sentence: string, path: string): Extract<NominalAnswer, { kind: 'refused' }> => ({
  kind: 'refused',
  findings: [find('straight-spline-impossible', sentence, { place: { kind: 'field', path } })],
});

export const nominalOf = (request: StraightRequest): NominalAnswer => {
  const fault = contradiction(request);
  if (fault !== undefined) return fault;
  const made = request.standard === 'ISO 14' ? isoOf(request) : request.standard === 'SAE J499' ? saeOf(request) : freeOf(request);
  if (made.kind === 'refused') return made;
  if (made.outer <= made.inner)
    return refused(`An outer diameter of ${made.outer} mm is no more than the inner one of ${made.inner} mm.`, 'outerDiameter');
  if (made.width >= made.inner * Math.sin(Math.PI / made.splines))
    return refused(
      `${made.splines} splines ${made.width} mm wide leave nothing between them on an inner diameter of ${made.inner} mm.`,
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

const WORDS: Readonly<Record<string, string>> = {
  size: 'a size of the table',
  saeFit: 'a fit such as 6B',
  splines: 'the number of splines',
  innerDiameter: 'the inner diameter',
  outerDiameter: 'the outer diameter',
  width: 'the width of a spline',
};

const contradiction = (request: StraightRequest): Extract<NominalAnswer, { kind: 'refused' }> | undefined => {
  const { standard } = request;
  const called = standard === 'none' ? 'A spline by free numbers' : standard;
  for (const [key, words] of Object.entries(WORDS)) {
    const given = request[key as keyof StraightRequest] !== undefined;
    if (given === USED[standard].includes(key)) continue;
    return refused(
      given ? `${called} does not ask for ${words}: leave it out, or take another standard.` : `${called} needs ${words}.`,
      key,
    );
  }
  if (standard === 'SAE J499' && request.seat !== undefined && request.seat !== 'nominal')
    return refused('SAE J499 has no sliding, close or fixed shaft of ISO 14: its fits are A, B and C.', 'seat');
  if (request.part === 'hub' && request.root === 'relief')
    return refused('A relief belongs to the feet of the shaft’s ridges; a hub has none.', 'root');
  return undefined;
};

const isoOf = (request: StraightRequest): NominalAnswer => {
  const row = ISO_14.get(request.size as string) as NonNullable<ReturnType<typeof ISO_14.get>>;
  const seat = request.seat ?? 'sliding';
  return {
    kind: 'nominal',
    words: `ISO 14 ${row.series} series, ${row.size.replaceAll('x', ' × ')}, ${seat}`,
    source: 'iso-14',
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
    words: `SAE J499, fit ${fit}, outer diameter ${tidy(outer / 25.4)} in`,
    source: 'sae-j499',
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
    return refused('Tolerance zones are known up to 500 mm; take the seat nominal.', 'seat');
  return {
    kind: 'nominal',
    words: `${request.splines} × ${tidy(inner)} × ${tidy(outer)}, width ${tidy(request.width as number)} mm${seat === 'nominal' ? '' : `, ${seat}`}`,
    source: 'the request',
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

export const tidy = (mm: number): string => String(Number(mm.toFixed(4)));
