/** The sizes of a spiral, and what has to be known before one cuts it. Lengths in mm. */

import { distanceBetween, type Point, point } from '../../geometry/segment.ts';
import type { Figure } from '../../quantity/figure.ts';
import { apply } from '../../quantity/formula.ts';
import { atField, type Finding, remedy } from '../../text/finding.ts';
import { fixed, mm, number } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { asked, found } from '../figures.ts';
import { insideSizes } from '../refused.ts';
import type { ShapeSize } from '../shape.ts';
import { find } from './findings.ts';
import { archimedeanLength, besideAt, involuteLength, logarithmicLength, type SpiralLine } from './spiral-lines.ts';
import type { SpiralRequest } from './spiral-request.ts';

export interface SpiralTold {
  readonly line: SpiralLine;
  readonly half: number;
  readonly inside: number | undefined;
  /** Mirrors a place where the spiral winds clockwise. */
  readonly place: ((p: Point) => Point) | undefined;
  readonly nearest?: { readonly distance: number; readonly from: Point; readonly to: Point } | undefined;
}

const size = (p: Point): number => Math.hypot(p.x, p.y);

const lengthFigure = ({ form, pitch = 1, growth = 2, innerRadius }: SpiralRequest, outer: number): Figure => {
  const ends = {
    inner: asked('inner-radius', say('curve.inner-radius')`radius at the beginning`, innerRadius),
    outer: found('outer', say('curve.outer')`radius at the end`, outer, say('curve.outer.by')`off the middle line`, {
      source: { file: 'plane-curves' },
    }),
  };
  const as = { key: 'length' };
  if (form === 'logarithmic')
    return apply(logarithmicLength, { ...ends, growth: asked('growth', say('curve.growth')`growth for each turn`, growth, '1') }, as);
  return apply(
    form === 'involute' ? involuteLength : archimedeanLength,
    { ...ends, pitch: asked('pitch', say('curve.pitch')`pitch`, pitch) },
    as,
  );
};

export const spiralSizes = (request: SpiralRequest, told: SpiralTold): readonly ShapeSize[] => {
  const { line, half, inside, nearest } = told;
  const place = (p: Point): Point => told.place?.(p) ?? p;
  const end = line.pointAt(line.end);
  const across = (angle: number) =>
    ({ kind: 'distance', from: place(besideAt(line, -half, angle)), to: place(besideAt(line, half, angle)) }) as const;
  const rim = request.ends === 'round' ? size(end) + half : size(besideAt(line, -half, line.end));
  const begin = line.pointAt(line.start);
  return [
    {
      figure: found('width', request.metal === 'inside' ? sizes.strip : sizes.slot, 2 * half, sizes.halved, {
        from: [asked('asked-width', say('curve.asked-width')`width asked for`, request.width)],
      }),
      taking: across((line.start + line.end) / 2),
    },
    ...pitchSize(request, line, place),
    ...(nearest === undefined
      ? []
      : [
          {
            figure: found('between-turns', wallName(request), nearest.distance, sizes.least),
            taking: { kind: 'distance', from: place(nearest.from), to: place(nearest.to) },
          } as const,
        ]),
    { figure: lengthFigure(request, size(end)) },
    {
      figure: asked('inner-radius', say('curve.to-beginning')`from the middle to the beginning`, request.innerRadius),
      taking: request.innerRadius > 0 ? ({ kind: 'distance', from: point(0, 0), to: place(begin) } as const) : undefined,
    },
    {
      figure: found(
        'outer-radius',
        say('curve.outer-radius')`from the middle to the end`,
        size(end),
        say('curve.outer-radius.by')`off the middle line`,
        { source: { file: 'plane-curves' } },
      ),
      taking: { kind: 'distance', from: point(0, 0), to: place(end) },
    },
    {
      figure: found('around', say('curve.around')`circle round it all`, 2 * rim, say('curve.around.by')`off the contour`),
      taking: { kind: 'circle', centre: point(0, 0), radius: rim, drawn: true },
    },
    ...(request.metal === 'inside' || request.eyeDiameter === undefined
      ? []
      : [
          {
            figure: found(
              'eye',
              say('curve.eye')`eye at the beginning`,
              request.eyeDiameter + 2 * half - request.width,
              say('curve.eye.by')`eye + 2 j`,
            ),
            taking: { kind: 'circle', centre: place(begin), radius: request.eyeDiameter / 2 + half - request.width / 2 },
          } as const,
        ]),
    ...insideSizes(inside),
  ];
};

const wallName = ({ metal, eyeDiameter }: SpiralRequest): Text => {
  if (metal === 'inside') return sizes.gap;
  return eyeDiameter === undefined ? sizes.wall : sizes.thinnest;
};

const pitchSize = ({ form, pitch, turns }: SpiralRequest, line: SpiralLine, place: (p: Point) => Point): readonly ShapeSize[] => {
  if (form === 'logarithmic' || pitch === undefined) return [];
  const figure = asked('pitch', say('curve.pitch')`pitch`, pitch);
  if (turns < 1) return [{ figure }];
  return [
    {
      figure,
      taking: { kind: 'distance', from: place(line.pointAt(line.end - 2 * Math.PI)), to: place(line.pointAt(line.end)) },
    },
  ];
};

/** Common practice, no source: less than this between turns burns through, or lets no wire and its gap pass. */
const THIN = 0.3;
/** Common practice, no source: a strip longer than so many times its thickness moves while it is cut. */
const SLENDER = 20;

export const spiralFindings = (request: SpiralRequest, told: SpiralTold): readonly Finding[] => {
  const { nearest } = told;
  const strip = request.metal === 'inside';
  const thin =
    nearest !== undefined && nearest.distance < THIN
      ? [
          find('spiral-wall-thin', (strip ? thinWall.strip : thinWall.slot)(nearest.distance), {
            place: atField('width'),
            remedy: remedy(say`${{ least: mm(THIN) }} or more, by less width or more pitch.`, { field: 'width' }),
          }),
        ]
      : [];
  return [...thin, ...springing(request, told)];
};

const thinWall = phrases('spiral-wall-thin', {
  strip: (room: number) =>
    say`Only ${{ room: mm(room, fixed(3)) }} is left between two turns of the strip: the wire and its gap have to pass there.`,
  slot: (wall: number) => say`Only ${{ wall: mm(wall, fixed(3)) }} of metal is left between two turns of the slot.`,
});

const springing = (request: SpiralRequest, { line, half }: SpiralTold): readonly Finding[] => {
  const strip = request.metal === 'inside';
  const last = strip ? line.end : line.end - 2 * Math.PI;
  if (last <= line.start) return [];
  const thick = strip ? 2 * half : distanceBetween(line.pointAt(line.start), line.pointAt(line.start + 2 * Math.PI)) - 2 * half;
  const long = travelled(line, last);
  if (long < SLENDER * thick) return [];
  const { text, help } = strip ? springs.strip : springs.slot;
  return [find('spiral-springs', text(long, thick), { place: atField('turns'), remedy: help })];
};

const springs = {
  strip: {
    text: (long: number, thick: number) =>
      say(
        'spiral-springs/strip',
      )`The strip is ${{ long: mm(long, fixed(0)) }} long and ${{ thick: mm(thick, fixed(2)) }} thick, ${{ times: number(long / thick, fixed(0)) }} times as long as thick: it springs as its metal is freed, and moves under the flushing.`,
    help: say(
      'spiral-springs/strip.remedy',
    )`Stress-free stock, tabs between the turns until the skims are done, weak flushing, the last pass light.`,
  },
  slot: {
    text: (long: number, thick: number) =>
      say(
        'spiral-springs/slot',
      )`The metal between the turns of the slot is a strip ${{ long: mm(long, fixed(0)) }} long and ${{ thick: mm(thick, fixed(2)) }} thick, ${{ times: number(long / thick, fixed(0)) }} times as long as thick: it springs as it is freed, and the core hangs on it alone.`,
    help: say('spiral-springs/slot.remedy')`Stress-free stock, the core held from below, weak flushing, the last pass light.`,
  },
};

/** Length of the middle line from its beginning to an angle, by chords: good to a millionth for what is told here. */
const travelled = (line: SpiralLine, end: number): number => {
  const steps = 2000;
  let sum = 0;
  for (let i = 0; i < steps; i += 1) sum += line.speedAt(line.start + ((end - line.start) * (i + 0.5)) / steps);
  return (sum * (end - line.start)) / steps;
};

const sizes = phrases('spiral-size', {
  strip: say`width of the strip`,
  slot: say`width of the slot`,
  halved: say`width ∓ 2 j`,
  least: say`the least, off the contour`,
  gap: say`gap between turns`,
  wall: say`wall between turns`,
  thinnest: say`thinnest wall, at the eye or between turns`,
});
