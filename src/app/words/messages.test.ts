/** The one table of all the page says: nothing in it may be empty, and every leaf is a text or makes one. */
import { describe, expect, it } from 'vitest';
import { messages } from './messages.ts';

const leaves = (value: unknown, path: string): readonly (readonly [string, unknown])[] =>
  typeof value === 'object' && value !== null ? Object.entries(value).flatMap(([k, v]) => leaves(v, `${path}.${k}`)) : [[path, value]];

describe('the table of messages', () => {
  const all = leaves(messages, '');

  it('holds texts and makers of texts, and nothing else', () => {
    expect(all.length).toBeGreaterThan(200);
    expect(all.filter(([, value]) => typeof value !== 'string' && typeof value !== 'function')).toEqual([]);
  });

  it('has no text of blanks alone', () => {
    expect(all.filter(([, value]) => typeof value === 'string' && value !== '' && value.trim() === '').map(([path]) => path)).toEqual([]);
  });
});
