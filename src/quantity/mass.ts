/** Printing of masses: grams below one kilogram, kilograms above. */
import { printNumber } from './print.ts';

/** '0.42 g', '850 g', '1.155 kg' from kilograms, with three or so significant digits. */
export const printMass = (kilograms: number): string => {
  const size = Math.abs(kilograms);
  if (size >= 0.9995) return `${printNumber(kilograms, significantStep(kilograms))} kg`;
  return `${printNumber(kilograms * 1000, significantStep(kilograms * 1000))} g`;
};

/** The standard deviation that lets four significant digits be printed from 1 on, three below. */
const significantStep = (value: number): number => (Math.abs(value) >= 1 && Math.abs(value) < 10 ? 0.01 : Math.abs(value) / 100);
