/** Money as whole units of the smallest coin: rounded once, half away from zero. */

/** Digits that a sum of money can have; what stands behind them comes from binary fractions, and would turn a half into less than one. */
const DIGITS = 12;

export const wholeMinor = (minor: number): number => {
  const whole = Math.round(Number(Math.abs(minor).toPrecision(DIGITS)));
  return whole === 0 ? 0 : Math.sign(minor) * whole;
};
