/** How places and sizes are written in the sentences of the drawing layer. */

import type { Point } from '../geometry/segment.ts';
import type { Place } from '../text/finding.ts';
import { count, type Part, place } from '../text/part.ts';
import { phrases, say } from '../text/say.ts';
import type { Text } from '../text/text.ts';
import type { DrawingUnits } from './drawing.ts';

/** A point in mm as the drawing has it: '(12.5, 3)'. */
export const point = (at: Point, units: DrawingUnits): Part => place({ x: at.x / units.millimetres, y: at.y / units.millimetres });

/** A point in mm as a place on the drawing; `reach` in mm. */
export const spot = (at: Point, units: DrawingUnits, reach?: number): Place & { readonly kind: 'spot' } => ({
  kind: 'spot',
  x: at.x / units.millimetres,
  y: at.y / units.millimetres,
  reach: reach === undefined ? undefined : reach / units.millimetres,
});

/** The first of some places, and how many there are beside it. */
export const firstOf = (at: Part, places: number): Part | Text => (places > 1 ? words.andOthers(at, places - 1) : at);

const words = phrases('place-in-file', {
  andOthers: (at: Part, others: number) => say`${{ at }} and at ${{ others: count(others, 'other place') }}`,
});
