/**
 * English in place: a tagged template yields a text, its holes named by the one key of the object that fills them.
 *
 *     find('open-chain', say`${{ loop: contour(id) }} on layer ${{ layer: name(layer) }} does not close.`)
 *
 * The key under which another language keeps its template is the code of the finding (with `/variant` where a code has several templates),
 * the area and entry of a table of `phrases`, or what is given outright: say('open-chain/gap')`…`. `npm run templates` lists them all.
 */

import { keyed, textOf } from './body.ts';
import { asGiven, asPart, type Part } from './part.ts';
import type { Text } from './text.ts';

/** One key, which names the hole. */
export type Hole = Readonly<Record<string, Part | Text>>;

type Tag = (words: TemplateStringsArray, ...holes: readonly Hole[]) => Text;

interface Say extends Tag {
  (key: string): Tag;
}

const worded = (words: readonly string[], holes: readonly Hole[], key?: string): Text => {
  const filled: Record<string, Part> = {};
  const names = holes.map((hole) => {
    const [entry, ...more] = Object.entries(hole);
    if (entry === undefined || more.length > 0) throw new Error('A hole of a sentence has one name.');
    const [hollow, part] = entry;
    if (hollow in filled) throw new Error(`Two holes of one sentence are named '${hollow}'.`);
    filled[hollow] = asPart(part);
    return hollow;
  });
  if (words.some((w) => /[{}]/.test(w))) throw new Error('Braces in a sentence name its holes; write a brace as a term.');
  const template = words.map((w, i) => (names[i] === undefined ? w : `${w}{${names[i]}}`)).join('');
  return textOf({ key, template, holes: filled });
};

export const say: Say = ((given: TemplateStringsArray | string, ...holes: readonly Hole[]): Text | Tag =>
  typeof given === 'string' ? (words, ...filling) => worded(words, filling, given) : worded(given, holes)) as Say;

/** Texts one after the other, a blank between them. */
export const sentences = (texts: readonly (Text | undefined)[]): Text => {
  const given = texts.filter((t) => t !== undefined);
  const [only] = given;
  if (given.length === 1 && only !== undefined) return only;
  return textOf({ key: '', template: '{all}', holes: { all: { kind: 'list', items: given.map(asPart), joined: 'blank' } } });
};

/** A part alone as a text: a cell of a table, a name as a heading. It has no words of its own, so that no language need know it. */
export const only = (part: Part): Text => textOf({ key: '', template: '{only}', holes: { only: part } });

/**
 * A formula in symbols, with numbers and what has a name among them: symbols`λ = ${0.6} √(F_p² + F_f²)`. Its signs are the same in every
 * language; a reader has his own mark for decimals.
 */
export const symbols = (signs: TemplateStringsArray, ...among: readonly (number | Part | Text)[]): Text =>
  textOf({
    key: '',
    template: signs.map((sign, i) => (i < among.length ? `${sign}{n${i}}` : sign)).join(''),
    holes: Object.fromEntries(among.map((part, i) => [`n${i}`, typeof part === 'number' ? asGiven(part) : asPart(part)])),
  });

/** No words at all. */
export const NOTHING: Text = textOf({ key: '', template: '', holes: {} });

type Entry = Text | ((...given: never[]) => Text);

/** A table of texts: each entry's key is `area.entry`. At most one template an entry. */
export const phrases = <T extends Readonly<Record<string, Entry>>>(area: string, table: T): T =>
  Object.fromEntries(
    Object.entries(table).map(([entry, given]) => {
      const key = `${area}.${entry}`;
      if (typeof given !== 'function') return [entry, keyed(given, key)];
      return [entry, (...holes: never[]) => keyed(given(...holes), key)];
    }),
  ) as T;
