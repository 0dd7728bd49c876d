/** The answer as text for a terminal: the same facts as the papers, in the order in which an owner asks. */

import { controlUnit, cutOf, hoursOf, type JobFacts, plannedOf, programOf, resultOf } from '../../result/facts.ts';
import type { HoursFacts } from '../../result/outcome-facts.ts';
import type { Estimate } from '../../result/shown.ts';
import { toleranceTold } from '../../result/tolerance-told.ts';
import { findingInFull } from '../../text/located.ts';
import { count, fixed, mass, money, name, type Part, term, um } from '../../text/part.ts';
import { HOUSE, type Reader } from '../../text/reader.ts';
import { phrases, say } from '../../text/say.ts';
import { GRAVEST_FIRST, severityLead } from '../../text/severity.ts';
import type { Text } from '../../text/text.ts';
import { budgetLines } from '../part/budget-text.ts';
import { classTable } from '../part/class-table.ts';
import { breakTable, costTable, holeTable, hoursTable, passTable } from '../part/job-tables.ts';
import { openTable } from '../part/open-table.ts';
import { otherWaysLines } from '../part/other-ways-text.ts';
import { scheduleText } from '../part/schedule-text.ts';
import { shapeTable } from '../part/shape-table.ts';
import { wireLines } from '../part/wire-lines.ts';
import { type Printer, printerIn } from '../text.ts';

const MOST_FINDINGS = 30;

/** As its reader wants words and numbers; as the house writes them when left out. */
export const answerText = (facts: JobFacts, reader: Reader = HOUSE): string => {
  const printer = printerIn(reader);
  const { wrapped } = printer;
  const section = sectionBy(printer);
  const [planned, hours, budgets] = [plannedOf(facts), hoursOf(facts), cutOf(facts)?.budgets];
  return [
    wrapped(facts.sentence, ''),
    section(
      words.assumed,
      facts.asked.assumed.map((a) => wrapped(a.text, '  - ')),
    ),
    section(placesAsDrawn(facts, reader) ? words.findingsAsDrawn(facts.drawing.units.name) : words.findings, findingLines(facts, printer)),
    ...(facts.shape === undefined
      ? []
      : [section(words.shape(facts.shape.name), [printer.tableText(shapeTable(facts.shape.sizes, controlUnit(facts), 'only told'))])]),
    section(words.wires, planned?.wires === undefined ? [] : wireLines(planned.wires, printer)),
    ...planSections(facts, printer),
    ...hoursSections(hours, printer),
    section(words.errors, budgets === undefined ? [] : budgetLines(budgets, printer)),
    section(words.others, planned?.otherWays === undefined ? [] : otherWaysLines(planned.otherWays, printer)),
    proofLine(facts, printer),
  ]
    .filter((part) => part !== '')
    .join('\n\n');
};

const planSections = (facts: JobFacts, printer: Printer): readonly string[] => {
  const result = resultOf(facts);
  if (result === undefined) return [];
  const { tableText } = printer;
  const section = sectionBy(printer);
  const [cut, unit, { datum }] = [cutOf(facts), controlUnit(facts), facts.asked];
  return [
    section(words.passes(result.wire.name), [tableText(passTable(result.passes, hoursOf(facts)?.estimate, unit))]),
    section(words.classes, cut === undefined || result.classes === undefined ? [] : [tableText(classTable(result.classes, 'shop'))]),
    section(words.contours, cut === undefined || cut.contours.length === 0 ? [] : [tableText(holeTable(cut.contours, unit, datum))]),
    section(words.openLines, cut?.plan.openCuts === undefined ? [] : [tableText(openTable(cut.plan.openCuts, unit, datum))]),
  ];
};

const hoursSections = (hours: HoursFacts | undefined, printer: Printer): readonly string[] => {
  if (hours === undefined) return [];
  const { tableText, wrapped } = printer;
  const section = sectionBy(printer);
  const { estimate, schedule } = hours;
  return [
    section(words.hours, [tableText(hoursTable(estimate))]),
    section(words.price(estimate.currency, estimate.ratesFrom), [
      tableText(costTable(estimate)),
      ...(estimate.metal === undefined ? [] : [wrapped(metalSentence(estimate.metal, estimate.currency), '  ')]),
      tableText(breakTable(estimate)),
    ]),
    section(
      estimate.stack === undefined ? words.schedule : words.scheduleOfStack(estimate.stack),
      schedule === undefined ? [] : scheduleText(schedule).map((s) => wrapped(s, '  ')),
    ),
  ];
};

const metalSentence = ({ mass: { value }, suppliedBy, cost }: NonNullable<Estimate['metal']>, currency: string): Text => {
  if (suppliedBy === 'customer') return words.metalBrought(value);
  const price = cost?.from.find((f) => f.unit === 'money/kg')?.value;
  return price === undefined ? words.metalMissing(value) : words.metalPaid(value, money(price, currency, 'money/kg'));
};

/** Findings point at the drawing in its own unit, the tables of the machine count in that of the program. */
const placesAsDrawn = ({ drawing }: JobFacts, { length }: Reader): boolean => drawing.units.millimetres !== 1 || length !== 'mm';

/** The marks stand in a column of their own. */
const findingLines = (facts: JobFacts, { said, wrapped }: Printer): readonly string[] => {
  const width = Math.max(...GRAVEST_FIRST.map((severity) => said(severityLead(severity)).length)) + 1;
  const shown = facts.findings
    .slice(0, MOST_FINDINGS)
    .map((f) => wrapped(findingInFull(f), `  ${said(severityLead(f.severity)).padEnd(width)}`));
  const more = facts.findings.length - shown.length;
  return more > 0 ? [...shown, wrapped(words.moreFindings(more), '  ')] : shown;
};

const proofLine = (facts: JobFacts, printer: Printer): string => {
  const proof = programOf(facts)?.proof;
  if (proof === undefined) return '';
  const worst = Math.max(0, ...proof.contours.flatMap((c) => [c.leftMost.amount, -c.gougeMost.amount]));
  const told = {
    contours: proof.contours.length,
    loose: proof.loose.filter((l) => l.role !== 'scrap').length,
    worst: worst * 1000,
    resolution: proof.resolution * 1000,
  };
  return sectionBy(printer)(words.proof, [
    printer.wrapped(proof.verdict === 'proven' ? words.proven(told) : words.notProven(told), '  '),
    ...(proof.use === undefined ? [] : [printer.wrapped(toleranceTold(proof.use, cutOf(facts)?.within), '  ')]),
  ]);
};

const sectionBy =
  ({ said }: Printer) =>
  (title: Text, lines: readonly string[]): string =>
    lines.length === 0 ? '' : [said(title), ...lines].join('\n');

interface Proven {
  readonly contours: number;
  readonly loose: number;
  /** µm */
  readonly worst: number;
  readonly resolution: number;
}

const words = phrases('answer-text', {
  assumed: say`Assumptions`,
  findings: say`Findings`,
  findingsAsDrawn: (unit: string) => say`Findings, positions in ${{ unit: term(unit) }} as drawn`,
  moreFindings: (more: number) => say`and ${{ findings: count(more) }} more; --json lists them all`,
  shape: (shape: Text) => say`Sizes of the shape: ${{ shape }}`,
  wires: say`Wires in the shop, each for the whole job`,
  classes: say`What single contours require`,
  passes: (wire: string) => say`Passes with ${{ wire: name(wire) }}`,
  contours: say`Contours`,
  openLines: say`Open lines`,
  hours: say`Hours`,
  price: (currency: string, from: string) => say`Price in ${{ currency: term(currency) }}, rates from ${{ day: term(from) }}`,
  metalBrought: (kilograms: number) =>
    say`Metal for one piece: ${{ mass: mass(kilograms) }}, slugs and scrap included, supplied by the customer.`,
  metalPaid: (kilograms: number, price: Part) =>
    say`Metal for one piece: ${{ mass: mass(kilograms) }} at ${{ price }}, slugs and scrap included in the price.`,
  metalMissing: (kilograms: number) =>
    say`Metal for one piece: ${{ mass: mass(kilograms) }}, slugs and scrap included, supplied by the shop: no price is given, and none is included.`,
  schedule: say`Schedule`,
  scheduleOfStack: (sheets: number) => say`Schedule, one piece being a stack of ${{ sheets: count(sheets) }}`,
  errors: say`Error budget`,
  others: say`Other processes`,
  proof: say`Proof`,
  proven: ({ contours, loose, worst, resolution }: Proven) =>
    say`Proven. The program was read back and cut in simulation: ${{ contours: count(contours, 'contour') }}, ${{ loose: count(loose, 'loose piece') }}, largest deviation ${{ worst: um(worst, fixed(1)) }} away from rounded corners (resolution ${{ resolution: um(resolution, fixed(2)) }}).`,
  notProven: ({ contours, loose, worst, resolution }: Proven) =>
    say`Not proven. The program was read back and cut in simulation: ${{ contours: count(contours, 'contour') }}, ${{ loose: count(loose, 'loose piece') }}, largest deviation ${{ worst: um(worst, fixed(1)) }} away from rounded corners (resolution ${{ resolution: um(resolution, fixed(2)) }}).`,
});
