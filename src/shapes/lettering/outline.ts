/** Outlines of a glyph -> closed contours of lines and arcs in mm, the curves met within a tolerance. */
import { type Contour, contour } from '../../geometry/contour.ts';
import { type FitCurve, fitArcs } from '../../geometry/fit.ts';
import { distanceBetween, line, type Point, type Segment } from '../../geometry/segment.ts';
import type { GlyphOutline, GlyphStep } from './typeface.ts';

export interface Drawing {
  readonly contours: readonly Contour[];
  /** Greatest distance from the curves to the arcs, mm. */
  readonly deviation: number;
}

/** `unfitted`: a curve that no arcs come near enough to, as one with numbers that are none. */
export type DrawnOutlines = ({ readonly kind: 'drawn' } & Drawing) | { readonly kind: 'unfitted' };

/** @param place where a point of the font comes to lie, mm. @param tolerance mm. */
export const drawOutlines = (outlines: readonly GlyphOutline[], place: (p: Point) => Point, tolerance: number): DrawnOutlines => {
  const contours: Contour[] = [];
  let deviation = 0;
  for (const outline of outlines) {
    const segments: Segment[] = [];
    const start = place(outline.from);
    let at = start;
    for (const step of [...outline.steps, { kind: 'line', to: outline.from } as const]) {
      const to = step.to.x === outline.from.x && step.to.y === outline.from.y ? start : place(step.to);
      const drawn = drawStep(at, step, to, place, tolerance);
      if (drawn.kind === 'unfitted') return drawn;
      segments.push(...drawn.segments);
      deviation = Math.max(deviation, drawn.deviation);
      at = drawn.segments.at(-1)?.to ?? at;
    }
    // Fonts hold points and hairs that enclose nothing.
    if (segments.length > 1) contours.push(contour(closed(segments)));
  }
  return { kind: 'drawn', contours, deviation };
};

/** What is dropped for its shortness must leave no gap. */
const closed = (segments: readonly Segment[]): readonly Segment[] => {
  const first = segments[0]!.from;
  return segments.map((s, i) => (i === segments.length - 1 ? { ...s, to: first } : s));
};

type DrawnStep =
  | { readonly kind: 'drawn'; readonly segments: readonly Segment[]; readonly deviation: number }
  | { readonly kind: 'unfitted' };

const drawStep = (from: Point, step: GlyphStep, to: Point, place: (p: Point) => Point, tolerance: number): DrawnStep => {
  if (step.kind === 'line') return { kind: 'drawn', segments: distanceBetween(from, to) > NOTHING ? [line(from, to)] : [], deviation: 0 };
  const controls = step.kind === 'quadratic' ? [place(step.control)] : [place(step.first), place(step.second)];
  if ([...controls, to].every((p) => distanceBetween(from, p) <= NOTHING)) return { kind: 'drawn', segments: [], deviation: 0 };
  const fitted = fitArcs(bezier([from, ...controls, to]), tolerance);
  return fitted.kind === 'fitted' ? { kind: 'drawn', segments: fitted.segments, deviation: fitted.deviation } : { kind: 'unfitted' };
};

/** mm: shorter than this is no step. */
const NOTHING = 1e-7;

/** A Bézier curve of any degree by the corners of its control polygon, over 0 to 1. */
export const bezier = (corners: readonly Point[]): FitCurve => {
  const slopes = corners.slice(1).map((p, i) => ({ x: p.x - corners[i]!.x, y: p.y - corners[i]!.y }));
  return { start: 0, end: 1, pointAt: (t) => between(corners, t), tangentAt: (t) => between(slopes, t) };
};

/** De Casteljau's way: halfway points of halfway points, at the share t in place of a half. */
const between = (corners: readonly Point[], t: number): Point => {
  if (t === 0) return corners[0]!;
  if (t === 1) return corners.at(-1)!;
  let level = corners;
  while (level.length > 1)
    level = level.slice(1).map((p, i) => ({ x: level[i]!.x + (p.x - level[i]!.x) * t, y: level[i]!.y + (p.y - level[i]!.y) * t }));
  return level[0]!;
};
