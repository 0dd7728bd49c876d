/** Reads a decimal number out of bytes by a strict pattern, so that '1,5' or '1.0D+02' is never half read. */

/**
 * The number that stands in `bytes[start..end)`: sign, digits with at most one point, and an exponent after E or D (as
 * Fortran writes it). NaN when anything else stands there, also 'nan', '1,5' and what is too large for a number; the
 * caller turns that into a finding.
 *
 * Equal to `Number(text)` for every text that both accept: up to 2^53 a sum of digits is exact, and one multiplication
 * or division by an exact power of ten is rounded once (Clinger 1990). All other texts go the slow way.
 */
export const numberIn = (bytes: Uint8Array, start: number, end: number): number => {
  let i = start;
  let negative = false;
  const sign = bytes[i];
  if (sign === MINUS || sign === PLUS) {
    negative = sign === MINUS;
    i++;
  }
  let mantissa = 0;
  let digits = 0;
  let exponent = 0;
  let byte = bytes[i]!;
  for (; i < end && byte >= ZERO && byte <= NINE; byte = bytes[++i]!, digits++) mantissa = mantissa * 10 + (byte - ZERO);
  if (i < end && bytes[i] === POINT) {
    const point = ++i;
    byte = bytes[i]!;
    for (; i < end && byte >= ZERO && byte <= NINE; byte = bytes[++i]!, digits++) mantissa = mantissa * 10 + (byte - ZERO);
    exponent = point - i;
  }
  if (digits === 0) return Number.NaN;
  if (i === end && mantissa <= EXACT && exponent >= -22) {
    const size = exponent === 0 ? mantissa : mantissa / POWERS[-exponent]!;
    return negative ? -size : size;
  }
  return theSlowWay(bytes, start, i, end);
};

/** `i` is where the digits end: an exponent may stand there, or the digits were too many for the short way. */
const theSlowWay = (bytes: Uint8Array, start: number, i: number, end: number): number => {
  let text = String.fromCharCode(...bytes.subarray(start, Math.min(i, start + LONGEST)));
  if (i - start > LONGEST) return Number.NaN;
  if (i < end) {
    const tail = /^[eEdD]([+-]?\d{1,9})$/.exec(String.fromCharCode(...bytes.subarray(i, Math.min(end, i + 16))));
    if (tail === null || end - i > 16) return Number.NaN;
    text += `e${tail[1]}`;
  }
  const value = Number(text);
  return Number.isFinite(value) ? value : Number.NaN;
};

const MINUS = 0x2d;
const PLUS = 0x2b;
const POINT = 0x2e;
const ZERO = 0x30;
const NINE = 0x39;
const EXACT = Number.MAX_SAFE_INTEGER;
/** No writer needs more digits than this; a longer row of digits is damage. */
const LONGEST = 400;
const POWERS = Array.from({ length: 23 }, (_, power) => Number(`1e${power}`));
