/** The set-up sheet: what the operator needs at the machine. */

import { type Asked, controlUnit, hoursOf, type JobFacts } from '../../result/facts.ts';
import type { CutFacts, HoursFacts, MadeFacts, ProgramFacts } from '../../result/outcome-facts.ts';
import type { ControlUnit } from '../../text/control-unit.ts';
import { findingInFull } from '../../text/located.ts';
import { bare, count, fixed, limit, list, name, number, type Part, quantity, term, um, unitName, upTo } from '../../text/part.ts';
import { only, phrases, say, sentences, symbols } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { footOf, type Said, subtitleOf, type WrittenBlock, type WrittenPaper } from '../paper.ts';
import { markedAssumed } from '../part/assumed-mark.ts';
import { classTable } from '../part/class-table.ts';
import { holeTable, passTable } from '../part/job-tables.ts';
import { figureOf, finish, length, setting, surely, timeOf, whole } from '../part/numbers.ts';
import { openTable } from '../part/open-table.ts';
import { planPicture } from '../part/plan-picture.ts';
import { scheduleText } from '../part/schedule-text.ts';
import { shiftStrip } from '../part/shift-strip.ts';
import { stopsOnSchedule } from '../part/stops-on-schedule.ts';
import { cautionsFor } from './cautions.ts';

export const setupSheet = (facts: JobFacts, made: MadeFacts): WrittenPaper => ({
  title: words.title,
  subtitle: subtitleOf(facts),
  foot: footOf(facts, words.foot),
  blocks: [
    ...standing(facts),
    { kind: 'pairs', rows: pairs(facts, made) },
    ...pictureBlock(facts, made.cut),
    ...planBlocks(facts, made),
    ...pencilMarks(facts),
    { kind: 'heading', text: words.cautions },
    { kind: 'list', items: cautionsFor(facts.asked.material, made.cut.plan.contours), marker: 'warning' },
  ],
});

/** A sheet of a job that is not proven must not look like one that is. */
const standing = (facts: JobFacts): readonly WrittenBlock[] =>
  facts.outcome.answer === 'yes' ? [] : [{ kind: 'text', text: words.notToRun(facts.sentence), large: true }];

const pairs = (facts: JobFacts, { cut, program }: MadeFacts): readonly (readonly [Said, Said])[] => {
  const { head, asked } = facts;
  const { plan, within } = cut;
  const estimate = hoursOf(facts)?.estimate;
  return [
    [words.drawing, name(head.drawingName)],
    [words.material, markedAssumed(asked, 'material', name(asked.material.name))],
    [words.height, heightSaid(asked, plan, estimate)],
    [words.pieces, markedAssumed(asked, 'quantity', count(asked.quantity))],
    [
      words.asked,
      words.limits(
        markedAssumed(asked, 'tolerance', limit(asked.tolerance)),
        markedAssumed(asked, 'finish', um(asked.finish, { as: 'given' })),
      ),
    ],
    [words.wire, words.wireSet(plan.wire)],
    [words.expected, words.limits(surely(within, asked), finish(plan.finish))],
    [words.program, words.lines(program.text.split('\n').length, program.units, program.dialect)],
    ...scaledRow(program),
    ...(estimate === undefined ? [] : hoursRows(estimate)),
    [words.datum, datumSaid(asked)],
    [words.heightOfDatum, words.lowerFace],
  ];
};

const hoursRows = (estimate: HoursFacts['estimate']): readonly (readonly [Said, Said])[] => [
  [words.machineTime, timeOf(estimate.total)],
  [words.alone, timeOf(estimate.unattended)],
  [words.wireUsed, only(list([whole(estimate.wireLength.value, 'm'), figureOf(estimate.wireMass)]))],
];

/** In mm, as the drawing is measured. */
const datumSaid = ({ datum }: Asked): Text => (datum === undefined ? words.zero : words.datumAt(datum));

const scaledRow = ({ scaled }: ProgramFacts): readonly (readonly [Said, Said])[] =>
  scaled === undefined ? [] : [[words.scaled, words.scaledBy(scaled.factor, scaled.temperature)]];

const heightSaid = (asked: Asked, plan: CutFacts['plan'], estimate: HoursFacts['estimate'] | undefined): Said =>
  markedAssumed(
    asked,
    'height',
    estimate?.stack === undefined ? length(asked.height) : words.stacked(estimate.stack, asked.height, plan.height),
  );

const pictureBlock = (facts: JobFacts, cut: CutFacts): readonly WrittenBlock[] => {
  const picture = planPicture(facts);
  return picture === undefined ? [] : [{ kind: 'picture', picture, caption: sentences([caption.plan, ...captionMore(cut)]) }];
};

/** Only what this plan has. */
const captionMore = ({ plan }: CutFacts): readonly Text[] => {
  const { clamps = [], contours, openCuts = [] } = plan;
  return [
    ...(contours.some((c) => c.core !== undefined) ? [caption.rings] : []),
    ...(openCuts.length > 0 ? [openCuts.length === 1 ? caption.openLine : caption.openLines] : []),
    ...(contours.some((c) => c.hole.origin === 'block edge') ? [caption.inTheOpen] : []),
    ...(clamps.length > 0 ? [caption.clamp] : []),
  ];
};

const planBlocks = (facts: JobFacts, { cut, program }: MadeFacts): readonly WrittenBlock[] => {
  const { plan, contours } = cut;
  const unit = controlUnit(facts);
  const { datum } = facts.asked;
  const stops = stopsOnSchedule(facts, program.proof);
  const hours = hoursOf(facts);
  return [
    { kind: 'heading', text: words.passes },
    passTable(plan.passes, hours?.estimate, unit),
    { kind: 'text', text: registers(program, unit) },
    ...(plan.classes === undefined ? [] : [{ kind: 'heading', text: words.classes } as const, classTable(plan.classes, 'shop')]),
    ...(contours.length === 0 ? [] : [{ kind: 'heading', text: words.holes } as const, holeTable(contours, unit, datum)]),
    ...(plan.openCuts === undefined ? [] : [{ kind: 'heading', text: words.openLines } as const, openTable(plan.openCuts, unit, datum)]),
    ...scheduleBlocks(hours?.schedule),
    ...(stops === undefined ? [] : [{ kind: 'heading', text: words.stops } as const, stops]),
  ];
};

/** In the unit of the program: a register of an inch program counts inches. */
const registers = (program: ProgramFacts, unit: ControlUnit): Text => {
  const set = [...program.registers].map(([n, mm]) => symbols`${term(`D${n}`)} = ${setting(mm, unit)}`);
  if (set.length === 0) return words.noRegisters;
  const limits = [...program.registers].flatMap(([n]) => limitOf(program, n, unit));
  return limits.length === 0
    ? words.registers(list(set), unit)
    : sentences([words.registers(list(set), unit), words.raised(list(limits), unit)]);
};

/** Rounded down to the last digit that is shown. */
const limitOf = ({ registerLimits }: ProgramFacts, number: number, unit: ControlUnit): readonly Text[] => {
  const limit = registerLimits.get(number);
  if (limit === undefined) return [];
  const digits = unit.name === 'inch' ? 1e5 : 1e4;
  const floored = (Math.floor((limit / unit.millimetres) * digits) / digits) * unit.millimetres;
  return [symbols`${term(`D${number}`)} ${setting(floored, unit)}`];
};

const scheduleBlocks = (schedule: HoursFacts['schedule']): readonly WrittenBlock[] =>
  schedule === undefined
    ? []
    : [
        { kind: 'heading', text: words.schedule },
        { kind: 'text', text: sentences(scheduleText(schedule)) },
        { kind: 'picture', ...shiftStrip(schedule) },
      ];

/** Findings that whoever stands at the machine should know. */
const pencilMarks = (facts: JobFacts): readonly WrittenBlock[] => {
  const telling = facts.findings.filter((f) => f.severity !== 'note').slice(0, 25);
  if (telling.length === 0) return [];
  return [
    { kind: 'heading', text: words.toKnow },
    { kind: 'list', items: telling.map(findingInFull), marker: 'dash' },
  ];
};

const caption = phrases('set-up-caption', {
  plan: say`Plan view, ${{ unit: unitName('mm') }}. Ring with cross: program zero, if in view. Start holes bear the names of the contours started from them. Dashed: lead-in. Thick bar: tab.`,
  rings: say`Grey rings: no-core cut.`,
  openLine: say`C: open line that is cut.`,
  openLines: say`C: open lines that are cut.`,
  inTheOpen: say`Named beside the block: threaded clear of the block.`,
  clamp: say`Grey crossed box: clamp.`,
});

type Wire = CutFacts['plan']['wire'];

const words = phrases('set-up-sheet', {
  title: say`Set-up sheet`,
  foot: say`set-up sheet`,
  cautions: say`Cautions`,
  notToRun: (why: Text) => say`Do not run. ${{ why }}`,
  drawing: say`Drawing`,
  material: say`Material`,
  height: say`Block height`,
  pieces: say`Pieces`,
  asked: say`Required`,
  wire: say`Wire`,
  expected: say`Expected`,
  program: say`Program`,
  scaled: say`Scaled`,
  machineTime: say`Machine time`,
  alone: say`Unattended`,
  wireUsed: say`Wire used`,
  datum: say`Program zero`,
  heightOfDatum: say`Z zero`,
  lowerFace: say`lower face of the block, on the supports`,
  limits: (tolerance: Part | Text, ra: Part | Text) => say`${{ tolerance }}, Ra ${{ finish: ra }}`,
  wireSet: (wire: Wire) =>
    say`${{ wire: name(wire.name) }}, ${{ tension: quantity(wire.tension, 'N', upTo(3)) }}, ${{ speed: quantity(wire.speed, 'm/min', upTo(3)) }}`,
  lines: (lines: number, units: string, dialect: string) =>
    say`${{ lines: count(lines) }} lines in ${{ unit: term(units) }}, dialect ${{ dialect: name(dialect) }}`,
  zero: say`the drawing origin, X and Y as drawn`,
  datumAt: ({ x, y }: NonNullable<Asked['datum']>) =>
    say`X ${{ x: bare(x, 'mm', upTo(3)) }}, Y ${{ y: length(y) }} of the drawing; all X and Y in program and tables count from there`,
  scaledBy: (factor: number, temperature: number) =>
    say`by ${{ factor: number(factor, fixed(7)) }} about the program zero for a part at ${{ temperature: quantity(temperature, '°C', { as: 'given' }) }}; registers as listed, not scaled`,
  stacked: (sheets: number, each: number, all: number) =>
    say`${{ sheets: count(sheets) }} sheets of ${{ each: length(each) }} in one stack, ${{ all: length(all) }} in total`,
  passes: say`Passes and offsets`,
  classes: say`What single contours require`,
  holes: say`Start holes, tabs and loose pieces`,
  openLines: say`Open lines`,
  stops: say`Stops in program order`,
  registers: (set: Part, unit: ControlUnit) => say`Set the offset registers: ${{ registers: set }} ${{ unit: term(unit.name) }}.`,
  raised: (limits: Part, unit: ControlUnit) =>
    say`They may be raised to ${{ limits }} ${{ unit: term(unit.name) }}; beyond that have the program written again.`,
  noRegisters: say`Offset registers: not used; the program is written as wire-centre path.`,
  schedule: say`Schedule`,
  toKnow: say`Before you start`,
});
