/** What the verdict says of the tolerance. */
import { expect, it } from 'vitest';
import { printPlain } from '../text/print/print.ts';
import { toleranceTold } from './tolerance-told.ts';

const use = { tolerance: 0.008, allowed: 0.002, measured: 0.0015, fit: 0 };

it('names what was aimed at, what was measured, the share, the limit and what is expected of the machine', () => {
  expect(printPlain(toleranceTold(use, 0.0041))).toBe(
    'Aimed at the drawn contours and measured 1.5 µm off them at most; of the ±0.008 mm tolerance the program may use 2 µm, the rest is for the machine, of which ±0.0041 mm is expected.',
  );
});

it('says whether the machine fits in where it needs more than the share leaves it', () => {
  expect(printPlain(toleranceTold(use, 0.0059))).toMatch(/, of which ±0\.0059 mm is expected\.$/);
  expect(printPlain(toleranceTold(use, 0.0064))).toMatch(
    / may use 2 µm and uses less, so that the ±0\.0064 mm expected of the machine fits in\.$/,
  );
  expect(printPlain(toleranceTold(use, 0.0066))).toMatch(/, and the rest does not hold the ±0\.0066 mm expected of the machine\.$/);
  expect(printPlain(toleranceTold({ ...use, fit: 0.0004 }, 0.0064))).toMatch(/, and the rest does not hold the ±0\.0064 mm/);
});

it('names the fit of curves, and nothing of a machine that nobody knows', () => {
  expect(printPlain(toleranceTold({ ...use, fit: 0.0004 }))).toBe(
    'Aimed at the drawn contours, measured 1.5 µm off them at most, where arcs stand for curves that may lie 0.4 µm beside them; of the ±0.008 mm tolerance the program may use 2 µm, the rest is for the machine.',
  );
});
