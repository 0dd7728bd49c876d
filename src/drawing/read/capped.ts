/** Shortens long lists of findings of one kind, and says how many more there are. */

import { itemOf } from '../../sequence/sequence.ts';
import type { Finding } from '../../text/finding.ts';
import { count } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';

/** More of one kind than this are counted, not listed. */
const LISTED = 50;

/**
 * The first of each kind in their order, and behind the last one listed a finding that stands for all the others of the kind:
 * its `stands` says how many, so that no count is lost.
 */
export const capped = (findings: readonly Finding[], listed = LISTED): Finding[] => {
  const totals = new Map<string, number>();
  for (const f of findings) totals.set(f.code, (totals.get(f.code) ?? 0) + 1);
  const seen = new Map<string, number>();
  return findings.flatMap((finding) => {
    const n = (seen.get(finding.code) ?? 0) + 1;
    seen.set(finding.code, n);
    if (n <= listed) return [finding];
    if (n > listed + 1) return [];
    const more = itemOf(totals, finding.code) - listed;
    if (more === 1) return [finding];
    return [{ ...finding, text: words.more(more, finding.text), stands: more }];
  });
};

const words = phrases('findings-capped', {
  more: (n: number, first: Text) => say`And ${{ more: count(n) }} more of this kind, the first of them: ${{ first }}`,
});
