/** What a finding is led by where findings are listed as text. */
import type { Severity } from '../../text/finding.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';

export const severityMarks: Readonly<Record<Severity, Text>> = phrases('severity-mark', {
  refusal: say`Not possible:`,
  doubt: say`Query:`,
  warning: say`Warning:`,
  repair: say`Repaired:`,
  note: say`Note:`,
});
