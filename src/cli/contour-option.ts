/** `--contour "L3:finish=0.4,size=20 H7"`: what is required of single contours, laid over what the job file says of them. */

import { name } from '../text/part.ts';
import { phrases, say } from '../text/say.ts';
import { badInput } from './files.ts';
import { millimetres, numberOf } from './typed-numbers.ts';

const LENGTHS = ['tolerance', 'tab'];
const NUMBERS = ['finish', 'recast', 'passes'];
const WORDS = ['size', 'kept', 'start', 'core'];

/** Nothing where none was typed. */
export const contoursTyped = (typed: readonly string[] | undefined, fromFile: { readonly contours?: unknown }): object => {
  if (typed === undefined || typed.length === 0) return {};
  const contours: Record<string, object> = { ...(fromFile.contours as Record<string, object> | undefined) };
  for (const text of typed) {
    const equals = text.indexOf('=');
    const colon = text.lastIndexOf(':', equals);
    if (equals < 0 || colon <= 0) throw badInput(words.unreadable(text), 'contour');
    const key = text.slice(0, colon).trim();
    contours[key] = { ...contours[key], ...fieldsOf(text.slice(colon + 1), text) };
  }
  return { contours };
};

const fieldsOf = (list: string, text: string): object =>
  Object.fromEntries(
    list.split(',').map((part) => {
      const [field = '', value] = part.split('=').map((w) => w.trim());
      if (value === undefined || value === '') throw badInput(words.unreadable(text), 'contour');
      if (LENGTHS.includes(field)) return [field, millimetres(`contour.${field}`, value)];
      if (NUMBERS.includes(field)) return [field, numberOf(`contour.${field}`, value)];
      if (field === 'offsets') return [field, value.split('/').map((v) => millimetres('contour.offsets', v))];
      if (!WORDS.includes(field)) throw badInput(words.unknown(field), 'contour');
      return [field, value];
    }),
  );

const words = phrases('command-contour', {
  unreadable: (text: string) => say`'${{ typed: name(text) }}' cannot be read: write it like L3:finish=0.4,size=20 H7.`,
  unknown: (field: string) =>
    say`Nothing called '${{ field: name(field) }}' can be required of a contour; it is one of size, tolerance, finish, recast, passes, offsets (0.2/0.16/0.14), kept, start, core and tab.`,
});
