/** The tables of the sheet; a cell that is a figure can be asked why. */

import type { Said, WrittenTable } from '../../documents/paper.ts';
import { breakTable, costTable, hoursTable } from '../../documents/part/job-tables.ts';
import { wireVerdict } from '../../documents/part/wire-lines.ts';
import type { Figure } from '../../quantity/figure.ts';
import type { resultOf } from '../../result/facts.ts';
import type { CutFacts, HoursFacts } from '../../result/outcome-facts.ts';
import type { WireTable } from '../../result/wires.ts';
import {
  count,
  duration,
  fixed,
  limit,
  mm,
  money,
  name,
  number,
  type Part,
  quantities,
  quantity,
  term,
  um,
  upTo,
} from '../../text/part.ts';
import { skimName } from '../../text/pass-name.ts';
import { accuracy } from '../../text/print/phrases.ts';
import { NOTHING, only, phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { shown } from './figure-view.ts';
import type { Shown, TableView } from './views.ts';

type Estimate = HoursFacts['estimate'];
type Budgets = NonNullable<CutFacts['budgets']>;
type OtherWays = NonNullable<CutFacts['otherWays']>;
type WireResult = NonNullable<ReturnType<typeof resultOf>>;
type Table = TableView<Text>;
type Column = Table['columns'][number];
type Cell = Text | Shown<Text>;

const left = (title: Text): Column => ({ title, align: 'left' });
const right = (title: Text): Column => ({ title, align: 'right' });

const columns = phrases('page.column', {
  pass: say`Pass`,
  condition: say`Condition`,
  register: say`Register`,
  offset: say`Offset`,
  gap: say`Gap`,
  feed: say`Feed`,
  raAfter: say`Ra after`,
  time: say`Time`,
  error: say`Source of error`,
  kind: say`Kind`,
  amount: say`Amount`,
  size: say`Dimension`,
  is: say`Nominal`,
  asked: say`Required`,
  expected: say`Expected`,
  wire: say`Wire`,
  passes: say`Passes`,
  machine: say`Machine`,
  each: say`Each`,
  ra: only(term('Ra')),
  holds: say`Holds`,
  process: say`Process`,
  does: say`Suitable?`,
  slope: say`Edge slope`,
  edgeRa: say`Edge Ra`,
});

const cells = phrases('page.cell', {
  rough: (pass: number) => say`${{ pass: count(pass) }} rough`,
  skim: (pass: number) => say`${{ pass: count(pass) }} ${{ skim: skimName(pass) }}`,
  all: say`Total`,
  degrees: (slope: number) => say`${{ slope: number(slope, fixed(2)) }}°`,
  yes: (within: Part) => say`yes, ${{ within }}`,
  from: (least: Part) => say`from ${{ least }}`,
  offsets: say`Offset: wire centre to finished surface, including the stock for later passes.`,
});

const kinds = phrases('page.error-kind', { systematic: say`systematic`, random: say`random` });

export const passesTable = ({ passes }: WireResult, estimate: Estimate | undefined): Table => ({
  columns: [
    ...[columns.pass, columns.condition, columns.register].map(left),
    ...[columns.offset, columns.gap, columns.feed, columns.raAfter, columns.time].map(right),
  ],
  rows: passes.map((p, i): readonly Cell[] => {
    const time = estimate?.passes[i];
    return [
      p.number === 1 ? cells.rough(1) : cells.skim(p.number),
      only(count(p.condition)),
      only(term(`D${p.register}`)),
      ...[p.offset, p.gap, p.feed, p.ra].map(shown),
      time === undefined ? NOTHING : shown(time.minutes),
    ];
  }),
  note: cells.offsets,
});

/** A table of the papers with the figures it was printed from put back where they are known: one list of figures for each row. */
const withFigures = (table: WrittenTable, figures: readonly (readonly (Figure | undefined)[])[]): Table => ({
  columns: table.columns.map(({ title, align }) => ({ title: asText(title), align })),
  rows: table.rows.map((row, i) =>
    row.map((said, j): Cell => {
      const figure = figures[i]?.[j];
      return figure === undefined ? asText(said) : shown(figure);
    }),
  ),
  note: table.note === undefined ? undefined : asText(table.note),
});

/** A part of its own is a text of that part alone. */
const asText = (said: Said): Text => ('kind' in said ? only(said) : said);

export const hoursView = (e: Estimate): Table => {
  const figures = [...e.passes.map((p) => p.minutes), e.threading, e.travel, e.stops, e.total, e.attended, e.unattended];
  return withFigures(
    hoursTable(e),
    figures.map((f) => [undefined, f]),
  );
};

export const costView = (estimate: Estimate): Table =>
  withFigures(
    costTable(estimate),
    estimate.lines.map((l) => [undefined, undefined, l.cost]),
  );

export const breaksView = (estimate: Estimate, quantity: number): Table => ({
  ...withFigures(
    breakTable(estimate),
    estimate.breaks.map((b) => [undefined, b.each, b.total]),
  ),
  marked: estimate.breaks.findIndex((b) => b.quantity === quantity),
});

/** Where the error of the profile comes from, the biggest share first. */
export const budgetView = ({ profile }: Budgets): Table => ({
  columns: [left(columns.error), left(columns.kind), right(columns.amount)],
  rows: [
    ...profile.rows.map((r): readonly Cell[] => [r.figure.name, kinds[r.kind], shown(r.figure)]),
    [cells.all, NOTHING, shown(profile.total)],
  ],
  note: profile.biggest.sentence,
});

/** Sizes with limits of their own: what is asked of each, and within what it is to be expected. */
export const sizesView = ({ sizes }: Budgets): Table | undefined =>
  sizes.length === 0
    ? undefined
    : {
        columns: [left(columns.size), right(columns.is), right(columns.asked), right(columns.expected)],
        rows: sizes.map(({ of, tolerance, total }): readonly Cell[] => [
          of.kind === 'size' ? only(name(of.name)) : NOTHING,
          of.kind === 'size' ? only(mm(of.length)) : NOTHING,
          only(limit(tolerance, 'mm', upTo(5))),
          shown(total),
        ]),
      };

export const othersView = (otherWays: OtherWays): Table => ({
  columns: [left(columns.process), left(columns.does), right(columns.time), right(columns.slope), right(columns.edgeRa)],
  rows: [
    ...(otherWays.wire === undefined
      ? []
      : [
          [
            otherWays.wire.name,
            cells.yes(limit(Number(accuracy(otherWays.wire.deviation)))),
            only(quantity(otherWays.wire.minutes, 'min', fixed(0))),
            cells.degrees(otherWays.wire.slope),
            only(um(otherWays.wire.ra, fixed(1))),
          ],
        ]),
    ...otherWays.ways.map((w): readonly Cell[] => [
      w.name,
      w.sentence,
      w.edge === undefined ? NOTHING : shown(w.edge.minutes),
      w.edge === undefined ? NOTHING : cells.degrees(w.edge.slope.value),
      w.edge === undefined ? NOTHING : only(quantities([w.edge.ra.low, w.edge.ra.high], 'to', 'µm', fixed(0))),
    ]),
  ],
  note: otherWays.verdict,
});

/** Every wire of the shop carried through the whole job, the one that was taken marked. */
export const wiresView = (wires: WireTable): Table => ({
  columns: [left(columns.wire), ...[columns.passes, columns.machine, columns.each, columns.ra, columns.holds].map(right), left(NOTHING)],
  rows: wires.rows.map((row): readonly Cell[] => {
    if (row.kind === 'drops out') return [only(name(row.name)), NOTHING, NOTHING, NOTHING, NOTHING, NOTHING, row.reason];
    const { passes, minutes, each, finish, accuracy: within } = row.outcome;
    const time = duration(minutes);
    return [
      only(name(row.name)),
      only(count(passes)),
      row.kind === 'at least' ? cells.from(time) : only(time),
      row.kind === 'worked out' ? shown(row.price) : cells.from(money(each, wires.currency)),
      shown(finish),
      shown(within),
      wireVerdict(row, wires),
    ];
  }),
  marked: wires.rows.findIndex((r) => r.id === wires.chosen),
  note: wires.sentence,
});
