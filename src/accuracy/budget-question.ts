/** What the error budget of one profile or size is asked with, and the causes of error it knows. Lengths in mm. */

import type { Machine } from '../physics/cut/machine.ts';
import type { Material } from '../physics/material/material.ts';
import type { Pass } from '../plan/plan.ts';
import type { Figure } from '../quantity/figure.ts';
import type { NonEmpty } from '../sequence/sequence.ts';

/** °C of the part and its water or room, nominal; `swing` is one standard deviation of each. */
export interface Temperatures {
  readonly cutting: number;
  readonly measuring: number;
  readonly swing: number;
  /** The program is scaled for the temperature of cutting. */
  readonly scale?: boolean | undefined;
}

export const chilled: Temperatures = { cutting: 20, measuring: 20, swing: 1 };

/** What the budget is of. */
export type Toleranced =
  /** `extent`: of the largest contour, mm; a profile is judged about the middle of its contour, so that half of it grows. */
  | { readonly kind: 'profile'; readonly extent: number; readonly tightestPath?: number | undefined }
  /** A size over `sides` cut faces, mm: 2 across an opening or a part, 1 from a face that is not cut. */
  | { readonly kind: 'size'; readonly name: string; readonly length: number; readonly sides: 1 | 2 };

export interface BudgetQuestion {
  readonly of: Toleranced;
  /** Either side of the drawing, mm. */
  readonly tolerance: number;
  readonly passes: NonEmpty<Pick<Pass, 'formError' | 'gap'>>;
  readonly machine: Machine;
  readonly material: Material;
  /** Standard deviations of what is random that are promised. */
  readonly confidence?: number | undefined;
  /** Of the block's area, what is cut loose, 0 to 1. */
  readonly opened: number;
  readonly temperatures?: Temperatures | undefined;
  /** mm by which registers set by hand move the finished face. */
  readonly shift?: Figure | undefined;
  /** Begins the keys of all figures: 'budget' when left out. */
  readonly key?: string;
}

/** What causes a share. */
export type Cause =
  | 'register'
  | 'barrel'
  | 'corner'
  | 'thermal'
  | 'measuring'
  | 'temperature'
  | 'gap'
  | 'stress'
  | 'positioning'
  | 'repeatability';
