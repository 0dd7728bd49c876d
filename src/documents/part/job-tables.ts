/** The tables that set-up sheet, quotation and terminal share. */

import type { Estimate } from '../../estimate/estimate.ts';
import type { Point } from '../../geometry/segment.ts';
import type { NumberedContour } from '../../plan/numbered.ts';
import type { ContourPlan, Pass } from '../../plan/plan.ts';
import { fromDatum } from '../../result/facts.ts';
import type { ProgramFacts } from '../../result/outcome-facts.ts';
import { type ControlUnit, MILLIMETRES } from '../../text/control-unit.ts';
import { duration, mass, money, moneyRange, place, setting, spoken, value } from '../../text/print/phrases.ts';
import { printPlain } from '../../text/print/print.ts';
import { column, controlColumn, type PaperBlock } from '../paper.ts';

type Table = Extract<PaperBlock, { kind: 'table' }>;

/** What each pass is set to and what it leaves. */
export const passTable = (passes: readonly Pass[], estimate: Estimate | undefined, unit = MILLIMETRES): Table => ({
  kind: 'table',
  columns: [
    column('Pass', 0.8),
    column('Condition', 1.1),
    column('Register', 1),
    controlColumn(`Offset ${unit.name}`, 1.2),
    column('Gap mm', 1, 'right'),
    column('Feed mm/min', 1.4, 'right'),
    column('Ra after µm', 1.35, 'right'),
    column('Time', 3, 'right'),
  ],
  rows: passes.map((p, i) => {
    const time = estimate?.passes[i];
    return [
      p.number === 1 ? '1 rough' : `${p.number} skim`,
      String(p.condition),
      `D${p.register}`,
      setting(p.offset.value, unit),
      p.gap.value.toFixed(3),
      value(p.feed),
      value(p.ra),
      time === undefined ? '' : duration(time.minutes),
    ];
  }),
  note: 'Offset: from the wire’s centre to the finished surface, with the stock that later passes take off. A trial cut in this material settles the last thousandth.',
});

/** Where each contour starts. */
export const holeTable = (rows: readonly NumberedContour[], unit: ControlUnit = MILLIMETRES, datum?: Point): Table => {
  const first = new Map(rows.toReversed().map((c) => [holeKey(c), c.number]));
  return {
    kind: 'table',
    columns: [
      column('No.', 0.6),
      column('Contour', 1),
      column('Kept', 1.6),
      controlColumn('X', 1),
      controlColumn('Y', 1),
      controlColumn('Hole Ø', 1),
      column('Hole', 1.4),
      controlColumn(`Tab ${unit.name}`, 0.9),
      column('Loose piece', 1.7, 'right'),
    ],
    rows: rows.map((c) => [
      String(c.number),
      c.loop,
      c.kept === 'die' ? 'the block' : 'the piece inside',
      ...placesOf(c.hole.at, unit, datum),
      c.hole.origin === 'block edge' ? 'none' : place(c.hole.diameter, unit),
      holeWords(c, first.get(holeKey(c)) as number),
      c.tab === undefined ? 'none' : place(c.tab.length, unit),
      c.core === undefined ? `${c.piece.role}, ${mass(c.piece.mass.value)}` : 'none, burnt out',
    ]),
    note: `X, Y and Ø in ${unit.name} from ${zeroName(datum)}. Holes are drilled before clamping; clean and free of burrs.`,
  };
};

/** X and Y as the program counts them. */
export const placesOf = (at: Point, unit: ControlUnit, datum: Point | undefined): readonly [x: string, y: string] => {
  const { x, y } = fromDatum(datum === undefined ? {} : { datum }, at);
  return [place(x, unit), place(y, unit)];
};

const zeroName = (datum: Point | undefined): string => (datum === undefined ? 'the zero of the drawing' : 'the datum');

const holeKey = ({ hole: { at } }: ContourPlan): string => `${at.x} ${at.y}`;

/** A hole that an earlier contour was begun from is there already. */
const holeWords = ({ hole, number }: NumberedContour, first: number): string => {
  if (hole.origin === 'block edge') return 'from the edge';
  if (first < number) return `that of ${first}`;
  return hole.origin === 'placed' ? 'to be drilled' : 'as drawn';
};

/** Where the hours go. */
export const hoursTable = (estimate: Estimate): Table => ({
  kind: 'table',
  columns: [column(`Time for one ${estimate.stack === undefined ? 'piece' : `stack of ${estimate.stack}`}`, 4), column('', 2.4, 'right')],
  rows: [
    ...estimate.passes.map((p) => [`Pass ${p.pass}, ${Math.round(p.length.value).toLocaleString('en')} mm of path`, duration(p.minutes)]),
    ['Threading', duration(estimate.threading)],
    ['Travel', duration(estimate.travel)],
    ['Stops', duration(estimate.stops)],
    ['Machine, in all', duration(estimate.total)],
    ['of which somebody must be there', duration(estimate.attended)],
    ['of which it runs alone', duration(estimate.unattended)],
  ],
  note: `Besides: start holes ${duration(estimate.drilling)} a ${estimate.stack === undefined ? 'piece' : 'stack'}; set-up ${duration(estimate.setUp)} and programming ${duration(estimate.programming)} once. Ranges are one standard deviation.`,
});

/** What the price is made of. */
export const costTable = (estimate: Estimate): Table => ({
  kind: 'table',
  columns: [column('Cost', 4), column('', 1.5), column('', 2, 'right')],
  rows: estimate.lines.map((l) => [
    printPlain(l.cost.name),
    l.per === 'job' ? 'once' : l.per === 'run' ? 'each stack' : 'each piece',
    money(l.cost, estimate.currency),
  ]),
});

/** Price by quantity. */
export const breakTable = (estimate: Estimate): Table => ({
  kind: 'table',
  columns: [
    column('Pieces', 1),
    column('Price each', 1.6, 'right'),
    column('In all', 1.6, 'right'),
    column('Likely range, each', 3, 'right'),
  ],
  rows: estimate.breaks.map((b) => [
    String(b.quantity),
    money(b.each, estimate.currency),
    money(b.total, estimate.currency),
    moneyRange(b.each, estimate.currency),
  ]),
});

/** Every stop of the program, or the first of them when there are very many. */
export const stopTable = (
  stops: ProgramFacts['proof']['stops'],
  unit: ControlUnit,
  datum: Point | undefined,
  most = 60,
): Table | undefined => {
  if (stops.length === 0) return undefined;
  const rows = stops.slice(0, most).map((s, i) => [String(i + 1), String(s.block + 1), ...placesOf(s.at, unit, datum), spoken(s.comment)]);
  return {
    kind: 'table',
    columns: [column('Stop', 0.6), column('Line', 0.8), controlColumn('X', 0.9), controlColumn('Y', 0.9), column('What to do', 5)],
    rows,
    note: stops.length > most ? `${stops.length - most} more stops follow in the program.` : undefined,
  };
};
