/** Layers look at a job apart and now and then find the same thing; whoever reads the answer is told once. */

import type { Finding } from '../text/finding.ts';
import { quotes, subjectsIn } from '../text/within.ts';

interface Before {
  readonly code: string;
  /** Whether the other must be about the same loops, or once told is told of all. */
  readonly of: 'the same loops' | 'anything';
}

/** Codes that have nothing to add where the other one has been told. */
const SAID_BEFORE: Readonly<Record<string, Before>> = {
  'no-closed-contour': { code: 'no-loop', of: 'anything' },
  'contour-unsound': { code: 'loop-crosses-itself', of: 'the same loops' },
  'contours-touch': { code: 'loops-cross', of: 'the same loops' },
  // The plan speaks of all contours of one shape at once, the proof of each.
  'corner-comes-out-round': { code: 'corner-rounded', of: 'anything' },
};

/** The order is kept. What is dropped repeats a finding as grave, or quotes it whole. */
export const listedOnce = (findings: readonly Finding[]): readonly Finding[] => {
  const told = new Set(findings.flatMap((f) => [`${f.severity} ${f.code}`, `${f.severity} ${f.code} ${subjectOf(f)}`]));
  const refusals = findings.filter((f) => f.severity === 'refusal');
  return findings.filter((f) => {
    const before = SAID_BEFORE[f.code];
    const said = before !== undefined && told.has(`${f.severity} ${before.code}${before.of === 'anything' ? '' : ` ${subjectOf(f)}`}`);
    return !said && !refusals.some((other) => other !== f && quotes(f.text, other.text));
  });
};

/** The loops a sentence is about, in no order: 'L1 L4'. */
const subjectOf = ({ text, place }: Finding): string => {
  const loops = new Set([...subjectsIn(text), ...(place?.kind === 'spot' && place.loop !== undefined ? [place.loop] : [])]);
  return [...loops].toSorted().join(' ');
};
