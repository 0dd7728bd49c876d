/** All kinds of shapes, by the word that asks for them. */
import { gear } from './gear/gear.ts';
import { keywayHub } from './keyway/hub.ts';
import { polygon } from './plain/polygon.ts';

export const KINDS = { gear, 'keyway-hub': keywayHub, polygon };

export type KindName = keyof typeof KINDS;
