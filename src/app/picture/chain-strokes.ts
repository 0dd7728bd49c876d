/**
 * Draws chains with a pen: whole with what is too small to see left out, or only the pieces that lie in a window. Thousands of segments
 * go by in each frame, so they are read as plain numbers, eight for each: `!` stands where one is read.
 */

import { boundsOf, pointAt } from '../../geometry/measure.ts';
import type { Point, Segment } from '../../geometry/segment.ts';
import { segmentAt } from './chain-segments.ts';
import { meets, type Window } from './view.ts';

/** What a path of the canvas understands of the pen's strokes; coordinates in mm, y up. */
export interface StrokePen {
  moveTo(x: number, y: number): void;
  lineTo(x: number, y: number): void;
  arc(x: number, y: number, radius: number, start: number, end: number, clockwise?: boolean): void;
  closePath(): void;
}

/** Segments `from` up to but not including `to` of a chain's numbers. */
export interface ChainStretch {
  readonly numbers: Float64Array;
  readonly from: number;
  readonly to: number;
  /** Only a stretch that is its whole closed chain. */
  readonly closed: boolean;
}

/** Ends nearer than `fine` mm to the last drawn are passed over, so that a thousand segments in one pixel cost one. */
export const traceWhole = (pen: StrokePen, { numbers, from, to, closed }: ChainStretch, fine: number): void => {
  let [x, y] = [numbers[from * 8]!, numbers[from * 8 + 1]!];
  pen.moveTo(x, y);
  for (let i = from; i < to; i += 1) {
    const at = i * 8;
    const [endX, endY, radius] = [numbers[at + 2]!, numbers[at + 3]!, numbers[at + 6]!];
    const long = radius > 0 ? radius * Math.abs(numbers[at + 7]!) : Math.abs(endX - x) + Math.abs(endY - y);
    if (long < fine && i + 1 < to) continue;
    if (radius > 0 && radius * (1 - Math.cos(Math.min(Math.PI, Math.abs(numbers[at + 7]!) / 2))) > fine / 4) arcTo(pen, numbers, at);
    else pen.lineTo(endX, endY);
    [x, y] = [endX, endY];
  }
  if (closed) pen.closePath();
};

const arcTo = (pen: StrokePen, numbers: Float64Array, at: number): void => {
  const [cx, cy, radius, sweep] = [numbers[at + 4]!, numbers[at + 5]!, numbers[at + 6]!, numbers[at + 7]!];
  const start = Math.atan2(numbers[at + 1]! - cy, numbers[at]! - cx);
  pen.arc(cx, cy, radius, start, start + sweep, sweep < 0);
};

/**
 * Only what meets the window, in pieces no longer than `longest` mm: a circle of a hundred thousand pixels would be slow to dash.
 * Pieces come from halving, so they stay the same while the window moves and dashes do not crawl.
 */
export const traceWithin = (pen: StrokePen, { numbers, from, to }: ChainStretch, window: Window, longest: number): void => {
  let last: Point | undefined;
  for (let i = from; i < to; i += 1) {
    const segment = segmentAt(numbers, i);
    last = piecesOf(pen, segment, window, longest, last);
  }
};

/** Draws the pieces of a segment; gives where the pen is, so that what hangs together is one line. */
const piecesOf = (pen: StrokePen, segment: Segment, window: Window, longest: number, last: Point | undefined): Point | undefined => {
  if (!meets(boundsOf(segment), window)) return undefined;
  const long =
    segment.kind === 'arc'
      ? segment.radius * Math.abs(segment.sweep)
      : Math.hypot(segment.to.x - segment.from.x, segment.to.y - segment.from.y);
  if (long > longest) {
    const [first, second] = halves(segment);
    return piecesOf(pen, second, window, longest, piecesOf(pen, first, window, longest, last));
  }
  if (last === undefined || last.x !== segment.from.x || last.y !== segment.from.y) pen.moveTo(segment.from.x, segment.from.y);
  if (segment.kind === 'line') pen.lineTo(segment.to.x, segment.to.y);
  else {
    const start = Math.atan2(segment.from.y - segment.centre.y, segment.from.x - segment.centre.x);
    pen.arc(segment.centre.x, segment.centre.y, segment.radius, start, start + segment.sweep, segment.sweep < 0);
  }
  return segment.to;
};

const halves = (s: Segment): readonly [Segment, Segment] => {
  const middle = pointAt(s, 0.5);
  if (s.kind === 'line')
    return [
      { ...s, to: middle },
      { ...s, from: middle },
    ];
  return [
    { ...s, to: middle, sweep: s.sweep / 2 },
    { ...s, from: middle, sweep: s.sweep / 2 },
  ];
};
