/** What a part has to keep to: called required only where somebody asked for it, and assumed where nobody did. */

import type { Part } from './part.ts';
import { phrases, say } from './say.ts';
import type { Text } from './text.ts';

/** Fields of a job that a sentence may hold the cut against. */
export type WantedField = 'tolerance' | 'finish' | 'insideCorner';

/** Those that nobody gave. */
export interface Taken {
  readonly assumed?: readonly WantedField[] | undefined;
}

/** '±0.02 mm required', or '±0.02 mm assumed'. */
export const wanted = ({ assumed = [] }: Taken, field: WantedField, what: Part | Text): Text =>
  (assumed.includes(field) ? words.assumed : words.required)(what);

const words = phrases('wanted', {
  required: (what: Part | Text) => say`${{ what }} required`,
  assumed: (what: Part | Text) => say`${{ what }} assumed`,
});
