/** Fundamental deviations d, e and f by the pitch diameter, which make the teeth of a shaft thinner for a looser fit. */

const STEPS = [3, 6, 10, 18, 30, 50, 80, 120, 180, 250, 315, 400, 500, 630, 800, 1000] as const;

/** By so many µm thinner. */
const DEVIATIONS: Readonly<Record<'d' | 'e' | 'f', readonly number[]>> = {
  d: [20, 30, 40, 50, 65, 80, 100, 120, 145, 170, 190, 210, 230, 260, 290, 320],
  e: [14, 20, 25, 32, 40, 50, 60, 72, 85, 100, 110, 125, 135, 145, 160, 170],
  f: [6, 10, 13, 16, 20, 25, 30, 36, 43, 50, 56, 62, 68, 76, 80, 86],
};

/** mm, 0 or below; `none` above 1000 mm, where the standard has none. */
export const fundamentalDeviation = (letter: 'd' | 'e' | 'f' | 'h', diameter: number): number | 'none' => {
  if (letter === 'h') return 0;
  const value = DEVIATIONS[letter][STEPS.findIndex((end) => diameter <= end)];
  return value === undefined ? 'none' : -value / 1000;
};
