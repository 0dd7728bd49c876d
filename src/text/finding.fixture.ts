/** What tests ask of a finding: its sentence as the house prints it. */
import type { Finding } from './finding.ts';
import { printPlain } from './print/print.ts';

/** '' where there is no such finding. */
export const sentenceOf = (finding: Pick<Finding, 'text'> | undefined): string => (finding === undefined ? '' : printPlain(finding.text));
export const remedyTextOf = (finding: Pick<Finding, 'remedy'> | undefined): string =>
  finding?.remedy === undefined ? '' : printPlain(finding.remedy.text);
export const doneTextOf = (finding: Pick<Finding, 'done'> | undefined): string =>
  finding?.done === undefined ? '' : printPlain(finding.done);
