/** The answer of a job in one line, in the units and number marks of the user. */
import { legacy } from '../../text/legacy.ts';
import { print } from '../../text/print/print.ts';
import { namesOf } from './names.ts';
import { preferences, readerOf } from './preferences.ts';

/** The shop of a job that is not open is not at hand: names are those of the house. */
const names = namesOf({});

/** The line is kept with the job as the house writes it. */
export const toldLine = (line: string): string => print(legacy(line), { ...readerOf(preferences()), names });
