/** Every wire of the shop carried through the whole job: a table, and why the one was taken and the others not. */

import type { WireRow, WireTable } from '../../result/wires.ts';
import { printDuration } from '../../text/print/duration.ts';
import { printMoney } from '../../text/print/money.ts';
import { accuracy, finish } from '../../text/print/phrases.ts';
import { printPlain } from '../../text/print/print.ts';
import { column, type PaperBlock } from '../paper.ts';
import { AS_IT_IS, type Printer } from '../text.ts';

export const wireLines = (wires: WireTable, { tableText, wrapped }: Printer = AS_IT_IS): readonly string[] => {
  const able = wires.rows.flatMap((row) => (row.kind === 'drops out' ? [] : [cells(row, wires)]));
  const out = wires.rows.flatMap((r) =>
    r.kind === 'drops out' ? [wrapped(`${r.name}${stock(r)}: ${printPlain(r.reason)}.`, '  - ')] : [],
  );
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
  note: bounded
    ? 'From: what its passes, threadings, stops and holes cost at least is already more than the whole job with the wire taken, so no more was worked out.'
    : undefined,
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
