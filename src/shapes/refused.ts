/** Short ways to say sizes and refusals that every family needs. */

import { type Figure, given } from '../quantity/figure.ts';
import { basisOf, type Citation, saidBy } from '../quantity/source.ts';
import type { Finding } from '../text/finding.ts';
import { phrases, say } from '../text/say.ts';
import type { Text } from '../text/text.ts';
import { found } from './figures.ts';
import type { MadeShape, ShapeSize } from './shape.ts';

/** A length that the request gives, or that follows from it at sight, mm; with a source it is that of a standard. */
export const millimetres = (key: string, name: Text, value: number, source?: Citation): Figure =>
  given({ key, name, value, unit: 'mm', basis: source === undefined ? 'job' : basisOf(source), source: source ?? saidBy.request });

/** The smallest inside radius of outlines, where they have one. */
export const insideSizes = (radius: number | undefined): readonly ShapeSize[] =>
  radius === undefined ? [] : [{ figure: found('inside-radius', inside.name, radius, inside.by) }];

const inside = phrases('inside-radius', {
  name: say`smallest inside radius`,
  by: say`the least concave arc of the contour`,
});

export const refusedWith = (finding: Finding): Extract<MadeShape, { kind: 'refused' }> => ({ kind: 'refused', findings: [finding] });
