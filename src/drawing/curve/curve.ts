/** What the file formats hand over: curves in drawing units, before anything is joined, fitted or judged. */

import type { Point, Segment } from '../../geometry/segment.ts';
import type { Finding } from '../../text/finding.ts';
import type { DrawnDimension } from '../dimensions.ts';
import type { DrawingUnits, Layer } from '../drawing.ts';
import type { UnitSigns } from '../unit-signs.ts';

/** An elliptic arc: centre + cos(t) major + sin(t) minor, t running from `start` to `end` (end below start runs backwards). */
export interface EllipticArc {
  readonly kind: 'ellipse';
  readonly centre: Point;
  readonly major: Point;
  /** Need not be perpendicular to `major`: a skewed ellipse keeps its two conjugate half axes. */
  readonly minor: Point;
  readonly start: number;
  readonly end: number;
}

/** A B-spline, rational when weights differ: `knots.length === points.length + degree + 1`; evaluated on knots[degree]..knots[points.length]. */
export interface Spline {
  readonly kind: 'spline';
  readonly degree: number;
  readonly points: readonly Point[];
  readonly weights: readonly number[];
  readonly knots: readonly number[];
}

export type Curve = Segment | EllipticArc | Spline;

/** One entity (or one straight or round piece of a polyline), already moved out of its blocks into world coordinates. */
export interface DrawnCurve {
  readonly curve: Curve;
  readonly layer: string;
  readonly hidden: boolean;
  /** A line type of centre lines, hidden edges and the like, as named. */
  readonly lineType?: string | undefined;
  /** Pieces of one polyline or path share this number and are joined to each other first. */
  readonly entity: number;
  /** The entity says it is closed (a closed polyline, a path with z). */
  readonly closes: boolean;
  /** An arc that ends at the angle where it starts, here as the whole circle: it may be nothing at all. */
  readonly turnless?: boolean | undefined;
  /** Line of the file where the entity starts, or its byte in a binary file. */
  readonly line: number;
}

/** What a format reader returns. It never throws: trouble is in `findings`, and `state` says how far it came. */
export interface DrawnFile {
  readonly state: 'complete' | 'incomplete' | 'refused';
  readonly format: 'dxf' | 'svg' | 'unknown';
  /** What the file itself says of its unit; none when it does not. */
  readonly units?: DrawingUnits | undefined;
  /** Whether the header means metric or inch patterns; a hint when it names no unit, and a doubt when it contradicts one. */
  readonly measurement?: 'metric' | 'inch' | undefined;
  /** True where the header is there but says 'no unit'. */
  readonly unitless: boolean;
  /** What else in the file speaks of a unit. */
  readonly signs?: UnitSigns | undefined;
  /** What its dimensions say. */
  readonly dimensions?: readonly DrawnDimension[] | undefined;
  /** The words of a title block stand among its texts. */
  readonly titled?: boolean | undefined;
  readonly curves: readonly DrawnCurve[];
  readonly marks: readonly { readonly at: Point; readonly layer: string; readonly hidden: boolean }[];
  readonly layers: readonly Layer[];
  /** Entity types met and not drawn (TEXT, HATCH, 3DFACE ...) with how many of each. */
  readonly passedOver: ReadonlyMap<string, number>;
  readonly findings: readonly Finding[];
}

/** Nothing of it was drawn, and why. */
export const refusedFile = (format: DrawnFile['format'], findings: readonly Finding[]): DrawnFile => ({
  state: 'refused',
  format,
  unitless: false,
  curves: [],
  marks: [],
  layers: [],
  passedOver: new Map(),
  findings,
});
