/** The wires of a shop as facts of an answer: rows in order, the one sentence, and the figures that can be asked why. */

import type { Figure } from '../../quantity/figure.ts';
import { apply, type Formula } from '../../quantity/formula.ts';
import type { WireDropOut, WireRow, WireTable } from '../../result/wires.ts';
import { fixed, list, money, name, type Part, quantity } from '../../text/part.ts';
import { phrases, say, sentences } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';

export interface WireTableAsked {
  readonly rows: readonly WireRow[];
  readonly chosen?: string | undefined;
  readonly named: boolean;
  readonly currency: string;
}

type Able = Extract<WireRow, { kind: 'worked out' }>;

/** The chosen first, then by price; those that drop out last, in the order of the shop file. */
export const wireTableOf = ({ rows, chosen, named, currency }: WireTableAsked): WireTable => {
  const able = rows.flatMap((r) => (r.kind === 'drops out' ? [] : [r])).toSorted((a, b) => rank(a, chosen) - rank(b, chosen));
  const ordered = [...able, ...rows.filter((r) => r.kind === 'drops out')];
  const nextCheapest = able.find((r) => r.id !== chosen && r.inStock)?.id;
  const table = {
    rows: ordered,
    named,
    currency,
    chosen,
    nextCheapest,
  };
  return { ...table, sentence: sentenceOf(table) };
};

const rank = (row: Exclude<WireRow, { kind: 'drops out' }>, chosen: string | undefined): number =>
  row.id === chosen ? -1 : row.outcome.each;

const sentenceOf = (table: Omit<WireTable, 'sentence'>): Text => {
  const { rows, chosen } = table;
  const taken = rows.find((r): r is Able => r.id === chosen && r.kind === 'worked out');
  const head = taken === undefined ? noneTaken(table) : takenSaid(taken, table);
  return sentences([words.choice([...head, ...dropsSaid(rows)]), toOrder(table)]);
};

/** No program with the wire that was asked for, or that would be selected, does not yet mean that no wire would do. */
const noneTaken = ({ rows, named, currency }: Omit<WireTable, 'sentence'>): readonly Text[] => {
  const able = rows.find((r) => r.kind !== 'drops out' && r.inStock);
  if (able === undefined || able.kind === 'drops out') return [words.none];
  const each = money(able.outcome.each, currency);
  return [(named ? words.otherWould : words.mightDo)(able.name, able.kind === 'at least' ? words.atLeast(each) : each)];
};

/** The wire that is taken, and the next one. */
const takenSaid = (taken: Able, { rows, nextCheapest, named, currency }: Omit<WireTable, 'sentence'>): readonly Text[] => {
  const next = rows.find((r) => r.id === nextCheapest);
  const dearer = next !== undefined && next.kind !== 'drops out' && next.outcome.each < taken.outcome.each;
  return [
    (named ? words.asAsked : dearer ? words.chosenFirst : words.cheapest)(taken.name, money(taken.outcome.each, currency)),
    next === undefined || next.kind === 'drops out' ? words.noOther : secondSaid(taken, next, currency),
  ];
};

/** Wires in stock that drop out, together where the reason is of one kind; number and place stand in the table. */
const dropsSaid = (rows: readonly WireRow[]): readonly Text[] => {
  const drops = rows.flatMap((r) => (r.kind === 'drops out' && r.inStock ? [r] : []));
  return [...new Set(drops.map((r) => r.why))].map((why) => {
    const names = drops.filter((r) => r.why === why).map((r) => name(r.name));
    return (names.length === 1 ? words.isOut : words.areOut)(list(names, 'and'), out[why]);
  });
};

const secondSaid = (taken: Able, next: Exclude<WireRow, { kind: 'drops out' }>, currency: string): Text => {
  const each = money(next.outcome.each, currency);
  const more = next.outcome.each / taken.outcome.each - 1;
  const percent = quantity(Math.abs(more * 100), '%', fixed(1));
  const than = Math.abs(more) < 5e-5 ? words.same : (more > 0 ? words.more : words.less)(percent);
  return words.next(next.name, next.kind === 'at least' ? words.atLeast(each) : each, than);
};

/** A wire that is not on the shelf and would cost less, or do it at all. */
const toOrder = ({ rows, chosen, currency }: Omit<WireTable, 'sentence'>): Text | undefined => {
  const taken = rows.find((r): r is Able => r.id === chosen && r.kind === 'worked out');
  const best = rows
    .filter((r): r is Able => r.kind === 'worked out' && !r.inStock && r.id !== chosen)
    .toSorted((a, b) => a.outcome.each - b.outcome.each)[0];
  if (best === undefined || (taken !== undefined && best.outcome.each >= taken.outcome.each)) return undefined;
  return taken === undefined
    ? words.wouldDo(best.name)
    : words.wouldSave(best.name, money(taken.outcome.each - best.outcome.each, currency));
};

/** What a wire drops out by. */
const out: Readonly<Record<WireDropOut, Text>> = phrases('wire-out', {
  corner: say`too thick for a corner`,
  slot: say`too thick for a slot`,
  height: say`ruled out by the height`,
  machine: say`not for this machine`,
  finish: say`short of the finish`,
  tolerance: say`short of the tolerance`,
  layout: say`without a possible wire path`,
});

const words = phrases('wires', {
  choice: (clauses: readonly Text[]) => say`${{ clauses: list(clauses, 'semicolon') }}.`,
  none: say`No wire in stock is suitable`,
  otherWould: (wire: string, each: Part | Text) =>
    say`The wire that you specified is not suitable as the job stands; ${{ wire: name(wire) }} wire would be, at ${{ each }} each`,
  mightDo: (wire: string, each: Part | Text) =>
    say`With the settings as they stand there is no program; without them ${{ wire: name(wire) }} wire would be the cheapest suitable one in stock, at ${{ each }} each`,
  asAsked: (wire: string, each: Part) => say`${{ wire: name(wire) }} wire, as you specified, costs ${{ each }} each`,
  cheapest: (wire: string, each: Part) =>
    say`${{ wire: name(wire) }} wire is the cheapest suitable wire in stock, ${{ each }} each, all costs included`,
  chosenFirst: (wire: string, each: Part) =>
    say`${{ wire: name(wire) }} wire was the cheapest before the plan was made again, and costs ${{ each }} each now`,
  noOther: say`no other wire in stock is suitable`,
  next: (wire: string, each: Part | Text, than: Text) => say`next cheapest is ${{ wire: name(wire) }} at ${{ each }}, ${{ than }}`,
  atLeast: (each: Part) => say`at least ${{ each }}`,
  same: say`the same`,
  more: (by: Part) => say`${{ by }} more`,
  less: (by: Part) => say`${{ by }} less`,
  isOut: (wires: Part, by: Text) => say`${{ wires }} is ${{ by }}`,
  areOut: (wires: Part, by: Text) => say`${{ wires }} are ${{ by }}`,
  wouldDo: (wire: string) => say`${{ wire: name(wire) }} wire would do, but is not in stock.`,
  wouldSave: (wire: string, saved: Part) => say`${{ wire: name(wire) }} wire would save ${{ saved }} each, but is not in stock.`,
});

const dearer: Formula<'other' | 'taken'> = {
  name: say('pipeline.dearer')`extra cost of the next cheapest wire`,
  text: say('pipeline.dearer.by')`extra = price each with the next cheapest wire - price each with the selected wire`,
  source: 'definition',
  unit: 'money',
  inputs: {
    other: { unit: 'money', name: 'price each with the runner-up' },
    taken: { unit: 'money', name: 'price each with the wire taken' },
  },
  compute: ({ other, taken }) => other - taken,
};

/** Price each with every wire that was worked out ('wire.brass-0.25.each'), and what the runner-up costs more ('wire.choice'). */
export const wireFigures = (wires: WireTable | undefined): readonly (readonly [string, Figure])[] => {
  const able = (wires?.rows ?? []).filter((r): r is Able => r.kind === 'worked out');
  const [taken, other] = [able.find((r) => r.id === wires?.chosen), able.find((r) => r.id === wires?.nextCheapest)];
  const all = able.map((r) => r.price);
  const choice =
    taken === undefined || other === undefined ? [] : [apply(dearer, { other: other.price, taken: taken.price }, { key: 'wire.choice' })];
  return [...choice, ...all].map((f) => [f.key, f] as const);
};
