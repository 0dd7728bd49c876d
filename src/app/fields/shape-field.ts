/** The keys of a part by numbers as fields of the sheet. */
import { isShapeKind, type ShapeKey, shapeForm } from '../../job/request/shape-keys.ts';
import type { Numbers } from '../../text/print/reader.ts';
import { type Input, valueAt } from '../state/input.ts';
import type { Words } from '../words/words-for.ts';
import type { FieldKind, FieldSpec } from './fields.ts';

const KINDS: Readonly<Record<ShapeKey['takes'], FieldKind>> = {
  length: 'length',
  number: 'number',
  'whole number': 'count',
  choice: 'choice',
  'yes or no': 'choice',
  text: 'text',
  data: 'text',
};

/** What is usual stands in the empty field. */
export const shapeField = (form: ShapeKey, numbers: Numbers, words: Words['shape']): FieldSpec => ({
  path: `shape.${form.key}`,
  kind: KINDS[form.takes],
  usual: form.usual === undefined ? undefined : usualOf(form, numbers, words),
});

const usualOf = ({ takes, usual }: ShapeKey, numbers: Numbers, words: Words['shape']): string => {
  if (takes === 'length' && typeof usual === 'number') return numbers.length(usual);
  if (typeof usual === 'number') return numbers.plain(usual);
  if (typeof usual === 'boolean') return usual ? words.yes : words.no;
  return typeof usual === 'string' ? usual : JSON.stringify(usual);
};

/** The field of a path like 'shape.teeth' where the job's own part has such a key. */
export const shapeFieldAt = (path: string, input: Input, numbers: Numbers, words: Words['shape']): FieldSpec | undefined => {
  const kind = valueAt(input, 'shape.kind');
  if (typeof kind !== 'string' || !isShapeKind(kind)) return undefined;
  const form = shapeForm(kind).keys.find(({ key }) => path === `shape.${key}`);
  return form && shapeField(form, numbers, words);
};
