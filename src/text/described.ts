/**
 * What a schema says of a key of a file. JSON Schema holds it as a plain string, as the key itself is plain English in every country; where
 * page or command line shows it to a reader it is a text, whose key is the place in the file: 'described.job.insideCorner'.
 */
import { textOf } from './body.ts';
import type { Text } from './text.ts';

export const described = (place: string, description: string): Text =>
  textOf({ key: `described.${place}`, template: description, holes: {} });
