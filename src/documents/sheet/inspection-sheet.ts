/** The inspection sheet: what to measure on the finished piece, where, at which temperature, and room for what was found. */

import { type Asked, controlUnit, fromDatum, type JobFacts } from '../../result/facts.ts';
import type { CutFacts, MadeFacts } from '../../result/outcome-facts.ts';
import type { Inspection, InspectionRow } from '../../result/shown.ts';
import { type ControlUnit, INCHES } from '../../text/control-unit.ts';
import {
  bare,
  contour,
  count,
  type Digits,
  fixed,
  limit,
  name,
  number,
  type Part,
  quantity,
  significant,
  term,
  um,
  unitName,
  upTo,
} from '../../text/part.ts';
import { NOTHING, phrases, say, sentences } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { column, footOf, type Said, subtitleOf, type WrittenBlock, type WrittenPaper } from '../paper.ts';
import { length } from '../part/numbers.ts';
import { planPicture } from '../part/plan-picture.ts';
import { shapeTable } from '../part/shape-table.ts';

export const inspectionSheet = (facts: JobFacts, { cut, program }: MadeFacts): WrittenPaper => ({
  title: words.title,
  subtitle: subtitleOf(facts),
  foot: footOf(facts, words.foot),
  blocks: [
    ...(facts.outcome.answer === 'yes' ? [] : [{ kind: 'text', text: words.notProven(facts.sentence), large: true } as const]),
    { kind: 'pairs', rows: pairs(facts, program.inspection) },
    ...picture(facts),
    { kind: 'heading', text: words.toMeasure },
    measureTable(facts, program.inspection),
    ...shapeBlocks(facts),
    { kind: 'heading', text: words.how },
    { kind: 'list', items: advice(cut, program.inspection), marker: 'dash' },
    { kind: 'pairs', rows: SIGNED },
  ],
});

/** What a part by numbers is measured by: over pins, over teeth, across flats. */
const shapeBlocks = (facts: JobFacts): readonly WrittenBlock[] =>
  facts.shape === undefined
    ? []
    : [{ kind: 'heading', text: words.sizesOf(facts.shape.name) }, shapeTable(facts.shape.sizes, controlUnit(facts), 'with room to write')];

const pairs = ({ head, asked }: JobFacts, { temperature }: Inspection): readonly (readonly [Said, Said])[] => [
  [words.drawing, name(head.drawingName)],
  [words.material, name(asked.material.name)],
  [words.pieces, count(asked.quantity)],
  [words.asked, words.profileAnd(limit(asked.tolerance), um(asked.finish, { as: 'given' }))],
  [words.measuredAt, temperature === 20 ? words.reference : words.warm(temperature)],
  [words.from, asked.datum === undefined ? words.zero : words.datum(asked.datum)],
];

const picture = (facts: JobFacts): readonly WrittenBlock[] => {
  const drawn = planPicture(facts);
  return drawn === undefined ? [] : [{ kind: 'picture', picture: drawn, caption: words.caption }];
};

const measureTable = (facts: JobFacts, { temperature, rows, passedOver }: Inspection): WrittenBlock => {
  const shown = numbersIn(controlUnit(facts));
  const warm = temperature !== 20;
  return {
    kind: 'table',
    columns: [
      column(words.number, 0.5),
      column(words.contour, 1.1),
      column(words.what, 2),
      column(words.where(shown.unit), 2.2),
      column(words.drawn, 1.1, 'right'),
      ...(warm ? [column(words.at(temperature), 1.1, 'right')] : []),
      column(words.allowed, 1.5, 'right'),
      column(words.expected, 1.2, 'right'),
      column(words.measured, 1.3),
    ],
    rows: rows.map((r) => [
      r.number === 0 ? NOTHING : count(r.number),
      contourOf(r),
      r.what === 'named size' ? name(r.name ?? '') : what[r.what],
      whereOf(r, facts, shown),
      r.drawn === undefined ? NOTHING : r.what === 'smallest inside radius' && r.drawn === 0 ? words.sharp : shown.setting(r.drawn),
      ...(warm ? [r.reading === undefined ? NOTHING : shown.setting(r.reading)] : []),
      allowedOf(r, shown),
      expectedOf(r, shown),
      BLANK,
    ]),
    note: sentences([words.note(shown.unit), passedOver > 0 ? words.more(passedOver) : undefined]),
  };
};

const contourOf = ({ contour: id }: InspectionRow): Said => {
  if (id === 'all') return words.all;
  return id === '' ? NOTHING : contour(id);
};

/** Lengths where a gauge is read: those of a program in mm follow the reader, an inch program counts inches for everybody. */
interface Shown {
  readonly unit: Part;
  readonly place: (millimetres: number) => Part;
  readonly setting: (millimetres: number) => Part;
  /** '±0.008' of a length that is promised. */
  readonly within: (millimetres: number, digits: Digits) => Part;
}

const numbersIn = ({ name: unit, millimetres }: ControlUnit): Shown =>
  unit === INCHES.name
    ? {
        unit: term(unit),
        place: (mm) => number(mm / millimetres, upTo(4)),
        setting: (mm) => number(mm / millimetres, fixed(5)),
        within: (mm, digits) => ({ ...limit(mm / millimetres, '1', digits === PLACE ? upTo(4) : fixed(5)) }),
      }
    : {
        unit: unitName('mm'),
        place: (mm) => bare(mm, 'mm', PLACE),
        setting: (mm) => bare(mm, 'mm', SETTING),
        within: (mm, digits) => ({ ...limit(mm, 'mm', digits), bare: true }) as Part,
      };

const PLACE = upTo(3);
const SETTING = fixed(4);

/** Room to write in. */
const BLANK = term('__________');

const whereOf = ({ what: size, from, to }: InspectionRow, facts: JobFacts, { place }: Shown): Text => {
  if (from === undefined)
    return size === 'named size' ? words.asNamed : size === 'straightness over the height' ? words.topToBottom : words.everyFace;
  const a = fromDatum(facts.asked, from);
  if (to === undefined) return words.about(place(a.x), place(a.y));
  const b = fromDatum(facts.asked, to);
  return size === 'size along X' ? words.alongX(place(a.x), place(b.x)) : words.alongY(place(a.y), place(b.y));
};

const allowedOf = (r: InspectionRow, { place, within }: Shown): Said => {
  if (r.what === 'finish') return words.upTo(bare(r.tolerance, 'µm', { as: 'given' }));
  return r.onlyUp === true ? words.upTo(place(r.tolerance)) : within(r.tolerance, PLACE);
};

const expectedOf = (r: InspectionRow, { place, setting, within }: Shown): Said => {
  if (r.what === 'finish') return bare(r.expected, 'µm', significant(2));
  if (r.what === 'smallest inside radius') return place(r.expected);
  return r.onlyUp === true ? setting(r.expected) : within(r.expected, SETTING);
};

/** Common practice, no source, but for the temperature of reference. */
const advice = ({ plan }: CutFacts, { temperature }: Inspection): readonly Text[] => [
  hints.settle(temperature),
  hints.heights,
  hints.entry,
  ...(plan.contours.some((c) => c.kept === 'die') ? [hints.pins] : []),
  hints.back,
];

const hints = phrases('inspection-advice', {
  settle: (temperature: number) =>
    say`Let the piece lie beside the gauge until both are at ${{ temperature: quantity(temperature, '°C', { as: 'given' }) }}, longer the heavier it is; degrease and dry it, and stone off the trace of the entry before measuring across it.`,
  heights: say`Measure each size at the top, in the middle and at the bottom: the middle tells of the barrel, the ends of the taper.`,
  entry: say`Keep away from entry and tab by a millimetre on either side, and measure them on their own.`,
  pins: say`Inside sizes with pins or a bore gauge; a smaller size than drawn means metal left, a larger one metal gone.`,
  back: say`What was measured goes back as “${{ example: term('L2: 24.006 of 24 at 22') }}”: it gives the new offset registers and says whether the piece can be saved.`,
});

const what: Readonly<Record<Exclude<InspectionRow['what'], 'named size'>, Text>> = phrases('inspected', {
  profile: say`profile, all round`,
  diameter: say`diameter`,
  'size along X': say`size along X`,
  'size along Y': say`size along Y`,
  'smallest inside radius': say`smallest inside radius`,
  finish: say`Ra, across the lay`,
  'straightness over the height': say`straightness, top to bottom`,
});

const words = phrases('inspection-sheet', {
  title: say`Inspection sheet`,
  foot: say`inspection sheet`,
  notProven: (why: Text) => say`Not proven: nothing of this was cut yet. ${{ why }}`,
  toMeasure: say`To be measured`,
  all: say`all`,
  sizesOf: (shape: Text) => say`Sizes of the shape: ${{ shape }}`,
  how: say`How`,
  drawing: say`Drawing`,
  material: say`Material`,
  pieces: say`Pieces`,
  asked: say`Asked for`,
  profileAnd: (tolerance: Part, ra: Part) => say`profile ${{ tolerance }}, Ra ${{ finish: ra }}`,
  measuredAt: say`To be measured at`,
  reference: say`20 °C, as the sizes of the drawing hold (ISO 1)`,
  warm: (temperature: number) =>
    say`${{ temperature: quantity(temperature, '°C', { as: 'given' }) }}; what the gauge shows then stands in its own column`,
  from: say`Places count from`,
  zero: say`the zero of the drawing`,
  datum: ({ x, y }: NonNullable<Asked['datum']>) => say`the datum, X ${{ x: bare(x, 'mm', PLACE) }}, Y ${{ y: length(y) }} of the drawing`,
  caption: say`Plan view, ${{ unit: unitName('mm') }}. Numbers: contours in the order of cutting, as in the table.`,
  number: say`No.`,
  contour: say`Contour`,
  what: say`What`,
  where: (unit: Part) => say`Where, ${{ unit }}`,
  drawn: say`As drawn`,
  at: (temperature: number) => say`At ${{ temperature: quantity(temperature, '°C', { as: 'given' }) }}`,
  allowed: say`Allowed`,
  expected: say`Expected`,
  measured: say`Measured`,
  sharp: say`sharp`,
  note: (unit: Part) =>
    say`Lengths in ${{ unit }}, Ra in ${{ finish: unitName('µm') }}. A size lies between two faces: twice what the profile may be off. Expected: how far off it is to be looked for, what is systematic and one standard deviation of what is random.`,
  more: (contours: number) => say`${{ contours: count(contours) }} more contours are cut; their profile is asked for as that of all.`,
  asNamed: say`as the drawing names it`,
  topToBottom: say`top, middle, bottom`,
  everyFace: say`every cut face`,
  about: (x: Part, y: Part) => say`about X ${{ x }}, Y ${{ y }}`,
  alongX: (from: Part, to: Part) => say`X ${{ from }} to ${{ to }}`,
  alongY: (from: Part, to: Part) => say`Y ${{ from }} to ${{ to }}`,
  upTo: (most: Part) => say`up to ${{ most }}`,
  piece: say`Piece number`,
  by: say`Measured by`,
  gauge: say`Gauge and its number`,
  day: say`Day and hour`,
  temperature: say`Temperature of the piece`,
  verdict: say`Good, rework or scrap`,
});

const LINE = term('________________');
const SIGNED: readonly (readonly [Said, Said])[] = [
  [words.piece, LINE],
  [words.by, LINE],
  [words.gauge, LINE],
  [words.day, LINE],
  [words.temperature, term('________ °C')],
  [words.verdict, LINE],
];
