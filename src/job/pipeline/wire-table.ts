/** The wires of a shop as facts of an answer: rows in order, the one sentence, and the figures that can be asked why. */

import type { Figure } from '../../quantity/figure.ts';
import { apply, type Formula } from '../../quantity/formula.ts';
import type { WireDropOut, WireRow, WireTable } from '../../result/wires.ts';
import { printMoney } from '../../text/print/money.ts';
import { say } from '../../text/say.ts';

export interface WireTableAsked {
  readonly rows: readonly WireRow[];
  readonly chosen?: string;
  readonly named: boolean;
  readonly currency: string;
}

type Able = Extract<WireRow, { kind: 'worked out' }>;

/** The chosen first, then by price; those that drop out last, in the order of the shop file. */
export const wireTableOf = ({ rows, chosen, named, currency }: WireTableAsked): WireTable => {
  const able = rows.flatMap((r) => (r.kind === 'drops out' ? [] : [r])).toSorted((a, b) => rank(a, chosen) - rank(b, chosen));
  const ordered = [...able, ...rows.filter((r) => r.kind === 'drops out')];
  const runnerUp = able.find((r) => r.id !== chosen && r.inStock)?.id;
  const table = {
    rows: ordered,
    named,
    currency,
    ...(chosen === undefined ? {} : { chosen }),
    ...(runnerUp === undefined ? {} : { runnerUp }),
  };
  return { ...table, sentence: sentenceOf(table) };
};

const rank = (row: Exclude<WireRow, { kind: 'drops out' }>, chosen: string | undefined): number =>
  row.id === chosen ? -1 : row.outcome.each;

const sentenceOf = (table: Omit<WireTable, 'sentence'>): string => {
  const { rows, chosen, runnerUp, named } = table;
  const taken = rows.find((r): r is Able => r.id === chosen && r.kind === 'worked out');
  const next = rows.find((r) => r.id === runnerUp);
  const out = dropsSaid(rows);
  if (taken === undefined) return `No wire in stock does the job${out}.${toOrder(table)}`;
  const price = printMoney(taken.outcome.each, table.currency);
  const head = named
    ? `${taken.name} wire, as you asked, costs ${price} each`
    : `${taken.name} wire costs least of the wires in stock that do the job, ${price} each with everything in it`;
  const second =
    next === undefined || next.kind === 'drops out' ? '; no other wire in stock does it' : `; ${secondSaid(taken, next, table)}`;
  return `${head}${second}${out}.${toOrder(table)}`;
};

const OUT: Readonly<Record<WireDropOut, string>> = {
  corner: 'too thick for a corner',
  slot: 'too thick for a slot',
  height: 'out by the height',
  machine: 'not for the machine',
  finish: 'short of the finish',
  tolerance: 'short of the tolerance',
  layout: 'not to be laid out',
};

/** Wires in stock that drop out, together where the reason is of one kind; number and place stand in the table. */
const dropsSaid = (rows: readonly WireRow[]): string => {
  const drops = rows.flatMap((r) => (r.kind === 'drops out' && r.inStock ? [r] : []));
  return [...new Set(drops.map((r) => r.why))]
    .map((why) => {
      const names = drops.filter((r) => r.why === why).map((r) => r.name);
      const all = names.length === 1 ? `${names[0]} is` : `${names.slice(0, -1).join(', ')} and ${names.at(-1)} are`;
      return `; ${all} ${OUT[why]}`;
    })
    .join('');
};

const secondSaid = (taken: Able, next: Exclude<WireRow, { kind: 'drops out' }>, { currency }: Pick<WireTable, 'currency'>): string => {
  const each = `${next.kind === 'at least' ? 'at least ' : ''}${printMoney(next.outcome.each, currency)}`;
  const more = next.outcome.each / taken.outcome.each - 1;
  const than = Math.abs(more) < 5e-5 ? 'the same' : `${Math.abs(more * 100).toFixed(1)} % ${more > 0 ? 'more' : 'less'}`;
  return `the next is ${next.name} at ${each}, ${than}`;
};

/** A wire that is not on the shelf and would cost less, or do it at all. */
const toOrder = ({ rows, chosen, currency }: Omit<WireTable, 'sentence'>): string => {
  const taken = rows.find((r): r is Able => r.id === chosen && r.kind === 'worked out');
  const best = rows
    .filter((r): r is Able => r.kind === 'worked out' && !r.inStock && r.id !== chosen)
    .toSorted((a, b) => a.outcome.each - b.outcome.each)[0];
  if (best === undefined || (taken !== undefined && best.outcome.each >= taken.outcome.each)) return '';
  const saves = taken === undefined ? 'would do it' : `would save ${printMoney(taken.outcome.each - best.outcome.each, currency)} each`;
  return ` ${best.name} wire ${saves}, but is not in stock.`;
};

const dearer: Formula<'other' | 'taken'> = {
  name: say('pipeline.dearer')`what the runner-up costs more`,
  text: say('pipeline.dearer.by')`more = price each with the runner-up - price each with the wire taken`,
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
  const [taken, other] = [able.find((r) => r.id === wires?.chosen), able.find((r) => r.id === wires?.runnerUp)];
  const all = able.map((r) => r.price);
  const choice =
    taken === undefined || other === undefined ? [] : [apply(dearer, { other: other.price, taken: taken.price }, { key: 'wire.choice' })];
  return [...choice, ...all].map((f) => [f.key, f] as const);
};
