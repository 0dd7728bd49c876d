/** How wide the rough cut is, and how far it goes beyond the contour: nearer than that nothing may stand that is to stay. All in mm. */

import { kerf } from '../physics/cut/spark-gap.ts';
import type { Figure } from '../quantity/figure.ts';
import type { NonEmpty } from '../sequence/sequence.ts';

export interface RoughCut {
  readonly wire: { readonly diameter: number };
  /** The passes, the rough cut first. */
  readonly rows: NonEmpty<{ readonly offset: Figure; readonly gap: Figure }>;
}

/** From one face of the rough cut to the other. */
export const kerfOf = ({ wire, rows }: RoughCut): number => kerf.compute({ d: wire.diameter, gap: rows[0].gap.value });

/** From a contour to the far side of its rough cut. */
export const reachOf = (cut: RoughCut): number => cut.rows[0].offset.value + kerfOf(cut) / 2;
