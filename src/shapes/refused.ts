/** Short ways to say sizes and refusals that every family needs. */

import { type Figure, given } from '../quantity/figure.ts';
import type { Finding } from '../text/finding.ts';
import type { MadeShape } from './shape.ts';

/** A length that the request gives, or that follows from it at sight, mm. */
export const millimetres = (key: string, name: string, value: number, source = 'the request'): Figure =>
  given({ key, name, value, unit: 'mm', basis: source === 'the request' ? 'drawing' : 'published', source });

export const refusedWith = (finding: Finding): Extract<MadeShape, { kind: 'refused' }> => ({ kind: 'refused', findings: [finding] });
