/** The bore of a hub with keyways for parallel keys, cut at the middle of its tolerances; with an outside diameter the whole ring. */
import { z } from 'zod';
import type { Finding } from '../../finding/finding.ts';
import { type Contour, contour } from '../../geometry/contour.ts';
import { arc, circle, line, type Point, point, type Segment } from '../../geometry/segment.ts';
import { zoneLimits } from '../../physics/limits-and-fits.ts';
import { type Figure, given } from '../../quantity/figure.ts';
import { apply } from '../../quantity/formula.ts';
import { commonKeys, standBack } from '../common-keys.ts';
import { shapeKind } from '../kind.ts';
import type { MadeShape, Outline, ShapeSize } from '../shape.ts';
import { asmeB17, hubSize } from './asme-b17.ts';
import { din6885 } from './din-6885.ts';
import { find } from './findings.ts';

const schema = z.strictObject({
  kind: z.literal('keyway-hub'),
  shaft: z.number().positive().max(500).describe('Diameter of shaft and bore, mm'),
  standard: z.enum(['DIN 6885-1', 'ASME B17.1']).default('DIN 6885-1').describe('Whose table says which key it is'),
  flatKey: z.boolean().default(false).describe('ASME only: the flat key of the row in place of the square one'),
  widthZone: z.enum(['JS9', 'P9', 'D10']).default('JS9').describe('Tolerance of the width: JS9 normal, P9 tight, D10 sliding'),
  boreZone: z.enum(['H6', 'H7', 'H8', 'H9', 'none']).default('H7').describe('Tolerance of the bore; none: the bore as it is said'),
  keyways: z.int().min(1).max(2).default(1).describe('How many keyways'),
  between: z.number().min(60).max(180).default(180).describe('Angle between two keyways, °'),
  cornerRadius: z
    .number()
    .min(0)
    .max(5)
    .optional()
    .describe('Radius in the corners of the keyway, mm; the largest the standard allows when left out'),
  outside: z.number().positive().max(2000).optional().describe('Outside diameter, mm, where the hub itself is cut as well'),
  ...commonKeys,
});

type Request = z.output<typeof schema>;

export const keywayHub = shapeKind({
  title: 'Hub with keyway',
  what: 'Bore with keyways for parallel keys by DIN 6885-1 (ISO 773) or ASME B17.1',
  schema,
  example: { shaft: 40 },
  make: (request) => {
    const key = keyOf(request);
    if (key.kind === 'refused') return key;
    const bore = limitsOf(request.boreZone, request.shaft);
    const width = limitsOf(request.widthZone, key.width);
    return drawn(request, key, bore, width);
  },
});

interface Key {
  readonly kind: 'key';
  readonly words: string;
  readonly width: number;
  /** Across the bore, from the top of the keyway to the opposite side, and what it may be larger by. */
  readonly across: Figure;
  readonly larger: number;
  readonly corner: readonly [number, number];
  readonly findings: readonly Finding[];
}

const keyOf = (request: Request): Key | Extract<MadeShape, { kind: 'refused' }> =>
  request.standard === 'DIN 6885-1' ? dinKey(request) : asmeKey(request);

const mm = (key: string, name: string, value: number, source: string): Figure =>
  given({ key, name, value, unit: 'mm', basis: source === 'the request' ? 'drawing' : 'published', source });

const dinKey = ({ shaft }: Request): ReturnType<typeof keyOf> => {
  const row = din6885(shaft);
  if (row === undefined) return outsideTable(shaft, 'DIN 6885-1 has keys for shafts over 6 mm, up to 500 mm');
  const across = { ...mm('across', 'bore across its keyway', shaft + row.hub, 'din-6885-1'), formula: 'd + t2' };
  return {
    kind: 'key',
    words: `key ${row.width} × ${row.height}`,
    width: row.width,
    across,
    larger: row.deeper,
    corner: row.corner,
    findings: atStep(shaft, row.to, din6885(row.to + 1e-6)?.width, 'DIN 6885-1', row.width),
  };
};

/** An end of a step belongs to the smaller key; a shaft turned a hair larger has the next one. */
const atStep = (shaft: number, to: number, next: number | undefined, standard: string, width: number): readonly Finding[] =>
  shaft !== to || next === undefined
    ? []
    : [
        find(
          'shaft-at-step',
          `${shaft} mm is the last shaft with a key ${width} mm wide by ${standard}; anything above it has one of ${next} mm.`,
          {
            place: { kind: 'field', path: 'shaft' },
          },
        ),
      ];

/** Above the key in the hub, from the standard. */
const ASME_CLEARANCE = 0.005 * 25.4;

const asmeKey = ({ shaft, flatKey }: Request): ReturnType<typeof keyOf> => {
  const row = asmeB17(shaft / 25.4);
  if (row === undefined) return outsideTable(shaft, 'ASME B17.1 has keys for shafts over 5/16 in, here up to 6 1/2 in (7.94 to 165.1 mm)');
  const [width, height] = [row.width * 25.4, (flatKey ? row.flat : row.width) * 25.4];
  const across = apply(
    hubSize,
    {
      diameter: mm('shaft', 'shaft', shaft, 'the request'),
      width: mm('key-width', 'width of the key', width, 'asme-b17-1'),
      height: mm('key-height', 'height of the key', height, 'asme-b17-1'),
      clearance: mm('key-clearance', 'clearance above the key', ASME_CLEARANCE, 'asme-b17-1'),
    },
    { key: 'across' },
  );
  return {
    kind: 'key',
    words: `key ${inches(width)} × ${inches(height)} in`,
    width,
    across,
    larger: 0.254,
    corner: [0, width / 8],
    findings: [],
  };
};

const inches = (millimetres: number): string => String(Number((millimetres / 25.4).toFixed(5)));

const outsideTable = (shaft: number, range: string): Extract<MadeShape, { kind: 'refused' }> => ({
  kind: 'refused',
  findings: [
    find('shaft-not-in-table', `There is no key for a shaft of ${shaft} mm: ${range}.`, { place: { kind: 'field', path: 'shaft' } }),
  ],
});

/** Limits of a size, mm; both its own where there is no zone. */
const limitsOf = (zone: string, size: number): { readonly low: number; readonly high: number } => {
  const answer = zone === 'none' ? undefined : zoneLimits(zone, size);
  return answer?.kind === 'limits' ? { low: size + answer.low / 1000, high: size + answer.high / 1000 } : { low: size, high: size };
};

interface Limits {
  readonly low: number;
  readonly high: number;
}

const middle = ({ low, high }: Limits): number => (low + high) / 2;

const drawn = (request: Request, key: Key, bore: Limits, width: Limits): MadeShape => {
  const back = standBack(request);
  const across: Limits = { low: key.across.value, high: key.across.value + key.larger };
  const radius = middle(bore) / 2 + back;
  const half = middle(width) / 2 + back;
  const top = middle(across) - middle(bore) / 2 + back;
  const corner = Math.max(0, request.cornerRadius ?? key.corner[1]);
  const path = corner > half || corner > top - Math.sqrt(radius * radius - half * half) ? 'cornerRadius' : 'outside';
  if (path === 'cornerRadius' || (request.outside !== undefined && request.outside / 2 <= top))
    return { kind: 'refused', findings: [impossible(path, request, top)] };
  const spans = request.keyways === 1 ? [0] : [0, (request.between * Math.PI) / 180];
  const outlines: readonly Outline[] = [
    ...(request.outside === undefined
      ? []
      : [{ contour: contour([circle(point(0, 0), request.outside / 2)]), metal: 'inside', layer: 'hub' } as const]),
    { contour: boreWith(radius, half, top, corner, spans), metal: 'outside' },
  ];
  return {
    kind: 'made',
    shape: {
      name: `Hub for a shaft of ${Number(request.shaft.toFixed(4))} mm, ${request.standard}, ${key.words}`,
      outlines,
      starts: [],
      sizes: sizesOf({ key, bore, width, across, radius, half, top, corner }),
      fitDeviation: 0,
      insideRadius: corner,
      findings: [...key.findings, ...cornerDoubt(corner, key)],
    },
  };
};

const impossible = (path: string, { cornerRadius, outside }: Request, top: number): Finding =>
  path === 'cornerRadius'
    ? find('keyway-impossible', `A corner radius of ${cornerRadius ?? 0} mm has no room in the keyway.`, { place: { kind: 'field', path } })
    : find(
        'keyway-impossible',
        `An outside diameter of ${outside ?? 0} mm leaves no metal above the keyway, which reaches ${top.toFixed(3)} mm from the middle.`,
        {
          place: { kind: 'field', path },
        },
      );

const cornerDoubt = (corner: number, { corner: [least, most], words }: Key): readonly Finding[] =>
  corner >= least - 1e-9 && corner <= most + 1e-9
    ? []
    : [
        find(
          'keyway-corner-beyond-standard',
          `The corners of the keyway have R ${corner} mm; for a ${words} the standard has ${least} to ${most} mm.`,
          {
            place: { kind: 'field', path: 'cornerRadius' },
          },
        ),
      ];

/** Counter-clockwise; the first keyway points along X. */
const boreWith = (radius: number, half: number, top: number, corner: number, spans: readonly number[]): Contour => {
  const foot = Math.asin(half / radius);
  const segments = spans.flatMap((turn, i): Segment[] => {
    const at = (x: number, y: number): Point => point(x * Math.cos(turn) - y * Math.sin(turn), x * Math.sin(turn) + y * Math.cos(turn));
    const onBore = (angle: number): Point => point(radius * Math.cos(angle), radius * Math.sin(angle));
    const next = (spans[i + 1] ?? (spans[0] as number) + 2 * Math.PI) - foot;
    const [from, to] = [onBore(turn + foot), onBore(next)];
    const into = onBore(turn - foot);
    const [low, high] = [at(top - corner, -half), at(top - corner, half)];
    const crest = corner > 0 ? [at(top, -half + corner), at(top, half - corner)] : [at(top, -half), at(top, half)];
    const [a, b] = crest as [Point, Point];
    return [
      line(into, corner > 0 ? low : a),
      ...(corner > 0 ? [arc(low, a, at(top - corner, -half + corner), Math.PI / 2)] : []),
      ...(half - corner > 1e-12 ? [line(a, b)] : []),
      ...(corner > 0 ? [arc(b, high, at(top - corner, half - corner), Math.PI / 2)] : []),
      line(corner > 0 ? high : b, from),
      arc(from, to, point(0, 0), next - turn - foot),
    ];
  });
  return contour(segments.map((s, i) => ({ ...s, from: (segments[(i + segments.length - 1) % segments.length] as Segment).to })));
};

interface Cut {
  readonly key: Key;
  readonly bore: Limits;
  readonly width: Limits;
  readonly across: Limits;
  readonly radius: number;
  readonly half: number;
  readonly top: number;
  readonly corner: number;
}

const sizesOf = ({ key, bore, width, across, radius, half, top, corner }: Cut): readonly ShapeSize[] => [
  { figure: mm('bore', 'bore', 2 * radius, 'the request'), limits: bore, taking: { kind: 'circle', centre: point(0, 0), radius } },
  {
    figure: mm('key-width-cut', 'width of the keyway', 2 * half, 'the request'),
    limits: width,
    taking: { kind: 'distance', from: point(top, -half), to: point(top, half) },
  },
  {
    figure: { ...key.across, key: 'across-cut', value: top + radius, low: top + radius, high: top + radius, from: [key.across] },
    limits: across,
    taking: { kind: 'distance', from: point(-radius, 0), to: point(top, 0) },
  },
  { figure: mm('inside-radius', 'radius in the corners of the keyway', corner, 'the request') },
];
