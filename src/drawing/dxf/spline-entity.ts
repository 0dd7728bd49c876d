/** SPLINE: control points with knots and weights, or only points to be passed through. */

import { firstItem, itemAt, lastItem, neighbours } from '../../sequence/sequence.ts';
import { asGiven, count } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import { cubicThrough } from '../curve/interpolate.ts';
import { flatShape, pointOf, spaceShape } from './entity-curves.ts';
import type { Fields } from './fields.ts';
import { type DrawnEntity, type Trouble, trouble } from './records.ts';
import type { Report } from './report-dxf.ts';
import { type Point3, point3, type SpaceCurve } from './space.ts';

type SpaceSpline = SpaceCurve & { readonly kind: 'spline' };

export const splineShape = (f: Fields, report: Report): DrawnEntity | Trouble => {
  const control = pointsOf(f, 10);
  const fit = pointsOf(f, 11);
  if (control === undefined || fit === undefined)
    return trouble('entity-unfinished', say('entity-unfinished/spline-point')`A point of the spline has no y.`);
  const stated: readonly (readonly [number, number, 'control points' | 'fit points'])[] = [
    [73, control.length, 'control points'],
    [74, fit.length, 'fit points'],
  ];
  for (const [code, given, what] of stated) {
    const promised = f.get(code, given);
    if (promised !== given) report.countDiffers(f.place, f.type, promised, given, what);
  }
  const spline = control.length > 0 ? controlled(f, control, report) : throughPoints(f, fit, report);
  if (spline.kind === 'trouble') return spline;
  const curves = spline.degree === 1 ? straightPieces(spline) : [spline];
  const closes = f.flag(70, CLOSED);
  if (!spline.points.every((p) => p.z === 0)) return spaceShape(f, curves, closes);
  return flatShape(f, curves.map(withoutHeight), closes);
};

const controlled = (f: Fields, points: readonly Point3[], report: Report): SpaceSpline | Trouble => {
  const degree = f.get(71, 3);
  if (!Number.isInteger(degree) || degree < 1 || degree > HIGHEST)
    return trouble('entity-impossible', say('entity-impossible/degree')`The degree of the spline is ${{ degree: asGiven(degree) }}.`);
  if (points.length <= degree)
    return trouble(
      'entity-unfinished',
      say(
        'entity-unfinished/control-points',
      )`A spline of degree ${{ degree: count(degree) }} has only ${{ points: count(points.length) }} control points.`,
    );
  const weights = valuesOf(f, 41);
  if (weights.length !== 0 && weights.length !== points.length)
    return trouble(
      'entity-unfinished',
      say(
        'entity-unfinished/weights',
      )`The spline has ${{ points: count(points.length) }} control points and ${{ weights: count(weights.length) }} weights.`,
    );
  if (weights.some((w) => !(w > 0)))
    return trouble('entity-impossible', say('entity-impossible/weight')`A weight of the spline is not more than 0.`);
  let knots = valuesOf(f, 40);
  if (knots.length === 0) {
    report.knotsMade(f.place);
    knots = evenKnots(points.length, degree);
  }
  const wrong = wrongKnots(knots, points.length, degree);
  if (wrong !== undefined) return wrong;
  return { kind: 'spline', degree, points, weights: weights.length > 0 ? weights : points.map(() => 1), knots };
};

const wrongKnots = (knots: readonly number[], points: number, degree: number): Trouble | undefined => {
  const needed = points + degree + 1;
  if (knots.length !== needed)
    return trouble(
      'entity-unfinished',
      say(
        'entity-unfinished/knots',
      )`A spline of degree ${{ degree: count(degree) }} with ${{ points: count(points) }} points has ${{ knots: count(knots.length) }} knots; it needs ${{ needed: count(needed) }}.`,
    );
  if (neighbours(knots).some(([before, after]) => after < before))
    return trouble('entity-impossible', say('entity-impossible/knots-fall')`The knots of the spline do not rise.`);
  const [start, end] = [itemAt(knots, degree), itemAt(knots, points)];
  // A knot repeated more often than the degree tears the curve apart.
  for (let i = 1; i + degree < knots.length - 1; i++)
    if (knots[i] === knots[i + degree] && itemAt(knots, i) > start && itemAt(knots, i) < end)
      return trouble('entity-impossible', say('entity-impossible/knots-tear')`The knots of the spline tear it apart.`);
  return start < end ? undefined : trouble('entity-impossible', say('entity-impossible/knots-span')`The knots of the spline span nothing.`);
};

const throughPoints = (f: Fields, given: readonly Point3[], report: Report): SpaceSpline | Trouble => {
  const moved = neighbours(given).flatMap(([p, q]) => (p.x !== q.x || p.y !== q.y || p.z !== q.z ? [q] : []));
  const fit = [...given.slice(0, 1), ...moved];
  if (fit.length < 2) return trouble('entity-unfinished', given.length === 0 ? words.noPoints : words.onePoint);
  report.throughPoints(f.place);
  const [first, last] = [firstItem(fit), lastItem(fit)];
  const closed = f.flag(70, CLOSED | PERIODIC);
  const ring = closed && (first.x !== last.x || first.y !== last.y || first.z !== last.z) ? [...fit, first] : fit;
  const { coordinates, knots } = cubicThrough([ring.map((p) => p.x), ring.map((p) => p.y), ring.map((p) => p.z)], {
    closed,
    startDirection: directionOf(f, 12),
    endDirection: directionOf(f, 13),
  });
  const [x, y, z] = [itemAt(coordinates, 0), itemAt(coordinates, 1), itemAt(coordinates, 2)];
  const points = x.map((value, i) => point3(value, itemAt(y, i), itemAt(z, i)));
  return { kind: 'spline', degree: 3, points, weights: points.map(() => 1), knots };
};

const directionOf = (f: Fields, code: number): readonly number[] | undefined => {
  if (!f.has(code)) return undefined;
  const { x, y, z } = pointOf(f, code);
  return [x, y, z];
};

/** A spline of degree 1 is the polyline of its control points. */
const straightPieces = (spline: SpaceSpline): readonly SpaceCurve[] =>
  neighbours(spline.points).map(([from, to]) => ({ kind: 'line', from, to }));

const evenKnots = (points: number, degree: number): number[] =>
  Array.from({ length: points + degree + 1 }, (_, i) => Math.min(Math.max(i - degree, 0), points - degree));

const withoutHeight = (curve: SpaceCurve): DrawnEntity['flat'][number] => {
  const flat = (p: Point3): { x: number; y: number } => ({ x: p.x, y: p.y });
  if (curve.kind === 'line') return { kind: 'line', from: flat(curve.from), to: flat(curve.to) };
  const { degree, points, weights, knots } = curve as SpaceSpline;
  return { kind: 'spline', degree, points: points.map(flat), weights, knots };
};

/** Points of which x has this code; none when one of them has no y. */
const pointsOf = (f: Fields, code: number): readonly Point3[] | undefined => {
  const points: { x: number; y: number; z: number }[] = [];
  for (let i = 0; i < f.count; i++) {
    const [at, value] = [f.codeAt(i) - code, f.valueAt(i)];
    const last = points.at(-1);
    if (at === 0) points.push({ x: value, y: Number.NaN, z: 0 });
    else if (at === 10 && last !== undefined) last.y = value;
    else if (at === 20 && last !== undefined) last.z = value;
  }
  return points.some((p) => Number.isNaN(p.y)) ? undefined : points;
};

const valuesOf = (f: Fields, code: number): number[] => {
  const values: number[] = [];
  for (let i = 0; i < f.count; i++) if (f.codeAt(i) === code) values.push(f.valueAt(i));
  return values;
};

const CLOSED = 1;
const PERIODIC = 2;
/** No writer goes higher; the work of one point grows with its square. */
const HIGHEST = 25;

const words = phrases('spline-points', {
  noPoints: say`The spline has no points.`,
  onePoint: say`The spline has only one point.`,
});
