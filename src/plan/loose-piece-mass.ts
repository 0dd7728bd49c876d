/** Masses as an operator reads them. */
import { fixed, type Part, quantity } from '../text/part.ts';
import { phrases, say } from '../text/say.ts';
import type { Text } from '../text/text.ts';

/** A mass as an operator reads it: '12 g', '0.13 kg', '4.2 kg'. */
export const saidMass = (kg: number): Part | Text => {
  if (kg < 0.001) return words.under;
  if (kg < 0.1) return quantity(kg * 1000, 'g', fixed(kg < 0.01 ? 1 : 0));
  return quantity(kg, 'kg', fixed(kg < 1 ? 2 : 1));
};

const words = phrases('piece-mass', { under: say`under ${{ least: quantity(1, 'g') }}` });
