/** Another language: a template for each key, and the forms of what is counted. */
import type { Noun } from './noun.ts';
import type { Joint, Part } from './part.ts';

/** Words that join a list, by what it is joined with: 'a, b and c'. */
export type Junction = Exclude<Extract<Part, { kind: 'list' }>['joined'], 'semicolon' | 'blank' | 'dot' | 'plus'>;

/** One template, or one for each plural category (CLDR: one, few, many, other …) of the count in a hole. */
export type Template = string | { readonly by: string; readonly forms: Readonly<Record<string, string>> & { readonly other: string } };

export interface Language {
  /** BCP 47: 'de', 'qps-ploc'. */
  readonly code: string;
  /** By key. In a template `{loop}` is a hole; `{contours:genitive}` takes that form of a counted noun. */
  readonly templates: Readonly<Record<string, Template>>;
  /** By noun, then by form ('' for the plain one), then by plural category. */
  readonly nouns: Readonly<Partial<Record<Noun, Readonly<Record<string, Readonly<Record<string, string>>>>>>>;
  readonly junctions: Readonly<Record<Junction, string>>;
  /** Names of days and months, Monday and January first. */
  readonly calendar?: { readonly weekdays: readonly string[]; readonly months: readonly string[] };
  /** 'less than ', before a bound. */
  readonly below?: string;
  /** 'at ', before a place by its letters. */
  readonly at?: string;
  readonly joints: Readonly<Partial<Record<Joint, string>>>;
}
