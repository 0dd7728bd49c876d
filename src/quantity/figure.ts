/** A Figure: a number that can say what it is, how sure it is, where it comes from and what it was made of. */
import type { Text } from '../text/text.ts';
import type { Unit } from '../text/unit.ts';
import type { Source } from './source.ts';

/** Where a leaf's value comes from, or `computed` for everything made from other figures. */
export type Basis = 'drawing' | 'job' | 'counted' | 'shop' | 'published' | 'measured' | 'common practice' | 'assumed' | 'computed';

export interface Figure {
  /** Dotted address within a job, used to ask why: 'pass.2.feed'. */
  readonly key: string;
  /** Plain words: 'feed of the second pass'. */
  readonly name: Text;
  readonly value: number;
  readonly unit: Unit;
  /** One standard deviation below and above the value. */
  readonly low: number;
  readonly high: number;
  readonly basis: Basis;
  readonly source: Source;
  /** For a computed figure: the formula in words and symbols. */
  readonly formula?: Text | undefined;
  readonly from: readonly Figure[];
  readonly warnings: readonly Text[];
  /** How far one standard deviation of each leaf moves this figure, signed, in this figure's unit. */
  readonly shares: ReadonlyMap<Figure, number>;
}

export interface Given {
  readonly key: string;
  readonly name: Text;
  readonly value: number;
  readonly unit: Unit;
  /** One standard deviation, in the figure's unit; 0 for what is exactly so. */
  readonly deviation?: number;
  readonly basis: Exclude<Basis, 'computed'>;
  readonly source: Source;
  readonly warnings?: readonly Text[] | undefined;
}

/** A leaf: a number that somebody gave. */
export const given = (g: Given): Figure => {
  const deviation = g.deviation ?? 0;
  const shares = new Map<Figure, number>();
  const figure: Figure = {
    key: g.key,
    name: g.name,
    value: g.value,
    unit: g.unit,
    low: g.value - deviation,
    high: g.value + deviation,
    basis: g.basis,
    source: g.source,
    from: [],
    warnings: g.warnings ?? [],
    shares,
  };
  if (deviation !== 0) shares.set(figure, deviation);
  return figure;
};

/** One standard deviation of a figure. */
export const deviationOf = (figure: Figure): number => (figure.high - figure.low) / 2;
