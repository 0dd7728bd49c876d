/** Sentences of before the rebuild, while layers move over; goes with the last of them. */
import { textOf } from './body.ts';
import type { Text } from './text.ts';

/** A finished sentence, read again by the printer. */
export const legacy = (sentence: string): Text => textOf({ template: '{sentence}', holes: { sentence: { kind: 'legacy', sentence } } });

/** A sentence or a text as a text. */
export const asText = (given: string | Text): Text => (typeof given === 'string' ? legacy(given) : given);
