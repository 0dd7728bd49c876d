/** Checks the text of a JSON file against a schema and locates every fault by its field. */
import type { z } from 'zod';
import type { Finding } from '../../text/finding.ts';
import { find } from '../findings.ts';
import { faultOf } from './fault.ts';

export type Parsed<T> =
  | { readonly kind: 'parsed'; readonly value: T; readonly said: ReadonlySet<string> }
  | { readonly kind: 'bad'; readonly findings: readonly Finding[] };

const MOST_FAULTS = 20;

/** `said` are the top-level keys that the file itself gives, before defaults. */
export const parseFile = <S extends z.ZodType>(schema: S, text: string, name: string): Parsed<z.output<S>> => {
  const json = jsonOf(text);
  if (json.kind === 'bad')
    return {
      kind: 'bad',
      findings: [find('file-not-valid', `${name} is not JSON: ${json.reason}.`, { place: { kind: 'line', line: json.line } })],
    };
  return parseValue(schema, json.value, name);
};

export const parseValue = <S extends z.ZodType>(schema: S, value: unknown, name: string): Parsed<z.output<S>> => {
  const result = schema.safeParse(value, { reportInput: true });
  if (result.success)
    return { kind: 'parsed', value: result.data, said: new Set(typeof value === 'object' && value !== null ? Object.keys(value) : []) };
  const findings = result.error.issues.slice(0, MOST_FAULTS).map((issue) => {
    const path = issue.path.map(String).join('.');
    return find('file-not-valid', `${name}: ${path === '' ? 'the file' : path} ${faultOf(issue)}.`, {
      place: { kind: 'field', path },
    });
  });
  return { kind: 'bad', findings };
};

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
