/** Lengths that leads, overlaps and turnings are laid out with, from the offsets of the passes. All in mm. */

import type { LadderRow } from '../../physics/cut/pass-rows.ts';
import { lastOf, mapFilled, type NonEmpty } from '../../sequence/sequence.ts';
import { kerfOf } from '../rough-cut.ts';

export interface Measures {
  /** Past the entry, so that no burr is left there. */
  readonly overlap: number;
  /** Past what is finished already, when the tab stretch is finished later. */
  readonly blend: number;
  /** Straight way back along the kerf to where compensation is off, where there is no room beside it. */
  readonly retreat: number;
  /** Straight before a lead arc within the kerf, on which compensation comes on; more than twice any skim's offset. */
  readonly runUp: number;
  /** How far the rough cut goes into the waste beyond the lead arcs, so that skims find a way in. */
  readonly stub: number;
  /** Radius of programmed lead arcs that hardly leave the kerf of the rough cut. */
  readonly kerfLead: number;
  /** Per pass, from the wire centre to the wanted surface. */
  readonly offsets: NonEmpty<number>;
  /** Width of the rough cut. */
  readonly kerf: number;
}

/** Radius of the wire centre's lead arc where there is room for it. */
export const ROOMY_LEAD = 1;

/** Less room than this beside the rough cut, and the wire turns round within its kerf. */
export const LEAST_ROOM = 0.08;

export const measuresOf = (rows: NonEmpty<LadderRow>, diameter: number): Measures => {
  const offsets = mapFilled(rows, (r) => r.offset.value);
  const [rough] = offsets;
  const skim = offsets[1] ?? rough;
  // A skim's sparks jump less far than the rough's, so its wire can be this much further out and still find no metal.
  const [first, second] = rows;
  const slack = second === undefined ? 0.01 : first.gap.value - second.gap.value;
  return {
    overlap: 0.3,
    blend: 0.3,
    retreat: Math.max(0.3, 1.5 * rough),
    runUp: 2.2 * skim,
    stub: 0.25,
    kerfLead: rough + 0.6 * slack,
    offsets,
    kerf: kerfOf({ wire: { diameter }, rows }),
  };
};

/** Beyond each end of a part's tab, mm: there the skims of the tab begin and end, past where the others did by the blend. */
export const beyondTab = ({ overlap, blend, kerfLead, offsets }: Measures): number =>
  offsets.length === 1 ? overlap : blend + 2 * (kerfLead - lastOf(offsets));
