/** Every wire of the shop carried through the whole job: a table, and why the one was taken and the others not. */

import type { WireRow, WireTable } from '../../result/wires.ts';
import {
  bare,
  clause,
  count,
  duration,
  fixed,
  list,
  money,
  name,
  type Part,
  promised,
  quantity,
  significant,
  unitName,
} from '../../text/part.ts';
import { NOTHING, only, phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { column, type Said, type WrittenTable } from '../paper.ts';
import { AS_IT_IS, type Printer } from '../text.ts';

export const wireLines = (wires: WireTable, { said, tableText, wrapped }: Printer = AS_IT_IS): readonly string[] => {
  const able = wires.rows.flatMap((row) => (row.kind === 'drops out' ? [] : [cells(row, wires)]));
  const out = wires.rows.flatMap((r) => (r.kind === 'drops out' ? [wrapped(dropOut(r, r.reason), '  - ')] : []));
  const bounded = wires.rows.some((r) => r.kind === 'at least');
  return [
    ...(able.length === 0 ? [] : [tableText(tableOf(able, bounded))]),
    ...(out.length === 0 ? [] : [`  ${said(words.dropOut)}`, ...out]),
  ];
};

const dropOut = ({ name: wire, inStock }: WireRow, reason: Text): Text => (inStock ? words.out : words.outNoStock)(wire, reason);

const tableOf = (rows: readonly (readonly Said[])[], bounded: boolean): WrittenTable => ({
  kind: 'table',
  columns: [
    column(words.wire, 3),
    column(words.passes, 1, 'right'),
    column(words.machine, 1.5, 'right'),
    column(words.alone, 1.5, 'right'),
    column(words.each, 1.5, 'right'),
    column(words.finish, 1, 'right'),
    column(words.holds, 1, 'right'),
    column(words.form, 1, 'right'),
    column(NOTHING, 4),
  ],
  rows,
  note: bounded ? words.bounded : undefined,
});

const cells = (row: Exclude<WireRow, { kind: 'drops out' }>, wires: WireTable): readonly Said[] => {
  const { passes, minutes, each, accuracy: within, finish, form } = row.outcome;
  const atLeast = (part: Part): Said => (row.kind === 'at least' ? words.from(part) : part);
  return [
    name(row.name),
    count(passes),
    atLeast(duration(minutes)),
    row.kind === 'at least' ? NOTHING : duration(row.unattended),
    atLeast(money(each, wires.currency)),
    bare(finish.value, 'µm', significant(2)),
    { ...promised(within.value), bare: true } as Part,
    bare(form.value, 'µm', fixed(1)),
    wireVerdict(row, wires),
  ];
};

/** In a few words: taken, runner-up, what it lacks. */
export const wireVerdict = (row: WireRow, { rows, chosen, nextCheapest, named }: WireTable): Text => {
  const lacks = row.inStock ? [] : [words.noStock];
  if (row.id === chosen) return only(list([named ? words.asAsked : words.taken, ...lacks]));
  return only(list([...(row.id === nextCheapest ? [words.nextCheapest] : []), ...lacks, ...slower(row, rows, chosen)]));
};

/** A finer wire stands less current, and what it loses by that is the feed of its rough cut. */
const slower = (row: WireRow, rows: readonly WireRow[], chosen: string | undefined): readonly Text[] => {
  const taken = rows.find((r) => r.id === chosen);
  if (row.kind === 'drops out' || taken === undefined || taken.kind === 'drops out') return [];
  const loss = 1 - row.outcome.rough / taken.outcome.rough;
  return loss < 0.005 ? [] : [words.slower(loss)];
};

const words = phrases('wire-table', {
  dropOut: say`Not suitable:`,
  out: (wire: string, reason: Text) => say`${{ wire: name(wire) }}: ${{ reason: clause(reason) }}.`,
  outNoStock: (wire: string, reason: Text) => say`${{ wire: name(wire) }}, not in stock: ${{ reason: clause(reason) }}.`,
  wire: say`Wire`,
  passes: say`Passes`,
  machine: say`Machine`,
  alone: say`Unattended`,
  each: say`Each`,
  finish: say`Ra ${{ unit: unitName('µm') }}`,
  holds: say`Expected ${{ unit: unitName('mm') }}`,
  form: say`Form error ${{ unit: unitName('µm') }}`,
  bounded: say`From: the passes, threadings, stops and holes alone already cost more than the whole job with the selected wire, so no more was worked out.`,
  from: (amount: Part) => say`from ${{ amount }}`,
  taken: say`selected`,
  asAsked: say`as specified`,
  nextCheapest: say`next cheapest`,
  noStock: say`not in stock`,
  slower: (loss: number) => say`less current: rough ${{ loss: quantity(loss * 100, '%', fixed(0)) }} slower`,
});
