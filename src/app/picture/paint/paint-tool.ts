/** Paints what the tool in hand shows: the sign of a snap, the measured distance with its legs, the rectangle being drawn, the cross. */
import type { Point } from '../../../geometry/segment.ts';
import { type Brush, haloed } from '../brush.ts';
import type { Lengths } from '../lengths.ts';
import type { Snapped } from '../places-index.ts';
import { measured } from '../scale-bar.ts';
import type { Tool } from '../tool.ts';
import { toPixel } from '../view.ts';

/** `snap` is where the pointer would take a place now; `cross` where the keys have put the cross, pixels. */
export const paintTool = (brush: Brush, tool: Tool, snap: Snapped | undefined, cross: Point | undefined, lengths: Lengths): void => {
  if (tool.kind === 'none') return;
  const { context, colours } = brush;
  context.setLineDash([]);
  context.strokeStyle = colours.accent;
  context.lineWidth = 1.5;
  if (tool.kind === 'measure' && tool.from !== undefined) {
    const to = tool.to ?? snap;
    if (to !== undefined) paintMeasure(brush, tool.from.at, to.at, lengths);
    paintSnap(brush, tool.from);
    if (tool.to !== undefined) paintSnap(brush, tool.to);
  }
  if (tool.kind === 'pick' && tool.first !== undefined && snap !== undefined) paintRectangle(brush, tool.first, snap.at);
  if (cross !== undefined) paintCross(brush, cross);
  if (snap !== undefined) paintSnap(brush, snap);
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

/** Square for an end, triangle for a middle, ring for a centre, diamond for a quadrant, dot on a line. */
const paintSnap = ({ context, colours, view }: Brush, { kind, at }: Snapped): void => {
  const { x, y } = toPixel(view, at);
  context.setLineDash([]);
  context.strokeStyle = colours.accent;
  context.fillStyle = colours.accent;
  context.lineWidth = 2;
  context.beginPath();
  if (kind === 'end') context.rect(x - 5, y - 5, 10, 10);
  else if (kind === 'centre') context.arc(x, y, 6, 0, 2 * Math.PI);
  else if (kind === 'on the line' || kind === 'free') context.arc(x, y, kind === 'free' ? 1.5 : 3, 0, 2 * Math.PI);
  else {
    const corners: readonly (readonly [number, number])[] =
      kind === 'middle'
        ? [
            [0, -6],
            [6, 5],
            [-6, 5],
          ]
        : [
            [0, -7],
            [7, 0],
            [0, 7],
            [-7, 0],
          ];
    corners.forEach(([dx, dy], i) => {
      if (i === 0) context.moveTo(x + dx, y + dy);
      else context.lineTo(x + dx, y + dy);
    });
    context.closePath();
  }
  if (kind === 'on the line' || kind === 'free') context.fill();
  else context.stroke();
};
