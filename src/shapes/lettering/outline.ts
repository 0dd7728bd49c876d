/** Outlines of a glyph -> closed contours of lines and arcs in mm, the curves met within a tolerance. */

import { type Contour, contour } from '../../geometry/contour.ts';
import { type FitCurve, fitArcs } from '../../geometry/make/fit-arcs.ts';
import { distanceBetween, line, type Point, type Segment } from '../../geometry/segment.ts';
import { firstItem, lastItem, neighbours } from '../../sequence/sequence.ts';
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
  const first = firstItem(segments).from;
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

/** A Bézier curve of the second or third degree by the corners of its control polygon, over 0 to 1; its ends are those corners exactly. */
export const bezier = (corners: readonly Point[]): FitCurve => {
  const [from, to] = [firstItem(corners), lastItem(corners)];
  const inner = polynomial(corners);
  const slope = polynomial(neighbours(corners).map(([p, q]) => ({ x: q.x - p.x, y: q.y - p.y })));
  return { start: 0, end: 1, pointAt: (t) => (t === 0 ? from : t === 1 ? to : inner(t)), tangentAt: slope };
};

/** Bernstein's form, written out, since a fit asks it some ten thousand times for each letter. */
const polynomial = (corners: readonly Point[]): ((t: number) => Point) => {
  const [a, b, c, d] = corners as [Point, Point, Point | undefined, Point | undefined];
  return (t) => {
    const s = 1 - t;
    if (c === undefined) return { x: s * a.x + t * b.x, y: s * a.y + t * b.y };
    if (d === undefined) {
      const [p, q, r] = [s * s, 2 * s * t, t * t];
      return { x: p * a.x + q * b.x + r * c.x, y: p * a.y + q * b.y + r * c.y };
    }
    const [p, q, r, u] = [s * s * s, 3 * s * s * t, 3 * s * t * t, t * t * t];
    return { x: p * a.x + q * b.x + r * c.x + u * d.x, y: p * a.y + q * b.y + r * c.y + u * d.y };
  };
};
