/** Programs scaled for temperature: whether the stated factor is that of the stated temperature, and the drawing as it is while it is cut. */

import { scaling, transformChain, transformPoint } from '../../geometry/transform.ts';
import type { Finding } from '../../text/finding.ts';
import { asGiven, fixed, number, quantity } from '../../text/part.ts';
import { say } from '../../text/say.ts';
import { find } from '../findings.ts';
import type { ProofQuestion } from '../proof.ts';

/** ISO 1: sizes of drawings hold at this temperature, °C. Said here again, since the proof asks nobody who planned. */
const REFERENCE = 20;
const ALL = { as: 'given' } as const;
/** A factor off by less moves a place one metre from the datum by a tenth of a nanometre. */
const EXACT = 1e-13;

/**
 * A factor that does not follow from expansion and temperature is refused, however little it is off: within the tolerance the
 * comparison with the drawing would not see it.
 */
export const scaleFault = ({ scaled }: ProofQuestion): Finding | undefined => {
  if (scaled === undefined) return undefined;
  const { factor, expansion, temperature } = scaled;
  const due = 1 + expansion * 1e-6 * (temperature - REFERENCE);
  // Written so that what is no number is refused as well.
  if (Math.abs(factor - due) <= EXACT && due > 0) return undefined;
  return find(
    'scale-not-of-temperature',
    say`The set-up says that the program is scaled by ${{ factor: asGiven(factor) }} for ${{ temperature: quantity(temperature, '°C', ALL) }}; with ${{ expansion: asGiven(expansion) }}e-6/K that would be ${{ due: number(due, fixed(9)) }}.`,
    {
      place: { kind: 'field', path: 'scaled.factor' },
      remedy: say`Write the program and its set-up file anew, or leave scaled out for a program that is not scaled.`,
    },
  );
};

/**
 * Everything that is told as at 20 °C, grown about the datum as the work piece has grown when it is cut. Wire, gap, registers and
 * holes' diameters are what they are: the first three are no part of the work piece, and a drill is not that fine.
 */
export const warmed = (question: ProofQuestion): ProofQuestion => {
  const { scaled } = question;
  if (scaled === undefined) return question;
  const grown = scaling(scaled.factor, question.datum);
  return {
    ...question,
    wanted: question.wanted.map((w) => ({ ...w, contour: transformChain(grown, w.contour) })),
    wantedOpen: question.wantedOpen?.map((o) => ({ ...o, path: transformChain(grown, o.path) })),
    block: transformChain(grown, question.block),
    holes: question.holes.map((h) => ({ ...h, at: transformPoint(grown, h.at) })),
  };
};
