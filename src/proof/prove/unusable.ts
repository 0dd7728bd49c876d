/** Whether a question can be answered at all: every number finite and in its range, every contour closed and not empty. */

import { areaOf } from '../../geometry/area.ts';
import type { Chain } from '../../geometry/contour.ts';
import { lengthOf } from '../../geometry/measure.ts';
import type { Finding } from '../../text/finding.ts';
import { asGiven, contour, mm, quantity, term } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import type { Unit } from '../../text/unit.ts';
import { find } from '../findings.ts';
import type { ProofQuestion } from '../proof.ts';
import { RESOLUTION } from '../sweep/sweep.ts';

/** Coordinates beyond this, mm, would lose digits in whole units of 10 nm. */
const FARTHEST = 1e6;
/** How much further away the centre of an arc may lie than its ends. */
const FAR_CENTRE = 1e6;

export const unusable = (question: ProofQuestion): Finding | undefined => {
  const field = numberFaults(question)[0] ?? contourFaults(question)[0];
  if (field === undefined) return undefined;
  return find('proof-question-unusable', field.text, {
    place: { kind: 'field', path: field.path },
    remedy: say`Give a value in that range.`,
  });
};

interface QuestionFault {
  readonly path: string;
  readonly text: Text;
}

const numberFaults = (q: ProofQuestion): QuestionFault[] => {
  const faults: QuestionFault[] = [];
  const need = (path: string, value: number, low: number, high: number, unit: Unit): void => {
    if (value >= low && value <= high) return;
    faults.push({ path, text: words.outside(path, value, low, high, unit) });
  };
  need('wireDiameter', q.wireDiameter, 0.01, 1, 'mm');
  need('height', q.height, 1e-3, 1e5, 'mm');
  need('density', q.density, 1e-3, 30, 'g/cm³');
  need('tolerance', q.tolerance, 2 * RESOLUTION, 10, 'mm');
  need('insideCorner', q.insideCorner, 0, 100, 'mm');
  for (const [number, gap] of q.gaps) need(`gaps.${number}`, gap, 1e-6, 1, 'mm');
  q.holes.forEach((h, i) => {
    need(`holes.${i}.diameter`, h.diameter, 1e-3, FARTHEST, 'mm');
    need(`holes.${i}.at.x`, h.at.x, -FARTHEST, FARTHEST, 'mm');
    need(`holes.${i}.at.y`, h.at.y, -FARTHEST, FARTHEST, 'mm');
  });
  return faults;
};

const contourFaults = (q: ProofQuestion): QuestionFault[] => {
  const faults: QuestionFault[] = [];
  const look = (path: string, whose: Text, chain: Chain): void => {
    const numbers = chain.segments.flatMap((s) => [
      s.from.x,
      s.from.y,
      s.to.x,
      s.to.y,
      // An almost straight arc has its centre far away; it only has to be a number.
      ...(s.kind === 'arc' ? [s.centre.x / FAR_CENTRE, s.centre.y / FAR_CENTRE, s.radius / FAR_CENTRE, s.sweep] : []),
    ]);
    const there = chain.closed ? Math.abs(areaOf(chain)) > 1e-6 : chain.segments.some((s) => lengthOf(s) > 1e-6);
    const good = numbers.length > 0 && numbers.every((n) => Math.abs(n) <= FARTHEST) && there;
    if (!good) faults.push({ path, text: chain.closed ? words.noArea(whose) : words.noLength(whose) });
  };
  look('block', words.edge, q.block);
  for (const [i, w] of q.wanted.entries()) look(`wanted.${i}.contour`, words.contour(w.loop), w.contour);
  for (const [i, o] of (q.wantedOpen ?? []).entries()) look(`wantedOpen.${i}.path`, words.line(o.chain), o.path);
  return faults;
};

const words = phrases('proof-question-unusable', {
  outside: (path: string, value: number, low: number, high: number, unit: Unit) =>
    say`${{ field: term(path) }} is ${{ value: asGiven(value) }}, and the proof needs it between ${{ low: asGiven(low) }} and ${{ high: quantity(high, unit) }}.`,
  noArea: (whose: Text) => say`${{ whose }} encloses no area, or lies further than ${{ far: mm(FARTHEST) }} from zero.`,
  noLength: (whose: Text) => say`${{ whose }} has no length, or lies further than ${{ far: mm(FARTHEST) }} from zero.`,
  edge: say`The block edge`,
  contour: (loop: string) => say`Contour ${{ loop: contour(loop) }}`,
  line: (chain: string) => say`Line ${{ chain: contour(chain) }}`,
});
