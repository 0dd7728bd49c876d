/** Asks about contours that look like the border of a drawing sheet and no part: by size, by the name of their layer, by what lies in them. */

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

export interface Border {
  readonly loop: Loop;
  readonly kind: 'border' | 'edge';
}

/** Rectangles around other contours, in no part themselves, that look like a border, the outermost first. */
export const bordersOf = (loops: readonly Loop[]): readonly Border[] => {
  const within = new Map<string, Loop[]>();
  for (const loop of loops) if (loop.parent !== undefined) within.set(loop.parent, [...(within.get(loop.parent) ?? []), loop]);
  const found: Border[] = [];
  for (const loop of loops) {
    const inner = within.get(loop.id) ?? [];
    const isOutside = loop.depth === 0 || found.some((b) => b.loop.id === loop.parent && b.kind === 'border');
    if (loop.hidden || inner.length === 0 || !isOutside || !isRectangle(loop)) continue;
    if (SHEET_LAYER.test(loop.layer) || isOfSheetSize(loop)) found.push({ loop, kind: 'border' });
    else if (inner.some((part) => hasOpenings(within.get(part.id) ?? []))) found.push({ loop, kind: 'edge' });
  }
  return found;
};

/** One question for all of them. */
export const reportBorders = (borders: readonly Border[], units: DrawingUnits): Finding[] => {
  if (!isFilled(borders)) return [];
  const [{ loop: first }] = borders;
  const { minX, minY, maxX, maxY } = boxOf(first);
  const ids = borders.map(({ loop }) => loop.id);
  const loops = list(ids.map(contour), 'and');
  const what = borders.some((b) => b.kind === 'border') ? (ids.length === 1 ? words.one : words.many) : words.edge;
  return [
    find('looks-like-border', what(loops, maxX - minX, maxY - minY, first.layer), {
      place: { ...spot({ x: minX, y: minY }, units), loop: first.id },
      done: words.leftOut,
      remedy: remedy(words.confirm(loops, first.id), { field: 'without', value: ids }),
    }),
  ];
};

const isRectangle = (loop: Loop): boolean => {
  const { minX, minY, maxX, maxY } = boxOf(loop);
  const box = (maxX - minX) * (maxY - minY);
  return loop.contour.segments.every((s) => s.kind === 'line') && Math.abs(areaOf(loop.contour)) > (1 - 1e-6) * box;
};

const isOfSheetSize = (loop: Loop): boolean => {
  const { minX, minY, maxX, maxY } = boxOf(loop);
  const [wide, high] = [maxX - minX, maxY - minY];
  return isSheet(Math.max(wide, high), Math.min(wide, high));
};

/** Islands that are no start holes: what is around them is a part with openings, and what is around that no part. */
const hasOpenings = (inner: readonly Loop[]): boolean => inner.some((loop) => boxOf(loop).maxX - boxOf(loop).minX > START_HOLE);

/** mm: a small circle in an opening is where the wire is threaded. */
const START_HOLE = 3;

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
  leftOut: say`It is left out unless you say otherwise: nothing is cut along it, and what lies in it is taken by itself.`,
  confirm: (loops: Part, first: string) =>
    say`Confirm that ${{ loops }} is left out (${{ without: term('without') }}); if it is a part, set ${{ field: term(`kept.${first}`) }} to punch, if it is the edge of the block, set ${{ outline: term('outline') }} to block.`,
  one: (loop: Part, wide: number, high: number, layer: string) =>
    say`${{ loop }} on layer ${{ layer: name(layer) }}, ${{ wide: length(wide) }} by ${{ high: length(high) }}, looks like the border of a drawing sheet.`,
  edge: (loop: Part, wide: number, high: number, layer: string) =>
    say`${{ loop }} on layer ${{ layer: name(layer) }}, ${{ wide: length(wide) }} by ${{ high: length(high) }}, lies around a part that has openings: it looks like a border, or like the edge of the block.`,
  many: (loops: Part, wide: number, high: number, layer: string) =>
    say`${{ loops }} look like the border of a drawing sheet, the outer one ${{ wide: length(wide) }} by ${{ high: length(high) }} on layer ${{ layer: name(layer) }}.`,
});
