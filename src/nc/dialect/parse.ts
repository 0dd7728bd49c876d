/** A dialect file -> a dialect that the writer and the reader can rely on, or findings located by field. */
import { firstItem } from '../../sequence/sequence.ts';
import type { Finding } from '../../text/finding.ts';
import { count, list, name, number, term } from '../../text/part.ts';
import { say } from '../../text/say.ts';
import { type Dialect, dialectSchema, type WordName } from './dialect.ts';
import { find } from './findings.ts';
import { standardMeaning } from './standard-words.ts';

/** `findings` of a good dialect are warnings. */
export type ParsedDialect =
  | { readonly kind: 'dialect'; readonly dialect: Dialect; readonly findings: readonly Finding[] }
  | { readonly kind: 'bad'; readonly findings: readonly Finding[] };

/** A dialect fills a page; whatever is this long, in characters, is another file. */
const LONGEST = 100_000;

/** Reads the text of a dialect file. Never throws. */
export const readDialect = (text: string): ParsedDialect => {
  if (text.length > LONGEST) {
    const said = say(
      'dialect-too-long',
    )`The dialect file has ${{ length: count(text.length) }} characters; the limit is ${{ most: count(LONGEST) }}.`;
    return { kind: 'bad', findings: [find('dialect-too-long', said)] };
  }
  try {
    return parseDialect(JSON.parse(text));
  } catch (error) {
    const { message } = error as Error;
    return { kind: 'bad', findings: [find('dialect-not-json', say`The dialect file is not JSON: ${{ parser: name(message) }}.`)] };
  }
};

/** Checks a dialect that is already an object. Never throws. */
export const parseDialect = (json: unknown): ParsedDialect => {
  const parsed = dialectSchema.safeParse(json);
  if (!parsed.success) {
    const findings = parsed.error.issues.map((issue) => {
      const path = ['dialect', ...issue.path].join('.');
      // What the parser says stands as it says it.
      const said = say(
        'dialect-field-bad',
      )`The dialect's field ${{ field: term(path) }} is not usable: ${{ parser: name(issue.message) }}.`;
      return find('dialect-field-bad', said, { place: { kind: 'field', path } });
    });
    return { kind: 'bad', findings };
  }
  const dialect = parsed.data;
  const faults = [...takenWords(dialect), ...sharedWords(dialect)];
  if (faults.length > 0) return { kind: 'bad', findings: faults };
  return { kind: 'dialect', dialect, findings: [...halfPairs(dialect), ...coarseDigits(dialect), ...muteDialect(dialect)] };
};

const field = (name: string) => ({ place: { kind: 'field', path: `dialect.${name}` } }) as const;

/** The words as they are named, without the condition, whose number is open. */
const fixedWords = (dialect: Dialect): readonly (readonly [WordName, string])[] =>
  Object.entries(dialect.words).filter(([name, text]) => name !== 'condition' && text !== undefined) as [WordName, string][];

const conditionLetter = (dialect: Dialect): string => dialect.words.condition?.[0] ?? '';

/** M08 and M8 are one word: letter and number decide, not the spelling. */
const canonical = (text: string): string =>
  text
    .split(' ')
    .map((part) => `${part[0]}${Number(part.slice(1))}`)
    .join(' ');

/** Words that mean something else in ISO 6983-1 or RS274NGC. */
const takenWords = (dialect: Dialect): Finding[] => {
  const found: Finding[] = [];
  for (const [key, text] of fixedWords(dialect)) {
    for (const part of text.split(' ')) {
      const meaning = standardMeaning(firstItem(part), Number(part.slice(1)));
      if (meaning.kind === 'taken') {
        const said = say(
          'dialect-word-taken',
        )`${{ word: term(text) }} cannot be the word for ${{ meaning: term(key) }}: ${{ standard: meaning.by }}.`;
        found.push(find('dialect-word-taken', said, field(`words.${key}`)));
      }
    }
  }
  const letter = conditionLetter(dialect);
  if (letter === 'G' || letter === 'M' || (letter !== '' && standardMeaning(letter, 0).kind === 'taken')) {
    const word = term(dialect.words.condition ?? '');
    const said = say(
      'dialect-word-taken/condition',
    )`${{ word }} cannot choose the condition: ${{ letter: term(letter) }} is an address with a standard meaning.`;
    found.push(find('dialect-word-taken/condition', said, field('words.condition')));
  }
  return found;
};

/** Two meanings for one word, or a word whose second part could be taken for a condition. */
const sharedWords = (dialect: Dialect): Finding[] => {
  const found: Finding[] = [];
  const seen = new Map<string, string>();
  const letter = conditionLetter(dialect);
  for (const [key, text] of fixedWords(dialect)) {
    const word = term(text);
    const other = seen.get(canonical(text));
    if (other !== undefined) {
      const said = say('dialect-word-twice')`${{ word }} stands for both ${{ meanings: list([term(other), term(key)], 'and') }}.`;
      found.push(find('dialect-word-twice', said, field(`words.${key}`)));
    }
    seen.set(canonical(text), key);
    if (letter !== '' && text.split(' ').some((part) => part[0] === letter)) {
      const said = say(
        'dialect-word-twice/letter',
      )`${{ word }}, the word for ${{ meaning: term(key) }}, uses the letter ${{ letter: term(letter) }} that also chooses the condition.`;
      found.push(find('dialect-word-twice/letter', said, field(`words.${key}`)));
    }
  }
  return found;
};

const pairs = [
  ['thread', 'cutWire'],
  ['wireOn', 'wireOff'],
  ['flushOn', 'flushOff'],
  ['powerOn', 'powerOff'],
] as const;

const halfPairs = (dialect: Dialect): Finding[] =>
  pairs.flatMap((pair) => {
    const [there, missing] = dialect.words[pair[0]] === undefined ? [pair[1], pair[0]] : pair;
    if (dialect.words[there] === undefined || dialect.words[missing] !== undefined) return [];
    const said = say(
      'dialect-pair-incomplete',
    )`The dialect has a word for ${{ there: term(there) }} and none for ${{ missing: term(missing) }}; the program will not say the second by itself.`;
    return [find('dialect-pair-incomplete', said, field(`words.${missing}`))];
  });

/** A last digit of more than a micrometre (or 0.0001 inch) is felt on the part. */
const coarseDigits = (dialect: Dialect): Finding[] => {
  const fewest = dialect.units === 'mm' ? 3 : 4;
  if (dialect.decimals >= fewest) return [];
  // In the unit of the program for every reader: it is the program's digits that are too few.
  const [unit, digit] = [term(dialect.units), number(10 ** -dialect.decimals)];
  const said = say(
    'dialect-coarse',
  )`With ${{ decimals: count(dialect.decimals) }} decimals in ${{ unit }} every point is rounded to ${{ digit }} ${{ unitOfDigit: unit }}; wire cutting needs at least ${{ fewest: count(fewest) }} decimals.`;
  return [find('dialect-coarse', said, field('decimals'))];
};

const muteDialect = (dialect: Dialect): Finding[] => {
  if (dialect.comments !== 'none') return [];
  const missing = (['thread', 'cutWire', 'condition'] as const).filter((name) => dialect.words[name] === undefined);
  if (missing.length === 0) return [];
  const said = say(
    'dialect-cannot-speak',
  )`The dialect has no comments and no word for ${{ missing: list(missing.map(term)) }}: a program that needs one of them cannot be written.`;
  return [find('dialect-cannot-speak', said, field('comments'))];
};
