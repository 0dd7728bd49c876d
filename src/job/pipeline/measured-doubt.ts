/** Whether what was typed as measured can be meant: a size that the contour has, and not further off than a cut can be. */

import { sizesOn } from '../../accuracy/sizes-on-contour.ts';
import type { CutPlan } from '../../plan/plan.ts';
import { atField, type Finding } from '../../text/finding.ts';
import { contour, list, mm, type Part, upTo } from '../../text/part.ts';
import { say } from '../../text/say.ts';
import { find } from '../findings.ts';
import type { JobRun } from '../job-run.ts';
import type { MeasuredText } from '../request/read-measured.ts';

/** mm: a size typed from the drawing is written to a digit or two, and limits move what is aimed at. */
const ROUNDED = 0.1;
/** mm per side: no gap, wire and machine are off by as much together; a digit or a contour was taken for another. */
const BEYOND_ANY_CUT = 0.1;
/** Sizes that are named in the question, those nearest to what was typed. */
const NAMED = 4;

/** Nothing where it was said that it is meant so. */
export const measuredDoubts = ({ job, shape }: JobRun, plan: CutPlan, measured: readonly MeasuredText[]): readonly Finding[] => {
  const listed = [...(job.sizes ?? []).map((s) => s.length), ...(shape?.sizes ?? []).map((s) => s.figure.value)];
  return measured
    .filter((m) => !m.anyway)
    .flatMap((m) => {
      const cut = plan.contours.find((c) => c.loop === m.loop);
      const sizes = cut === undefined ? [] : [...sizesOn(cut.comesOut), ...listed];
      // One face has its size from a datum that may lie anywhere.
      const drawn = m.sides === 1 || sizes.some((s) => Math.abs(s - m.expected) <= ROUNDED);
      const off = Math.abs(m.size - m.expected) / m.sides;
      return drawn ? (off > BEYOND_ANY_CUT ? [farOff(m)] : []) : [notDrawn(m, sizes)];
    });
};

const notDrawn = ({ loop, expected }: MeasuredText, sizes: readonly number[]): Finding => {
  const near = sizes.toSorted((a, b) => Math.abs(a - expected) - Math.abs(b - expected)).slice(0, NAMED);
  const named: Part = list(near.toSorted((a, b) => a - b).map((s) => mm(s, upTo(3))));
  return find(
    'measured-doubted/nominal',
    say`${{ loop: contour(loop) }} has no size of ${{ nominal: mm(expected, { as: 'given' }) }}; the nearest: ${{ sizes: named }}. No correction is worked out.`,
    { place: atField('measured'), remedy: MEANT },
  );
};

const farOff = ({ loop, size, expected }: MeasuredText): Finding =>
  find(
    'measured-doubted/far',
    say`${{ loop: contour(loop) }}: ${{ measured: mm(size, { as: 'given' }) }} is further from ${{ nominal: mm(expected, { as: 'given' }) }} than any cut is off. No correction is worked out.`,
    { place: atField('measured'), remedy: MEANT },
  );

const MEANT = say(
  'measured-doubted.remedy',
)`Check contour, digits and unit, and whether it is a size across this contour. If it is meant so, say so: write "anyway" behind it.`;
