/** The answer of a job in one line, kept with it as data and printed for its user. */
import { type AnsweredFrom, inputsMark } from '../../server/message/answered-from.ts';
import type { ShopRecord } from '../../server/message/answers.ts';
import type { JobSummary } from '../../server/message/job-record.ts';
import { isKeptText } from '../../text/kept.ts';
import { name } from '../../text/part.ts';
import { print, printPlain } from '../../text/print/print.ts';
import { only } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { same } from '../../text/within.ts';
import type { Input } from './input.ts';
import { preferences, readerOf } from './preferences.ts';

/** Words where 0.3 kept it. */
export type Line = Text | string;

/** What the server takes; an answer with more to say is cut. */
export const lineOf = (text: Text): Line => {
  const data: unknown = text;
  const words: string = printPlain(text);
  return isKeptText(data) ? data : words.slice(0, 500);
};

export const sameLine = (one: Line | undefined, other: Line): boolean =>
  typeof one === 'object' && typeof other === 'object' ? same(one, other) : one === other;

export const sameFrom = (one: AnsweredFrom | undefined, other: AnsweredFrom): boolean =>
  one !== undefined && (['inputs', 'shop', 'version', 'until'] as const).every((key) => one[key] === other[key]);

/** What an answer is worked out from on a day, which is that of its rates where the job names none. */
export const answeredFromOf = (input: Input, { revision, shop }: ShopRecord, { version, day }: Omit<InForce, 'shop'>): AnsweredFrom => ({
  inputs: inputsMark(input),
  shop: revision,
  version,
  until: input['date'] === undefined ? otherRatesAfter(day, shop['rates']) : undefined,
});

/** The first day after this one on which other rates come into force, if any do. */
const otherRatesAfter = (day: string, rates: unknown): string | undefined => {
  const all = Array.isArray(rates) ? (rates as readonly Partial<Record<string, unknown>>[]) : [];
  return all
    .map((r) => String(r['from']))
    .filter((from) => from > day)
    .toSorted()[0];
};

/** What an answer is older than: the first of what changed since it was worked out. */
export type Older = 'inputs' | 'shop' | 'version' | 'rates';

export interface InForce {
  readonly shop: number;
  readonly version: string;
  /** Today, ISO 8601. */
  readonly day: string;
}

/** An answer of 0.3 does not say what it was worked out from, and is older than the program at least. */
export const olderThan = (
  { line, answeredFrom, inputs }: Pick<JobSummary, 'line' | 'answeredFrom' | 'inputs'>,
  { shop, version, day }: InForce,
): Older | undefined => {
  if (line === undefined) return undefined;
  if (answeredFrom === undefined) return 'version';
  if (answeredFrom.inputs !== inputs) return 'inputs';
  if (answeredFrom.shop !== shop) return 'shop';
  if (answeredFrom.version !== version) return 'version';
  return answeredFrom.until !== undefined && answeredFrom.until <= day ? 'rates' : undefined;
};

export const printedLine = (line: Line): string => {
  const reader = readerOf(preferences());
  const text = typeof line === 'string' ? only(name(line)) : line;
  try {
    return print(text, reader);
  } catch {
    // It may be older than the other language's template, which then asks for what it does not hold: its English is with it.
    return print(text, { ...reader, language: undefined });
  }
};
