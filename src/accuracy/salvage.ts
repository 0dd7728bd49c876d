/** Whether a part that was measured can be saved by another skim over the same path. */

import type { CutPlan, Pass } from '../plan/plan.ts';
import { leastReach } from './correction-safety.ts';
import type { Deviation, NewRegister } from './registers.ts';

/** All per side; the amounts in µm. */
export type Salvage =
  | { readonly kind: 'good as it is'; readonly off: number; readonly sentence: string }
  | {
      readonly kind: 'another skim';
      readonly takes: number;
      /** Pass whose condition to begin with; those after it follow. */
      readonly from: number;
      /** Whether what is taken reaches below the damage that the last pass left. */
      readonly cleans: boolean;
      readonly sentence: string;
    }
  /** There is metal, but the register to reach it would leave the wire no gap: something else is wrong. */
  | { readonly kind: 'out of reach'; readonly takes: number; readonly sentence: string }
  | { readonly kind: 'metal gone'; readonly missing: number; readonly sentence: string };

/** More than this times the stock of a skim is too much for its condition. */
const MOST_BITE = 1.5;

export interface SalvageQuestion {
  readonly plan: Pick<CutPlan, 'passes' | 'wire'>;
  /** Those that this contour by itself would want, one for each pass. */
  readonly registers: readonly NewRegister[];
  /** Either side of the drawing, mm. */
  readonly tolerance: number;
}

export const salvageOf = ({ measured, left }: Deviation, question: SalvageQuestion): Salvage => {
  const { plan, registers, tolerance } = question;
  const off = left.value * 1000;
  const where = measured.loop;
  if (Math.abs(off) <= tolerance * 1000 * (1 + 1e-9))
    return {
      kind: 'good as it is',
      off,
      sentence: `${where} is good as it is: ${µm(Math.abs(off))} of metal ${off >= 0 ? 'left' : 'gone'} per side, ±${µm(tolerance * 1000)} are allowed.`,
    };
  if (off < 0)
    return {
      kind: 'metal gone',
      missing: -off,
      sentence: `${where} cannot be saved by cutting: ${µm(-off)} of metal are gone per side. The correction is for the next piece.`,
    };
  const least = leastReach(plan);
  const last = registers.at(-1)!;
  if (last.after.value < least)
    return {
      kind: 'out of reach',
      takes: off,
      sentence: `${where} has ${µm(off)} of metal left per side, but to reach it D${last.register} would have to be ${last.after.value.toFixed(4)} mm, and the wire with its least gap needs ${least.toFixed(4)} mm. Look first why so much was left.`,
    };
  return skimOf(where, off, measured.kept === 'punch', question);
};

const skimOf = (where: string, takes: number, part: boolean, { plan: { passes }, registers }: SalvageQuestion): Salvage => {
  const from = beginWith(passes, takes);
  const damage = passes.at(-1)!.damage.value;
  const cleans = takes >= damage;
  const first = from === passes.length ? `pass ${from}` : `passes ${from} to ${passes.length}`;
  const surface = cleans
    ? `That reaches below the ${µm(damage)} of damage that the last pass left: the surface comes out clean.`
    : `That is less than the ${µm(damage)} of damage that the last pass left: the size comes right, but only the peaks are skimmed off the surface.`;
  const set = registers
    .filter((r) => r.pass >= from)
    .map((r) => `D${r.register} at ${r.after.value.toFixed(4)} mm`)
    .join(', ');
  const held = part
    ? ' Only while the part still stands on its tab or in its clamp.'
    : ' Only while the block still stands as it was clamped.';
  return {
    kind: 'another skim',
    takes,
    from,
    cleans,
    sentence: `${where} can be saved: ${first} once more over the same path with ${set} ${from === passes.length ? 'takes' : 'take'} ${µm(takes)} per side. ${surface}${held}`,
  };
};

/** The last pass whose usual bite is not much less than what is to be taken; what a pass takes is the stock that the one before left more. */
const beginWith = (passes: readonly Pass[], takes: number): number => {
  for (let i = passes.length - 1; i > 0; i -= 1) {
    const bite = (passes[i - 1]!.stock.value - passes[i]!.stock.value) * 1000;
    if (takes <= bite * MOST_BITE) return passes[i]!.number;
  }
  return passes.length === 1 ? 1 : 2;
};

const µm = (value: number): string => `${value.toFixed(1)} µm`;
