/** How lettering is made, for whoever has fonts to make it with. */
import type { ShapeMeans } from '../shapes/kind.ts';

export { makeLettering } from '../shapes/lettering/make-lettering.ts';
export type { FontAsked, FontFound } from '../shapes/lettering/typeface.ts';

export type LetterMaker = NonNullable<ShapeMeans['letters']>;
