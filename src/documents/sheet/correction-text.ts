/** A correction from measurement as text: what was measured, what the registers become, what can be saved, what the next piece will be. */

import type { CorrectionFacts } from '../../result/correction-facts.ts';
import type { Correction } from '../../result/shown.ts';
import { deviationOf } from '../../result/shown.ts';
import { lastItem } from '../../sequence/sequence.ts';
import type { ControlUnit } from '../../text/control-unit.ts';
import { findingInFull } from '../../text/located.ts';
import { asGiven, bare, contour, count, fixed, limit, list, mm, type Part, quantity, term, um, unitName } from '../../text/part.ts';
import { phrases, say, symbols } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { column, type WrittenTable } from '../paper.ts';
import { setting } from '../part/numbers.ts';
import { AS_IT_IS, type Printer } from '../text.ts';

export const correctionText = (facts: CorrectionFacts, printer: Printer = AS_IT_IS): string =>
  [
    ...(facts.correction === undefined ? [] : correctionParts(facts.correction, facts.unit, printer)),
    ...(facts.changed === undefined ? [] : [changeText(facts, facts.changed, printer)]),
    facts.inControl ? '' : printer.wrapped(words.notInControl, ''),
    passTableText(facts, printer),
  ]
    .filter((part) => part !== '')
    .join('\n\n');

/** Only where the program has to be written anew. */
const passTableText = ({ correction, passTable, inControl }: CorrectionFacts, { said }: Printer): string =>
  passTable === undefined || correction === undefined || (correction.safe && inControl)
    ? ''
    : `${said(words.writtenAnew)}\n  ${JSON.stringify(passTable)}`;

const correctionParts = (correction: Correction, unit: ControlUnit, { said, tableText, wrapped }: Printer): readonly string[] => [
  wrapped(verdict(correction, unit), ''),
  ...(correction.findings.length === 0 ? [] : [correction.findings.map((f) => wrapped(findingInFull(f), '  - ')).join('\n')]),
  [said(words.measured), tableText(measuredTable(correction))].join('\n'),
  ...(correction.safe && correction.worth ? [[said(words.registers), tableText(registerTable(correction, unit))].join('\n')] : []),
  [said(words.thisPiece), ...correction.sizes.map((s) => wrapped(s.salvage.sentence, '  - '))].join('\n'),
];

const verdict = ({ left, safe, worth, registers }: Correction, unit: ControlUnit): Text => {
  const tooMuch = left.value >= 0;
  const by = um(Math.abs(left.value) * 1000, fixed(1));
  const amount = (tooMuch ? words.left : words.gone)(by);
  if (!safe) return words.notSafe(amount);
  if (!worth) return words.notWorth(amount, limit(deviationOf(left) * 1000, 'µm', fixed(1)));
  const last = lastItem(registers);
  return (tooMuch ? words.setDown : words.setUp)(amount, by, registerSetTo(last.register, last.after.value, unit));
};

/** 'D3 to 0.1420 mm' */
const registerSetTo = (register: number, millimetres: number, unit: ControlUnit): Text =>
  words.setTo(register, setting(millimetres, unit), unit.name);

const measuredTable = ({ sizes }: Correction): WrittenTable => ({
  kind: 'table',
  columns: [
    column(words.contour, 1),
    column(words.asMeasured, 1, 'right'),
    column(words.atTemperature, 1, 'right'),
    column(words.atReference, 1, 'right'),
    column(words.drawn, 1, 'right'),
    column(words.leftPerSide, 1, 'right'),
    column(words.nextPiece, 1, 'right'),
  ],
  rows: sizes.map(({ deviation: { measured, size, left }, next }) => [
    (measured.kept === 'die' ? words.opening : words.part)(measured.loop),
    bare(measured.size, 'mm', fixed(4)),
    asGiven(measured.temperature),
    bare(size.value, 'mm', fixed(4)),
    bare(measured.expected, 'mm', fixed(4)),
    signed(left.value, bareMicrometres),
    bare(next, 'mm', fixed(4)),
  ]),
});

const registerTable = ({ registers }: Correction, unit: ControlUnit): WrittenTable => ({
  kind: 'table',
  columns: [
    column(words.pass, 1),
    column(words.register, 1),
    column(words.before(unit), 1, 'right'),
    column(words.after(unit), 1, 'right'),
    column(words.change, 1, 'right'),
  ],
  rows: registers.map((r) => [
    count(r.pass),
    term(`D${r.register}`),
    setting(r.before, unit),
    setting(r.after.value, unit),
    signed(r.after.value - r.before, bareMicrometres),
  ]),
  note: words.allAlike,
});

const changeText = (
  { registers, unit }: CorrectionFacts,
  { change, sizes }: NonNullable<CorrectionFacts['changed']>,
  { said, wrapped }: Printer,
): string => {
  const set = list([...registers].map(([number, value]) => symbols`${term(`D${number}`)} ${setting(value + change, unit)}`));
  const told: Changed = {
    change: signed(change, (micrometres) => um(micrometres, fixed(1))),
    registers: words.setIn(set, unit),
    across: um(Math.abs(change) * 2000, fixed(1)),
  };
  const sentence = (change < 0 ? words.wider : words.narrower)(told);
  return [wrapped(sentence, ''), ...sizes.map((s) => `  - ${said(words.wouldBe(s.loop, s.size))}`)].join('\n');
};

const bareMicrometres = (micrometres: number): Part => bare(micrometres, 'µm', fixed(1));

/** '+1.2', '−0.8': a change in mm, shown in µm. */
const signed = (millimetres: number, shown: (micrometres: number) => Part): Text => {
  const size = shown(Math.abs(millimetres * 1000));
  return millimetres < 0 ? symbols`−${size}` : symbols`+${size}`;
};

interface Changed {
  readonly change: Text;
  readonly registers: Text;
  /** By which a size changes, measured across. */
  readonly across: Part;
}

const words = phrases('correction', {
  notInControl: say`This dialect writes the path of the wire centre: these offsets are not in the control, so have the program written again.`,
  writtenAnew: say`For the new program, one entry of ${{ field: term('passTables') }} in the shop file`,
  measured: say`Measured`,
  registers: say`Registers`,
  thisPiece: say`This piece`,
  left: (amount: Part) => say`${{ amount }} stock left per side`,
  gone: (amount: Part) => say`${{ amount }} overcut per side`,
  notSafe: (amount: Text) => say`Do not set these registers: ${{ amount }}, see below.`,
  setDown: (amount: Text, by: Part, last: Text) => say`${{ amount }}: set every register down by ${{ by }}, ${{ last }}.`,
  setUp: (amount: Text, by: Part, last: Text) => say`${{ amount }}: set every register up by ${{ by }}, ${{ last }}.`,
  setTo: (register: number, value: Part, unit: string) =>
    say`${{ register: term(`D${register}`) }} to ${{ value }} ${{ unit: term(unit) }}`,
  notWorth: (what: Text, doubt: Part) =>
    say`${{ amount: what }}: less than the measuring uncertainty (${{ doubt }}); leave the registers as they are.`,
  contour: say`Contour`,
  asMeasured: say`Measurement ${{ unit: unitName('mm') }}`,
  atTemperature: say`at ${{ unit: unitName('°C') }}`,
  atReference: say`At ${{ temperature: quantity(20, '°C') }} ${{ unit: unitName('mm') }}`,
  drawn: say`Nominal ${{ unit: unitName('mm') }}`,
  leftPerSide: say`Stock left per side ${{ unit: unitName('µm') }}`,
  nextPiece: say`Next piece ${{ unit: unitName('mm') }}`,
  opening: (loop: string) => say`${{ loop: contour(loop) }}, opening`,
  part: (loop: string) => say`${{ loop: contour(loop) }}, part`,
  pass: say`Pass`,
  register: say`Register`,
  before: ({ name }: ControlUnit) => say`old ${{ unit: term(name) }}`,
  after: ({ name }: ControlUnit) => say`new ${{ unit: term(name) }}`,
  change: say`change ${{ unit: unitName('µm') }}`,
  allAlike: say`All change by the same amount, so each pass keeps its stock.`,
  setIn: (registers: Part, { name }: ControlUnit) => say`${{ registers }} ${{ unit: term(name) }}`,
  wider: ({ change, registers, across }: Changed) =>
    say`With every register ${{ change }} (${{ registers }}) an opening gets ${{ wider: across }} wider and a part ${{ smaller: across }} smaller, measured across.`,
  narrower: ({ change, registers, across }: Changed) =>
    say`With every register ${{ change }} (${{ registers }}) an opening gets ${{ narrower: across }} narrower and a part ${{ larger: across }} larger, measured across.`,
  wouldBe: (loop: string, size: number) =>
    say`${{ loop: contour(loop) }} would be ${{ size: mm(size, fixed(4)) }} at ${{ temperature: quantity(20, '°C') }}`,
});
