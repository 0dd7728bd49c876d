/** The tables that set-up sheet, quotation and terminal share. */

import { fromDatum } from '../../result/facts.ts';
import type { ProgramFacts } from '../../result/outcome-facts.ts';
import type { ContourPlan, EstimatedHours, EstimatedPrice, NumberedContour, Pass, Point } from '../../result/shown.ts';
import { itemAt } from '../../sequence/sequence.ts';
import { type ControlUnit, MILLIMETRES } from '../../text/control-unit.ts';
import {
  asPart,
  bare,
  contour,
  count,
  fixed,
  inside,
  list,
  mass,
  money,
  type Part,
  quantity,
  term,
  unitName,
  upTo,
} from '../../text/part.ts';
import { skimName } from '../../text/pass-name.ts';
import { NOTHING, only, phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { column, type WrittenTable } from '../paper.ts';
import { amountOf, moneyRange, onBlock, setting, timeOf, whole } from './numbers.ts';

/** What each pass is set to and what it leaves. */
export const passTable = (
  passes: readonly Pass[],
  estimate: Pick<EstimatedHours, 'passes'> | undefined,
  unit = MILLIMETRES,
): WrittenTable => ({
  kind: 'table',
  columns: [
    column(ofPasses.pass, 1.7),
    column(ofPasses.condition, 1.1),
    column(ofPasses.register, 1),
    column(ofPasses.offset(unit), 1.2, 'right'),
    column(ofPasses.gap, 1, 'right'),
    column(ofPasses.feed, 1.4, 'right'),
    column(ofPasses.finish, 1.35, 'right'),
    column(ofPasses.time, 2.4, 'right'),
  ],
  rows: passes.map((p, i) => {
    const time = estimate?.passes[i];
    return [
      passSaid(passes, i),
      term(String(p.condition)),
      term(`D${p.register}`),
      setting(p.offset.value, unit),
      bare(p.gap.value, 'mm', fixed(3)),
      amountOf(p.feed),
      amountOf(p.ra),
      time === undefined ? NOTHING : timeOf(time.minutes),
    ];
  }),
  note: ofPasses.note,
});

/** In its family the first is the rough: numbers of a family follow each other, and the next family begins further on. */
const passSaid = (passes: readonly Pass[], i: number): Text => {
  let first = i;
  while (first > 0 && itemAt(passes, first).number === itemAt(passes, first - 1).number + 1) first -= 1;
  const { number } = itemAt(passes, i);
  return first === i ? ofPasses.rough(number) : ofPasses.skim(number, i - first + 1);
};

const ofPasses = phrases('pass-table', {
  pass: say`Pass`,
  condition: say`Condition`,
  register: say`Register`,
  offset: ({ name }: ControlUnit) => say`Offset ${{ unit: term(name) }}`,
  gap: say`Gap ${{ unit: unitName('mm') }}`,
  feed: say`Feed ${{ unit: unitName('mm/min') }}`,
  finish: say`Ra after ${{ unit: unitName('µm') }}`,
  time: say`Time`,
  rough: (number: number) => say`${{ pass: count(number) }} rough`,
  skim: (number: number, turn: number) => say`${{ pass: count(number) }} ${{ skim: skimName(turn) }}`,
  note: say`Offset: wire centre to finished surface, including the stock for later passes. Confirm offsets with a trial cut in this material.`,
});

/** Where each contour starts. */
export const holeTable = (rows: readonly NumberedContour[], unit: ControlUnit = MILLIMETRES, datum?: Point): WrittenTable => {
  const first = new Map(rows.toReversed().map((c) => [holeKey(c), c]));
  return {
    kind: 'table',
    columns: [
      column(ofHoles.contour, 1),
      column(ofHoles.number, 0.6),
      column(ofHoles.kept, 1.6),
      column(term('X'), 1, 'right'),
      column(term('Y'), 1, 'right'),
      column(ofHoles.diameter, 1, 'right'),
      column(ofHoles.hole, 1.4),
      column(ofHoles.tab(unit), 0.9, 'right'),
      column(ofHoles.loose, 1.7, 'right'),
    ],
    rows: rows.map((c) => [
      contour(c.loop),
      count(c.number),
      c.kept === 'die' ? ofHoles.block : ofHoles.inside,
      ...placesOf(c.hole.at, unit, datum),
      c.hole.origin === 'block edge' ? ofHoles.none : onBlock(c.hole.diameter, unit),
      holeWords(c, first.get(holeKey(c)) ?? c),
      c.tab === undefined ? ofHoles.none : onBlock(c.tab.length, unit),
      c.core === undefined ? ofHoles[c.piece.role](c.piece.mass.value) : ofHoles.noCore,
    ]),
    note: datum === undefined ? ofHoles.fromZero(unit) : ofHoles.fromDatum(unit),
  };
};

const ofHoles = phrases('hole-table', {
  number: say`Order`,
  contour: say`Contour`,
  kept: say`Kept`,
  diameter: say`Hole Ø`,
  hole: say`Hole`,
  tab: ({ name }: ControlUnit) => say`Tab ${{ unit: term(name) }}`,
  loose: say`Loose piece`,
  block: say`the block`,
  inside: say`the piece inside`,
  none: say`none`,
  part: (kilograms: number) => say`part, ${{ mass: mass(kilograms) }}`,
  slug: (kilograms: number) => say`slug, ${{ mass: mass(kilograms) }}`,
  noCore: say`none, no-core cut`,
  fromZero: ({ name }: ControlUnit) =>
    say`X, Y and Ø in ${{ unit: term(name) }} from the drawing origin. Drill the holes before clamping; clean and free of burrs.`,
  fromDatum: ({ name }: ControlUnit) =>
    say`X, Y and Ø in ${{ unit: term(name) }} from the program zero. Drill the holes before clamping; clean and free of burrs.`,
  fromEdge: say`from the edge`,
  that: (loop: string) => say`that of ${{ loop: contour(loop) }}`,
  toDrill: say`to be drilled`,
  drawn: say`as drawn`,
});

/** X and Y as the program counts them. */
export const placesOf = (at: Point, unit: ControlUnit, datum: Point | undefined): readonly [x: Part, y: Part] => {
  const { x, y } = fromDatum(datum === undefined ? {} : { datum }, at);
  return [onBlock(x, unit), onBlock(y, unit)];
};

const holeKey = ({ hole: { at } }: ContourPlan): string => `${at.x} ${at.y}`;

/** A hole that an earlier contour was begun from is there already. */
const holeWords = ({ hole, number }: NumberedContour, first: NumberedContour): Text => {
  if (hole.origin === 'block edge') return ofHoles.fromEdge;
  if (first.number < number) return ofHoles.that(first.loop);
  return hole.origin === 'placed' ? ofHoles.toDrill : ofHoles.drawn;
};

/** Where the hours go. */
export const hoursTable = (estimate: EstimatedHours): WrittenTable => ({
  kind: 'table',
  columns: [column(estimate.stack === undefined ? ofHours.onePiece : ofHours.oneStack(estimate.stack), 4), column(NOTHING, 2.4, 'right')],
  rows: [
    ...estimate.passes.map((p) => [ofHours.pass(p.pass, p.length.value), timeOf(p.minutes)]),
    [ofHours.threading, timeOf(estimate.threading)],
    [ofHours.travel, timeOf(estimate.travel)],
    [ofHours.stops, timeOf(estimate.stops)],
    [ofHours.machine, timeOf(estimate.total)],
    [ofHours.attended, timeOf(estimate.attended)],
    [ofHours.alone, timeOf(estimate.unattended)],
  ],
  note: (estimate.stack === undefined ? ofHours.besides : ofHours.besidesStack)(
    timeOf(estimate.drilling),
    timeOf(estimate.setUp),
    timeOf(estimate.programming),
  ),
});

const ofHours = phrases('hours-table', {
  onePiece: say`Time for one piece`,
  oneStack: (sheets: number) => say`Time for one stack of ${{ sheets: count(sheets) }}`,
  pass: (number: number, path: number) => say`Pass ${{ pass: count(number) }}, ${{ path: whole(path, 'mm') }} of path`,
  threading: say`Threading`,
  travel: say`Travel`,
  stops: say`Stops`,
  machine: say`Machine total`,
  attended: say`attended`,
  alone: say`unattended`,
  besides: (holes: Text, setUp: Text, programming: Text) =>
    say`Not included: start holes ${{ holes }} per piece; set-up ${{ setUp }} and programming ${{ programming }} per job. Ranges are one standard deviation.`,
  besidesStack: (holes: Text, setUp: Text, programming: Text) =>
    say`Not included: start holes ${{ holes }} per stack; set-up ${{ setUp }} and programming ${{ programming }} per job. Ranges are one standard deviation.`,
});

/** What the price is made of, down to the price of all pieces: each line is rounded, and what that leaves stands in a line of its own. */
export const costTable = ({ lines, order, currency }: EstimatedPrice): WrittenTable => {
  const several = order.quantity > 1;
  const amount = (minor: number): Part => money(minor, currency);
  const closing: readonly (readonly [Text, number])[] = [
    [ofCosts.markup(order.markup.share), order.markup.amount],
    ...(order.rounding === 0 ? [] : ([[ofCosts.rounding, order.rounding]] as const)),
    [several ? ofCosts.total(order.quantity) : ofCosts.totalOfOne, order.total],
  ];
  return {
    kind: 'table',
    columns: [
      column(ofCosts.cost, 4),
      column(NOTHING, 1.5),
      column(several ? ofCosts.once : NOTHING, 2, 'right'),
      ...(several ? [column(ofCosts.forAll(order.quantity), 2, 'right')] : []),
    ],
    rows: [
      ...lines.map((l, i) => [l.cost.name, ofCosts[l.per], amount(l.cost.value), ...(several ? [amount(order.lines[i] ?? 0)] : [])]),
      ...closing.map(([name, minor]) => [name, NOTHING, ...(several ? [NOTHING] : []), amount(minor)]),
    ],
  };
};

const ofCosts = phrases('cost-table', {
  cost: say`Cost`,
  job: say`per job`,
  run: say`per stack`,
  piece: say`per piece`,
  once: say`Amount`,
  forAll: (pieces: number) => say`For ${{ pieces: count(pieces, 'piece') }}`,
  markup: (share: number) => say`Markup on cost, ${{ share: quantity(share * 100, '%', upTo(2)) }}`,
  rounding: say`Rounding`,
  total: (pieces: number) => say`Price of ${{ pieces: count(pieces, 'piece') }}`,
  totalOfOne: say`Price`,
});

/** Price by quantity. */
export const breakTable = (estimate: EstimatedPrice): WrittenTable => ({
  kind: 'table',
  columns: [
    column(ofBreaks.pieces, 1),
    column(ofBreaks.each, 1.6, 'right'),
    column(ofBreaks.all, 1.6, 'right'),
    column(ofBreaks.range, 3, 'right'),
  ],
  rows: estimate.breaks.map((b) => [
    count(b.quantity),
    money(b.each.value, estimate.currency),
    money(b.total.value, estimate.currency),
    moneyRange(b.each, estimate.currency),
  ]),
});

const ofBreaks = phrases('price-table', {
  pieces: say`Pieces`,
  each: say`Price each`,
  all: say`Total`,
  range: say`Likely range, each`,
});

/** Every stop of the program, or the first of them when there are very many. */
export const stopTable = (
  stops: ProgramFacts['proof']['stops'],
  unit: ControlUnit,
  datum: Point | undefined,
  most = 60,
): (WrittenTable & { readonly note?: Text | undefined }) | undefined => {
  if (stops.length === 0) return undefined;
  return {
    kind: 'table',
    columns: [
      column(ofStops.stop, 0.6),
      column(ofStops.line, 0.8),
      column(term('X'), 0.9, 'right'),
      column(term('Y'), 0.9, 'right'),
      column(ofStops.what, 5),
    ],
    rows: stops.slice(0, most).map((s, i) => [count(i + 1), count(s.block + 1), ...placesOf(s.at, unit, datum), stopInFull(s)]),
    note: stops.length > most ? ofStops.more(stops.length - most) : undefined,
  };
};

/** Action first, as on its block; what stands in the program on lines before it comes after. */
const stopInFull = ({ text, details = [] }: ProgramFacts['proof']['stops'][number]): Text =>
  only(list([asPart(text), ...details.map(inside)], 'semicolon'));

const ofStops = phrases('stop-table', {
  stop: say`Stop`,
  line: say`Line`,
  what: say`What to do`,
  more: (stops: number) => say`${{ stops: count(stops) }} more stops follow in the program.`,
});
