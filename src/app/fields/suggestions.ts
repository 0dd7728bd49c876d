/** What a field offers to choose from while one types: materials and wires by any part of their name, and what stands for nothing said. */
import type { Words } from '../words/words-for.ts';
import { type FieldSpec, noneOf } from './fields.ts';
import type { Lists } from './lists.ts';

export interface Suggestion {
  readonly value: unknown;
  readonly text: string;
  readonly about: string;
}

export const suggestionsFor = (field: FieldSpec, typed: string, lists: Lists, words: Words): readonly Suggestion[] => {
  const said = noneOf(field, words);
  const none: readonly Suggestion[] = said === undefined ? [] : [{ value: undefined, text: said, about: '' }];
  if (field.path === 'passes') return typed.trim() === '' ? [...none, ...COUNTS] : [];
  if (field.kind !== 'material' && field.kind !== 'wire') return [];
  const rows = field.kind === 'material' ? lists.materials : lists.wires;
  const parts = typed
    .toLowerCase()
    .split(/\s+/)
    .filter((w) => w !== '');
  const found = rows
    .filter((r) => parts.every((w) => `${r.id} ${r.name}`.toLowerCase().includes(w)))
    .map((r): Suggestion => ({ value: r.id, text: r.name, about: r.about }));
  return [...(parts.length === 0 ? none : []), ...found];
};

const COUNTS: readonly Suggestion[] = [1, 2, 3, 4, 5].map((n) => ({ value: n, text: String(n), about: '' }));
