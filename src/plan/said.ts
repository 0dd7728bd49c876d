/** What comes up in many sentences of the plan: places, widths, and lists of contours that end before they get long. */
import type { Point } from '../geometry/segment.ts';
import { contour, count, fixed, list, mm, type Part, place } from '../text/part.ts';
import { phrases, say } from '../text/say.ts';
import type { Text } from '../text/text.ts';

/** '(12.500, 3.000)'. */
export const spot = (at: Point): Part => place(at, fixed(3));

/** '0.254 mm': to the thousandth, zeros kept, as widths are held against each other. */
export const thousandths = (millimetres: number): Part => mm(millimetres, fixed(3));

/** As many are named in one sentence. */
export const NAMED = 12;

/** 'L1, L2 and L3', or with commas alone; of a long list the first, and how many more there are. */
export const someOf = (items: readonly (Part | Text)[], joined: 'and' | 'comma'): Part | Text =>
  items.length > NAMED ? words.more(items.slice(0, NAMED), items.length - NAMED) : list(items, joined);

export const someLoops = (ids: readonly string[], joined: 'and' | 'comma'): Part | Text => someOf(ids.map(contour), joined);

const words = phrases('plan-list', {
  more: (named: readonly (Part | Text)[], more: number) => say`${{ named: list(named) }} and ${{ more: count(more) }} more`,
});
