/** Whether a part that was measured can be saved by another skim over the same path. */

import type { CutPlan, Pass } from '../plan/plan.ts';
import { lastItem, lastOf, neighbours } from '../sequence/sequence.ts';
import { contour, count, fixed, limit, list, mm, type Part, quantities, term, um } from '../text/part.ts';
import { phrases, say } from '../text/say.ts';
import type { Text } from '../text/text.ts';
import { leastReach } from './correction-safety.ts';
import type { Deviation, NewRegister } from './registers.ts';

/** All per side; the amounts in µm. */
export type Salvage =
  | { readonly kind: 'good as it is'; readonly off: number; readonly sentence: Text }
  | {
      readonly kind: 'another skim';
      readonly takes: number;
      /** Pass whose condition to begin with; those after it follow. */
      readonly from: number;
      /** Whether what is taken reaches below the damage that the last pass left. */
      readonly cleans: boolean;
      readonly sentence: Text;
    }
  /** There is metal, but the register to reach it would leave the wire no gap: something else is wrong. */
  | { readonly kind: 'out of reach'; readonly takes: number; readonly sentence: Text }
  | { readonly kind: 'metal gone'; readonly missing: number; readonly sentence: Text };

/** More than this times the stock of a skim is too much for its condition. */
const MOST_BITE = 1.5;

export interface SalvageQuestion {
  readonly plan: Pick<CutPlan, 'passes' | 'wire'>;
  /** Those that this contour by itself would want, one for each pass. */
  readonly registers: readonly NewRegister[];
  /** Either side of the drawing, mm. */
  readonly tolerance: number;
}

const words = phrases('salvage', {
  left: (loop: Part, left: Part, allowed: Part) =>
    say`${{ loop }} is good as it is: ${{ left }} stock left per side, ${{ allowed }} allowed.`,
  gone: (loop: Part, gone: Part, allowed: Part) => say`${{ loop }} is good as it is: ${{ gone }} overcut per side, ${{ allowed }} allowed.`,
  lost: (loop: Part, gone: Part) =>
    say`${{ loop }} cannot be saved by cutting: ${{ gone }} overcut per side. The correction is for the next piece.`,
  outOfReach: (loop: Part, left: Part, register: Part, value: Part, least: Part) =>
    say`${{ loop }} has ${{ left }} stock left per side, but to remove it ${{ register }} would have to be ${{ value }}, and the wire with its smallest gap needs ${{ least }}. First find out why so much was left.`,
  lastAgain: (loop: Part, pass: Part, registers: Part, takes: Part, surface: Text, held: Text) =>
    say`${{ loop }} can be saved: repeat pass ${{ pass }} on the same path with ${{ registers }}; it takes ${{ takes }} per side. ${{ surface }} ${{ held }}`,
  severalAgain: (loop: Part, passes: Part, registers: Part, takes: Part, surface: Text, held: Text) =>
    say`${{ loop }} can be saved: repeat passes ${{ passes }} on the same path with ${{ registers }}; they take ${{ takes }} per side. ${{ surface }} ${{ held }}`,
  set: (register: Part, value: Part) => say`${{ register }} at ${{ value }}`,
  clean: (damage: Part) => say`That goes below the ${{ damage }} of damage left by the last pass: the surface comes out clean.`,
  peaks: (damage: Part) =>
    say`That is less than the ${{ damage }} of damage left by the last pass: the size comes right, but the surface only loses its peaks.`,
  part: say`Only while the part is still on its tab or in its clamp.`,
  block: say`Only while the block is still clamped as it was.`,
});

export const salvageOf = ({ measured, left }: Deviation, question: SalvageQuestion): Salvage => {
  const { plan, registers, tolerance } = question;
  const off = left.value * 1000;
  const loop = contour(measured.loop);
  if (Math.abs(off) <= tolerance * 1000 * (1 + 1e-9)) {
    const good = off >= 0 ? words.left : words.gone;
    return { kind: 'good as it is', off, sentence: good(loop, µm(Math.abs(off)), limit(tolerance * 1000, 'µm', fixed(1))) };
  }
  if (off < 0) return { kind: 'metal gone', missing: -off, sentence: words.lost(loop, µm(-off)) };
  const least = leastReach(plan);
  const last = lastItem(registers);
  if (last.after.value < least) {
    const needed = [registerOf(last), mm(last.after.value, fixed(4)), mm(least, fixed(4))] as const;
    return { kind: 'out of reach', takes: off, sentence: words.outOfReach(loop, µm(off), ...needed) };
  }
  return skimOf(loop, off, measured.kept === 'punch', question);
};

const skimOf = (loop: Part, takes: number, part: boolean, { plan: { passes }, registers }: SalvageQuestion): Salvage => {
  const from = beginWith(passes, takes);
  const damage = lastOf(passes).damage.value;
  const cleans = takes >= damage;
  const set = list(registers.filter((r) => r.pass >= from).map((r) => words.set(registerOf(r), mm(r.after.value, fixed(4)))));
  const surface = cleans ? words.clean(µm(damage)) : words.peaks(µm(damage));
  const held = part ? words.part : words.block;
  const sentence =
    from === lastOf(passes).number
      ? words.lastAgain(loop, count(from), set, µm(takes), surface, held)
      : words.severalAgain(loop, quantities([from, lastOf(passes).number], 'to', '1', fixed(0)), set, µm(takes), surface, held);
  return { kind: 'another skim', takes, from, cleans, sentence };
};

const registerOf = ({ register }: NewRegister): Part => term(`D${register}`);

/** The last pass whose usual bite is not much less than what is to be taken; what a pass takes is the stock that the one before left more. */
const beginWith = (passes: readonly Pass[], takes: number): number => {
  const found = neighbours(passes).findLast(([before, pass]) => takes <= (before.stock.value - pass.stock.value) * 1000 * MOST_BITE);
  if (found !== undefined) return found[1].number;
  return (passes[1] ?? passes[0])?.number ?? 1;
};

const µm = (value: number): Part => um(value, fixed(1));
