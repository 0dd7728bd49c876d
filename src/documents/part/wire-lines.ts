/** Every wire of the shop carried through the whole job: a table, and why the one was taken and the others not. */

import type { Figure } from '../../quantity/figure.ts';
import { printDuration } from '../../text/print/duration.ts';
import { printMoney } from '../../text/print/money.ts';
import { accuracy, finish } from '../../text/print/phrases.ts';
import { column, type PaperBlock } from '../paper.ts';
import { AS_IT_IS, type Printer } from '../text.ts';

/** What a wire would need and leave; money in minor units, times in min, form in µm. */
export interface WireOutcome {
  readonly passes: number;
  /** Machine time of one piece. */
  readonly minutes: number;
  readonly each: number;
  /** Expected either side of the drawing, mm. */
  readonly accuracy: Figure;
  readonly finish: Figure;
  readonly form: Figure;
  /** Feed of the rough cut, mm/min: what the current that the wire stands lets it do. */
  readonly rough: number;
}

export type WireDropOut = 'corner' | 'slot' | 'height' | 'machine' | 'finish' | 'tolerance' | 'layout';

/**
 * `worked out`: plan, program, hours and price were made. `at least`: a lower bound of its hours and price already lies above
 * the total of the wire that was taken, so that no more was worked out. `drops out`: it cannot do what is asked.
 */
export type WireRow = { readonly id: string; readonly name: string; readonly inStock: boolean } & (
  | { readonly kind: 'worked out'; readonly outcome: WireOutcome; readonly unattended: number; readonly price: Figure }
  | { readonly kind: 'at least'; readonly outcome: WireOutcome }
  | { readonly kind: 'drops out'; readonly why: WireDropOut; readonly reason: string }
);

export interface WireTable {
  readonly rows: readonly WireRow[];
  /** The wire of the plan; none where no wire does the job. */
  readonly chosen?: string;
  /** The next cheapest in stock. */
  readonly runnerUp?: string;
  /** The user named the wire. */
  readonly named: boolean;
  readonly currency: string;
  readonly sentence: string;
}

export const wireLines = (wires: WireTable, { tableText, wrapped }: Printer = AS_IT_IS): readonly string[] => {
  const able = wires.rows.flatMap((row) => (row.kind === 'drops out' ? [] : [cells(row, wires)]));
  const out = wires.rows.flatMap((r) => (r.kind === 'drops out' ? [wrapped(`${r.name}${stock(r)}: ${r.reason}.`, '  - ')] : []));
  const bounded = wires.rows.some((r) => r.kind === 'at least');
  return [...(able.length === 0 ? [] : [tableText(tableOf(able, bounded))]), ...(out.length === 0 ? [] : ['  These drop out:', ...out])];
};

const tableOf = (rows: readonly (readonly string[])[], bounded: boolean): Extract<PaperBlock, { kind: 'table' }> => ({
  kind: 'table',
  columns: [
    column('Wire', 3),
    column('Passes', 1, 'right'),
    column('Machine', 1.5, 'right'),
    column('Alone', 1.5, 'right'),
    column('Each', 1.5, 'right'),
    column('Ra µm', 1, 'right'),
    column('Holds mm', 1, 'right'),
    column('Form µm', 1, 'right'),
    column('', 4),
  ],
  rows,
  ...(bounded
    ? {
        note: 'From: what its passes, threadings, stops and holes cost at least is already more than the whole job with the wire taken, so no more was worked out.',
      }
    : {}),
});

const cells = (row: Exclude<WireRow, { kind: 'drops out' }>, wires: WireTable): readonly string[] => {
  const { passes, minutes, each, accuracy: within, finish: ra, form } = row.outcome;
  const from = row.kind === 'at least' ? 'from ' : '';
  return [
    row.name,
    String(passes),
    `${from}${printDuration(minutes)}`,
    row.kind === 'at least' ? '' : printDuration(row.unattended),
    `${from}${printMoney(each, wires.currency)}`,
    finish(ra),
    `±${accuracy(within.value)}`,
    form.value.toFixed(1),
    wireVerdict(row, wires),
  ];
};

/** In a few words: taken, runner-up, what it lacks. */
export const wireVerdict = (row: WireRow, { rows, chosen, runnerUp, named }: WireTable): string => {
  if (row.id === chosen) return `${named ? 'as asked' : 'taken'}${stock(row)}`;
  return [...(row.id === runnerUp ? ['runner-up'] : []), ...(row.inStock ? [] : ['not in stock']), ...slower(row, rows, chosen)].join(', ');
};

/** A finer wire stands less current, and what it loses by that is the feed of its rough cut. */
const slower = (row: WireRow, rows: readonly WireRow[], chosen: string | undefined): readonly string[] => {
  const taken = rows.find((r) => r.id === chosen);
  if (row.kind === 'drops out' || taken === undefined || taken.kind === 'drops out') return [];
  const loss = 1 - row.outcome.rough / taken.outcome.rough;
  return loss < 0.005 ? [] : [`less current: ${(loss * 100).toFixed(0)} % slower rough`];
};

const stock = ({ inStock }: Pick<WireRow, 'inStock'>): string => (inStock ? '' : ', not in stock');
