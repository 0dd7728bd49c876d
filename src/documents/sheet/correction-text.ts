/** A correction from measurement as text: what was measured, what the registers become, what can be saved, what the next piece will be. */

import type { Correction } from '../../accuracy/correction.ts';
import { deviationOf } from '../../quantity/figure.ts';
import type { CorrectionFacts } from '../../result/correction-facts.ts';
import type { ControlUnit } from '../../text/control-unit.ts';
import { findingText, setting } from '../../text/print/phrases.ts';
import { printPlain } from '../../text/print/print.ts';
import { column } from '../paper.ts';
import { tableText, wrapped } from '../text.ts';

export const correctionText = (facts: CorrectionFacts): string =>
  [
    ...(facts.correction === undefined ? [] : correctionParts(facts.correction, facts.unit)),
    ...(facts.changed === undefined ? [] : [changeText(facts, facts.changed)]),
    facts.inControl
      ? ''
      : wrapped(
          'This dialect writes the way of the wire centre out: these offsets are not in the control, so have the program written anew.',
          '',
        ),
    passTableText(facts),
  ]
    .filter((part) => part !== '')
    .join('\n\n');

/** Only where the program has to be written anew. */
const passTableText = ({ correction, passTable, inControl }: CorrectionFacts): string =>
  passTable === undefined || correction === undefined || (correction.safe && inControl)
    ? ''
    : `For the program written anew, one entry of passTables in the shop file\n  ${JSON.stringify(passTable)}`;

const correctionParts = (correction: Correction, unit: ControlUnit): readonly string[] => [
  wrapped(verdict(correction, unit), ''),
  ...(correction.findings.length === 0 ? [] : [correction.findings.map((f) => wrapped(findingText(f), '  - ')).join('\n')]),
  `Measured\n${measuredTable(correction)}`,
  `Registers\n${registerTable(correction, unit)}`,
  `This piece\n${correction.sizes.map((s) => wrapped(printPlain(s.salvage.sentence), '  - ')).join('\n')}`,
];

const verdict = ({ left, safe, worth, registers }: Correction, unit: ControlUnit): string => {
  const amount = `${(Math.abs(left.value) * 1000).toFixed(1)} µm of metal ${left.value >= 0 ? 'are left' : 'are gone'} per side`;
  if (!safe) return `Do not set these registers: ${amount}, and what is found below stands against it.`;
  const last = registers.at(-1);
  const to = last === undefined ? '' : `, D${last.register} to ${setting(last.after.value, unit)} ${unit.name}`;
  const what = `${amount}: set every register ${left.value >= 0 ? 'down' : 'up'} by ${(Math.abs(left.value) * 1000).toFixed(1)} µm${to}.`;
  if (worth) return what;
  return `${what} That is no more than the measuring can tell (±${(deviationOf(left) * 1000).toFixed(1)} µm): better leave them as they are.`;
};

const measuredTable = ({ sizes }: Correction): string =>
  tableText({
    kind: 'table',
    columns: [
      column('Contour', 1),
      column('Measured mm', 1, 'right'),
      column('at °C', 1, 'right'),
      column('At 20 °C mm', 1, 'right'),
      column('Drawn mm', 1, 'right'),
      column('Left per side µm', 1, 'right'),
      column('Next piece mm', 1, 'right'),
    ],
    rows: sizes.map(({ deviation: { measured, size, left }, next }) => [
      `${measured.loop}, ${measured.kept === 'die' ? 'opening' : 'part'}`,
      setting(measured.size),
      String(measured.temperature),
      setting(size.value),
      setting(measured.expected),
      signed(left.value * 1000),
      setting(next),
    ]),
  });

const registerTable = ({ registers }: Correction, unit: ControlUnit): string =>
  tableText({
    kind: 'table',
    columns: [
      column('Pass', 1),
      column('Register', 1),
      column(`was ${unit.name}`, 1, 'right'),
      column(`becomes ${unit.name}`, 1, 'right'),
      column('change µm', 1, 'right'),
    ],
    rows: registers.map((r) => [
      String(r.pass),
      `D${r.register}`,
      setting(r.before, unit),
      setting(r.after.value, unit),
      signed((r.after.value - r.before) * 1000),
    ]),
    note: 'All move by the same, so that every pass leaves the stock it left before.',
  });

const changeText = ({ registers, unit }: CorrectionFacts, { change, sizes }: NonNullable<CorrectionFacts['changed']>): string => {
  const both = `${(Math.abs(change) * 2000).toFixed(1)} µm`;
  const [opening, part] = change < 0 ? ['wider', 'smaller'] : ['narrower', 'larger'];
  const list = [...registers].map(([number, value]) => `D${number} ${setting(value + change, unit)}`).join(', ');
  const said = `With every register ${signed(change * 1000)} µm (${list} ${unit.name}) an opening gets ${both} ${opening} and a part ${both} ${part}, measured across.`;
  return [wrapped(said, ''), ...sizes.map((s) => `  - ${s.loop} would be ${setting(s.size)} mm at 20 °C`)].join('\n');
};

const signed = (value: number): string => `${value < 0 ? '−' : '+'}${Math.abs(value).toFixed(1)}`;
