/** The answer of a job in one line, in the units and number marks of the user. */

import { tellerOf } from '../../text/print/reader.ts';
import { namesOf } from './names.ts';
import { preferences } from './preferences.ts';

/** The shop of a job that is not open is not at hand: names are those of the house. */
const names = namesOf({});

export const toldLine = (line: string): string => tellerOf(preferences(), names)(line);
