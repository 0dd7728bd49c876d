/** How far what is drawn reaches, and where in it there is room for a word. */
import { areaOf, boundsOfChain, mergedBounds } from '../geometry/area.ts';
import { reverseChain } from '../geometry/chain.ts';
import type { Chain, Contour } from '../geometry/contour.ts';
import type { Bounds } from '../geometry/measure.ts';
import { roomiestPoint } from '../geometry/near/roomiest.ts';
import { midpoint, type Point, type Segment } from '../geometry/segment.ts';

/** The box round all of it. */
export const extentOf = (drawn: readonly Chain[]): Bounds => mergedBounds(drawn.map(boundsOfChain));

/** The roomiest place within an outline and off its holes, whichever way round they run; `tolerance` as far as it may be missed. */
export const roomIn = (outline: Contour, holes: readonly Contour[], tolerance: number): { readonly at: Point; readonly distance: number } =>
  roomiestPoint({ outer: turned(outline, 1), holes: holes.map((h) => turned(h, -1)) }, tolerance);

const turned = (contour: Contour, sense: 1 | -1): Contour => (areaOf(contour) * sense > 0 ? contour : reverseChain(contour));

/** The middle of a stretch, and on which side of it a word stands clear of it. */
export const besideMiddle = ({ from, to }: Pick<Segment, 'from' | 'to'>): { readonly at: Point; readonly side: 'above' | 'right' } => ({
  at: midpoint(from, to),
  side: Math.abs(to.x - from.x) > Math.abs(to.y - from.y) ? 'above' : 'right',
});
