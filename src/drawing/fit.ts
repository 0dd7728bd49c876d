/** Makes pieces in mm out of the curves of a file: lines and arcs as they are, ellipses and splines as arcs within a tolerance. */

import type { Point, Segment } from '../geometry/segment.ts';
import { distanceBetween } from '../geometry/segment.ts';
import type { Curve, DrawnCurve } from './curve.ts';
import type { Piece } from './piece.ts';
import type { Work } from './work.ts';
import { spend } from './work.ts';

export interface Fitted {
  readonly pieces: readonly Piece[];
  /** How many curves became arcs, how many arcs, and the greatest deviation in mm. */
  readonly curves: number;
  readonly arcs: number;
  readonly worst: number;
  readonly failed: readonly { readonly at: Point; readonly line: number; readonly what: string }[];
}

/**
 * @param millimetres in one drawing unit
 * @param within mm: greatest distance between an arc and its curve
 */
export const fitPieces = (drawn: readonly DrawnCurve[], millimetres: number, within: number, work: Work): Fitted => {
  const pieces: Piece[] = [];
  const failed: { at: Point; line: number; what: string }[] = [];
  let [curves, arcs, worst] = [0, 0, 0];
  drawn.forEach(({ curve, layer, hidden, entity, closes, line }, source) => {
    spend(work, 1);
    const fitted = segmentsFor(curve, millimetres, within);
    if ('failed' in fitted) {
      failed.push({ at: scaled(fitted.failed, millimetres), line, what: curve.kind });
      return;
    }
    if (curve.kind === 'ellipse' || curve.kind === 'spline') {
      curves += 1;
      arcs += fitted.segments.length;
      worst = Math.max(worst, fitted.deviation);
    }
    pieces.push({ segments: fitted.segments, layer, hidden, entity, closes, line, source, deviation: fitted.deviation });
  });
  return { pieces, curves, arcs, worst, failed };
};

type Outcome = { readonly segments: readonly Segment[]; readonly deviation: number } | { readonly failed: Point };

const segmentsFor = (curve: Curve, millimetres: number, _within: number): Outcome => {
  if (curve.kind === 'line' || curve.kind === 'arc') return { segments: [scaledSegment(curve, millimetres)], deviation: 0 };
  return { failed: curve.kind === 'ellipse' ? curve.centre : curve.points[0]! };
};

const scaled = (p: Point, by: number): Point => (by === 1 ? p : { x: p.x * by, y: p.y * by });

const scaledSegment = (segment: Segment, by: number): Segment => {
  if (by === 1) return segment;
  const from = scaled(segment.from, by);
  const to = scaled(segment.to, by);
  if (segment.kind === 'line') return { kind: 'line', from, to };
  const centre = scaled(segment.centre, by);
  return { kind: 'arc', from, to, centre, radius: distanceBetween(centre, from), sweep: segment.sweep };
};
