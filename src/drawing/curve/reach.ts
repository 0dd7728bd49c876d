/** Keeps numbers out with which no geometry can be done: not finite, or so large that a thousandth is lost. */
import type { Curve } from './curve.ts';

/** In drawing units. At 1e9 a double still tells 0.1 µm apart in mm; sums of squares stay far from the largest number. */
export const REACH = 1e9;

export const withinReach = (curve: Curve): boolean => {
  switch (curve.kind) {
    case 'line':
      return near(curve.from) && near(curve.to);
    case 'arc':
      // A nearly straight arc may have its centre far away; its radius must only be a number.
      return near(curve.from) && near(curve.to) && curve.radius < REACH * REACH;
    case 'ellipse':
      return near(curve.centre) && near(curve.major) && near(curve.minor);
    case 'spline':
      return curve.points.every(near);
  }
};

const near = (p: { readonly x: number; readonly y: number }): boolean => Math.abs(p.x) <= REACH && Math.abs(p.y) <= REACH;
