/** The box around everything a file draws, in drawing units. */
import { mergedBounds } from '../../geometry/area.ts';
import type { Bounds } from '../../geometry/measure.ts';
import { boundsOf } from '../../geometry/measure.ts';
import type { Point } from '../../geometry/segment.ts';
import type { Curve, DrawnCurve } from './curve.ts';

/** Exact for lines and arcs; around the control points of splines and the whole of ellipses. Empty when nothing is drawn. */
export const drawnBounds = (drawn: readonly DrawnCurve[]): Bounds => mergedBounds(drawn.map((d) => curveBounds(d.curve)));

const curveBounds = (curve: Curve): Bounds => {
  if (curve.kind === 'spline') return pointBounds(curve.points);
  if (curve.kind !== 'ellipse') return boundsOf(curve);
  const x = Math.hypot(curve.major.x, curve.minor.x);
  const y = Math.hypot(curve.major.y, curve.minor.y);
  const { centre } = curve;
  return { minX: centre.x - x, minY: centre.y - y, maxX: centre.x + x, maxY: centre.y + y };
};

const pointBounds = (points: readonly Point[]): Bounds => mergedBounds(points.map((p) => ({ minX: p.x, minY: p.y, maxX: p.x, maxY: p.y })));
