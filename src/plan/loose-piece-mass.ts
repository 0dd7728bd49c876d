/** Masses as an operator reads them. */

/** A mass as an operator reads it: '12 g', '0.13 kg', '4.2 kg'. */
export const spokenMass = (kg: number): string => {
  if (kg < 0.001) return 'less than 1 g';
  if (kg < 0.1) return `${(kg * 1000).toFixed(kg < 0.01 ? 1 : 0)} g`;
  return `${kg.toFixed(kg < 1 ? 2 : 1)} kg`;
};
