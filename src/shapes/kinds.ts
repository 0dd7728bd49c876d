/** All kinds of shapes, by the word that asks for them. */
import { gear } from './gear/gear.ts';
import { polygon } from './plain/polygon.ts';

export const KINDS = { gear, polygon };

export type KindName = keyof typeof KINDS;
