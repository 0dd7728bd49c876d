/** Whether data that came in as JSON is plain: not too deep, not too much, every number a number, no key that reaches into objects. */
import { count, name } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { badField } from './refusal.ts';

const DEEPEST = 40;
const MOST_VALUES = 500_000;
/** Own keys of these names turn into something else as soon as somebody copies the object carelessly. */
const FORBIDDEN = new Set(['__proto__', 'constructor', 'prototype']);

const words = phrases('server-data', {
  tooMany: (what: Text) => say`${{ what }} has more than ${{ most: count(MOST_VALUES) }} values.`,
  tooLarge: (what: Text, path: string) => say`${{ what }}: the number ${{ field: name(path) }} is too large.`,
  tooDeep: (what: Text) => say`${{ what }} is nested deeper than ${{ most: count(DEEPEST) }} levels.`,
  key: (what: Text, key: string) => say`${{ what }}: a key may not be called '${{ key: name(key) }}'.`,
});

/** Throws a refusal. Goes through the data without calling itself: deep data is what it is looking for. */
export const mustBePlain = (value: unknown, what: Text): void => {
  const left: { readonly value: unknown; readonly path: string; readonly depth: number }[] = [{ value, path: '', depth: 0 }];
  let seen = 0;
  for (let item = left.pop(); item !== undefined; item = left.pop()) {
    seen += 1;
    if (seen > MOST_VALUES) throw badField('', words.tooMany(what));
    if (typeof item.value === 'number' && !Number.isFinite(item.value)) throw badField(item.path, words.tooLarge(what, item.path));
    if (typeof item.value !== 'object' || item.value === null) continue;
    if (item.depth >= DEEPEST) throw badField(item.path.slice(0, 120), words.tooDeep(what));
    for (const [key, inner] of Object.entries(item.value)) {
      if (FORBIDDEN.has(key)) throw badField(key, words.key(what, key));
      left.push({ value: inner, path: item.path === '' ? key : `${item.path}.${key}`, depth: item.depth + 1 });
    }
  }
};
