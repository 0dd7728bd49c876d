/** The contours of a plan under the numbers that every table and picture uses. */

import type { ContourPlan, CutPlan } from './plan.ts';

/** Contours in the order in which they are first cut, numbered from 1: the number every table and picture uses. */
export const numbered = (plan: CutPlan): readonly NumberedContour[] => {
  const rank = new Map(plan.order.map((loop, i) => [loop, i]));
  const last = rank.size;
  return plan.contours.toSorted((a, b) => (rank.get(a.loop) ?? last) - (rank.get(b.loop) ?? last)).map((c, i) => told(c, i + 1));
};

export type NumberedContour = ContourPlan & { readonly number: number };

/** Paths stay what is made anew at every asking: thousands of contours would each keep a copy. */
const told = (contour: ContourPlan, number: number): NumberedContour => {
  const { loop, kept, hole, entry, piece, tab, corner, core, overrides } = contour;
  return {
    number,
    loop,
    kept,
    hole,
    entry,
    piece,
    tab,
    corner,
    core,
    overrides,
    get comesOut() {
      return contour.comesOut;
    },
    get courses() {
      return contour.courses;
    },
  };
};
