/** All kinds of shapes, by the word that asks for them. */
import { polygon } from './plain/polygon.ts';

export const KINDS = { polygon };

export type KindName = keyof typeof KINDS;
