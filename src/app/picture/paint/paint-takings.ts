/** Draws how the sizes of a part by numbers are taken: over pins, over teeth, across flats; the one pointed at alone and strong. */
import type { Point } from '../../../geometry/segment.ts';
import type { ShapeSizeView, Taking } from '../../work/views.ts';
import type { Brush } from '../brush.ts';
import type { Upon } from '../scene.ts';
import { toPixel } from '../view.ts';

export const paintTakings = (brush: Brush, { takings, pointed }: Upon): void => {
  const alone = isUpon(takings, pointed);
  for (const { shown, taking } of takings) if (taking !== undefined && (!alone || shown.key === pointed)) paint(brush, taking, alone);
};

/** One of the sizes is pointed at. */
export const isUpon = (takings: readonly ShapeSizeView[], pointed: string | undefined): boolean =>
  takings.some((t) => t.shown.key === pointed);

/** Where its number stands, mm. */
export const placeOf = (taking: Taking): Point => {
  if (taking.kind === 'circle') {
    const by = taking.radius * Math.SQRT1_2;
    return { x: taking.centre.x + by, y: taking.centre.y + by };
  }
  if (taking.kind === 'radius') return taking.at;
  return { x: (taking.from.x + taking.to.x) / 2, y: (taking.from.y + taking.to.y) / 2 };
};

const paint = (brush: Brush, taking: Taking, strong: boolean): void => {
  const { context, colours } = brush;
  context.strokeStyle = strong ? colours.ink : colours.muted;
  context.lineWidth = strong ? 2 : 1;
  context.setLineDash([]);
  if (taking.kind === 'circle') {
    if (taking.drawn === true) context.setLineDash([10, 3, 2, 3]);
    ring(brush, taking.centre, taking.radius);
  } else if (taking.kind === 'radius') stroke(brush, taking.centre, taking.at, 'one tick');
  else {
    if (taking.kind === 'pins') for (const centre of taking.centres) ring(brush, centre, taking.diameter / 2);
    stroke(brush, taking.from, taking.to, 'two ticks');
  }
  context.setLineDash([]);
};

const ring = ({ context, view }: Brush, centre: Point, radius: number): void => {
  const { x, y } = toPixel(view, centre);
  context.beginPath();
  context.arc(x, y, radius * view.scale, 0, 2 * Math.PI);
  context.stroke();
};

/** Half the length of the strokes across the ends, pixels. */
const TICK = 6;

const stroke = ({ context, view }: Brush, from: Point, to: Point, ticks: 'one tick' | 'two ticks'): void => {
  const [a, b] = [toPixel(view, from), toPixel(view, to)];
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  if (length === 0) return;
  const across = { x: (-(b.y - a.y) / length) * TICK, y: ((b.x - a.x) / length) * TICK };
  context.beginPath();
  context.moveTo(a.x, a.y);
  context.lineTo(b.x, b.y);
  for (const end of ticks === 'two ticks' ? [a, b] : [b]) {
    context.moveTo(end.x - across.x, end.y - across.y);
    context.lineTo(end.x + across.x, end.y + across.y);
  }
  context.stroke();
};
