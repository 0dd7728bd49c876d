/** A picture to scale: strokes and labels in mm of the work, y up, for PDF and SVG alike. */

import { type Chain, path, polygon } from '../geometry/contour.ts';
import { line, type Point, type Segment } from '../geometry/segment.ts';
import { roundBelow } from './round-length.ts';

export interface Stroke {
  /** SVG path data in mm of the work. */
  readonly data: string;
  /** Line width on paper, mm. */
  readonly width: number;
  /** Dashes on paper, mm; solid when left out. */
  readonly dash?: readonly number[];
  /** Grey of the line, 0 black to 1 white. */
  readonly grey: number;
  /** Grey of the area inside, none when left out. */
  readonly fill?: number;
}

/** Its words as they are said, or as they are printed. */
export interface Label<S = string> {
  readonly at: Point;
  readonly text: S;
  /** Where the text stands from its point. */
  readonly side: 'centre' | 'right' | 'above';
  /** Draws a small ring around the text, for numbers that tables refer to. */
  readonly ring: boolean;
}

export interface Picture<S = string> {
  readonly low: Point;
  readonly high: Point;
  readonly strokes: readonly Stroke[];
  readonly labels: readonly Label<S>[];
  /** False where lengths are no lengths, as along a time axis: there is no scale bar then. */
  readonly scaled?: boolean;
  /** The unit and decimal mark of its scale bar; mm and a point when left out. */
  readonly bar?: { readonly unit: 'mm' | 'inch'; readonly decimal: string };
}

/** The path data of a chain. A full circle is written as two halves, since an arc that ends where it starts is none. */
export const pathData = (chain: Chain): string => {
  const first = chain.segments[0];
  if (first === undefined) return '';
  return `M${numbers(first.from)}${chain.segments.map(segmentData).join('')}${chain.closed ? 'Z' : ''}`;
};

/** Of a stretch of a way that has no end of its own. */
export const stretchData = (segment: Segment): string => pathData(path([segment]));

export const lineData = (from: Point, to: Point): string => stretchData(line(from, to));

/** Straight from corner to corner and back to the first. */
export const polygonData = (corners: readonly Point[]): string => pathData(polygon(corners));

const segmentData = (segment: Segment): string => {
  if (segment.kind === 'line') return `L${numbers(segment.to)}`;
  const { centre, from, radius, sweep, to } = segment;
  const turn = sweep > 0 ? 1 : 0;
  if (Math.abs(sweep) <= Math.PI * 1.5)
    return `A${pathNumber(radius)} ${pathNumber(radius)} 0 ${Math.abs(sweep) > Math.PI ? 1 : 0} ${turn} ${numbers(to)}`;
  const half = turnAbout(from, centre, sweep / 2);
  return `A${pathNumber(radius)} ${pathNumber(radius)} 0 0 ${turn} ${numbers(half)}A${pathNumber(radius)} ${pathNumber(radius)} 0 0 ${turn} ${numbers(to)}`;
};

const turnAbout = (p: Point, centre: Point, angle: number): Point => {
  const [cos, sin, x, y] = [Math.cos(angle), Math.sin(angle), p.x - centre.x, p.y - centre.y];
  return { x: centre.x + x * cos - y * sin, y: centre.y + x * sin + y * cos };
};

export const circleData = (at: Point, radius: number): string => {
  const r = pathNumber(radius);
  return `M${pathNumber(at.x - radius)} ${pathNumber(at.y)}A${r} ${r} 0 0 1 ${pathNumber(at.x + radius)} ${pathNumber(at.y)}A${r} ${r} 0 0 1 ${pathNumber(at.x - radius)} ${pathNumber(at.y)}Z`;
};

const numbers = (p: Point): string => `${pathNumber(p.x)} ${pathNumber(p.y)}`;
/** A number of path data. */
export const pathNumber = (x: number): string => String(Number(x.toFixed(4)));

/** A round length for the scale bar in its unit: 1, 2 or 5 times a power of ten, at most a quarter of the picture's width (mm). */
export const scaleBar = (
  width: number,
  { unit, decimal } = { unit: 'mm', decimal: '.' } as NonNullable<Picture['bar']>,
): { readonly mm: number; readonly text: string } => {
  const one = unit === 'inch' ? 25.4 : 1;
  const length = roundBelow(width / 4 / one);
  return { mm: length * one, text: `${String(length).replace('.', decimal)} ${unit === 'inch' ? 'in' : 'mm'}` };
};
