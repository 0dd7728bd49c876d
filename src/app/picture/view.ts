/** Which part of the drawing is seen, and how large: from mm with y up to pixels of the screen with y down, and back. */
import type { Point } from '../../geometry/segment.ts';

/** `scale` in pixels per mm; the drawing's zero lies at pixel (x, y) of the canvas. */
export interface View {
  readonly scale: number;
  readonly x: number;
  readonly y: number;
}

/** In pixels of the page, whatever the screen makes of them. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

export interface Window {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

export interface ZoomLimits {
  readonly least: number;
  readonly most: number;
}

export const toPixel = (view: View, p: Point): Point => ({ x: view.x + p.x * view.scale, y: view.y - p.y * view.scale });

export const toPlace = (view: View, pixel: Point): Point => ({ x: (pixel.x - view.x) / view.scale, y: (view.y - pixel.y) / view.scale });

/** All of a box in the middle of the canvas, `margin` pixels free around it. A box without size is shown at 1 mm across. */
export const fitted = (box: Window, size: Size, margin: number): View => {
  const width = box.maxX - box.minX;
  const height = box.maxY - box.minY;
  const room = (pixels: number, mm: number): number =>
    Math.max(1, pixels - 2 * margin) / Math.max(mm, Math.max(width, height) * 1e-6, 1e-3);
  const scale =
    width === 0 && height === 0 ? room(Math.min(size.width, size.height), 1) : Math.min(room(size.width, width), room(size.height, height));
  return {
    scale,
    x: size.width / 2 - ((box.minX + box.maxX) / 2) * scale,
    y: size.height / 2 + ((box.minY + box.maxY) / 2) * scale,
  };
};

/** What lies under `pixel` stays there. */
export const zoomedAt = (view: View, pixel: Point, factor: number, { least, most }: ZoomLimits): View => {
  const scale = Math.min(most, Math.max(least, view.scale * factor));
  const by = scale / view.scale;
  return { scale, x: pixel.x + (view.x - pixel.x) * by, y: pixel.y + (view.y - pixel.y) * by };
};

export const panned = (view: View, dx: number, dy: number): View => ({ ...view, x: view.x + dx, y: view.y + dy });

/** A view at the same scale with a place in the middle of the canvas. */
export const centredOn = (view: View, p: Point, size: Size): View => ({
  ...view,
  x: size.width / 2 - p.x * view.scale,
  y: size.height / 2 + p.y * view.scale,
});

/** Moved back as far as it takes to keep `least` pixels of a box within the canvas, so that nobody loses the picture. */
export const keptInSight = (view: View, box: Window, size: Size, least: number): View => {
  const low = toPixel(view, { x: box.minX, y: box.maxY });
  const high = toPixel(view, { x: box.maxX, y: box.minY });
  const back = (from: number, to: number, room: number): number => Math.max(0, least - to) - Math.max(0, from - (room - least));
  return panned(view, back(low.x, high.x, size.width), back(low.y, high.y, size.height));
};

/** Two fingers went from `before` to `after`: pan with their middle, zoom with their distance. */
export const pinched = (view: View, before: readonly [Point, Point], after: readonly [Point, Point], limits: ZoomLimits): View => {
  const middle = ([a, b]: readonly [Point, Point]): Point => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 });
  const apart = ([a, b]: readonly [Point, Point]): number => Math.max(1, Math.hypot(a.x - b.x, a.y - b.y));
  const [from, to] = [middle(before), middle(after)];
  return zoomedAt(panned(view, to.x - from.x, to.y - from.y), to, apart(after) / apart(before), limits);
};

/** What is seen, in mm, and `beyond` pixels further on each side. */
export const windowOf = (view: View, size: Size, beyond = 0): Window => {
  const low = toPlace(view, { x: -beyond, y: size.height + beyond });
  const high = toPlace(view, { x: size.width + beyond, y: -beyond });
  return { minX: low.x, minY: low.y, maxX: high.x, maxY: high.y };
};

export const meets = (a: Window, b: Window): boolean => a.minX <= b.maxX && a.maxX >= b.minX && a.minY <= b.maxY && a.maxY >= b.minY;

/** From a fifth of the size that fits to 2,000 pixels per mm, where a pixel is half a micrometre. */
export const limitsFor = (fit: View): ZoomLimits => ({ least: fit.scale / 5, most: Math.max(2000, fit.scale * 50) });

export const sameView = (a: View, b: View): boolean => a.scale === b.scale && a.x === b.x && a.y === b.y;
