/** The inspection sheet: what to measure on the finished piece, where, at which temperature, and room for what was found. */

import { type Asked, controlUnit, fromDatum, type JobFacts } from '../../result/facts.ts';
import type { CutFacts, MadeFacts } from '../../result/outcome-facts.ts';
import type { Inspection, InspectionRow } from '../../result/shown.ts';
import { allHeld, confidenceTold } from '../../result/shown.ts';
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
import { markedAssumed } from '../part/assumed-mark.ts';
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
    measureTable(facts, cut, program.inspection),
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
  [words.material, markedAssumed(asked, 'material', name(asked.material.name))],
  [words.pieces, markedAssumed(asked, 'quantity', count(asked.quantity))],
  [
    words.asked,
    words.profileAnd(
      markedAssumed(asked, 'tolerance', limit(asked.tolerance)),
      markedAssumed(asked, 'finish', um(asked.finish, { as: 'given' })),
    ),
  ],
  [words.measuredAt, temperature === 20 ? words.reference : words.warm(temperature)],
  [words.from, asked.datum === undefined ? words.zero : words.datum(asked.datum)],
];

const picture = (facts: JobFacts): readonly WrittenBlock[] => {
  const drawn = planPicture(facts);
  return drawn === undefined ? [] : [{ kind: 'picture', picture: drawn, caption: words.caption }];
};

const measureTable = (facts: JobFacts, cut: CutFacts, { temperature, rows, passedOver }: Inspection): WrittenBlock => {
  const shown = numbersIn(controlUnit(facts));
  const warm = temperature !== 20;
  return {
    kind: 'table',
    columns: [
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
      contourOf(r),
      r.what === 'named size' ? name(r.name ?? '') : what[r.what],
      whereOf(r, facts, shown),
      r.drawn === undefined ? NOTHING : r.what === 'smallest inside radius' && r.drawn === 0 ? words.sharp : shown.setting(r.drawn),
      ...(warm ? [r.reading === undefined ? NOTHING : shown.setting(r.reading)] : []),
      allowedOf(r, shown),
      expectedOf(r, shown),
      BLANK,
    ]),
    note: sentences([words.note(shown.unit, facts.asked.confidence), together(cut), passedOver > 0 ? words.more(passedOver) : undefined]),
  };
};

/** The promise is that of one contour; a part with many is the likelier to miss it in one of them. */
const together = ({ plan, budgets }: CutFacts): Text | undefined => {
  const contours = plan.contours.length + (plan.openCuts ?? []).length;
  if (budgets === undefined || contours < 2 || plan.classes !== undefined) return undefined;
  return words.together(contours, Math.floor(100 * allHeld(budgets.profile, contours)));
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
    say`Let part and gauge soak to ${{ temperature: quantity(temperature, '°C', { as: 'given' }) }}, longer for heavy parts; degrease, dry, stone off the entry mark.`,
  heights: say`Measure each size at the top, in the middle and at the bottom: a mid-height difference shows bow; a top-to-bottom difference shows taper.`,
  entry: say`Keep a millimetre clear of entry mark and tab, and measure them separately.`,
  pins: say`Openings with pins or a bore gauge. An opening that is undersize has stock left, oversize is overcut; an outside size the other way about: oversize means stock left, undersize overcut.`,
  back: say`Enter a measurement as “${{ example: term('L2: 24.006 of 24 at 22') }}”: it gives the new offset registers and whether the piece can be saved.`,
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
  notProven: (why: Text) => say`Not proven: nothing has been cut by this yet. ${{ why }}`,
  toMeasure: say`Measurements`,
  all: say`all`,
  sizesOf: (shape: Text) => say`Sizes of the shape: ${{ shape }}`,
  how: say`Method`,
  drawing: say`Drawing`,
  material: say`Material`,
  pieces: say`Pieces`,
  asked: say`Required`,
  profileAnd: (tolerance: Text, ra: Text) => say`profile ${{ tolerance }}, Ra ${{ finish: ra }}`,
  measuredAt: say`Reference temperature`,
  reference: say`20 °C (ISO 1)`,
  warm: (temperature: number) =>
    say`${{ temperature: quantity(temperature, '°C', { as: 'given' }) }}; the reading expected at that temperature has its own column`,
  from: say`Coordinates from`,
  zero: say`the drawing origin`,
  datum: ({ x, y }: NonNullable<Asked['datum']>) =>
    say`the program zero, X ${{ x: bare(x, 'mm', PLACE) }}, Y ${{ y: length(y) }} of the drawing`,
  caption: say`Plan view, ${{ unit: unitName('mm') }}. Contours bear their names, as in the table.`,
  contour: say`Contour`,
  what: say`What`,
  where: (unit: Part) => say`Where, ${{ unit }}`,
  drawn: say`Nominal`,
  at: (temperature: number) => say`At ${{ temperature: quantity(temperature, '°C', { as: 'given' }) }}`,
  allowed: say`Allowed`,
  expected: say`Expected`,
  measured: say`Measured`,
  sharp: say`sharp`,
  note: (unit: Part, k: number) =>
    say`Lengths in ${{ unit }}, Ra in ${{ finish: unitName('µm') }}. A size spans two faces, so its tolerance is twice the profile's. Expected: systematic error plus k standard deviations of the random errors, ${{ sure: confidenceTold(k) }}, of each contour by itself.`,
  together: (contours: number, percent: number) =>
    say`That all ${{ contours: count(contours, 'contour') }} come out so has a chance of about ${{ chance: quantity(percent, '%', fixed(0)) }}.`,
  more: (contours: number) => say`${{ contours: count(contours) }} more contours are cut; the profile tolerance above applies to them.`,
  asNamed: say`as named in the drawing`,
  topToBottom: say`top, middle, bottom`,
  everyFace: say`every cut face`,
  about: (x: Part, y: Part) => say`about X ${{ x }}, Y ${{ y }}`,
  alongX: (from: Part, to: Part) => say`X ${{ from }} to ${{ to }}`,
  alongY: (from: Part, to: Part) => say`Y ${{ from }} to ${{ to }}`,
  upTo: (most: Part) => say`up to ${{ most }}`,
  piece: say`Piece no.`,
  by: say`Measured by`,
  gauge: say`Gauge no.`,
  day: say`Date and time`,
  temperature: say`Part temperature`,
  verdict: say`Accept / rework / scrap`,
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
