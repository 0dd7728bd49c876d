/** The block that is clamped: as drawn, or the stock that the job names, or the box around everything with a margin. */

import { boundsOfChain, mergedBounds } from '../../geometry/area.ts';
import { type Contour, contour } from '../../geometry/contour.ts';
import type { Bounds } from '../../geometry/measure.ts';
import { line, point } from '../../geometry/segment.ts';
import type { Machine } from '../../physics/cut/machine.ts';
import { roundPairs } from '../../sequence/sequence.ts';
import { atField, type Finding, type Remedy, remedy } from '../../text/finding.ts';
import { fixed, contour as loopNamed, mm, quantities, term, upTo } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { find } from '../findings.ts';
import type { Sorted } from '../kept-side.ts';
import type { BlockAsked, DrawnWork, ShopAsked, WantedLoop } from '../question.ts';
import { spot } from '../said.ts';

export const blockFor = (sorted: Sorted, question: DrawnWork & BlockAsked): Contour => {
  const drawn = sorted.block[0];
  if (drawn !== undefined) return drawn.contour;
  const lines = (question.open ?? []).map((l) => l.path);
  const loops = sorted.cut.length > 0 ? sorted.cut.map((k) => k.loop) : lines.length > 0 ? [] : question.loops;
  const { blockMargin: margin, stock } = question;
  const none = loops.length + lines.length === 0;
  const b = none ? NOTHING : mergedBounds([...loops.map((l) => l.contour), ...lines].map(boundsOfChain));
  if (stock !== undefined) {
    const { x, y } = stock.corner ?? { x: b.minX - margin, y: b.minY - margin };
    return box(x, y, x + stock.width, y + stock.depth);
  }
  if (none) return box(0, 0, margin, margin);
  return box(b.minX - margin, b.minY - margin, b.maxX + margin, b.maxY + margin);
};

const NOTHING: Bounds = { minX: 0, minY: 0, maxX: 0, maxY: 0 };

/** Contours for which the stock has no metal; and a stock of another size than the block that is drawn. */
export const stockFindings = (block: Contour, { cut, block: drawn }: Sorted, { stock }: BlockAsked): readonly Finding[] => {
  if (stock === undefined) return [];
  const b = boundsOfChain(block);
  if (drawn.length > 0) {
    const [width, depth] = [b.maxX - b.minX, b.maxY - b.minY];
    if (Math.abs(width - stock.width) < SAME && Math.abs(depth - stock.depth) < SAME) return [];
    return [
      find(
        'stock-not-as-drawn',
        say`The job gives the stock as ${{ given: size(stock.width, stock.depth) }}; the block drawn is ${{ drawn: size(width, depth) }}, and the drawn one is used.`,
        {
          place: atField('stock'),
          remedy: remedy(say`Leave the size out of ${{ field: term('stock') }}, or the block out of the drawing.`, { field: 'stock' }),
        },
      ),
    ];
  }
  return cut.flatMap(({ loop }) => outside(loop, b)).slice(0, MOST_OUTSIDE);
};

/** mm: sizes that differ by less are the same. */
const SAME = 0.005;

/** As many contours outside the stock are told. */
const MOST_OUTSIDE = 12;

const size = (width: number, depth: number) => quantities([width, depth], 'by', 'mm', upTo(2));

/** The side of the stock that a contour reaches over by most. */
const outside = ({ id, contour: loop }: WantedLoop, stock: Bounds): readonly Finding[] => {
  const b = boundsOfChain(loop);
  const middle = { x: (b.minX + b.maxX) / 2, y: (b.minY + b.maxY) / 2 };
  const [over, side, x, y] = [
    [stock.minX - b.minX, 'left', b.minX, middle.y] as const,
    [b.maxX - stock.maxX, 'right', b.maxX, middle.y] as const,
    [stock.minY - b.minY, 'lower', middle.x, b.minY] as const,
    [b.maxY - stock.maxY, 'upper', middle.x, b.maxY] as const,
  ].reduce((a, c) => (c[0] > a[0] ? c : a));
  if (over <= 0) return [];
  return [
    find(
      'outside-stock',
      say`${{ loop: loopNamed(id) }} extends ${{ over: mm(Math.max(over, 0.01), upTo(2)) }} beyond ${{ edge: words[side] }}, at ${{ at: spot({ x, y }) }}.`,
      {
        place: { kind: 'spot', x, y, reach: over, loop: id },
        remedy: remedy(say`Use a larger block, or move its corner: ${{ field: term('stock.corner') }} positions it in the drawing.`, {
          field: 'stock.corner',
        }),
      },
    ),
  ];
};

const box = (left: number, low: number, right: number, high: number): Contour => {
  const corners = [point(left, low), point(right, low), point(right, high), point(left, high)];
  return contour(roundPairs(corners).map(([p, q]) => line(p, q)));
};

/** A block may stand over the table's edge as long as the wire reaches all of its cuts. */
export const travelFindings = (block: Contour, cut: Sorted['cut'], { machine, open = [] }: DrawnWork & ShopAsked): readonly Finding[] => {
  const cuts = [...cut.map((k) => k.loop.contour), ...open.map((l) => l.path)];
  const beyond = cuts.length === 0 ? undefined : beyondTravel(mergedBounds(cuts.map(boundsOfChain)), machine);
  if (beyond !== undefined)
    return [find('cuts-beyond-travel', say`The cuts extend over ${{ sizes: beyond.sizes }}.`, { remedy: beyond.remedy })];
  const over = beyondTravel(boundsOfChain(block), machine);
  return over === undefined ? [] : [find('block-beyond-travel', say`The block is ${{ sizes: over.sizes }}.`, { remedy: over.remedy })];
};

const beyondTravel = (
  { minX, minY, maxX, maxY }: Bounds,
  { travel: { x, y } }: Machine,
): { readonly sizes: Text; readonly remedy: Remedy } | undefined => {
  const [width, depth] = [maxX - minX, maxY - minY];
  if (width <= x && depth <= y) return undefined;
  return {
    sizes: words.travel([width, depth], [x, y]),
    remedy: remedy(width <= y && depth <= x ? words.turn : words.elsewhere),
  };
};

const words = phrases('block', {
  left: say`the left edge of the block`,
  right: say`the right edge of the block`,
  lower: say`the lower edge of the block`,
  upper: say`the upper edge of the block`,
  travel: (reach: readonly [number, number], travel: readonly [number, number]) =>
    say`${{ reach: quantities(reach, 'by', 'mm', fixed(1)) }}; machine travel is ${{ travel: quantities(travel, 'by', 'mm') }}`,
  turn: say`Turn it by 90°.`,
  elsewhere: say`Cut it in two set-ups, or on a larger machine.`,
});
