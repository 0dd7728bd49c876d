/** The inspection sheet: what to measure on the finished piece, where, at which temperature, and room for what was found. */

import type { Inspection, InspectionRow } from '../../accuracy/inspection.ts';
import { controlUnit, fromDatum, type JobFacts } from '../../result/facts.ts';
import type { CutFacts, MadeFacts } from '../../result/outcome-facts.ts';
import type { ControlUnit } from '../../text/control-unit.ts';
import { place, setting } from '../../text/print/phrases.ts';
import { printPlain } from '../../text/print/print.ts';
import { type Column, column, type Paper, type PaperBlock, subtitleOf } from '../paper.ts';
import { planPicture } from '../part/plan-picture.ts';
import { shapeTable } from '../part/shape-table.ts';

export const inspectionSheet = (facts: JobFacts, { cut, program }: MadeFacts): Paper => ({
  title: 'Inspection sheet',
  subtitle: subtitleOf(facts),
  foot: `${facts.head.name} · inspection sheet · Kerfwright`,
  blocks: [
    ...(facts.outcome.answer === 'yes'
      ? []
      : [{ kind: 'text', text: `Not proven: nothing of this was cut yet. ${facts.sentence}`, large: true } as const]),
    { kind: 'pairs', rows: pairs(facts, program.inspection) },
    ...picture(facts),
    { kind: 'heading', text: 'To be measured' },
    measureTable(facts, program.inspection),
    ...shapeBlocks(facts),
    { kind: 'heading', text: 'How' },
    { kind: 'list', items: advice(cut, program.inspection), marker: 'dash' },
    { kind: 'pairs', rows: SIGNED },
  ],
});

/** What a part by numbers is measured by: over pins, over teeth, across flats. */
const shapeBlocks = (facts: JobFacts): readonly PaperBlock[] =>
  facts.shape === undefined
    ? []
    : [
        { kind: 'heading', text: `Sizes of the shape: ${printPlain(facts.shape.name)}` },
        shapeTable(facts.shape.sizes, controlUnit(facts), 'with room to write'),
      ];

const SIGNED: readonly (readonly [string, string])[] = [
  ['Piece number', '________________'],
  ['Measured by', '________________'],
  ['Gauge and its number', '________________'],
  ['Day and hour', '________________'],
  ['Temperature of the piece', '________ °C'],
  ['Good, rework or scrap', '________________'],
];

const pairs = (facts: JobFacts, { temperature }: Inspection): readonly (readonly [string, string])[] => [
  ['Drawing', facts.head.drawingName],
  ['Material', facts.asked.material.name],
  ['Pieces', String(facts.asked.quantity)],
  ['Asked for', `profile ±${facts.asked.tolerance} mm, Ra ${facts.asked.finish} µm`],
  [
    'To be measured at',
    temperature === 20
      ? '20 °C, as the sizes of the drawing hold (ISO 1)'
      : `${temperature} °C; what the gauge shows then stands in its own column`,
  ],
  [
    'Places count from',
    facts.asked.datum === undefined
      ? 'the zero of the drawing'
      : `the datum, X ${place(facts.asked.datum.x)}, Y ${place(facts.asked.datum.y)} mm of the drawing`,
  ],
];

const picture = (facts: JobFacts): readonly PaperBlock[] => {
  const drawn = planPicture(facts);
  return drawn === undefined
    ? []
    : [{ kind: 'picture', picture: drawn, caption: 'Plan view, mm. Numbers: contours in the order of cutting, as in the table.' }];
};

const measureTable = (facts: JobFacts, { temperature, rows, passedOver }: Inspection): PaperBlock => {
  const unit = controlUnit(facts);
  const warm = temperature !== 20;
  return {
    kind: 'table',
    columns: [
      column('No.', 0.5),
      column('Contour', 1.1),
      column('What', 2),
      amount(`Where, ${unit.name}`, 2.2, 'left'),
      amount('As drawn', 1.1),
      ...(warm ? [amount(`At ${temperature} °C`, 1.1)] : []),
      amount('Allowed', 1.5),
      amount('Expected', 1.2),
      column('Measured', 1.3),
    ],
    rows: rows.map((r) => [
      r.number === 0 ? '' : String(r.number),
      r.contour,
      r.what === 'named size' ? (r.name ?? '') : WORDS[r.what],
      whereOf(r, facts, unit),
      r.drawn === undefined ? '' : r.what === 'smallest inside radius' && r.drawn === 0 ? 'sharp' : setting(r.drawn, unit),
      ...(warm ? [r.reading === undefined ? '' : setting(r.reading, unit)] : []),
      allowedOf(r, unit),
      expectedOf(r, unit),
      BLANK,
    ]),
    units: unit.name === 'mm' ? rows.map((r) => (r.what === 'finish' ? 'µm' : 'mm')) : undefined,
    note: `Lengths in ${unit.name}, Ra in µm. A size lies between two faces: twice what the profile may be off. Expected: how far off it is to be looked for, what is systematic and one standard deviation of what is random.${
      passedOver > 0 ? ` ${passedOver} more contours are cut; their profile is asked for as that of all.` : ''
    }`,
  };
};

/** Where a gauge of the reader's unit is read: the sizes follow the reader where the program counts in mm. */
const amount = (title: string, width: number, align: Column['align'] = 'right'): Column => ({ title, width, align, holds: 'amount' });

/** Room to write in. */
const BLANK = '__________';

const WORDS: Readonly<Record<Exclude<InspectionRow['what'], 'named size'>, string>> = {
  profile: 'profile, all round',
  diameter: 'diameter',
  'size along X': 'size along X',
  'size along Y': 'size along Y',
  'smallest inside radius': 'smallest inside radius',
  finish: 'Ra, across the lay',
  'straightness over the height': 'straightness, top to bottom',
};

const whereOf = ({ what, from, to }: InspectionRow, facts: JobFacts, unit: ControlUnit): string => {
  if (from === undefined)
    return what === 'named size'
      ? 'as the drawing names it'
      : what === 'straightness over the height'
        ? 'top, middle, bottom'
        : 'every cut face';
  const a = fromDatum(facts.asked, from);
  if (to === undefined) return `about X ${place(a.x, unit)}, Y ${place(a.y, unit)}`;
  const b = fromDatum(facts.asked, to);
  return what === 'size along X' ? `X ${place(a.x, unit)} to ${place(b.x, unit)}` : `Y ${place(a.y, unit)} to ${place(b.y, unit)}`;
};

const allowedOf = (r: InspectionRow, unit: ControlUnit): string => {
  if (r.what === 'finish') return `up to ${r.tolerance}`;
  const amount = place(r.tolerance, unit);
  return r.onlyUp === true ? `up to ${amount}` : `±${amount}`;
};

const expectedOf = (r: InspectionRow, unit: ControlUnit): string => {
  if (r.what === 'finish') return Number(r.expected.toPrecision(2)).toString();
  if (r.what === 'smallest inside radius') return place(r.expected, unit);
  const amount = setting(r.expected, unit);
  return r.onlyUp === true ? amount : `±${amount}`;
};

/** Common practice, no source, but for the temperature of reference. */
const advice = ({ plan }: CutFacts, { temperature }: Inspection): readonly string[] => [
  `Let the piece lie beside the gauge until both are at ${temperature} °C, longer the heavier it is; degrease and dry it, and stone off the trace of the entry before measuring across it.`,
  'Measure each size at the top, in the middle and at the bottom: the middle tells of the barrel, the ends of the taper.',
  'Keep away from entry and tab by a millimetre on either side, and measure them on their own.',
  ...(plan.contours.some((c) => c.kept === 'die')
    ? ['Inside sizes with pins or a bore gauge; a smaller size than drawn means metal left, a larger one metal gone.']
    : []),
  'What was measured goes back as “L2: 24.006 of 24 at 22”: it gives the new offset registers and says whether the piece can be saved.',
];
