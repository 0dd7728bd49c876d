/** Checks the text of a JSON file against a schema and locates every fault by its field. */
import type { z } from 'zod';
import type { Finding } from '../../text/finding.ts';
import { name, type Part } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { find } from '../findings.ts';
import { faultOf } from './fault.ts';
import { oldKeysNote, type Renamed, renamedIn, underNewKeys } from './old-keys.ts';

export type Parsed<T> =
  | {
      readonly kind: 'parsed';
      readonly value: T;
      readonly said: ReadonlySet<string>;
      /** What the file itself gives, before defaults, under the keys of today. */
      readonly given: unknown;
      /** That it has keys of an earlier version. */
      readonly notes: readonly Finding[];
    }
  | { readonly kind: 'bad'; readonly findings: readonly Finding[] };

const MOST_FAULTS = 20;

/** The name of a file, or what it is where it has none. */
export type FileName = string | Text;

/** `said` are the top-level keys that the file itself gives, before defaults; `renamed` are the keys that files of 0.3 have otherwise. */
export const parseFile = <S extends z.ZodType>(
  schema: S,
  text: string,
  file: FileName,
  renamed: readonly Renamed[] = renamedIn(schema),
): Parsed<z.output<S>> => {
  const json = jsonOf(text);
  if (json.kind === 'bad')
    return {
      kind: 'bad',
      findings: [
        // What the parser says stands as it says it.
        find('file-not-valid/json', say`${{ file: called(file) }} is not JSON: ${{ parser: name(json.reason) }}.`, {
          place: { kind: 'line', line: json.line },
        }),
      ],
    };
  return parseValue(schema, json.value, file, renamed);
};

export const parseValue = <S extends z.ZodType>(
  schema: S,
  value: unknown,
  file: FileName,
  renamed: readonly Renamed[] = renamedIn(schema),
): Parsed<z.output<S>> => {
  const { value: given, old } = underNewKeys(value, renamed);
  const result = schema.safeParse(given, { reportInput: true });
  if (result.success)
    return {
      kind: 'parsed',
      value: result.data,
      said: new Set(typeof given === 'object' && given !== null ? Object.keys(given) : []),
      given,
      notes: oldKeysNote(called(file), old),
    };
  const findings = result.error.issues.slice(0, MOST_FAULTS).map((issue) => {
    const path = issue.path.map((key) => String(key)).join('.');
    return fileFault(path, path === '' ? words.whole(file, faultOf(issue)) : words.field(file, path, faultOf(issue)));
  });
  return { kind: 'bad', findings };
};

const called = (file: FileName): Part | Text => (typeof file === 'string' ? name(file) : file);

const words = phrases('file-not-valid', {
  whole: (file: FileName, fault: Text) => say`${{ file: called(file) }}: the file ${{ fault }}.`,
  field: (file: FileName, path: string, fault: Text) => say`${{ file: called(file) }}: ${{ field: name(path) }} ${{ fault }}.`,
});

/** A value of a file that cannot be used: '' is the file as a whole. */
export const fileFault = (path: string, text: Text): Finding => find('file-not-valid', text, { place: { kind: 'field', path } });

type Json = { readonly kind: 'json'; readonly value: unknown } | { readonly kind: 'bad'; readonly reason: string; readonly line: number };

const jsonOf = (text: string): Json => {
  try {
    return { kind: 'json', value: JSON.parse(text.replace(/^\uFEFF/, '')) };
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    const at = Number(/position (\d+)/.exec(reason)?.[1] ?? 0);
    return { kind: 'bad', reason: reason.split('\n')[0] as string, line: text.slice(0, at).split('\n').length };
  }
};
