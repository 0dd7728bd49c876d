/** The words of one block -> what the block says, each kind of thing at most once; conflicts and unknown words are found here. */
import { list, type Part, term } from '../../text/part.ts';
import { say } from '../../text/say.ts';
import type { Dialect } from '../dialect/dialect.ts';
import { type DialectWords, type Meaning, spelledAt } from './dialect-words.ts';
import type { Word } from './line.ts';
import { type Broken, broken } from './read-outcome.ts';

/** A unit word, and the pair it is of: ISO 6983-1 has G70 and G71, RS274NGC G20 and G21. */
export interface UnitWord {
  readonly unit: Dialect['units'];
  readonly pair: Exclude<Dialect['unitsWord'], 'none'>;
  readonly word: 'G20' | 'G21' | 'G70' | 'G71';
}

export type Motion = 'rapid' | 'straight' | 'clockwise' | 'counter-clockwise';

/** Fields other than the last two are undefined unless the block says so. Coordinates are in the unit of the program. */
export interface Statement {
  motion: Motion | undefined;
  dwell: 'dwell' | undefined;
  datum: 'set' | undefined;
  system: number | undefined;
  units: UnitWord | undefined;
  distance: 'absolute' | 'incremental' | undefined;
  compensation: 'left' | 'right' | 'off' | undefined;
  stop: 'stop' | 'optional stop' | 'end' | undefined;
  x: number | undefined;
  y: number | undefined;
  i: number | undefined;
  j: number | undefined;
  r: number | undefined;
  register: number | undefined;
  feed: number | undefined;
  pause: number | undefined;
  condition: number | undefined;
  events: readonly Meaning[];
  /** A coordinate other than 0 has no decimal point. */
  pointMissing: boolean;
}

type StatementOutcome = { readonly kind: 'statement'; readonly statement: Readonly<Statement> } | Broken;

interface Entry {
  readonly field: keyof Statement;
  readonly value: unknown;
}

const stating = (value: UnitWord): Entry => ({ field: 'units', value });

/** G words by ten times their number. Plane and path words that change nothing here are known and have no field. */
const gWords: ReadonlyMap<number, Entry | 'nothing to do'> = new Map<number, Entry | 'nothing to do'>([
  [0, { field: 'motion', value: 'rapid' }],
  [10, { field: 'motion', value: 'straight' }],
  [20, { field: 'motion', value: 'clockwise' }],
  [30, { field: 'motion', value: 'counter-clockwise' }],
  [40, { field: 'dwell', value: 'dwell' }],
  [170, 'nothing to do'],
  [200, stating({ unit: 'inch', pair: 'G20/G21', word: 'G20' })],
  [210, stating({ unit: 'mm', pair: 'G20/G21', word: 'G21' })],
  [700, stating({ unit: 'inch', pair: 'G70/G71', word: 'G70' })],
  [710, stating({ unit: 'mm', pair: 'G70/G71', word: 'G71' })],
  [400, { field: 'compensation', value: 'off' }],
  [410, { field: 'compensation', value: 'left' }],
  [420, { field: 'compensation', value: 'right' }],
  ...[54, 55, 56, 57, 58, 59].map((g) => [g * 10, { field: 'system', value: g }] as const),
  [610, 'nothing to do'],
  [640, 'nothing to do'],
  [900, { field: 'distance', value: 'absolute' }],
  [910, { field: 'distance', value: 'incremental' }],
  [920, { field: 'datum', value: 'set' }],
  [940, 'nothing to do'],
]);

const mWords: ReadonlyMap<number, Entry> = new Map<number, Entry>([
  [0, { field: 'stop', value: 'stop' }],
  [1, { field: 'stop', value: 'optional stop' }],
  [2, { field: 'stop', value: 'end' }],
  [30, { field: 'stop', value: 'end' }],
]);

const plainLetters: Readonly<Record<string, keyof Statement>> = {
  X: 'x',
  Y: 'y',
  I: 'i',
  J: 'j',
  R: 'r',
  D: 'register',
  F: 'feed',
  P: 'pause',
};

const lengths = new Set('XYIJR');
const otherAxes = new Set('ABCUVWZ');

/** `words` without the sequence number. */
export const understand = (words: readonly Word[], dialect: Dialect, own: DialectWords): StatementOutcome => {
  const statement = blankStatement();
  for (let index = 0; index < words.length; index += 1) {
    const word = words[index] as Word;
    const spelled = own.spellings.has(word.letter) ? spelledAt(own, words, index) : notSpelled;
    if (spelled.kind === 'spelled') {
      if (statement.events.includes(spelled.meaning))
        return broken('word-twice/spelled', (block) => say`${{ block }} says ${{ word: written(word) }} twice.`);
      statement.events = [...statement.events, spelled.meaning];
      index += spelled.parts - 1;
      continue;
    }
    const entry = entryOf(word, dialect, own);
    if (entry === 'nothing to do') continue;
    if ('kind' in entry) return entry;
    if (statement[entry.field] !== undefined)
      return broken('word-twice/kind', (block) => say`${{ block }} has ${{ word: written(word) }} beside another word of its kind.`, {
        remedy: say`Write one of the two in a block of its own.`,
      });
    (statement as unknown as Record<string, unknown>)[entry.field] = entry.value;
    if (!word.point && word.value !== 0 && lengths.has(word.letter)) statement.pointMissing = true;
  }
  return { kind: 'statement', statement };
};

const noEvents: readonly Meaning[] = [];

/** All fields from the start: one shape for every block keeps reading fast. */
export const blankStatement = (): Statement => ({
  motion: undefined,
  dwell: undefined,
  datum: undefined,
  system: undefined,
  units: undefined,
  distance: undefined,
  compensation: undefined,
  stop: undefined,
  x: undefined,
  y: undefined,
  i: undefined,
  j: undefined,
  r: undefined,
  register: undefined,
  feed: undefined,
  pause: undefined,
  condition: undefined,
  events: noEvents,
  pointMissing: false,
});
const notSpelled = { kind: 'not a word of the dialect' } as const;

const written = (word: Word): Part => term(`${word.letter}${word.value}`);

const entryOf = (word: Word, dialect: Dialect, own: DialectWords): Entry | 'nothing to do' | Broken => {
  if (word.letter === own.condition) return conditionOf(word);
  const plain = plainLetters[word.letter];
  if (plain !== undefined) return { field: plain, value: word.value };
  if (word.letter === 'G') return preparatory(word, dialect);
  if (word.letter === 'M') return mWords.get(word.value) ?? (SUBPROGRAM.has(word.value) ? callsSubprogram(word) : unknownWord(word));
  if (word.letter === 'K')
    return broken('arc-by-k', (block) => say`${{ block }} has a K word, and arcs in the XY plane have only I and J.`, {
      remedy: say`Take K out, or write the arc with I and J.`,
    });
  if (word.letter === 'N') return broken('word-twice/sequence', (block) => say`${{ block }} has a second sequence number.`);
  if (otherAxes.has(word.letter)) {
    return broken(
      'axis-unknown',
      (block) => say`${{ block }} moves the axis ${{ axis: term(word.letter) }}, which neither the dialect nor two-axis cutting has.`,
      { remedy: say`Take the word out; only X and Y move here.` },
    );
  }
  return unknownWord(word);
};

/** Call of a subprogram and return from it; by common practice of controls, no standard read. */
const SUBPROGRAM: ReadonlySet<number> = new Set([97, 98, 99]);

const callsSubprogram = (word: Word): Broken =>
  broken(
    'subprogram/called',
    (block) =>
      say`${{ block }} calls a subprogram or returns from one by ${{ word: written(word) }}, and only what stands in the program itself is read.`,
    {
      remedy: say`Write out what the subprogram cuts, at every place where it is called.`,
    },
  );

const unknownWord = (word: Word): Broken =>
  broken(
    'word-unknown/letter',
    (block) =>
      say`${{ block }} has the word ${{ word: written(word) }}, which neither the standard words known here nor the dialect explain.`,
    { remedy: say`If the control has this word, enter it in the dialect file under its meaning.` },
  );

const conditionOf = (word: Word): Entry | Broken =>
  Number.isInteger(word.value) && word.value >= 0
    ? { field: 'condition', value: word.value }
    : broken(
        'number-bad/condition',
        (block) => say`${{ block }} chooses the condition by ${{ word: written(word) }}, which is no whole number.`,
      );

const preparatory = (word: Word, dialect: Dialect): Entry | 'nothing to do' | Broken => {
  const tenfold = Math.round(word.value * 10);
  const entry = Math.abs(word.value * 10 - tenfold) < 1e-9 ? gWords.get(tenfold) : undefined;
  if (tenfold === 180 || tenfold === 190)
    return broken('plane-not-xy', (block) => say`${{ block }} chooses another plane than XY with ${{ word: written(word) }}.`, {
      remedy: say`Write G17, or leave the plane out.`,
    });
  if (entry === undefined) return unknownWord(word);
  if (entry !== 'nothing to do' && entry.field === 'units' && dialect.unitsWord === 'none') return noUnitWords(word);
  return entry;
};

const noUnitWords = (word: Word): Broken =>
  broken(
    'word-unknown/unit',
    (block) => say`${{ block }} states the unit by ${{ word: written(word) }}, but the dialect has no unit words.`,
    { remedy: say`Take the word out, or enter the pair of unit words of the control in the dialect file.` },
  );

/** 'G20 or G21'. */
export const unitPair = (pair: Dialect['unitsWord']): Part => list(pair.split('/').map(term), 'or');
