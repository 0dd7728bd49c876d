/** Reads a decimal number out of bytes by a strict pattern, so that '1,5' or '1.0D+02' is never half read. */
import { itemAt } from '../../sequence/sequence.ts';

/**
 * The number that stands in `bytes[start..end)`: sign, digits with at most one point, and an exponent after E or D (as
 * Fortran writes it). NaN when anything else stands there, also 'nan', '1,5' and what is too large for a number; the
 * caller turns that into a finding.
 *
 * Equal to `Number(text)` for every text that both accept: up to 2^53 a sum of digits is exact, and one multiplication
 * or division by an exact power of ten is rounded once (Clinger 1990). All other texts go the long way.
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
  let byte = bytes[i] ?? END;
  for (; i < end && byte >= ZERO && byte <= NINE; byte = bytes[++i] ?? END, digits++) mantissa = mantissa * 10 + (byte - ZERO);
  if (i < end && bytes[i] === POINT) {
    const point = ++i;
    byte = bytes[i] ?? END;
    for (; i < end && byte >= ZERO && byte <= NINE; byte = bytes[++i] ?? END, digits++) mantissa = mantissa * 10 + (byte - ZERO);
    exponent = point - i;
  }
  if (digits === 0) return Number.NaN;
  if (i === end && mantissa <= EXACT && exponent >= -22) {
    const size = exponent === 0 ? mantissa : mantissa / itemAt(POWERS, -exponent);
    return negative ? -size : size;
  }
  return theLongWay(bytes, start, i, end);
};

/** `i` is where the digits end: an exponent may stand there, or the digits were too many for the short way. */
const theLongWay = (bytes: Uint8Array, start: number, i: number, end: number): number => {
  if (i === end) {
    const value = bySplitDigits(bytes, start, end);
    if (value !== undefined) return value;
  }
  if (i - start > LONGEST || end - i > LONGEST_TAIL) return Number.NaN;
  let text = String.fromCharCode(...bytes.subarray(start, i));
  if (i < end) {
    const tail = /^[eEdD]([+-]?\d+)$/.exec(String.fromCharCode(...bytes.subarray(i, end)));
    if (tail === null) return Number.NaN;
    text += `e${tail[1]}`;
  }
  const value = Number(text);
  return Number.isFinite(value) ? value : Number.NaN;
};

/**
 * The number of 16 to 22 digits with at most 22 of them behind the point: its digits in two exact halves, divided as a sum
 * of two doubles (Dekker 1971). None where the quotient lies so near the middle between two doubles that the
 * rounding of this way could decide it wrongly.
 */
const bySplitDigits = (bytes: Uint8Array, start: number, end: number): number | undefined => {
  let [high, low, digits, behind] = [0, 0, 0, 0];
  let point = false;
  let negative = false;
  for (let i = start; i < end; i++) {
    const byte = itemAt(bytes, i);
    if (byte === POINT) point = true;
    else if (byte === MINUS) negative = true;
    else if (byte !== PLUS) {
      if (digits < 15) high = high * 10 + (byte - ZERO);
      else low = low * 10 + (byte - ZERO);
      if (digits > 0 || byte !== ZERO) digits++;
      if (point) behind++;
    }
  }
  if (digits > 22 || behind > 22) return undefined;
  const shift = itemAt(POWERS, Math.max(0, digits - 15));
  const power = itemAt(POWERS, behind);
  const whole = high * shift;
  const rest = productError(high, shift, whole) + low;
  const first = (whole + rest) / power;
  const product = first * power;
  const second = (whole - product - productError(first, power, product) + rest) / power;
  const value = first + second;
  if (first + second * (1 + NEAR) !== value || first + second * (1 - NEAR) !== value) return undefined;
  return negative ? -value : value;
};

/** What a product of two doubles lost in rounding, exactly. */
const productError = (a: number, b: number, product: number): number => {
  const [ta, tb] = [a * SPLIT, b * SPLIT];
  const ah = ta - (ta - a);
  const bh = tb - (tb - b);
  const [al, bl] = [a - ah, b - bh];
  return al * bl - (product - ah * bh - al * bh - ah * bl);
};

/** Stands for a byte after the last: no digit. */
const END = 0;
const MINUS = 0x2d;
const PLUS = 0x2b;
const POINT = 0x2e;
const ZERO = 0x30;
const NINE = 0x39;
const EXACT = Number.MAX_SAFE_INTEGER;
/** No writer needs more digits than this; a longer row of digits is damage. */
const LONGEST = 400;
const LONGEST_TAIL = 12;
const SPLIT = 2 ** 27 + 1;
const NEAR = 2 ** -40;
const POWERS = Array.from({ length: 23 }, (_, power) => Number(`1e${power}`));
