/** The tables of the sheet; a cell that is a figure can be asked why. */

import { breakTable, costTable, hoursTable } from '../../documents/part/job-tables.ts';
import { wireVerdict } from '../../documents/part/wire-lines.ts';
import type { Figure } from '../../quantity/figure.ts';
import type { resultOf } from '../../result/facts.ts';
import type { CutFacts, HoursFacts } from '../../result/outcome-facts.ts';
import type { WireTable } from '../../result/wires.ts';
import { printDuration } from '../../text/print/duration.ts';
import { printMoney } from '../../text/print/money.ts';
import { accuracy } from '../../text/print/phrases.ts';
import { printPlain } from '../../text/print/print.ts';
import { shown } from './figure-view.ts';
import type { Shown, TableView, Untold } from './views.ts';

type Estimate = HoursFacts['estimate'];
type Budgets = NonNullable<CutFacts['budgets']>;
type OtherWays = NonNullable<CutFacts['otherWays']>;
type WireResult = NonNullable<ReturnType<typeof resultOf>>;
type Column = TableView['columns'][number];
type Cell = string | Shown;

const left = (title: string): Column => ({ title, align: 'left' });
const right = (title: string): Column => ({ title, align: 'right' });

export const passesTable = ({ passes }: WireResult, estimate: Estimate | undefined): TableView => ({
  columns: [left('Pass'), left('Condition'), left('Register'), ...['Offset', 'Gap', 'Feed', 'Ra after', 'Time'].map(right)],
  rows: passes.map((p, i): readonly Cell[] => {
    const time = estimate?.passes[i];
    return [
      p.number === 1 ? '1 rough' : `${p.number} skim`,
      String(p.condition),
      `D${p.register}`,
      ...[p.offset, p.gap, p.feed, p.ra].map(shown),
      time === undefined ? '' : shown(time.minutes),
    ];
  }),
  note: 'Offset: from the wire’s centre to the finished surface, with the stock that later passes take off.',
});

/** A table of the papers with the figures it was printed from put back where they are known: one list of figures for each row. */
const withFigures = (
  table: {
    readonly columns: readonly { readonly title: string; readonly align: 'left' | 'right' }[];
    readonly rows: readonly (readonly string[])[];
    readonly note?: string | undefined;
  },
  figures: readonly (readonly (Figure | undefined)[])[],
): TableView => ({
  columns: table.columns.map(({ title, align }) => ({ title, align })),
  rows: table.rows.map((row, i) => row.map((text, j): Cell => (figures[i]?.[j] === undefined ? text : shown(figures[i]?.[j] as Figure)))),
  ...(table.note === undefined ? {} : { note: table.note }),
});

export const hoursView = (e: Estimate): TableView => {
  const figures = [...e.passes.map((p) => p.minutes), e.threading, e.travel, e.stops, e.total, e.attended, e.unattended];
  return withFigures(
    hoursTable(e),
    figures.map((f) => [undefined, f]),
  );
};

export const costView = (estimate: Estimate): TableView =>
  withFigures(
    costTable(estimate),
    estimate.lines.map((l) => [undefined, undefined, l.cost]),
  );

export const breaksView = (estimate: Estimate, quantity: number): TableView => ({
  ...withFigures(
    breakTable(estimate),
    estimate.breaks.map((b) => [undefined, b.each, b.total]),
  ),
  marked: estimate.breaks.findIndex((b) => b.quantity === quantity),
});

/** Where the error of the profile comes from, the biggest share first. */
export const budgetView = ({ profile }: Budgets): TableView => ({
  columns: [left('Where the error comes from'), left('Kind'), right('Amount')],
  rows: [
    ...profile.rows.map((r): readonly Cell[] => [printPlain(r.figure.name), r.kind, shown(r.figure)]),
    ['In all', '', shown(profile.total)],
  ],
  note: printPlain(profile.biggest.sentence),
});

/** Sizes with limits of their own: what is asked of each, and within what it is to be expected. */
export const sizesView = ({ sizes }: Budgets): TableView | undefined =>
  sizes.length === 0
    ? undefined
    : {
        columns: [left('Size'), right('Is'), right('Asked'), right('To be expected within')],
        rows: sizes.map(({ of, tolerance, total }): readonly Cell[] => [
          of.kind === 'size' ? of.name : '',
          of.kind === 'size' ? `${Number(of.length.toFixed(4))} mm` : '',
          `±${Number(tolerance.toFixed(5))} mm`,
          shown(total),
        ]),
      };

export const othersView = (otherWays: OtherWays): TableView => ({
  columns: [left('Process'), left('Would it do?'), right('Time'), right('Edge slope'), right('Edge Ra')],
  rows: [
    ...(otherWays.wire === undefined
      ? []
      : [
          [
            'wire',
            `yes, ±${accuracy(otherWays.wire.deviation)} mm`,
            `${otherWays.wire.minutes.toFixed(0)} min`,
            `${otherWays.wire.slope.toFixed(2)}°`,
            `${otherWays.wire.ra.toFixed(1)} µm`,
          ],
        ]),
    ...otherWays.ways.map((w): readonly Cell[] => [
      w.process,
      printPlain(w.sentence),
      w.edge === undefined ? '' : shown(w.edge.minutes),
      w.edge === undefined ? '' : `${w.edge.slope.value.toFixed(2)}°`,
      w.edge === undefined ? '' : `${w.edge.ra.low.toFixed(0)} to ${w.edge.ra.high.toFixed(0)} µm`,
    ]),
  ],
  note: printPlain(otherWays.verdict),
});

/** Every wire of the shop carried through the whole job, the one that was taken marked. */
export const wiresView = (wires: WireTable): TableView<Untold> => ({
  columns: [left('Wire'), ...['Passes', 'Machine', 'Each', 'Ra', 'Holds'].map(right), left('')],
  rows: wires.rows.map((row): readonly (Untold | Shown)[] => {
    if (row.kind === 'drops out') return [row.name, '', '', '', '', '', row.reason];
    const { passes, minutes, each, finish, accuracy: within } = row.outcome;
    const from = row.kind === 'at least' ? 'from ' : '';
    return [
      row.name,
      String(passes),
      `${from}${printDuration(minutes)}`,
      row.kind === 'worked out' ? shown(row.price) : `from ${printMoney(each, wires.currency)}`,
      shown(finish),
      shown(within),
      wireVerdict(row, wires),
    ];
  }),
  marked: wires.rows.findIndex((r) => r.id === wires.chosen),
  note: wires.sentence,
});
