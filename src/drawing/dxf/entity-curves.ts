/** Makes curves of the entities that are one curve each, and of polylines. */

import { FULL_TURN } from '../../geometry/angle.ts';
import { arcByDegrees } from '../../geometry/bulge.ts';
import { arc, line, type Point } from '../../geometry/segment.ts';
import { asGiven, count, list } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Curve } from '../curve/curve.ts';
import type { Fields } from './fields.ts';
import { polylinePieces } from './polyline.ts';
import { type DrawnEntity, type PointEntity, type Trouble, trouble } from './records.ts';
import type { Report } from './report-dxf.ts';
import { lifted, movedInSpace, ovalOf, type Point3, planeOf, point3, type SpaceCurve } from './space.ts';

/** LINE: two points in space. */
export const lineShape = (f: Fields): DrawnEntity | Trouble => {
  const lack = lacking(f, LINE_NEEDS);
  if (lack !== undefined) return lack;
  if (f.get(30, 0) !== 0 || f.get(31, 0) !== 0) return spaceShape(f, [{ kind: 'line', from: pointOf(f, 10), to: pointOf(f, 11) }], false);
  return flatShape(f, [line(flatPointOf(f, 10), flatPointOf(f, 11))], false);
};

/** CIRCLE, drawn on its own plane. */
export const circleShape = (f: Fields): DrawnEntity | Trouble => {
  const lack = lacking(f, CIRCLE_NEEDS) ?? badRadius(f);
  if (lack !== undefined) return lack;
  const centre = flatPointOf(f, 10);
  const from = { x: centre.x + f.get(40, 0), y: centre.y };
  return onItsPlane(f, [arc(from, from, centre, FULL_TURN)], f.get(30, 0), true);
};

/** ARC: always counter-clockwise on its own plane, angles in degrees. */
export const arcShape = (f: Fields): DrawnEntity | Trouble => {
  const lack = lacking(f, ARC_NEEDS) ?? badRadius(f) ?? farTurned(f, [50, 51], MOST_DEGREES);
  if (lack !== undefined) return lack;
  const [start, end] = [f.get(50, 0), f.get(51, 0)];
  const turn = turnFrom(start, end, 360);
  const curve = arcByDegrees(flatPointOf(f, 10), f.get(40, 0), start, turn === 'part' ? end : start);
  return withoutTurn(onItsPlane(f, [curve], f.get(30, 0), turn === 'whole'), turn);
};

/** ELLIPSE: centre and major half axis in space, the minor one square to it about the extrusion; parameters in radians. */
export const ellipseShape = (f: Fields): DrawnEntity | Trouble => {
  const lack = lacking(f, ELLIPSE_NEEDS) ?? farTurned(f, [41, 42], MOST_RADIANS);
  if (lack !== undefined) return lack;
  const plane = planeOf(extrusionOf(f));
  const major = pointOf(f, 11);
  const ratio = f.get(40, 0);
  if (plane === undefined || !(Math.hypot(major.x, major.y, major.z) > 0) || !(ratio >= LEAST_RATIO))
    return trouble(
      'entity-impossible',
      say('entity-impossible/ellipse')`An ellipse has axes without length (ratio ${{ ratio: asGiven(ratio) }}).`,
    );
  const n = plane.z;
  const minor = point3(
    ratio * (n.y * major.z - n.z * major.y),
    ratio * (n.z * major.x - n.x * major.z),
    ratio * (n.x * major.y - n.y * major.x),
  );
  const [start, end] = [f.get(41, 0), f.get(42, FULL_TURN)];
  const turn = turnFrom(start, end, FULL_TURN);
  const sweep = turn === 'part' ? (((end - start) % FULL_TURN) + FULL_TURN) % FULL_TURN : FULL_TURN;
  return withoutTurn(spaceShape(f, [ovalOf(pointOf(f, 10), major, minor, start, start + sweep)], turn === 'whole'), turn);
};

/**
 * How far an arc turns between two angles. Equal angles are no turn at all, as a program leaves them of a fillet that has shrunk to
 * nothing; angles a whole turn apart are a circle. Files print six digits and more, so that a few millionths of a turn are rounding.
 */
const turnFrom = (start: number, end: number, full: number): 'none' | 'whole' | 'part' => {
  const turns = (end - start) / full;
  if (Math.abs(turns - Math.round(turns)) > SAME_ANGLE) return 'part';
  return Math.round(turns) === 0 ? 'none' : 'whole';
};

const withoutTurn = (shape: DrawnEntity | Trouble, turn: 'none' | 'whole' | 'part'): DrawnEntity | Trouble =>
  turn === 'none' && shape.kind === 'shape' ? { ...shape, turnless: true } : shape;

/** LWPOLYLINE: its vertices stand one after the other, each with its bulge. */
export const lightPolylineShape = (f: Fields, report: Report): DrawnEntity | Trouble => {
  const points: Point[] = [];
  const bulges: number[] = [];
  let x = Number.NaN;
  let whole = true;
  for (let i = 0; i < f.count; i++) {
    const [code, value] = [f.codeAt(i), f.valueAt(i)];
    if (code === 10) {
      whole &&= Number.isNaN(x);
      x = value;
    } else if (code === 20) {
      points.push({ x, y: value });
      bulges.push(0);
      x = Number.NaN;
    } else if (code === 42 && bulges.length > 0) bulges[bulges.length - 1] = value;
  }
  if (!whole || !Number.isNaN(x) || points.some((p) => Number.isNaN(p.x)))
    return trouble('entity-unfinished', say('entity-unfinished/vertex')`A vertex of an LWPOLYLINE has no x or no y.`);
  const told = f.get(90, points.length);
  if (told !== points.length) report.countDiffers(f.place, f.type, told, points.length, 'vertices');
  return polylineShape(f, points, bulges, f.flag(70, 1), f.get(38, 0));
};

/** A polyline on its own plane, at a height. */
export const polylineShape = (
  f: Fields,
  points: readonly Point[],
  bulges: readonly number[],
  closed: boolean,
  height: number,
): DrawnEntity | Trouble => {
  if (points.length < 2) return trouble('entity-unfinished', points.length === 0 ? words.noVertex : words.oneVertex);
  return onItsPlane(f, polylinePieces(points, bulges, closed), height, closed);
};

/** POINT: a mark, where shops show start holes. */
export const spotOf = (f: Fields): PointEntity | Trouble =>
  lacking(f, POINT_NEEDS) ?? { kind: 'spot', type: f.type, layer: f.layer, invisible: f.invisible, place: f.place, at: pointOf(f, 10) };

export const flatShape = (f: Fields, curves: readonly Curve[], closes: boolean): DrawnEntity => ({
  kind: 'shape',
  type: f.type,
  layer: f.layer,
  invisible: f.invisible,
  lineType: f.lineType === '' ? undefined : f.lineType,
  place: f.place,
  closes,
  flat: curves,
  space: NONE,
});

export const spaceShape = (f: Fields, space: readonly SpaceCurve[], closes: boolean): DrawnEntity => ({
  ...flatShape(f, NONE, closes),
  space,
});

/** Curves drawn on the plane that the entity's extrusion names, `height` above it. */
const onItsPlane = (f: Fields, curves: readonly Curve[], height: number, closes: boolean): DrawnEntity | Trouble => {
  const extrusion = extrusionOf(f);
  if (height === 0 && extrusion.x === 0 && extrusion.y === 0 && extrusion.z > 0) return flatShape(f, curves, closes);
  const plane = planeOf(extrusion);
  if (plane === undefined) return trouble('entity-impossible', say('entity-impossible/extrusion')`The extrusion direction has no length.`);
  return spaceShape(
    f,
    curves.map((curve) => movedInSpace(lifted(curve, height), plane)),
    closes,
  );
};

export const extrusionOf = (f: Fields): Point3 => point3(f.get(210, 0), f.get(220, 0), f.get(230, 1));

/** The point whose x has this code; y and z follow ten and twenty codes on. */
export const pointOf = (f: Fields, code: number): Point3 => point3(f.get(code, 0), f.get(code + 10, 0), f.get(code + 20, 0));

const flatPointOf = (f: Fields, code: number): Point => ({ x: f.get(code, 0), y: f.get(code + 10, 0) });

const lacking = (f: Fields, codes: readonly number[]): Trouble | undefined => {
  if (codes.every((code) => f.has(code))) return undefined;
  const missing = codes.filter((code) => !f.has(code));
  return trouble(
    'entity-unfinished',
    say('entity-unfinished/group')`The entity has no value for group ${{ groups: list(missing.map((code) => count(code))) }}.`,
  );
};

const badRadius = (f: Fields): Trouble | undefined =>
  f.get(40, 0) > 0
    ? undefined
    : trouble('entity-impossible', say('entity-impossible/radius')`The radius is ${{ radius: asGiven(f.get(40, 0)) }}.`);

/** An angle so large that its own rounding is a part of a degree points nowhere. */
const farTurned = (f: Fields, codes: readonly number[], most: number): Trouble | undefined => {
  const far = codes.map((code) => f.get(code, 0)).find((angle) => !(Math.abs(angle) <= most));
  return far === undefined
    ? undefined
    : trouble(
        'entity-impossible',
        say('entity-impossible/angle')`An angle is ${{ angle: asGiven(far) }}; so large a number points in no direction.`,
      );
};

/** Of a turn: 1.6e-7 is a millionth of a radian, and 0.00006 degrees. */
const SAME_ANGLE = 1.6e-7;
/** At ten million degrees a double still tells a hundred millionth of one. */
export const MOST_DEGREES = 1e7;
const MOST_RADIANS = 1e5;
/** Of the two axes of an ellipse: flatter than this it is a line at any size that is read here. */
const LEAST_RATIO = 1e-9;

const NONE: readonly never[] = [];
const LINE_NEEDS = [10, 20, 11, 21];
const CIRCLE_NEEDS = [10, 20, 40];
const ARC_NEEDS = [10, 20, 40, 50, 51];
const ELLIPSE_NEEDS = [10, 20, 11, 21, 40];
const POINT_NEEDS = [10, 20];

const words = phrases('polyline', {
  noVertex: say`A polyline has no vertex.`,
  oneVertex: say`A polyline has only one vertex.`,
});
