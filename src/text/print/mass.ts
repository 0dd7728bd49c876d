/** Printing of masses: grams below one kilogram, kilograms above. */

/** '0.4 g', '123.4 g', '1.155 kg' from kilograms: up to four significant digits. */
export const printMass = (kilograms: number): string => {
  const inKilograms = Math.abs(kilograms) >= 0.99995;
  return `${Number((inKilograms ? kilograms : kilograms * 1000).toPrecision(4))} ${inKilograms ? 'kg' : 'g'}`;
};
