/** The set-up sheet: what the operator needs at the machine. */

import { type Asked, controlUnit, hoursOf, type JobFacts } from '../../result/facts.ts';
import type { CutFacts, HoursFacts, MadeFacts, ProgramFacts } from '../../result/outcome-facts.ts';
import type { ControlUnit } from '../../text/control-unit.ts';
import { accuracy, duration, findingText, finish, place, setting, value } from '../../text/print/phrases.ts';
import { type Paper, type PaperBlock, subtitleOf } from '../paper.ts';
import { clockSentences } from '../part/clock-text.ts';
import { holeTable, passTable } from '../part/job-tables.ts';
import { openTable } from '../part/open-table.ts';
import { planPicture } from '../part/plan-picture.ts';
import { shiftStrip } from '../part/shift-strip.ts';
import { stopsOnClock } from '../part/stops-on-clock.ts';
import { cautionsFor } from './cautions.ts';

export const setupSheet = (facts: JobFacts, made: MadeFacts): Paper => ({
  title: 'Set-up sheet',
  subtitle: subtitleOf(facts),
  foot: `${facts.head.name} · set-up sheet · Kerfwright`,
  blocks: [
    ...standing(facts),
    { kind: 'pairs', rows: pairs(facts, made) },
    ...pictureBlock(facts, made.cut),
    ...planBlocks(facts, made),
    ...pencilMarks(facts),
    { kind: 'heading', text: 'Cautions' },
    { kind: 'list', items: cautionsFor(facts.asked.material, made.cut.plan.contours), marker: 'warning' },
  ],
});

/** A sheet of a job that is not proven must not look like one that is. */
const standing = (facts: JobFacts): readonly PaperBlock[] =>
  facts.outcome.answer === 'yes' ? [] : [{ kind: 'text', text: `Not to be run. ${facts.sentence}`, large: true }];

const pairs = (facts: JobFacts, { cut, program }: MadeFacts): readonly (readonly [string, string])[] => {
  const { head, asked } = facts;
  const { plan, within } = cut;
  const estimate = hoursOf(facts)?.estimate;
  return [
    ['Drawing', head.drawingName],
    ['Material', asked.material.name],
    ['Height', heightSaid(asked, plan, estimate)],
    ['Pieces', String(asked.quantity)],
    ['Asked for', `±${asked.tolerance} mm, Ra ${asked.finish} µm`],
    ['Wire', `${plan.wire.name}, ${place(plan.wire.tension)} N, ${place(plan.wire.speed)} m/min`],
    ['Expected', `±${accuracy(within)} mm, Ra ${finish(plan.finish)} µm`],
    ['Program', `${program.text.split('\n').length} lines in ${program.units}, dialect ${program.dialect}`],
    ...scaledRow(program),
    ...(estimate === undefined ? [] : hoursRows(estimate)),
    ['Datum', datumSaid(asked)],
    ['Height of datum', 'lower face of the block on the supports'],
  ];
};

const hoursRows = (estimate: HoursFacts['estimate']): readonly (readonly [string, string])[] => [
  ['Machine time', duration(estimate.total)],
  ['Alone', duration(estimate.unattended)],
  ['Wire used', `${Math.round(estimate.wireLength.value).toLocaleString('en')} m, ${value(estimate.wireMass)} kg`],
];

/** In mm, as the drawing is measured. */
const datumSaid = ({ datum }: Asked): string =>
  datum === undefined
    ? 'zero of the drawing, X and Y as drawn'
    : `X ${place(datum.x)}, Y ${place(datum.y)} mm of the drawing: every X and Y of program and tables counts from there`;

const scaledRow = ({ scaled }: ProgramFacts): readonly (readonly [string, string])[] =>
  scaled === undefined
    ? []
    : [
        [
          'Scaled',
          `by ${scaled.factor.toFixed(7)} about the datum for a part of ${scaled.temperature} °C; registers as listed, not scaled`,
        ],
      ];

const heightSaid = ({ height }: Asked, plan: CutFacts['plan'], estimate: HoursFacts['estimate'] | undefined): string =>
  estimate?.stack === undefined
    ? `${place(height)} mm`
    : `${estimate.stack} sheets of ${place(height)} mm in one stack, ${place(plan.height)} mm in all`;

const pictureBlock = (facts: JobFacts, cut: CutFacts): readonly PaperBlock[] => {
  const picture = planPicture(facts);
  if (picture === undefined) return [];
  return [
    {
      kind: 'picture',
      picture,
      caption: `Plan view, mm. Ring with cross: datum, where it lies in view. Numbered: start holes in the order of cutting. Broken line: the way in. Heavy bar: the tab.${captionMore(cut)}`,
    },
  ];
};

/** Only what this plan has. */
const captionMore = ({ plan }: CutFacts): string => {
  const { clamps = [], contours, openCuts = [] } = plan;
  return [
    ...(contours.some((c) => c.core !== undefined) ? [' Grey rings: burnt out without a core.'] : []),
    ...(openCuts.length > 0 ? [` ${openCuts.length === 1 ? 'Named C: an open line' : 'Named C: open lines'} that the wire cuts.`] : []),
    ...(contours.some((c) => c.hole.origin === 'block edge') ? [' Numbered beside the block: threaded in the open.'] : []),
    ...(clamps.length > 0 ? [' Grey crossed box: clamp.'] : []),
  ].join('');
};

const planBlocks = (facts: JobFacts, { cut, program }: MadeFacts): readonly PaperBlock[] => {
  const { plan, contours } = cut;
  const unit = controlUnit(facts);
  const { datum } = facts.asked;
  const stops = stopsOnClock(facts, program.proof);
  const hours = hoursOf(facts);
  return [
    { kind: 'heading', text: 'Passes and offsets' },
    passTable(plan.passes, hours?.estimate, unit),
    { kind: 'text', text: `Set the registers before the start: ${registers(program, unit)}.`, control: true },
    ...(contours.length === 0
      ? []
      : [{ kind: 'heading', text: 'Start holes, tabs and loose pieces' } as const, holeTable(contours, unit, datum)]),
    ...(plan.openCuts === undefined ? [] : [{ kind: 'heading', text: 'Open lines' } as const, openTable(plan.openCuts, unit, datum)]),
    ...clockBlocks(hours?.clock),
    ...(stops === undefined ? [] : [{ kind: 'heading', text: 'Stops, in the order in which they come' } as const, stops]),
  ];
};

/** In the unit of the program: a register of an inch program counts inches. */
const registers = (program: ProgramFacts, unit: ControlUnit): string => {
  const set = [...program.registers].map(([n, mm]) => `D${n} = ${setting(mm, unit)}`);
  return set.length === 0 ? 'none are used, the path is written out' : `${set.join(', ')} ${unit.name}`;
};

const clockBlocks = (clock: HoursFacts['clock']): readonly PaperBlock[] =>
  clock === undefined
    ? []
    : [
        { kind: 'heading', text: 'On the clock' },
        { kind: 'text', text: clockSentences(clock).join(' ') },
        { kind: 'picture', ...shiftStrip(clock) },
      ];

/** Findings that whoever stands at the machine should know. */
const pencilMarks = (facts: JobFacts): readonly PaperBlock[] => {
  const telling = facts.findings.filter((f) => f.severity !== 'note').slice(0, 25);
  if (telling.length === 0) return [];
  return [
    { kind: 'heading', text: 'To know before the start' },
    { kind: 'list', items: telling.map(findingText), marker: 'dash' },
  ];
};
