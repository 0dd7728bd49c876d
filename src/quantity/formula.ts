/** A formula as data, and its application to figures with ranges carried from the leaves by identity. */

import type { Unit } from '../text/unit.ts';
import { deviationOf, type Figure } from './figure.ts';

export interface Input {
  readonly unit: Unit;
  readonly name: string;
  /** Outside low..high the formula is not known to hold: the result carries a warning. */
  readonly low?: number;
  readonly high?: number;
}

export interface Formula<K extends string> {
  readonly name: string;
  /** As one would write it on paper: 'kerf = d + 2 gap'. */
  readonly text: string;
  /** A file in sources/ by its name without ending. */
  readonly source: string;
  readonly unit: Unit;
  readonly inputs: Readonly<Record<K, Input>>;
  readonly compute: (values: Readonly<Record<K, number>>) => number;
  /**
   * It has a limit or a floor in it (smaller of, larger of): its slope is then taken over a whole standard deviation, since the
   * slope at the spot alone would call a figure at its limit exact.
   */
  readonly bends?: true;
  /** Why no check row holds it against a printed value, where a published formula has none. */
  readonly unchecked?: string;
}

export interface Applied {
  readonly key: string;
  readonly name?: string;
  readonly warnings?: readonly string[];
}

/**
 * Puts figures into a formula. The spread follows each leaf by identity to first order (central differences), so a leaf
 * that enters twice, or cancels, is counted as it should be.
 *
 * Throws when the formula gives no finite number: the caller must check the ranges of its inputs first.
 */
export const apply = <K extends string>(formula: Formula<K>, inputs: Readonly<Record<K, Figure>>, as: Applied): Figure => {
  const keys = Object.keys(formula.inputs) as K[];
  const values = Object.fromEntries(keys.map((k) => [k, inputs[k].value])) as Record<K, number>;
  const value = formula.compute(values);
  if (!Number.isFinite(value)) throw new Error(`${formula.name} is not a number for ${JSON.stringify(values)}`);
  const shares = sharesOf(formula, inputs, values);
  const deviation = Math.hypot(...shares.values());
  return {
    key: as.key,
    name: as.name ?? formula.name,
    value,
    unit: formula.unit,
    low: value - deviation,
    high: value + deviation,
    basis: 'computed',
    source: formula.source,
    formula: formula.text,
    from: keys.map((k) => inputs[k]),
    warnings: [...(as.warnings ?? []), ...rangeWarnings(formula, values)],
    shares,
  };
};

const sharesOf = <K extends string>(
  formula: Formula<K>,
  inputs: Readonly<Record<K, Figure>>,
  values: Readonly<Record<K, number>>,
): Map<Figure, number> => {
  const shares = new Map<Figure, number>();
  for (const k of Object.keys(formula.inputs) as K[]) {
    if (inputs[k].shares.size === 0) continue;
    const slope = slopeOver(formula, values, k, Math.max(smallStep(values[k]), formula.bends === true ? deviationOf(inputs[k]) : 0));
    for (const [leaf, share] of inputs[k].shares) shares.set(leaf, (shares.get(leaf) ?? 0) + slope * share);
  }
  return shares;
};

/** Small against the value, yet large enough that rounding does not show. */
const smallStep = (value: number): number => Math.max(Math.abs(value), 1e-6) * 1e-5;

/** Central difference; one-sided where the other side is not a number. */
const slopeOver = <K extends string>(formula: Formula<K>, values: Readonly<Record<K, number>>, k: K, step: number): number => {
  const at = (v: number): number => formula.compute({ ...values, [k]: v } as Record<K, number>);
  const here = formula.compute(values);
  const up = at(values[k] + step);
  const down = at(values[k] - step);
  if (Number.isFinite(up) && Number.isFinite(down)) return (up - down) / (2 * step);
  if (Number.isFinite(up)) return (up - here) / step;
  return Number.isFinite(down) ? (here - down) / step : 0;
};

const rangeWarnings = <K extends string>(formula: Formula<K>, values: Readonly<Record<K, number>>): string[] => {
  const warnings: string[] = [];
  for (const k of Object.keys(formula.inputs) as K[]) {
    const { low, high, name, unit } = formula.inputs[k];
    const v = values[k];
    const outside = (low !== undefined && v < low) || (high !== undefined && v > high);
    if (outside)
      warnings.push(`${name} ${v} ${unit} is outside ${low ?? 'any'} to ${high ?? 'any'} ${unit}, where ${formula.name} is known to hold`);
  }
  return warnings;
};
