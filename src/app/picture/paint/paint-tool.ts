/** Paints what the tool in hand shows: the mark of a snap with its word, the measured distance with its legs, the rectangle being drawn, the cross. */
import type { Point } from '../../../geometry/segment.ts';
import { type Brush, haloed } from '../brush.ts';
import type { Lengths } from '../lengths.ts';
import type { SnapKind, Snapped } from '../places-index.ts';
import { measured } from '../scale-bar.ts';
import type { Tool } from '../tool.ts';
import { toPixel } from '../view.ts';

/** Half a snap's cross, pixels. */
const SNAP = 6;

type SnapWords = Readonly<Record<SnapKind, string>>;

export interface ToolShown {
  readonly tool: Tool;
  /** Where the pointer would take a place now. */
  readonly snap: Snapped | undefined;
  /** Where the keys have put the cross, pixels. */
  readonly cross: Point | undefined;
  readonly lengths: Lengths;
  readonly words: SnapWords;
}

export const paintTool = (brush: Brush, { tool, snap, cross, lengths, words }: ToolShown): void => {
  if (tool.kind === 'none') return;
  const { context, colours } = brush;
  context.setLineDash([]);
  context.strokeStyle = colours.accent;
  context.lineWidth = 1.5;
  if (tool.kind === 'measure' && tool.from !== undefined) {
    const to = tool.to ?? snap;
    if (to !== undefined) paintMeasure(brush, tool.from.at, to.at, lengths);
    paintSnap(brush, tool.from, words);
    if (tool.to !== undefined) paintSnap(brush, tool.to, words);
  }
  if (tool.kind === 'pick' && tool.first !== undefined && snap !== undefined) paintRectangle(brush, tool.first, snap.at);
  if (cross !== undefined) paintCross(brush, cross);
  if (snap !== undefined) paintSnap(brush, snap, words);
};

const paintMeasure = (brush: Brush, from: Point, to: Point, lengths: Lengths): void => {
  const { context, colours, view, family } = brush;
  const [a, b] = [toPixel(view, from), toPixel(view, to)];
  context.strokeStyle = colours.accent;
  context.lineWidth = 1;
  context.setLineDash([4, 3]);
  context.beginPath();
  context.moveTo(a.x, a.y);
  context.lineTo(b.x, a.y);
  context.lineTo(b.x, b.y);
  context.stroke();
  context.setLineDash([]);
  context.lineWidth = 2;
  context.beginPath();
  context.moveTo(a.x, a.y);
  context.lineTo(b.x, b.y);
  context.stroke();
  context.font = `600 13px ${family}`;
  context.textAlign = 'center';
  context.textBaseline = 'bottom';
  haloed(brush, lengths.full(measured(from, to).distance), (a.x + b.x) / 2, (a.y + b.y) / 2 - 6, 'accent');
};

const paintRectangle = ({ context, view, colours }: Brush, first: Point, second: Point): void => {
  const [a, b] = [toPixel(view, first), toPixel(view, second)];
  context.setLineDash([6, 3]);
  context.strokeStyle = colours.accent;
  context.strokeRect(Math.min(a.x, b.x), Math.min(a.y, b.y), Math.abs(a.x - b.x), Math.abs(a.y - b.y));
  context.setLineDash([]);
};

const paintCross = ({ context, colours }: Brush, { x, y }: Point): void => {
  context.strokeStyle = colours.accent;
  context.lineWidth = 1.5;
  context.beginPath();
  for (const [dx, dy] of [
    [1, 0],
    [-1, 0],
    [0, 1],
    [0, -1],
  ] as const) {
    context.moveTo(x + 4 * dx, y + 4 * dy);
    context.lineTo(x + 16 * dx, y + 16 * dy);
  }
  context.stroke();
};

/** One cross for every kind, the word beside it; a free point needs neither. */
const paintSnap = (brush: Brush, { kind, at }: Snapped, words: SnapWords): void => {
  if (kind === 'free') return;
  const { context, colours, view, family } = brush;
  const { x, y } = toPixel(view, at);
  context.setLineDash([]);
  context.strokeStyle = colours.accent;
  context.lineWidth = 2;
  context.beginPath();
  context.moveTo(x - SNAP, y - SNAP);
  context.lineTo(x + SNAP, y + SNAP);
  context.moveTo(x - SNAP, y + SNAP);
  context.lineTo(x + SNAP, y - SNAP);
  context.stroke();
  context.font = `600 12px ${family}`;
  context.textAlign = 'left';
  context.textBaseline = 'top';
  haloed(brush, words[kind], x + SNAP + 4, y + SNAP, 'accent');
};
