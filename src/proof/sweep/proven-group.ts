/** What is remembered of one proven group, in places measured from its origin. */
import type { Point } from '../../geometry/segment.ts';
import type { Measures } from './deviation.ts';
import type { Group } from './groups.ts';
import type { Outline } from './outline.ts';
import type { FreedPiece, Release } from './release.ts';
import type { Covered } from './unfinished.ts';

export interface GroupOutcome extends Pick<Release, 'fresh' | 'removed' | 'throughMetal' | 'starts' | 'inFull'> {
  readonly pieces: readonly (Omit<FreedPiece, 'loop' | 'openings'> & {
    readonly outline: Outline;
    readonly openings: readonly Outline[];
  })[];
  /** Run of each cut. */
  readonly runs: readonly number[];
  readonly measures: Measures['contours'];
  readonly open: Measures['open'];
  readonly openings: readonly Outline[];
  readonly covered: Covered;
}

export interface Proven {
  readonly group: Group;
  readonly origin: Point;
  readonly outcome: GroupOutcome;
  /** By travel of `outcome.throughMetal`: the cut of the group that it follows. */
  readonly travels: readonly number[];
}
