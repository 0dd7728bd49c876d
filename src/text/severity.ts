/** What each gravity of a finding is called, on page, paper and in the terminal, and which comes first. */
import type { Severity } from './finding.ts';
import { phrases, say } from './say.ts';
import type { Text } from './text.ts';

export const severityNames: Readonly<Record<Severity, Text>> = phrases('severity', {
  refusal: say`Not possible`,
  doubt: say`Query`,
  warning: say`Warning`,
  repair: say`Repaired`,
  note: say`Note`,
});

/** The gravest first. */
export const GRAVEST_FIRST: readonly Severity[] = ['refusal', 'doubt', 'warning', 'repair', 'note'];

/** The gravest first; findings of the same gravity keep their order. */
export const byGravity = <F extends { readonly severity: Severity }>(findings: readonly F[]): readonly F[] =>
  GRAVEST_FIRST.flatMap((gravity) => findings.filter((f) => f.severity === gravity));

const leads = phrases('severity-lead', { before: (severity: Text) => say`${{ severity }}:` });

/** What a finding is led by where findings are listed as text: 'Query:'. */
export const severityLead = (severity: Severity): Text => leads.before(severityNames[severity]);
