/** Glyphs in their places -> contours that do not cross, about 0, 0: what overlaps is one, what is inside knows it. */

import { areaOf, boundsOfChain, mergedBounds } from '../../geometry/area.ts';
import type { Contour } from '../../geometry/contour.ts';
import { united } from '../../geometry/make/combine.ts';
import type { Bounds } from '../../geometry/measure.ts';
import type { Point } from '../../geometry/segment.ts';
import { transformChain, translation } from '../../geometry/transform.ts';
import { firstItem } from '../../sequence/sequence.ts';
import type { PlacedGlyph } from './lay-out.ts';
import { type DrawnOutlines, drawOutlines } from './outline.ts';

/** mm: what is this near is one place. */
export const WITHIN = 1e-6;

export interface Letters {
  /** Counter-clockwise round ink, clockwise round what is inside of it. */
  readonly contours: readonly Contour[];
  readonly deviation: number;
  /** Characters that run into each other, in pairs: 'AV'. */
  readonly together: readonly string[];
  /** Characters of more than one part, each once: 'i'. */
  readonly inParts: readonly string[];
  /** Where the first letter stands: the line under it begins there. */
  readonly origin: Point;
}

/** `empty`: nothing but spaces. `too many`: more segments than are worth waiting for. `unusable`: an outline that cannot be drawn, with its character. */
export type DrawnLetters =
  | ({ readonly kind: 'letters' } & Letters)
  | { readonly kind: 'empty' }
  | { readonly kind: 'too many' }
  | { readonly kind: 'unusable'; readonly characters: readonly string[] };

/** Two hundred letters of usual size and fit have twenty thousand. */
export const MOST_SEGMENTS = 60_000;

/** @param tolerance mm, from the curves of the font to the arcs. */
export const drawLetters = (glyphs: readonly PlacedGlyph[], scale: number, tolerance: number): DrawnLetters => {
  const models = new Map<string, Model>();
  const marks: PlacedLetter[] = [];
  let count = 0;
  for (const g of glyphs) {
    const model = models.get(g.character) ?? modelOf(g, scale, tolerance);
    if (model.kind === 'unusable') return { kind: 'unusable', characters: [g.character] };
    models.set(g.character, model);
    count += model.contours.reduce((sum, c) => sum + c.segments.length, 0);
    if (count > MOST_SEGMENTS) return { kind: 'too many' };
    if (model.contours.length > 0) marks.push(markAt(g, model));
  }
  if (marks.length === 0) return { kind: 'empty' };
  const pairs = marks.flatMap((m, i) =>
    marks
      .slice(i + 1)
      .filter((n) => meet(m.box, n.box))
      .map((n) => [m, n] as const),
  );
  const together = pairs.filter(([a, b]) => runTogether(a.contours, b.contours));
  const all = united(
    marks.flatMap((m) => m.contours),
    WITHIN,
  );
  if (all.kind === 'broken') return { kind: 'unusable', characters: pairs.map(([a, b]) => a.character + b.character) };
  const box = mergedBounds(all.contours.map(boundsOfChain));
  const move = { x: -(box.minX + box.maxX) / 2, y: -(box.minY + box.maxY) / 2 };
  const used = [...models.values()].flatMap((m) => (m.kind === 'model' ? [m] : []));
  const deviation = Math.max(...used.map((m) => m.deviation));
  return {
    kind: 'letters',
    contours: all.contours.map((c) => transformChain(translation(move.x, move.y), c)),
    // Corners of what was united may have moved by twice what counts as one place.
    deviation: deviation === 0 ? 0 : deviation + 2 * WITHIN,
    together: [...new Set(together.map(([a, b]) => a.character + b.character))],
    inParts: [...models].flatMap(([character, m]) =>
      m.kind === 'model' && m.contours.filter((c) => areaOf(c) > 0).length > 1 ? [character] : [],
    ),
    origin: { x: firstItem(marks).at.x + move.x, y: firstItem(marks).at.y + move.y },
  };
};

type Model = { readonly kind: 'model'; readonly contours: readonly Contour[]; readonly deviation: number } | { readonly kind: 'unusable' };

/** A character about its origin, drawn once however often it comes; its own parts that lie over each other are one. */
const modelOf = ({ glyph }: PlacedGlyph, scale: number, tolerance: number): Model => {
  const drawn: DrawnOutlines = drawOutlines(glyph.outlines, (p) => ({ x: p.x * scale, y: p.y * scale }), tolerance);
  if (drawn.kind === 'unfitted') return { kind: 'unusable' };
  const whole = united(drawn.contours, WITHIN);
  return whole.kind === 'broken' ? { kind: 'unusable' } : { kind: 'model', contours: whole.contours, deviation: drawn.deviation };
};

interface PlacedLetter {
  readonly character: string;
  readonly at: Point;
  readonly contours: readonly Contour[];
  readonly box: Bounds;
}

const markAt = ({ character, at }: PlacedGlyph, { contours }: { readonly contours: readonly Contour[] }): PlacedLetter => {
  const there = contours.map((c) => transformChain(translation(at.x, at.y), c));
  return { character, at, contours: there, box: mergedBounds(there.map(boundsOfChain)) };
};

const meet = (a: Bounds, b: Bounds): boolean =>
  a.minX <= b.maxX + WITHIN && b.minX <= a.maxX + WITHIN && a.minY <= b.maxY + WITHIN && b.minY <= a.maxY + WITHIN;

/** Boxes of slanted letters overlap often; the letters do where less comes out of both than was put in. */
const runTogether = (a: readonly Contour[], b: readonly Contour[]): boolean => {
  const both = united([...a, ...b], WITHIN);
  const area = (cs: readonly Contour[]): number => cs.reduce((sum, c) => sum + areaOf(c), 0);
  return both.kind === 'broken' || both.contours.length !== a.length + b.length || area(a) + area(b) - area(both.contours) > 1e-9;
};
