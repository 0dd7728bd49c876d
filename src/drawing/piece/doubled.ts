/** Keeps once the loops that are drawn more than once, however they are pieced together. */

import { pointAt } from '../../geometry/measure.ts';
import { distanceTo } from '../../geometry/near/distance.ts';
import { nearPoints } from '../../geometry/near/near-points.ts';
import { itemAt } from '../../sequence/sequence.ts';
import type { FoundLoop } from './loop-found.ts';
import type { WorkLimit } from './work-limit.ts';
import { spend } from './work-limit.ts';

export interface SingleLoops {
  readonly loops: readonly FoundLoop[];
  /** Each copy that was dropped, with the one that was kept. */
  readonly dropped: readonly { readonly copy: FoundLoop; readonly kept: FoundLoop }[];
}

/** @param within mm: two loops this near to each other everywhere are one. Visible copies are kept before hidden ones. */
export const dropDoubledLoops = (loops: readonly FoundLoop[], within: number, work: WorkLimit): SingleLoops => {
  const ordered = [...loops.filter((l) => !l.hidden), ...loops.filter((l) => l.hidden)];
  const near = nearPoints(ordered.length, 2 * within);
  const kept: FoundLoop[] = [];
  const dropped: { copy: FoundLoop; kept: FoundLoop }[] = [];
  ordered.forEach((loop, i) => {
    let twin: FoundLoop | undefined;
    near.visit(loop.middle, (j) => {
      if (!twin && sameLoop(loop, itemAt(ordered, j), within, work)) twin = itemAt(ordered, j);
    });
    spend(work, 1);
    if (twin) dropped.push({ copy: loop, kept: twin });
    else {
      near.add(i, loop.middle);
      kept.push(loop);
    }
  });
  return { loops: kept, dropped };
};

/** Size and bounds first, which tell nearly all pairs apart; then places of each on the other. */
const sameLoop = (a: FoundLoop, b: FoundLoop, within: number, work: WorkLimit): boolean => {
  spend(work, 1);
  if (Math.abs(a.area - b.area) > within * Math.max(a.perimeter, b.perimeter)) return false;
  const sides = ['minX', 'minY', 'maxX', 'maxY'] as const;
  if (sides.some((side) => Math.abs(a.bounds[side] - b.bounds[side]) > within)) return false;
  return liesOn(a, b, within, work) && liesOn(b, a, within, work);
};

/** Whether places spread over the first loop lie on the second: the ends and middles of up to 64 segments. */
const liesOn = (a: FoundLoop, b: FoundLoop, within: number, work: WorkLimit): boolean => {
  const { segments } = a.contour;
  const stride = Math.max(1, Math.floor(segments.length / 64));
  for (let i = 0; i < segments.length; i += stride) {
    spend(work, b.contour.segments.length);
    for (const share of [0, 0.29, 0.5]) if (distanceTo(b.contour, pointAt(itemAt(segments, i), share)) > within) return false;
  }
  return true;
};
