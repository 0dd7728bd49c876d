/** The drawing commands of a glyph, as the parser gives them, as outlines; numbers that are none make it unusable. */
import type { Command } from 'opentype.js/dist/opentype.mjs';
import type { Point } from '../geometry/segment.ts';
import type { GlyphOutline, GlyphStep } from '../shapes/lettering/typeface.ts';

export type Outlines = { readonly kind: 'outlines'; readonly outlines: readonly GlyphOutline[] } | { readonly kind: 'unusable' };

/** Steps of one character at most: ornaments have some hundreds. */
const MOST_STEPS = 10_000;

/** @param em units of the font in an em. */
export const outlinesOf = (commands: readonly Command[], em: number): Outlines => {
  if (commands.length > MOST_STEPS) return { kind: 'unusable' };
  const outlines: { from: Point; steps: GlyphStep[] }[] = [];
  for (const c of commands) {
    if (c.type === 'Z') continue;
    const numbers = [c.x, c.y, ...(c.type === 'Q' || c.type === 'C' ? [c.x1, c.y1] : []), ...(c.type === 'C' ? [c.x2, c.y2] : [])];
    if (!numbers.every((n) => Number.isFinite(n) && Math.abs(n) < FARTHEST * em)) return { kind: 'unusable' };
    const to = { x: c.x, y: c.y };
    if (c.type === 'M') outlines.push({ from: to, steps: [] });
    else outlines.at(-1)?.steps.push(stepOf(c, to));
  }
  return { kind: 'outlines', outlines: outlines.filter((o) => o.steps.length > 0) };
};

/** In ems from the pen: what is farther is no letter. */
const FARTHEST = 50;

const stepOf = (c: Exclude<Command, { readonly type: 'M' | 'Z' }>, to: Point): GlyphStep => {
  if (c.type === 'L') return { kind: 'line', to };
  const first = { x: c.x1, y: c.y1 };
  return c.type === 'Q' ? { kind: 'quadratic', control: first, to } : { kind: 'cubic', first, second: { x: c.x2, y: c.y2 }, to };
};
