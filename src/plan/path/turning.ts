/** Skims to and fro: each begins where the one before ended, turned round beside the contour without rethreading. */

import { from } from '../../geometry/frame.ts';
import type { Point } from '../../geometry/segment.ts';
import type { Layout } from './contour-layout.ts';
import type { DesignStep } from './design-step.ts';
import { along, arcIn, arcOut, facing, type PassLap, type Way } from './leads.ts';

/** Where the wire stands with compensation off, and from where and which way the next skim runs. */
export interface Standing {
  readonly at: Point;
  /** Length travelled at which the next skim meets the contour, and the way it takes. */
  readonly meets: number;
  readonly way: Way;
}

/** Radius of a pass's lead arc as the wire centre runs it: also how far along the contour the arc reaches. */
export const advance = (layout: Layout, p: PassLap): number => layout.lead - p.lap.offset;

/** Where compensation is off before a skim that meets the contour at `meets` going `way`. */
export const startingPoint = (layout: Layout, p: PassLap, meets: number, way: Way): Point => pointBeside(layout, p, meets, way, -1);

/** The same after it has left. */
const endingPoint = (layout: Layout, p: PassLap, leaves: number, way: Way): Point => pointBeside(layout, p, leaves, way, 1);

/** In the open the centre of the lead arc itself; in the kerf behind the arc; in stubs above the arc's outer end. */
const pointBeside = (layout: Layout, p: PassLap, at: number, way: Way, sense: 1 | -1): Point => {
  const { lead, turning, measures } = layout;
  const frame = facing(p, at, way);
  if (turning === 'in the open') return from(frame, 0, lead);
  if (turning === 'in the kerf') return from(frame, sense * (advance(layout, p) + measures.runUp), lead);
  return from(frame, sense * advance(layout, p), lead + measures.stub);
};

/** Every skim round the whole contour, past its start by the overlap. */
export const skimRounds = (layout: Layout, standing: Standing): DesignStep[] => {
  const { overlap } = layout.measures;
  return toAndFro(layout, standing, (p, meets, way) => {
    const round = meets + way * p.lap.length;
    return {
      leaves: round + way * overlap,
      settles: meets + way * overlap,
      parts: [
        [round, 'contour'],
        [round + way * overlap, 'overlap'],
      ],
    };
  }).steps;
};

type Part = 'contour' | 'tab' | 'overlap';

/** What one skim does: where it leaves the contour, that place told from the nearest entry, and the parts on the way, each by its end. */
interface Course {
  readonly leaves: number;
  readonly settles: number;
  readonly parts: readonly (readonly [end: number, part: Part])[];
}

/** Runs every pass but the rough, each the other way than the one before. */
export const toAndFro = (
  layout: Layout,
  start: Standing,
  course: (p: PassLap, meets: number, way: Way) => Course,
): { readonly steps: DesignStep[]; readonly standing: Standing } => {
  const steps: DesignStep[] = [];
  let standing = start;
  const skims = layout.laps.slice(1);
  skims.forEach((p, i) => {
    const { at, meets, way } = standing;
    const { leaves, settles, parts } = course(p, meets, way);
    const end = endingPoint(layout, p, leaves, way);
    steps.push({ kind: 'condition', pass: p.pass }, ...arcIn(p, at, meets, way, layout.lead));
    let here = meets;
    for (const [to, part] of parts) {
      steps.push(...along(p, here, to, part));
      here = to;
    }
    steps.push(...arcOut(p, leaves, way, layout.lead, end));
    const next = skims[i + 1] ?? p;
    // The next arc, a little wider, has to begin where this one ended; in the open both swing about one point.
    const shift = layout.turning === 'in the open' ? 0 : way * (advance(layout, p) - advance(layout, next));
    standing = { at: end, meets: settles + shift, way: way === 1 ? -1 : 1 };
  });
  return { steps, standing };
};
