/** A formula as data, and its application to figures with ranges carried from the leaves by identity. */

import { type Part, quantities, quantity } from '../text/part.ts';
import { phrases, say } from '../text/say.ts';
import type { Text } from '../text/text.ts';
import type { Unit } from '../text/unit.ts';
import { deviationOf, type Figure } from './figure.ts';
import { wholeMinor } from './minor-units.ts';

export interface Input {
  readonly unit: Unit;
  /** For whoever reads the formula here: what is put in has a name of its own, and that is shown. */
  readonly name: string;
  /** Outside low..high the formula is not known to hold: the result carries a warning. */
  readonly low?: number;
  readonly high?: number;
}

export interface Formula<K extends string> {
  readonly name: Text;
  /** As one would write it on paper: 'kerf = d + 2 gap'. */
  readonly text: Text;
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
  /** Its value is money to be paid: rounded, once, to whole minor units. The spread is that of the value before. */
  readonly paid?: true;
  /** Why no check row holds it against a printed value, where a published formula has none. */
  readonly unchecked?: string;
}

export interface Applied {
  readonly key: string;
  readonly name?: Text | undefined;
  readonly warnings?: readonly Text[] | undefined;
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
  const exact = formula.compute(values);
  const value = formula.paid === true ? wholeMinor(exact) : exact;
  if (!Number.isFinite(value)) throw new Error(`${as.key} is not a number for ${JSON.stringify(values)}`);
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
    source: { file: formula.source },
    formula: formula.text,
    from: keys.map((k) => inputs[k]),
    warnings: [...(as.warnings ?? []), ...rangeWarnings(formula, inputs)],
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

const rangeWarnings = <K extends string>(formula: Formula<K>, inputs: Readonly<Record<K, Figure>>): Text[] =>
  (Object.keys(formula.inputs) as K[]).flatMap((k) => {
    const { low = Number.NEGATIVE_INFINITY, high = Number.POSITIVE_INFINITY } = formula.inputs[k];
    const { value } = inputs[k];
    return value < low || value > high ? [outside(formula, k, inputs[k])] : [];
  });

const outside = <K extends string>({ name: formula, inputs }: Formula<K>, k: K, { name: figure, value }: Figure): Text => {
  const { low, high, unit } = inputs[k];
  const told = (bound: number): Part => quantity(bound, unit, { as: 'given' });
  if (low === undefined) return words.above(figure, told(value), told(high ?? value), formula);
  if (high === undefined) return words.below(figure, told(value), told(low), formula);
  return words.outside(figure, told(value), quantities([low, high], 'to', unit, { as: 'given' }), formula);
};

const words = phrases('formula', {
  above: (figure: Text, value: Part, high: Part, formula: Text) =>
    say`${{ figure }} ${{ value }} is outside any to ${{ high }}, the range in which ${{ formula }} holds`,
  below: (figure: Text, value: Part, low: Part, formula: Text) =>
    say`${{ figure }} ${{ value }} is outside ${{ low }} to any, the range in which ${{ formula }} holds`,
  outside: (figure: Text, value: Part, range: Part, formula: Text) =>
    say`${{ figure }} ${{ value }} is outside ${{ range }}, the range in which ${{ formula }} holds`,
});
