/** The answer as text for a terminal: the same facts as the papers, in the order in which an owner asks. */
import type { Estimate } from '../../estimate/estimate.ts';
import { controlUnit, cutOf, hoursOf, type JobFacts, plannedOf, programOf, resultOf } from '../../result/facts.ts';
import type { HoursFacts } from '../../result/outcome-facts.ts';
import type { Severity } from '../../text/finding.ts';
import { counted, findingText, mass } from '../../text/print/phrases.ts';
import { printPlain } from '../../text/print/print.ts';
import { AS_WRITTEN, type Telling } from '../../text/print/restate.ts';
import { budgetLines } from '../part/budget-text.ts';
import { clockSentences } from '../part/clock-text.ts';
import { breakTable, costTable, holeTable, hoursTable, passTable } from '../part/job-tables.ts';
import { openTable } from '../part/open-table.ts';
import { otherWaysLines } from '../part/other-ways-text.ts';
import { shapeTable } from '../part/shape-table.ts';
import { wireLines } from '../part/wire-lines.ts';
import { AS_IT_IS, type Printer, printerIn } from '../text.ts';

const MOST_FINDINGS = 30;

const MARKS: Readonly<Record<Severity, string>> = {
  refusal: 'No:      ',
  doubt: 'Doubt:   ',
  warning: 'Warning: ',
  repair: 'Mended:  ',
  note: 'Note:    ',
};

/** `telling` is how its reader wants numbers told; as the house writes them when left out. */
export const answerText = (facts: JobFacts, telling?: Telling): string => {
  const printer = telling === undefined ? AS_IT_IS : printerIn(telling);
  const { wrapped } = printer;
  const [planned, hours, budgets] = [plannedOf(facts), hoursOf(facts), cutOf(facts)?.budgets];
  return [
    wrapped(printPlain(facts.sentence), ''),
    section(
      'Assumed, because nobody said',
      facts.asked.assumed.map((a) => wrapped(printPlain(a.text), '  - ')),
    ),
    section(`Findings${placesIn(facts, telling)}`, findingLines(facts, printer)),
    section(
      `Sizes of the shape: ${facts.shape === undefined ? '' : printPlain(facts.shape.name)}`,
      facts.shape === undefined ? [] : [printer.tableText(shapeTable(facts.shape.sizes, controlUnit(facts), 'only told'))],
    ),
    section('Wires of the shop, the whole job with each', planned?.wires === undefined ? [] : wireLines(planned.wires, printer)),
    ...planSections(facts, printer),
    ...hoursSections(hours, printer),
    section('Where the error comes from', budgets === undefined ? [] : budgetLines(budgets, printer)),
    section('Other ways to cut it', planned?.otherWays === undefined ? [] : otherWaysLines(planned.otherWays, printer)),
    proofLine(facts, printer),
  ]
    .filter((part) => part !== '')
    .join('\n\n');
};

const planSections = (facts: JobFacts, { tableText }: Printer): readonly string[] => {
  const result = resultOf(facts);
  if (result === undefined) return [];
  const [cut, unit, { datum }] = [cutOf(facts), controlUnit(facts), facts.asked];
  return [
    section(`Passes with ${result.wire.name}`, [tableText(passTable(result.passes, hoursOf(facts)?.estimate, unit))]),
    section('Contours', cut === undefined || cut.contours.length === 0 ? [] : [tableText(holeTable(cut.contours, unit, datum))]),
    section('Open lines', cut?.plan.openCuts === undefined ? [] : [tableText(openTable(cut.plan.openCuts, unit, datum))]),
  ];
};

const hoursSections = (hours: HoursFacts | undefined, { tableText, wrapped }: Printer): readonly string[] => {
  if (hours === undefined) return [];
  const { estimate, clock } = hours;
  return [
    section('Hours', [tableText(hoursTable(estimate))]),
    section(`Price in ${estimate.currency}, rates from ${estimate.ratesFrom}`, [
      tableText(costTable(estimate)),
      ...(estimate.metal === undefined ? [] : [wrapped(metalSentence(estimate.metal), '  ')]),
      tableText(breakTable(estimate)),
    ]),
    section(onClockTitle(estimate), clock === undefined ? [] : clockSentences(clock).map((s) => wrapped(s, '  '))),
  ];
};

const onClockTitle = ({ stack }: Estimate): string =>
  stack === undefined ? 'On the clock' : `On the clock, where a piece is a stack of ${stack}`;

const metalSentence = ({ mass: metal, suppliedBy }: NonNullable<Estimate['metal']>): string =>
  `Metal of one piece: ${mass(metal.value)}, slugs and scrap and all, ${suppliedBy === 'customer' ? 'brought by the customer' : 'in the price'}.`;

/** Findings point at the drawing in its own unit, the tables of the machine count in that of the program. */
const placesIn = ({ drawing }: JobFacts, { length } = AS_WRITTEN): string =>
  drawing.units.millimetres === 1 && length === 'mm' ? '' : `, places in ${drawing.units.name} as drawn`;

const findingLines = (facts: JobFacts, { wrapped }: Printer): readonly string[] => {
  const shown = facts.findings.slice(0, MOST_FINDINGS).map((f) => wrapped(findingText(f), `  ${MARKS[f.severity]}`));
  const more = facts.findings.length - shown.length;
  return more > 0 ? [...shown, `  and ${more} more; --json lists them all`] : shown;
};

const proofLine = (facts: JobFacts, { wrapped }: Printer): string => {
  const proof = programOf(facts)?.proof;
  if (proof === undefined) return '';
  const worst = Math.max(0, ...proof.contours.flatMap((c) => [c.leftMost.amount, -c.gougeMost.amount]));
  const loose = proof.loose.filter((l) => l.role !== 'scrap').length;
  const summary = `The program was read back and cut in the computer: ${counted(proof.contours.length, 'contour')}, ${counted(loose, 'loose piece')}, worst deviation ${(worst * 1000).toFixed(1)} µm outside the rounded corners (read to ${(proof.resolution * 1000).toFixed(2)} µm).`;
  return section('Proof', [wrapped(`${proof.verdict === 'proven' ? 'Proven. ' : 'Not proven. '}${summary}`, '  ')]);
};

const section = (title: string, lines: readonly string[]): string => (lines.length === 0 ? '' : [title, ...lines].join('\n'));
