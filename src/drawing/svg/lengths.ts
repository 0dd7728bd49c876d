/** Numbers and lengths as SVG writes them. */
import { itemAt } from '../../sequence/sequence.ts';

/** A number by the strict pattern of the standard; NaN for anything else. */
export const numberOf = (text: string): number => {
  const value = NUMBER.test(text) ? Number(text) : Number.NaN;
  return Number.isFinite(value) ? value : Number.NaN;
};

/**
 * All numbers in a list separated by blanks, or by one comma, or by the sign of the next one; NaN among them where one is
 * none. Split step by step, because one pattern for all separators takes the square of the length on a long row of blanks.
 */
export const numbersOf = (text: string): readonly number[] => {
  const trimmed = text.trim();
  if (trimmed === '') return [];
  return trimmed
    .split(',')
    .flatMap((part) => part.trim().split(/\s+/))
    .flatMap((part) => part.split(/(?<=[\d.])(?=[+-])/))
    .map(numberOf);
};

export type Length =
  /** In user units, of which 96 are one inch. `real` when the unit is one of the world and not a pixel. */
  | { readonly kind: 'length'; readonly value: number; readonly real: boolean }
  | { readonly kind: 'percent'; readonly share: number }
  | { readonly kind: 'unreadable' };

export const lengthOf = (text: string): Length => {
  const trimmed = text.trim();
  const match = trimmed.length > LONGEST ? null : /^([^a-zA-Z%\s]*(?:[eE][+-]?\d+)?)\s*([a-zA-Z]*|%)$/.exec(trimmed);
  const value = numberOf(match?.[1] ?? '');
  if (match === null || Number.isNaN(value)) return { kind: 'unreadable' };
  if (match[2] === '%') return { kind: 'percent', share: value / 100 };
  const pixels = PIXELS.get(itemAt(match, 2).toLowerCase());
  return pixels === undefined ? { kind: 'unreadable' } : { kind: 'length', value: value * pixels.each, real: pixels.real };
};

/** Signs; no number needs more. */
const LONGEST = 100;
const NUMBER = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?$/;

/** CSS fixes an inch at 96 pixels. Units that hang on a font (em, ex) say nothing about a part. */
const PIXELS: ReadonlyMap<string, { readonly each: number; readonly real: boolean }> = new Map([
  ['', { each: 1, real: false }],
  ['px', { each: 1, real: false }],
  ['in', { each: 96, real: true }],
  ['mm', { each: 96 / 25.4, real: true }],
  ['cm', { each: 96 / 2.54, real: true }],
  ['q', { each: 96 / 101.6, real: true }],
  ['pt', { each: 96 / 72, real: true }],
  ['pc', { each: 16, real: true }],
]);

export const MILLIMETRES_IN_A_PIXEL = 25.4 / 96;
