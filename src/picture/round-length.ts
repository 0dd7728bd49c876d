/** Round lengths for scale bars, and round factors by which small lengths are drawn larger. */

/** The largest of 1, 2 and 5 times a power of ten that is not above a positive number. */
export const roundBelow = (most: number): number => {
  const power = 10 ** Math.floor(Math.log10(most) + 1e-12);
  return Number((([5, 2, 1].find((n) => n * power <= most * (1 + 1e-9)) ?? 1) * power).toPrecision(1));
};
