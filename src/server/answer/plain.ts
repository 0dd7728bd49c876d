/** Whether data that came in as JSON is plain: not too deep, not too much, every number a number, no key that reaches into objects. */
import { badField } from './refusal.ts';

const DEEPEST = 40;
const MOST_VALUES = 500_000;
/** Own keys of these names turn into something else as soon as somebody copies the object carelessly. */
const FORBIDDEN = new Set(['__proto__', 'constructor', 'prototype']);

/** Throws a refusal. Goes through the data without calling itself: deep data is what it is looking for. */
export const mustBePlain = (value: unknown, name: string): void => {
  const left: { readonly value: unknown; readonly path: string; readonly depth: number }[] = [{ value, path: '', depth: 0 }];
  let seen = 0;
  for (let item = left.pop(); item !== undefined; item = left.pop()) {
    seen += 1;
    if (seen > MOST_VALUES) throw badField('', `${name} holds more than ${MOST_VALUES} values.`);
    if (typeof item.value === 'number' && !Number.isFinite(item.value))
      throw badField(item.path, `${name}: ${item.path} is too large a number.`);
    if (typeof item.value !== 'object' || item.value === null) continue;
    if (item.depth >= DEEPEST) throw badField(item.path.slice(0, 120), `${name} is nested deeper than ${DEEPEST} levels.`);
    for (const [key, inner] of Object.entries(item.value)) {
      if (FORBIDDEN.has(key)) throw badField(key, `${name}: a key may not be called '${key}'.`);
      left.push({ value: inner, path: item.path === '' ? key : `${item.path}.${key}`, depth: item.depth + 1 });
    }
  }
};
