/** What the tolerance is used for, in words: what the program was aimed at, how far off it is, its share, and what is left for the machine. */

import type { ToleranceUse } from '../proof/proof.ts';
import { fixed, limit, type Part, promised, um } from '../text/part.ts';
import { phrases, say } from '../text/say.ts';
import type { Text } from '../text/text.ts';

/** mm: what the program itself takes of the tolerance, fit of curves and all; nothing where it was not judged. */
export const usedByProgram = (use: ToleranceUse | undefined): number => (use === undefined ? 0 : use.measured + use.fit);

/** @param expected mm, of the machine's own error; left out where nobody knows it. */
export const toleranceTold = (use: ToleranceUse, expected?: number): Text => {
  const { tolerance, allowed, measured, fit } = use;
  const aimed = fit > 0 ? words.curves(micrometres(measured), micrometres(fit)) : words.contours(micrometres(measured));
  const may = um(allowed * 1000);
  if (expected === undefined) return words.used(aimed, limit(tolerance), may);
  const ofMachine = promised(expected);
  return saidOf(expected, use)(aimed, limit(tolerance), may, ofMachine);
};

/** The machine may need more than the program leaves it at the worst; what counts then is what the program does use. */
const saidOf = (expected: number, use: ToleranceUse): typeof words.usedAndExpected => {
  if (expected <= use.tolerance - use.allowed) return words.usedAndExpected;
  return expected + usedByProgram(use) <= use.tolerance ? words.usedLess : words.usedAndTooMuch;
};

const micrometres = (millimetres: number): Part => um(millimetres * 1000, fixed(1));

const words = phrases('tolerance-used', {
  contours: (off: Part) => say`Aimed at the drawn contours and measured ${{ off }} off them at most`,
  curves: (off: Part, fit: Part) =>
    say`Aimed at the drawn contours, measured ${{ off }} off them at most, where arcs stand for curves that may lie ${{ fit }} beside them`,
  used: (aimed: Text, whole: Part, may: Part) =>
    say`${{ aimed }}; of the ${{ whole }} tolerance the program may use ${{ may }}, the rest is for the machine.`,
  usedAndExpected: (aimed: Text, whole: Part, may: Part, expected: Part) =>
    say`${{ aimed }}; of the ${{ whole }} tolerance the program may use ${{ may }}, the rest is for the machine, of which ${{ expected }} is expected.`,
  usedLess: (aimed: Text, whole: Part, may: Part, expected: Part) =>
    say`${{ aimed }}; of the ${{ whole }} tolerance the program may use ${{ may }} and uses less, so that the ${{ expected }} expected of the machine fits in.`,
  usedAndTooMuch: (aimed: Text, whole: Part, may: Part, expected: Part) =>
    say`${{ aimed }}; of the ${{ whole }} tolerance the program may use ${{ may }}, and the rest does not hold the ${{ expected }} expected of the machine.`,
});
