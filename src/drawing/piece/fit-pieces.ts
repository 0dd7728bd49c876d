/** Makes pieces in mm out of the curves of a file: lines and arcs as they are, ellipses and splines as arcs within a tolerance. */

import { fitArcs } from '../../geometry/make/fit-arcs.ts';
import { lengthOf } from '../../geometry/measure.ts';
import type { Point, Segment } from '../../geometry/segment.ts';
import { distanceBetween, line } from '../../geometry/segment.ts';
import { firstItem, lastItem } from '../../sequence/sequence.ts';
import type { Curve, DrawnCurve } from '../curve/curve.ts';
import { ellipseCurve } from '../curve/ellipse.ts';
import { splineCurve } from '../curve/spline.ts';
import { sweptArea } from '../curve/swept-area.ts';
import { areaUnder } from './area-under.ts';
import { segmentBetween } from './part-of-piece.ts';
import type { DrawnPiece } from './piece.ts';
import { isAlmostStraight, straightened } from './straightened.ts';
import type { WorkLimit } from './work-limit.ts';
import { spend } from './work-limit.ts';

export interface Fitted {
  readonly pieces: readonly DrawnPiece[];
  /** How many curves became arcs, how many arcs, and the greatest deviation in mm. */
  readonly curves: number;
  readonly arcs: number;
  readonly worst: number;
  /** How many arcs became lines, being almost straight, and the greatest deviation in mm. */
  readonly straightened: { readonly arcs: number; readonly worst: number };
  readonly failed: readonly { readonly at: Point; readonly line: number; readonly what: Curve['kind'] }[];
}

export interface WorkCurve extends DrawnCurve {
  /** Known as a line that explains the drawing, and by what. */
  readonly construction?: string | undefined;
}

/**
 * @param millimetres in one drawing unit
 * @param within mm: greatest distance between an arc and its curve
 */
export const fitPieces = (drawn: readonly WorkCurve[], millimetres: number, within: number, work: WorkLimit): Fitted => {
  const pieces: DrawnPiece[] = [];
  const failed: { at: Point; line: number; what: Curve['kind'] }[] = [];
  let [curves, arcs, worst] = [0, 0, 0];
  let straight: Fitted['straightened'] = { arcs: 0, worst: 0 };
  drawn.forEach(({ curve, layer, hidden, construction, entity, closes, line }, source) => {
    spend(work, 1);
    const fitted = segmentsFor(curve, millimetres, within, work);
    if ('failed' in fitted) {
      failed.push({ at: fitted.failed, line, what: curve.kind });
      return;
    }
    if (curve.kind === 'ellipse' || curve.kind === 'spline') {
      curves += 1;
      arcs += fitted.segments.length;
      worst = Math.max(worst, fitted.deviation);
    } else if (curve.kind === 'arc' && firstItem(fitted.segments).kind === 'line')
      straight = { arcs: straight.arcs + 1, worst: Math.max(straight.worst, fitted.deviation) };
    pieces.push({
      segments: fitted.segments,
      layer,
      hidden: hidden || construction !== undefined,
      construction: hidden ? undefined : construction,
      entity,
      closes,
      line,
      source,
      deviation: fitted.deviation,
      excess: fitted.excess,
    });
  });
  return { pieces, curves, arcs, worst, straightened: straight, failed };
};

type FitOutcome =
  | { readonly segments: readonly Segment[]; readonly deviation: number; readonly excess: number }
  | { readonly failed: Point };

const segmentsFor = (curve: Curve, millimetres: number, within: number, work: WorkLimit): FitOutcome => {
  if (curve.kind === 'line' || curve.kind === 'arc') return sound(scaledSegment(curve, millimetres), within);
  const asDrawn = curve.kind === 'ellipse' ? ellipseCurve(curve) : splineCurve(curve);
  const inMillimetres = { ...asDrawn, pointAt: (t: number) => scaled(asDrawn.pointAt(t), millimetres) };
  const fitWithin = (near: number) => fitArcs(inMillimetres, near, Math.max(1, Math.min(MOST, Math.floor(work.left / EVALUATIONS))));
  const first = fitWithin(within);
  // Lines for almost straight arcs are off by themselves: fit and lines share what is allowed.
  const halved = first.kind === 'fitted' && first.segments.some((s) => s.kind === 'arc' && isAlmostStraight(s, within / 2));
  const [fitted, near] = halved ? [fitWithin(within / 2), within / 2] : [first, within];
  const start = inMillimetres.pointAt(asDrawn.start);
  if (fitted.kind === 'no extent') return { segments: [line(start, start)], deviation: 0, excess: 0 };
  if (fitted.kind !== 'fitted') return { failed: Number.isFinite(start.x) && Number.isFinite(start.y) ? start : { x: 0, y: 0 } };
  spend(work, fitted.segments.length * EVALUATIONS);
  const arcs = withoutSlivers(fitted.segments).map((segment) => sound(segment, near));
  if (arcs.some((arc) => 'failed' in arc)) return { failed: start };
  const segments = arcs.flatMap((arc) => ('failed' in arc ? [] : arc.segments));
  const swept = segments.reduce((sum, segment) => sum + areaUnder(segment, start), 0);
  const bow = arcs.reduce((most, arc) => ('failed' in arc ? most : Math.max(most, arc.deviation)), 0);
  return { segments, deviation: fitted.deviation + bow, excess: sweptArea(inMillimetres, start) - swept };
};

/** An arc that is almost straight becomes lines; one so large that its centre is lost in rounding and that yet bends is given up. */
const sound = (segment: Segment, within: number): FitOutcome => {
  const whole = { segments: [segment], deviation: 0, excess: 0 };
  if (segment.kind === 'line') return whole;
  if (!(segment.radius > 0)) return { segments: [line(segment.from, segment.from)], deviation: 0, excess: 0 };
  if (isAlmostStraight(segment, within)) {
    const { lines, deviation, excess } = straightened(segment, within);
    return lines.length > MOST ? { failed: segment.from } : { segments: lines, deviation, excess };
  }
  return segment.radius <= FAR ? whole : { failed: segment.from };
};

/** mm: at this radius a double still tells a ten-thousandth of a micrometre. */
const FAR = 1e9;

/** Segments shorter than rounding, which a cusp may leave, are joined into their neighbours. */
const withoutSlivers = (segments: readonly Segment[]): readonly Segment[] => {
  const long = segments.filter((segment) => lengthOf(segment) > SLIVER);
  if (long.length === segments.length || long.length === 0) return segments;
  const end = lastItem(segments).to;
  return long.flatMap((segment, i) => segmentBetween(segment, i === 0 ? firstItem(segments).from : segment.from, long[i + 1]?.from ?? end));
};

/** mm: a tenth of a nanometre. */
const SLIVER = 1e-7;

/** About so many places of a curve are looked at for each arc. */
const EVALUATIONS = 200;
/** More arcs than this for one curve mean a mistaken unit rather than a part. */
const MOST = 20_000;

const scaled = (p: Point, by: number): Point => (by === 1 ? p : { x: p.x * by, y: p.y * by });

const scaledSegment = (segment: Segment, by: number): Segment => {
  if (by === 1) return segment;
  const from = scaled(segment.from, by);
  const to = scaled(segment.to, by);
  if (segment.kind === 'line') return { kind: 'line', from, to };
  const centre = scaled(segment.centre, by);
  return { kind: 'arc', from, to, centre, radius: distanceBetween(centre, from), sweep: segment.sweep };
};
