/** The page says nothing that is not in its table of messages: no bare text in its components, so that another language is one more table. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { treeOf } from './source-files.ts';

const files = readdirSync('src/app', { recursive: true, encoding: 'utf8' })
  .filter((f) => f.endsWith('.tsx'))
  .map((f) => `src/app/${f}`);
/** Attributes whose text is read or heard. */
const SPOKEN = new Set(['aria-label', 'title', 'placeholder', 'alt', 'label']);

interface Node {
  readonly type: string;
  readonly value?: unknown;
  readonly name?: { readonly name?: unknown };
}

const isNode = (value: unknown): value is Node => typeof value === 'object' && value !== null && 'type' in value;
const hasWords = (text: unknown): text is string => typeof text === 'string' && /\p{L}{2,}/u.test(text);

const bareTexts = (source: string): readonly string[] => {
  const found: string[] = [];
  const visit = (value: unknown): void => {
    if (Array.isArray(value)) for (const inner of value) visit(inner);
    if (!isNode(value)) return;
    if (value.type === 'JSXText' && hasWords(value.value)) found.push(value.value.trim());
    if (value.type === 'JSXAttribute' && SPOKEN.has(String(value.name?.name)) && isNode(value.value) && hasWords(value.value.value))
      found.push(value.value.value);
    Object.values(value).forEach(visit);
  };
  visit(treeOf({ path: 'component.tsx', text: source }));
  return found;
};

/** The name of the product is the same in every language. */
const NAMES = new Set(['Kerfwright']);

describe('the words of the page', () => {
  it('come from its table: no component says anything by itself', () => {
    expect(files.length).toBeGreaterThan(50);
    const bare = files.flatMap((f) =>
      bareTexts(readFileSync(f, 'utf8'))
        .filter((t) => !NAMES.has(t))
        .map((text) => `${f}: ${text}`),
    );
    expect(bare).toEqual([]);
  });

  it('would be found out if one did', () => {
    expect(bareTexts('export const A = () => <p aria-label="Say this">Hello there</p>;')).toEqual(['Say this', 'Hello there']);
  });
});
