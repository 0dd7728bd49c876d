/** Asks about contours that look like the border of a drawing sheet and no part: by size, by the name of their layer, by what lies in them. */

import { mergedBounds, widened } from '../../geometry/area.ts';
import { type Bounds, boundsOf } from '../../geometry/measure.ts';
import type { Point } from '../../geometry/segment.ts';
import { firstItem, grouped, isFilled, lastItem } from '../../sequence/sequence.ts';
import { type Finding, remedy } from '../../text/finding.ts';
import { contour, count, length, list, name, type Part, term } from '../../text/part.ts';
import { phrases, say, sentences } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import type { DrawingUnits, Loop, OpenChain } from '../drawing.ts';
import { find } from '../findings.ts';
import { spot } from '../place-in-file.ts';
import { boxOf, isRectangle, sharing, uprightEdges } from './upright.ts';

/** `plate`: around nothing but circles, so a plate with holes as well as a border: it is asked about and cut. */
export interface Border {
  readonly loop: Loop;
  readonly kind: 'border' | 'edge' | 'plate';
}

/** What else of a drawing tells a border from a part. */
export interface Evidence {
  /** Cells of title blocks and other tables. */
  readonly tables: readonly Loop[];
  /** Open lines, mm. */
  readonly chains: readonly OpenChain[];
  /** Words of a title block among the texts. */
  readonly titled: boolean;
}

/** Contours along x and y around others, in no part themselves, that look like a border, the outermost first. */
export const bordersOf = (loops: readonly Loop[], evidence: Evidence): readonly Border[] => {
  const within = grouped(
    loops.filter((loop) => loop.parent !== undefined),
    (loop) => loop.parent ?? '',
  );
  const found: Border[] = [];
  const byId = (id: string | undefined): Border | undefined => found.find((b) => b.loop.id === id);
  for (const loop of loops) {
    const inner = within.get(loop.id) ?? [];
    const outside = byId(loop.parent);
    if (inner.length === 0 || (loop.depth > 0 && outside === undefined)) continue;
    const [alone] = within.get(loop.parent ?? '') ?? [];
    const isInner = outside !== undefined && alone === loop && isRectangle(loop) && isFrameWithin(loop, outside.loop);
    const outermost = loops.every((other) => other.depth > 0 || other === loop);
    if (isBorderForSure(loop, evidence)) found.push({ loop, kind: 'border' });
    else if (isInner || isLikeBorder(loop, { ...evidence, outermost }))
      found.push({ loop, kind: inner.every((one) => isCircle(one) && !within.has(one.id)) ? 'plate' : 'border' });
    else if (outside?.kind !== 'edge' && isRectangle(loop) && inner.some((part) => hasOpenings(within.get(part.id) ?? [])))
      found.push({ loop, kind: 'edge' });
  }
  return found;
};

/** Whatever lies in it: no plate has a title block, or is drawn on a layer of sheets. */
const isBorderForSure = (loop: Loop, { tables }: Evidence): boolean => {
  const edges = uprightEdges(loop.contour);
  if (edges === undefined) return false;
  if (sharing([edges, ...tables.map((t) => uprightEdges(t.contour) ?? [])]).some((pair) => pair.includes(0))) return true;
  return isRectangle(loop) && (SHEET_LAYER.test(loop.layer) || tables.some((table) => isWithin(boxOf(table), boxOf(loop))));
};

const isLikeBorder = (loop: Loop, { chains, titled, outermost }: Evidence & { readonly outermost: boolean }): boolean =>
  isRectangle(loop) && (isOfSheetSize(loop) || (outermost && titled) || linesOfFrame(boxOf(loop), chains));

const isCircle = ({ contour: { segments } }: Loop): boolean => segments.every((s) => s.kind === 'arc');

const isWithin = (inner: Bounds, { minX, minY, maxX, maxY }: Bounds): boolean =>
  inner.minX >= minX && inner.minY >= minY && inner.maxX <= maxX && inner.maxY <= maxY;

/** A frame of two lines, the one close within the other on all sides. */
const isFrameWithin = (inner: Loop, outer: Loop): boolean => {
  const [a, b] = [boxOf(inner), boxOf(outer)];
  const gaps = [a.minX - b.minX, a.minY - b.minY, b.maxX - a.maxX, b.maxY - a.maxY];
  return Math.max(...gaps) <= 0.12 * Math.min(b.maxX - b.minX, b.maxY - b.minY);
};

/** Marks of zones on all sides, lines of a grid both ways, or lines that part off a corner for the title block. */
const linesOfFrame = (box: Bounds, chains: readonly OpenChain[]): boolean => {
  const kinds = chains.map((chain) => kindOfLine(chain, box));
  const many = (kind: LineOfFrame): number => kinds.filter((k) => k === kind).length;
  const ticks = chains.filter((_, i) => kinds[i] === 'tick');
  const onAll = isOnEachSide(
    ticks.flatMap(({ path: { segments } }) => [firstItem(segments).from, lastItem(segments).to]),
    box,
  );
  return (ticks.length >= 4 && onAll) || (many('across') >= 2 && many('up') >= 2) || many('corner') >= 3;
};

type LineOfFrame = 'tick' | 'across' | 'up' | 'corner';

/** What a line within a border is there for, if it is upright and of the border. */
const kindOfLine = ({ path, hidden }: OpenChain, box: Bounds): LineOfFrame | undefined => {
  if (hidden || uprightEdges(path) === undefined) return undefined;
  const of = mergedBounds(path.segments.map(boundsOf));
  if (!isWithin(of, widened(box, SHEET_WITHIN))) return undefined;
  const [wide, high] = [box.maxX - box.minX, box.maxY - box.minY];
  const [w, h] = [of.maxX - of.minX, of.maxY - of.minY];
  const ends = [firstItem(path.segments).from, lastItem(path.segments).to].filter((end) => isOnEdge(end, box)).length;
  if (path.segments.length === 1 && ends === 1 && w + h <= TICK * Math.min(wide, high)) return 'tick';
  if (ends === 2 && h <= SHEET_WITHIN && w >= wide - SHEET_WITHIN) return 'across';
  if (ends === 2 && w <= SHEET_WITHIN && h >= high - SHEET_WITHIN) return 'up';
  return isInCorner(of, box) ? 'corner' : undefined;
};

/** Ids of the open lines that are marks of a border's zones, or a grid in it. What lies in the corner of its title block may be of the work as well. */
export const linesOfBorders = (borders: readonly Border[], chains: readonly OpenChain[]): ReadonlySet<string> => {
  const boxes = borders.filter((b) => b.kind === 'border').map((b) => boxOf(b.loop));
  const isOf = (chain: OpenChain): boolean => boxes.some((box) => ['tick', 'across', 'up'].includes(kindOfLine(chain, box) ?? ''));
  return new Set(chains.filter(isOf).map((chain) => chain.id));
};

const isOnEdge = ({ x, y }: Point, { minX, minY, maxX, maxY }: Bounds): boolean =>
  [x - minX, y - minY, maxX - x, maxY - y].some((off) => Math.abs(off) <= ON_EDGE);

const isOnEachSide = (points: readonly Point[], { minX, minY, maxX, maxY }: Bounds): boolean => {
  const near = (off: (p: Point) => number): boolean => points.some((p) => Math.abs(off(p)) <= ON_EDGE);
  return near((p) => p.x - minX) && near((p) => p.y - minY) && near((p) => maxX - p.x) && near((p) => maxY - p.y);
};

/** A title block stands in the lower right corner, most of them. */
const isInCorner = (of: Bounds, { minX, minY, maxX, maxY }: Bounds): boolean =>
  of.minX >= minX + 0.35 * (maxX - minX) && of.maxY <= minY + 0.4 * (maxY - minY);

/** mm */
const ON_EDGE = 0.01;
/** Of the shorter side. */
const TICK = 0.08;

/** One question for all that are left out, and one for those that are cut. */
export const reportBorders = (borders: readonly Border[], lines: number, units: DrawingUnits): Finding[] => [
  ...reportKind(
    borders.filter((b) => b.kind !== 'plate'),
    lines,
    units,
  ),
  ...reportKind(
    borders.filter((b) => b.kind === 'plate'),
    0,
    units,
  ),
];

const reportKind = (borders: readonly Border[], lines: number, units: DrawingUnits): Finding[] => {
  if (!isFilled(borders)) return [];
  const [{ loop: first, kind }] = borders;
  const { minX, minY, maxX, maxY } = boxOf(first);
  const ids = borders.map(({ loop }) => loop.id);
  const loops = list(ids.map(contour), 'and');
  const what = borders.some((b) => b.kind !== 'edge') ? (ids.length === 1 ? words.one : words.many) : words.edge;
  return [
    find('looks-like-border', sentences([what(loops, maxX - minX, maxY - minY, first.layer), linesTold(lines)]), {
      place: { ...spot({ x: minX, y: minY }, units), loop: first.id },
      done: kind === 'plate' ? words.cut : words.leftOut,
      remedy: remedy(kind === 'plate' ? words.settle(loops, first.id) : words.confirm(loops, first.id), { field: 'without', value: ids }),
    }),
  ];
};

const linesTold = (lines: number): Text | undefined => (lines === 0 ? undefined : (lines === 1 ? words.line : words.lines)(lines));

const isOfSheetSize = (loop: Loop): boolean => {
  const { minX, minY, maxX, maxY } = boxOf(loop);
  const [wide, high] = [maxX - minX, maxY - minY];
  return isSheet(Math.max(wide, high), Math.min(wide, high));
};

/** Islands that are no start holes: what is around them is a part with openings, and what is around that no part. */
const hasOpenings = (inner: readonly Loop[]): boolean => {
  const wide = inner.map((loop) => boxOf(loop).maxX - boxOf(loop).minX);
  // One with a start hole is an opening in truth, and islands in it are parts.
  return wide.length > 0 && wide.every((w) => w > START_HOLE);
};

/** mm: a small circle in an opening is where the wire is threaded. */
const START_HOLE = 3;

const isSheet = (long: number, short: number): boolean =>
  [...SHEETS, ...FRAMES].some(([a, b]) => Math.abs(long - a) <= SHEET_WITHIN && Math.abs(short - b) <= SHEET_WITHIN);

const SHEET_LAYER =
  /border|frame|title|sheet(?!.?metal)|rahmen|blattrand|schriftfeld|schriftkopf|cadre|cartouche|cajet[ií]n|squadratura|kader|ramka|рамка|図枠|图框/i;

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
  line: (_: number) => say`1 open line ends on it as marks and grids of a sheet do and is not cut.`,
  lines: (lines: number) => say`${{ lines: count(lines) }} open lines end on it as marks and grids of a sheet do and are not cut.`,
  leftOut: say`It is left out unless you say otherwise: nothing is cut along it, and what lies in it is taken by itself.`,
  cut: say`Nothing but circles lies in it, as in a plate with holes: it will be cut unless you leave it out.`,
  settle: (loops: Part, first: string) =>
    say`Leave ${{ loops }} out (${{ without: term('without') }}); if it is a part, set ${{ field: term(`kept.${first}`) }} to punch.`,
  confirm: (loops: Part, first: string) =>
    say`Confirm that ${{ loops }} is left out (${{ without: term('without') }}); if it is a part, set ${{ field: term(`kept.${first}`) }} to punch, if it is the edge of the block, set ${{ outline: term('outline') }} to block.`,
  one: (loop: Part, wide: number, high: number, layer: string) =>
    say`${{ loop }} on layer ${{ layer: name(layer) }}, ${{ wide: length(wide) }} by ${{ high: length(high) }}, looks like the border of a drawing sheet.`,
  edge: (loop: Part, wide: number, high: number, layer: string) =>
    say`${{ loop }} on layer ${{ layer: name(layer) }}, ${{ wide: length(wide) }} by ${{ high: length(high) }}, lies around a part that has openings: it looks like a border, or like the edge of the block.`,
  many: (loops: Part, wide: number, high: number, layer: string) =>
    say`${{ loops }} look like the border of a drawing sheet, the outer one ${{ wide: length(wide) }} by ${{ high: length(high) }} on layer ${{ layer: name(layer) }}.`,
});
