/** What is wrong with one value of a file, in words: the checker's own speak of types. */
import type { z } from 'zod';
import { asGiven, count, list, name, type Part, term } from '../../text/part.ts';
import { only, phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';

type Issue = z.core.$ZodIssue;

/** 'must be at least 1', 'is missing': after 'height ...'. */
export const faultOf = (issue: Issue): Text => {
  if (issue.code === 'invalid_type') return issue.input === undefined ? words.missing : words.mustBe(kindOf(issue.expected));
  if (issue.code === 'too_small') {
    const least = limit(issue.minimum, issue.origin);
    return issue.inclusive === false ? words.moreThan(least) : words.atLeast(least);
  }
  if (issue.code === 'too_big') {
    const most = limit(issue.maximum, issue.origin);
    return issue.inclusive === false ? words.lessThan(most) : words.atMost(most);
  }
  if (issue.code === 'invalid_value') return words.oneOf(list(issue.values.map(typed), 'or'));
  if (issue.code === 'unrecognized_keys') return words.noField(issue.keys);
  if (issue.code === 'invalid_format' && issue.format === 'date') return words.day;
  return words.notRight(issue.message);
};

/** A value as it is typed in the file: words in quotation marks. */
const typed = (value: unknown): Part => term(typeof value === 'string' ? `'${value}'` : String(value));

const words = phrases('file-fault', {
  missing: say`is missing`,
  mustBe: (kind: Text) => say`must be ${{ kind }}`,
  moreThan: (least: Text) => say`must be more than ${{ least }}`,
  atLeast: (least: Text) => say`must be at least ${{ least }}`,
  lessThan: (most: Text) => say`must be less than ${{ most }}`,
  atMost: (most: Text) => say`must be at most ${{ most }}`,
  oneOf: (values: Part) => say`must be ${{ values }}`,
  field: (key: string) => say`no field '${{ key: name(key) }}'`,
  noField: (keys: readonly string[]) => say`has ${{ fields: list(keys.map(noSuchField), 'and') }}`,
  day: say`must be a day, as in 2026-11-25`,
  notRight: (checker: string) => say`is not right: ${{ checker: name(checker) }}`,
  letters: (size: number) => say`${{ letters: count(size, 'letter') }} long`,
  entries: (size: number) => say`${{ entries: count(size, 'entry') }} long`,
});

const noSuchField = (key: string): Text => words.field(key);

const kinds: Readonly<Record<string, Text>> = phrases('file-kind', {
  number: say`a number`,
  int: say`a whole number`,
  string: say`a text in quotation marks`,
  boolean: say`true or false`,
  array: say`a list in square brackets`,
  object: say`a group of fields in curly brackets`,
  record: say`a group of fields in curly brackets`,
});

const kindOf = (expected: string): Text => kinds[expected] ?? only(term(expected));

const limit = (size: number | bigint, of: string): Text => {
  const value = Number(size);
  if (of === 'string') return words.letters(value);
  return of === 'array' ? words.entries(value) : only(asGiven(value));
};
