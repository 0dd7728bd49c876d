/** The canvas as the painters use it: set to mm with y up for lines, or to pixels for texts and signs. */
import type { Bundle } from './bundles.ts';
import { type ChainStretch, traceWhole, traceWithin } from './chain-strokes.ts';
import type { ColourName, Colours } from './colours.ts';
import type { LineStyle } from './layers.ts';
import { type Size, type View, type Window, windowOf } from './view.ts';

export interface Brush {
  readonly context: CanvasRenderingContext2D;
  /** Dots of the screen per pixel of the page. */
  readonly ratio: number;
  readonly view: View;
  readonly size: Size;
  readonly colours: Colours;
  /** Family of the page's typeface. */
  readonly family: string;
}

export const inMillimetres = ({ context, ratio, view }: Brush): void =>
  context.setTransform(ratio * view.scale, 0, 0, -ratio * view.scale, ratio * view.x, ratio * view.y);

export const inPixels = ({ context, ratio }: Brush): void => context.setTransform(ratio, 0, 0, ratio, 0, 0);

/** Seen part of the drawing and a little beyond, mm. */
export const seen = ({ view, size }: Brush): Window => windowOf(view, size, 8);

/** Sets colour, width and dash for lines in mm. */
export const penOf = (brush: Brush, style: Pick<LineStyle, 'colour' | 'width' | 'dash'>, colour: ColourName = style.colour): void => {
  const { context, view, colours } = brush;
  context.strokeStyle = colours[colour];
  context.lineWidth = style.width / view.scale;
  context.setLineDash(style.dash.map((d) => d / view.scale));
  context.lineCap = 'butt';
  context.lineJoin = 'round';
};

/** Paths by what they are made from and by how fine; scales within a factor of two share one. */
const kept = new WeakMap<object, Map<number, Path2D>>();
const MOST_KEPT = 3;

const finenessOf = (scale: number): number => Math.ceil(Math.log2(scale));

export const wholePath = (key: object, stretches: readonly ChainStretch[], scale: number): Path2D => {
  const fineness = finenessOf(scale);
  const paths = kept.get(key) ?? new Map<number, Path2D>();
  kept.set(key, paths);
  const known = paths.get(fineness);
  if (known !== undefined) return known;
  const path = new Path2D();
  for (const stretch of stretches) traceWhole(path, stretch, 0.5 / 2 ** fineness);
  for (const oldest of [...paths.keys()].slice(0, paths.size + 1 - MOST_KEPT)) paths.delete(oldest);
  paths.set(fineness, path);
  return path;
};

/** Whole paths while segments are of a size with the canvas; where they reach far beyond it only the pieces in sight. */
export const bundlePath = (brush: Brush, bundle: Bundle): Path2D => {
  const { view, size } = brush;
  const across = Math.hypot(size.width, size.height);
  if (bundle.longest * view.scale <= 2 * across) return wholePath(bundle, bundle.stretches, view.scale);
  const path = new Path2D();
  for (const stretch of bundle.stretches) traceWithin(path, stretch, seen(brush), across / view.scale);
  return path;
};

/** Text with a rim of paper, so that lines beneath do not run through it. */
export const haloed = ({ context, colours }: Brush, text: string, x: number, y: number, colour: ColourName): void => {
  context.lineJoin = 'round';
  context.lineWidth = 4;
  context.setLineDash([]);
  context.strokeStyle = colours.paper;
  context.strokeText(text, x, y);
  context.fillStyle = colours[colour];
  context.fillText(text, x, y);
};
