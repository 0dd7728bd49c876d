/** How lettering is made, for whoever has fonts to make it with. */
import type { LetteringMeans } from '../shapes/lettering/request.ts';

export { makeLettering } from '../shapes/lettering/make-lettering.ts';
export type { FontAsked, FontFound } from '../shapes/lettering/typeface.ts';

export type LetterMaker = NonNullable<LetteringMeans['letters']>;
