/** The steps of an opening that is cut without a core: no slug, no tab, and nobody is needed. */

import { from } from '../../geometry/frame.ts';
import type { Layout, Visit } from '../path/contour-layout.ts';
import { cut, type DesignStep } from '../path/design-step.ts';
import { afterOverlap, skimming } from '../path/die.ts';
import { along, facing, plain, straightIn, straightOut } from '../path/leads.ts';
import { skimRounds } from '../path/turning.ts';
import type { CorePath } from './core-path.ts';

/** To the end, from one threading. */
export const noCoreAttended = (layout: Layout, core: CorePath): readonly Visit[] => {
  const standing = afterOverlap(layout);
  const steps: DesignStep[] = [
    ...roughing(layout, core),
    ...straightOut(layout.laps[0], layout.measures.overlap, 1, standing.at),
    ...skimRounds(layout, standing),
    { kind: 'cut wire' },
  ];
  return [{ kind: 'whole', steps }];
};

/** All roughs of the block first: the core and the rough cut by themselves, the skims later. */
export const noCoreUnattended = (layout: Layout, core: CorePath): readonly Visit[] => {
  const out = straightOut(layout.laps[0], layout.measures.overlap, 1, afterOverlap(layout).at);
  const visits: Visit[] = [{ kind: 'rough', steps: [...roughing(layout, core), ...out, { kind: 'cut wire' }] }];
  return layout.laps.length === 1 ? visits : [...visits, { kind: 'skims', steps: skimming(layout) }];
};

/** From the hole outward ring by ring without compensation, then the rough cut all round at once. */
const roughing = (layout: Layout, core: CorePath): DesignStep[] => {
  const { laps, hole, measures } = layout;
  const rough = laps[0];
  const round = rough.lap.length;
  const over = from(facing(rough, 0, 1), 0, rough.lap.offset);
  const before = from(facing(rough, 0, 1), 0, rough.lap.offset + STEP_BACK);
  const start = core.ends === 'over the entry' ? before : core.end;
  return [
    { kind: 'thread', at: hole },
    { kind: 'condition', pass: 1 },
    ...core.segments.map((s) => cut(1, 'core', { programmed: s, centre: s })),
    ...(core.ends === 'over the entry' ? plain(1, over, before, 'approach') : []),
    ...straightIn(rough, start, 0, 1),
    ...along(rough, 0, round, 'contour'),
    ...along(rough, round, round + measures.overlap, 'overlap'),
  ];
};

/** Away from the contour, mm, so that compensation comes on over a straight move towards it. */
const STEP_BACK = 0.1;
