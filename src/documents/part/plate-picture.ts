/** A plate with its pieces, as SVG and to scale: margin, clamps, datum, every piece with its number, and a bar to measure by. */

import { extentOf, roomIn } from '../../picture/extent.ts';
import { scaleBar } from '../../picture/scale-bar.ts';
import { escaped, INK, METAL, PAPER, pathOf, px, QUIET, RUST, text, type View, wrapped } from '../../picture/svg.ts';
import type { LaidPiece, NestFacts } from '../../result/nest-facts.ts';
import type { Point } from '../../result/shown.ts';
import type { Part } from '../../text/part.ts';
import { print } from '../../text/print/print.ts';
import { HOUSE, type Reader } from '../../text/reader.ts';
import { only, phrases, say, sentences } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { nestSentence } from './nest-sentence.ts';
import { length } from './numbers.ts';

const LEFT = 60;
const TOP = 84;
const MOST_WIDE = 900;
const MOST_HIGH = 620;
const BELOW = 96;

export const platePicture = (facts: NestFacts, reader: Reader = HOUSE): string => {
  const { minX, minY, maxX, maxY } = extentOf([facts.plate]);
  const scale = Math.min(MOST_WIDE / (maxX - minX), MOST_HIGH / (maxY - minY));
  const [wide, high] = [maxX - minX, maxY - minY];
  const bottom = TOP + high * scale;
  const at = (p: Point): readonly [number, number] => [LEFT + (p.x - minX) * scale, bottom - (p.y - minY) * scale];
  const view: View = { empty: false, wide, high, scale, top: TOP, bottom, at };
  const width = Math.max(LEFT + wide * scale + 40, 520);
  const lines = wrapped(print(nestSentence(facts), reader), Math.floor((width - LEFT - 20) / 6.4));
  const height = bottom + BELOW;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${px(width)}" height="${px(height)}" viewBox="0 0 ${px(width)} ${px(height)}" font-family="sans-serif">`,
    `<title>${escaped(facts.name)}</title>`,
    `<rect width="100%" height="100%" fill="${PAPER}"/>`,
    text(LEFT, 26, facts.name, { size: 15, colour: INK, bold: true }),
    ...lines.slice(0, 3).map((line, i) => text(LEFT, 44 + i * 14, line, { size: 11, colour: QUIET })),
    `<path d="${[facts.plate, ...facts.plateHoles].map((c) => pathOf(c, view)).join('')}" fill="${METAL}" fill-rule="evenodd" stroke="${INK}" stroke-width="1.4"/>`,
    ...marginLine(facts, view),
    ...facts.pieces.flatMap((p) => pieceShapes(p, view)),
    ...facts.forbidden.flatMap((zone) => clampShapes(zone, view)),
    ...datum(view),
    ...sizes(view, { minX, minY, maxX, maxY }, reader),
    scaleBar(
      view,
      reader.length === 'inch' ? { name: 'in', millimetres: 25.4 } : { name: 'mm', millimetres: 1 },
      LEFT,
      bottom + 54,
      reader,
    ),
    text(LEFT, bottom + 78, print(legend(facts), reader), { size: 11, colour: QUIET }),
    '</svg>\n',
  ].join('\n');
};

const legend = ({ border, web, forbidden }: NestFacts): Text =>
  sentences([words.legend(length(border), length(web)), forbidden.length === 0 ? undefined : words.forbidden]);

const words = phrases('plate-picture', {
  legend: (border: Part, web: Part) =>
    say`Dashed: border of ${{ border }}. Web between pieces: ${{ web }}. Ring with cross: drawing origin.`,
  forbidden: say`Crossed box: clamp or keep-out zone.`,
});

/** Drawn where the plate is an upright rectangle; along any other outline the legend says it. */
const marginLine = ({ plate, border }: NestFacts, view: View): readonly string[] => {
  const upright =
    plate.segments.length === 4 && plate.segments.every((s) => s.kind === 'line' && (s.from.x === s.to.x || s.from.y === s.to.y));
  if (!upright || border === 0) return [];
  const { minX, minY, maxX, maxY } = extentOf([plate]);
  return [
    box(
      { low: { x: minX + border, y: minY + border }, high: { x: maxX - border, y: maxY - border } },
      view,
      `fill="none" stroke="${QUIET}" stroke-width="0.8" stroke-dasharray="6 4"`,
    ),
  ];
};

interface Zone {
  readonly low: Point;
  readonly high: Point;
}

const box = ({ low, high }: Zone, view: View, style: string): string => {
  const [x, bottom] = view.at(low);
  const [right, y] = view.at(high);
  return `<rect x="${px(x)}" y="${px(y)}" width="${px(Math.max(0, right - x))}" height="${px(Math.max(0, bottom - y))}" ${style}/>`;
};

const clampShapes = (zone: Zone, view: View): readonly string[] => {
  const [x, bottom] = view.at(zone.low);
  const [right, y] = view.at(zone.high);
  return [
    box(zone, view, `fill="#c9c5ba" stroke="${INK}" stroke-width="1"`),
    `<path d="M${px(x)} ${px(bottom)}L${px(right)} ${px(y)}M${px(x)} ${px(y)}L${px(right)} ${px(bottom)}" stroke="${INK}" stroke-width="0.7"/>`,
  ];
};

/** The number stands in the roomiest place of the piece. */
const pieceShapes = (piece: LaidPiece, view: View): readonly string[] => {
  const outline = [piece.outline, ...piece.holes].map((c) => pathOf(c, view)).join('');
  const { at, distance } = roomIn(piece.outline, piece.holes, Math.max(0.05, 1 / view.scale));
  const [x, y] = view.at(at);
  const size = Math.max(6, Math.min(12, distance * view.scale * 1.1));
  return [
    `<path d="${outline}" fill="#fffefa" fill-rule="evenodd" stroke="${INK}" stroke-width="1"/>`,
    text(x, y + size * 0.36, String(piece.number), { size: Math.round(size * 10) / 10, colour: INK, anchor: 'middle' }),
  ];
};

/** Zero of the drawing, where the plate lies round it. */
const datum = (view: View): readonly string[] => {
  const [x, y] = view.at({ x: 0, y: 0 });
  const inside = x > LEFT - 30 && x < LEFT + view.wide * view.scale + 30 && y > TOP - 30 && y < view.bottom + 30;
  if (!inside) return [];
  return [
    `<circle cx="${px(x)}" cy="${px(y)}" r="5" fill="none" stroke="${RUST}" stroke-width="1.4"/>`,
    `<path d="M${px(x - 10)} ${px(y)}H${px(x + 10)}M${px(x)} ${px(y - 10)}V${px(y + 10)}" stroke="${RUST}" stroke-width="1"/>`,
  ];
};

const sizes = (
  view: View,
  b: { readonly minX: number; readonly minY: number; readonly maxX: number; readonly maxY: number },
  reader: Reader,
): readonly string[] => {
  const [left, bottom] = view.at({ x: b.minX, y: b.minY });
  const [right, top] = view.at({ x: b.maxX, y: b.maxY });
  const middle = (top + bottom) / 2;
  const shown = (millimetres: number): string => print(only(length(millimetres)), reader);
  return [
    text((left + right) / 2, bottom + 20, shown(b.maxX - b.minX), { size: 12, colour: INK, anchor: 'middle' }),
    `<g transform="rotate(-90 ${px(left - 16)} ${px(middle)})">${text(left - 16, middle, shown(b.maxY - b.minY), { size: 12, colour: INK, anchor: 'middle' })}</g>`,
  ];
};
