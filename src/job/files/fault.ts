/** What is wrong with one value of a file, in words: the checker's own speak of types. */
import type { z } from 'zod';

type Issue = z.core.$ZodIssue;

/** 'must be at least 1', 'is missing': after 'height ...'. */
export const faultOf = (issue: Issue): string => {
  if (issue.code === 'invalid_type') return issue.input === undefined ? 'is missing' : `must be ${KINDS[issue.expected] ?? issue.expected}`;
  if (issue.code === 'too_small')
    return `must be ${issue.inclusive === false ? 'more than' : 'at least'} ${limit(issue.minimum, issue.origin)}`;
  if (issue.code === 'too_big')
    return `must be ${issue.inclusive === false ? 'less than' : 'at most'} ${limit(issue.maximum, issue.origin)}`;
  if (issue.code === 'invalid_value')
    return `must be ${issue.values.map((v) => (typeof v === 'string' ? `'${v}'` : String(v))).join(' or ')}`;
  if (issue.code === 'unrecognized_keys') return `has no field ${issue.keys.map((k) => `'${k}'`).join(' and no field ')}`;
  if (issue.code === 'invalid_format' && issue.format === 'date') return 'must be a day, as in 2026-11-25';
  return `is not right: ${issue.message}`;
};

const KINDS: Readonly<Record<string, string>> = {
  number: 'a number',
  int: 'a whole number',
  string: 'a text in quotation marks',
  boolean: 'true or false',
  array: 'a list in square brackets',
  object: 'a group of fields in curly brackets',
  record: 'a group of fields in curly brackets',
};

const limit = (size: number | bigint, of: string): string => {
  if (of === 'string') return `${size} ${Number(size) === 1 ? 'letter' : 'letters'} long`;
  if (of === 'array') return `${size} ${Number(size) === 1 ? 'entry' : 'entries'} long`;
  return String(size);
};
