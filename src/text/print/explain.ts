/** The why of a figure, printed: a tree of what it is, how sure it is, the formula with its numbers, and where each leaf comes from. */
import { type Basis, deviationOf, type Figure } from '../../quantity/figure.ts';
import { type Source, sourceText } from '../../quantity/source.ts';
import { HOUSE, type Reader } from '../reader.ts';
import type { Text } from '../text.ts';
import type { Unit } from '../unit.ts';
import { type Printing, printFigure } from './figure.ts';
import { print, printPlain } from './print.ts';

/** The same as data, for screens and `--json`. */
export interface Explanation {
  readonly key: string;
  readonly name: string;
  readonly value: number;
  readonly deviation: number;
  readonly unit: Unit;
  /** Value, deviation and unit as printed. */
  readonly printed: string;
  readonly basis: Basis;
  readonly source: string;
  readonly formula?: string | undefined;
  readonly warnings: readonly string[];
  /** Told in full earlier in the tree: its parts are not repeated. */
  readonly told: boolean;
  readonly from: readonly Explanation[];
}

/** A citation by its name, which is a proper one; whoever gave the number in the words of the reader. */
export const printSource = (source: Source, reader: Reader = HOUSE): string => print(sourceText(source), reader);

/** Who says a figure, in words. */
export const sourceOf = ({ source }: Pick<Figure, 'source'>): Text => sourceText(source);

/** By which a figure is known again: an exact leaf may be made wherever it is needed, and is the same by what it says. */
export const identityOf = (figure: Figure): unknown =>
  figure.from.length > 0 || figure.shares.size > 0 ? figure : `${figure.key} ${figure.value} ${printSource(figure.source)}`;

/** A figure that goes in at several places is told in full once, where it first comes up. */
export const explain = (figure: Figure, printing: Printing = {}): Explanation => explainOnce(figure, printing, new Set());

const explainOnce = (figure: Figure, printing: Printing, seen: Set<unknown>): Explanation => {
  const told = seen.has(identityOf(figure));
  seen.add(identityOf(figure));
  return {
    key: figure.key,
    name: printPlain(figure.name),
    value: figure.value,
    deviation: deviationOf(figure),
    unit: figure.unit,
    printed: printFigure(figure, printing),
    basis: figure.basis,
    source: printSource(figure.source),
    formula: figure.formula && printPlain(figure.formula),
    warnings: figure.warnings.map(printPlain),
    told,
    from: told ? [] : figure.from.map((f) => explainOnce(f, printing, seen)),
  };
};

/**
 * The tree as lines of text: two spaces deeper for each step down.
 *
 *   feed of skim 2 = 5.6 ± 1.7 mm/min   [pass.3.feed]
 *     by: feed = the smaller of ...     (starting-model)
 *     put in: removal rate of the rough cut = 55 ± 14 mm³/min; ...
 */
export const explainLines = (explanation: Explanation, depth = 0): readonly string[] => {
  const margin = '  '.repeat(depth);
  const head = `${margin}${explanation.name} = ${explanation.printed}`;
  if (explanation.told) return [`${head}   [${explanation.key}, told above]`];
  return [
    `${head}   [${explanation.key}]`,
    ...basisLines(explanation).map((line) => `${margin}  ${line}`),
    ...explanation.warnings.map((w) => `${margin}  note: ${w}`),
    ...explanation.from.flatMap((e) => explainLines(e, depth + 1)),
  ];
};

const basisLines = ({ basis, source, formula, from }: Explanation): readonly string[] => {
  if (basis !== 'computed') return [`${basis}: ${source}`];
  const putIn = from.map((f) => `${f.name} = ${f.printed}`).join('; ');
  return [`by: ${formula ?? 'computed'}   (${source})`, ...(putIn === '' ? [] : [`put in: ${putIn}`])];
};
