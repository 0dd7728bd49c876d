/** Contours that are begun from the edge of the block instead of from a hole: where the wire stands, and what is said of it. */

import { windingIn } from '../../geometry/near/inside.ts';
import { type Lookup, nearestIn } from '../../geometry/near/lookup.ts';
import { type Line, line, type Point } from '../../geometry/segment.ts';
import { type Finding, remedy } from '../../text/finding.ts';
import { contour, type Part, term } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { find } from '../findings.ts';
import type { ContourPlan, StartHole } from '../plan.ts';
import { spot } from '../said.ts';

/** The wire stands this much clear of the block, mm, besides half its kerf. */
const CLEAR = 1;

/** A way out of the block is not looked for any further, mm. */
const FARTHEST = 2000;

/**
 * How far to go from a place before the wire stands clear outside the block, mm; none where no way leads out. Steps by the distance
 * to the edge, so that it never passes a good place by much.
 */
export const wayOutOfBlock = (at: Point, way: Point, edge: Lookup, halfKerf: number): number | undefined => {
  const need = CLEAR + halfKerf;
  for (let gone = 0, steps = 0; gone < FARTHEST && steps < 2000; steps += 1) {
    const p = { x: at.x + way.x * gone, y: at.y + way.y * gone };
    const { distance } = nearestIn(edge, p);
    const outside = windingIn(edge, p) === 0;
    if (outside && distance >= need - 1e-9) return gone;
    gone += Math.max(0.02, outside ? need - distance : distance);
  }
  return undefined;
};

/** No hole: the wire is threaded beside the block. */
export const besideBlock = (at: Point): StartHole => ({ at, diameter: 0, origin: 'block edge' });

/** The slit that such an opening leaves in the block, from beside the block to its entry. */
export const slitOf = ({ hole, entry, kept }: Pick<ContourPlan, 'hole' | 'entry' | 'kept'>): Line | undefined =>
  hole.origin === 'block edge' && kept === 'die' ? line(hole.at, entry.at) : undefined;

/** A frame that is cut open gives way. */
export const openedFrame = ({ loop, hole, kept }: Pick<ContourPlan, 'loop' | 'hole' | 'kept'>): Finding =>
  find(
    'frame-cut-open',
    say`${{ loop: contour(loop) }} is started from the block edge, at ${{ at: spot(hole.at) }}, as you specified. ${{ so: kept === 'die' ? words.slit : words.frame }}`,
    {
      place: { kind: 'spot', x: hole.at.x, y: hole.at.y, reach: 2, loop },
      remedy: say`Start it from a hole inside the block where accuracy matters: a closed frame is stiffer (common practice).`,
    },
  );

const words = phrases('frame-opened', {
  slit: say`The lead-in stays as a slit in the block; the ring around the opening is cut through there and springs.`,
  frame: say`The frame around the part is cut through there and springs.`,
});

/** Nothing to start from on that side. */
export const noWayIn = (shape: Part | Text, loop: string, at: Point): Finding =>
  find(
    'no-way-in-from-edge',
    say`No straight lead-in from the block edge to ${{ shape }} clears everything else and leaves the loose piece whole.`,
    {
      place: { kind: 'spot', x: at.x, y: at.y, reach: 2, loop },
      remedy: remedy(say`Leave ${{ field: term(`start.${loop}`) }} out, so that it starts from a hole.`, { field: `start.${loop}` }),
    },
  );
