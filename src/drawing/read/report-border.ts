/** Asks about contours that look like the border of a drawing sheet and no part: by their size, or by the name of their layer. */

import { areaOf, mergedBounds } from '../../geometry/area.ts';
import type { Bounds } from '../../geometry/measure.ts';
import { boundsOf } from '../../geometry/measure.ts';
import { isFilled } from '../../sequence/sequence.ts';
import { type Finding, remedy } from '../../text/finding.ts';
import { contour, length, list, name, type Part, term } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { DrawingUnits, Loop } from '../drawing.ts';
import { find } from '../findings.ts';
import { spot } from '../place-in-file.ts';

/** One question for all of them. */
export const reportBorders = (loops: readonly Loop[], units: DrawingUnits): Finding[] => {
  const borders = loops.filter((loop) => isBorder(loop, loops));
  if (!isFilled(borders)) return [];
  const [first] = borders;
  const { minX, minY, maxX, maxY } = boxOf(first);
  const layers = [...new Set(borders.map((b) => b.layer))];
  const ownLayers = loops.every((loop) => borders.includes(loop) || !layers.includes(loop.layer));
  const named = list(
    borders.map((b) => contour(b.id)),
    'and',
  );
  return [
    find('looks-like-border', (borders.length === 1 ? words.one : words.many)(named, maxX - minX, maxY - minY, first.layer), {
      place: { ...spot({ x: minX, y: minY }, units), loop: first.id },
      done: say`It was kept as drawn, and what lies in it counts as openings.`,
      remedy: ownLayers ? remedy(words.nameLayers(layers), { field: 'layers' }) : words.remove,
    }),
  ];
};

/** A rectangle around other contours, in no part itself: of the size of a sheet, or on a layer that is named for one. */
const isBorder = (loop: Loop, loops: readonly Loop[]): boolean => {
  if (loop.hidden || loop.depth > 1 || !loops.some((other) => other.parent === loop.id)) return false;
  if (loop.depth === 1 && !loops.some((other) => other.id === loop.parent && isBorder(other, loops))) return false;
  const { minX, minY, maxX, maxY } = boxOf(loop);
  const [wide, high] = [maxX - minX, maxY - minY];
  const isRectangle = loop.contour.segments.every((s) => s.kind === 'line') && Math.abs(areaOf(loop.contour)) > (1 - 1e-6) * wide * high;
  return isRectangle && (SHEET_LAYER.test(loop.layer) || isSheet(Math.max(wide, high), Math.min(wide, high)));
};

const boxOf = ({ contour: { segments } }: Loop): Bounds => mergedBounds(segments.map(boundsOf));

const isSheet = (long: number, short: number): boolean =>
  [...SHEETS, ...FRAMES].some(([a, b]) => Math.abs(long - a) <= SHEET_WITHIN && Math.abs(short - b) <= SHEET_WITHIN);

const SHEET_LAYER =
  /border|frame|title|sheet|rahmen|blattrand|schriftfeld|schriftkopf|cadre|cartouche|cajet[ií]n|squadratura|kader|ramka|рамка|図枠|图框/i;

/** mm: A4 to A0 of ISO 5457, and the letter sizes A to E of ASME Y14.1, from memory. */
const SHEETS: readonly (readonly [long: number, short: number])[] = [
  [297, 210],
  [420, 297],
  [594, 420],
  [841, 594],
  [1189, 841],
  [279.4, 215.9],
  [431.8, 279.4],
  [558.8, 431.8],
  [863.6, 558.8],
  [1117.6, 863.6],
];
/** mm: the frame that ISO 5457 draws on its sheets, 20 from the left edge and 10 from the others, lying and standing, from memory. */
const FRAMES: readonly (readonly [long: number, short: number])[] = SHEETS.slice(0, 5).flatMap(([long, short]): [number, number][] => [
  [long - 30, short - 20],
  [long - 20, short - 30],
]);
/** mm */
const SHEET_WITHIN = 0.5;

const words = phrases('borders', {
  nameLayers: (layers: readonly string[]) => say`Name the layers that are to be cut, without ${{ layers: list(layers.map(name)) }}.`,
  remove: say`If it is no part, delete it in the drawing (or set ${{ field: term('kept') }} for it and what lies in it).`,
  one: (loop: Part, wide: number, high: number, layer: string) =>
    say`${{ loop }} on layer ${{ layer: name(layer) }}, ${{ wide: length(wide) }} by ${{ high: length(high) }}, looks like the border of a drawing sheet.`,
  many: (loops: Part, wide: number, high: number, layer: string) =>
    say`${{ loops }} look like the border of a drawing sheet, the outer one ${{ wide: length(wide) }} by ${{ high: length(high) }} on layer ${{ layer: name(layer) }}.`,
});
