/** The set-up sheet: what the operator needs at the machine. */

import { expectedWithin } from '../../accuracy/budget-of-plan.ts';
import { controlUnit, type JobFacts } from '../../result/facts.ts';
import { accuracy, duration, findingText, finish, place, setting, value } from '../../text/print/phrases.ts';
import type { Paper, PaperBlock } from '../paper.ts';
import { clockSentences } from '../part/clock-text.ts';
import { holeTable, passTable } from '../part/job-tables.ts';
import { openTable } from '../part/open-table.ts';
import { planPicture } from '../part/plan-picture.ts';
import { shiftStrip } from '../part/shift-strip.ts';
import { stopsOnClock } from '../part/stops-on-clock.ts';
import { cautionsFor } from './cautions.ts';

export const setupSheet = (facts: JobFacts): Paper => ({
  title: 'Set-up sheet',
  subtitle: `${facts.name} · ${facts.shop} · ${facts.day}`,
  foot: `${facts.name} · set-up sheet · Kerfwright`,
  blocks: [
    ...standing(facts),
    { kind: 'pairs', rows: pairs(facts) },
    ...pictureBlock(facts),
    ...planBlocks(facts),
    ...pencilMarks(facts),
    { kind: 'heading', text: 'Cautions' },
    { kind: 'list', items: cautionsFor(facts), marker: 'warning' },
  ],
});

/** A sheet of a job that is not proven must not look like one that is. */
const standing = (facts: JobFacts): readonly PaperBlock[] =>
  facts.answer === 'yes' ? [] : [{ kind: 'text', text: `Not to be run. ${facts.sentence}`, large: true }];

const pairs = (facts: JobFacts): readonly (readonly [string, string])[] => {
  const { plan, program, estimate } = facts;
  const known: (readonly [string, string])[] = [
    ['Drawing', facts.drawingName],
    ['Material', facts.material.name],
    ['Height', heightSaid(facts)],
    ['Pieces', String(facts.quantity)],
    ['Asked for', `±${facts.asked.tolerance} mm, Ra ${facts.asked.finish} µm`],
  ];
  if (plan !== undefined)
    known.push(
      ['Wire', `${plan.wire.name}, ${place(plan.wire.tension)} N, ${place(plan.wire.speed)} m/min`],
      ['Expected', `±${accuracy(expectedWithin(plan, facts.budgets))} mm, Ra ${finish(plan.finish)} µm`],
    );
  if (program !== undefined)
    known.push(
      ['Program', `${program.text.split('\n').length} lines in ${program.units}, dialect ${program.dialect}`],
      ...scaledRow(facts),
    );
  if (estimate !== undefined)
    known.push(
      ['Machine time', duration(estimate.total)],
      ['Alone', duration(estimate.unattended)],
      ['Wire used', `${Math.round(estimate.wireLength.value).toLocaleString('en')} m, ${value(estimate.wireMass)} kg`],
    );
  known.push(['Datum', datumSaid(facts)], ['Height of datum', 'lower face of the block on the supports']);
  return known;
};

/** In mm, as the drawing is measured. */
const datumSaid = ({ datum }: JobFacts): string =>
  datum === undefined
    ? 'zero of the drawing, X and Y as drawn'
    : `X ${place(datum.x)}, Y ${place(datum.y)} mm of the drawing: every X and Y of program and tables counts from there`;

const scaledRow = ({ scaled }: JobFacts): readonly (readonly [string, string])[] =>
  scaled === undefined
    ? []
    : [
        [
          'Scaled',
          `by ${scaled.factor.toFixed(7)} about the datum for a part of ${scaled.temperature} °C; registers as listed, not scaled`,
        ],
      ];

const heightSaid = ({ height, plan, estimate }: JobFacts): string =>
  estimate?.stack === undefined || plan === undefined
    ? `${place(height)} mm`
    : `${estimate.stack} sheets of ${place(height)} mm in one stack, ${place(plan.height)} mm in all`;

const pictureBlock = (facts: JobFacts): readonly PaperBlock[] => {
  const picture = planPicture(facts);
  if (picture === undefined) return [];
  return [
    {
      kind: 'picture',
      picture,
      caption: `Plan view, mm. Ring with cross: datum, where it lies in view. Numbered: start holes in the order of cutting. Broken line: the way in. Heavy bar: the tab.${captionMore(facts)}`,
    },
  ];
};

/** Only what this plan has. */
const captionMore = ({ plan }: JobFacts): string => {
  const { clamps = [], contours = [], openCuts = [] } = plan ?? {};
  return [
    ...(contours.some((c) => c.core !== undefined) ? [' Grey rings: burnt out without a core.'] : []),
    ...(openCuts.length > 0 ? [` ${openCuts.length === 1 ? 'Named C: an open line' : 'Named C: open lines'} that the wire cuts.`] : []),
    ...(contours.some((c) => c.hole.origin === 'block edge') ? [' Numbered beside the block: threaded in the open.'] : []),
    ...(clamps.length > 0 ? [' Grey crossed box: clamp.'] : []),
  ].join('');
};

const planBlocks = (facts: JobFacts): readonly PaperBlock[] => {
  const { plan } = facts;
  if (plan === undefined || plan.passes.length === 0) return [];
  const stops = stopsOnClock(facts);
  return [
    { kind: 'heading', text: 'Passes and offsets' },
    passTable(plan, facts.estimate, controlUnit(facts)),
    ...(facts.program === undefined
      ? []
      : [{ kind: 'text', text: `Set the registers before the start: ${registers(facts)}.`, control: true } as const]),
    ...(plan.contours.length === 0
      ? []
      : [{ kind: 'heading', text: 'Start holes, tabs and loose pieces' } as const, holeTable(plan, controlUnit(facts), facts.datum)]),
    ...(plan.openCuts === undefined
      ? []
      : [{ kind: 'heading', text: 'Open lines' } as const, openTable(plan.openCuts, controlUnit(facts), facts.datum)]),
    ...clockBlocks(facts),
    ...(stops === undefined ? [] : [{ kind: 'heading', text: 'Stops, in the order in which they come' } as const, stops]),
  ];
};

/** In the unit of the program: a register of an inch program counts inches. */
const registers = (facts: JobFacts): string => {
  const unit = controlUnit(facts);
  const set = [...(facts.program?.registers ?? [])].map(([n, mm]) => `D${n} = ${setting(mm, unit)}`);
  return set.length === 0 ? 'none are used, the path is written out' : `${set.join(', ')} ${unit.name}`;
};

const clockBlocks = ({ clock }: JobFacts): readonly PaperBlock[] =>
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
