/** A curve of a drawing as arc fitting wants it, with the seams between its pieces. */
import type { FitCurve } from '../../geometry/make/fit-curve.ts';

export interface ParametricCurve extends FitCurve {
  /** Parameters between start and end where one smooth piece ends and the next begins, whether or not there is a corner. */
  readonly seams: readonly number[];
}
