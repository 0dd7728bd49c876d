/** The one table of all the page says: nothing in it may be empty, and every leaf is a text or makes one; its reader has it printed. */
import { describe, expect, it } from 'vitest';
import type { Language } from '../../text/language.ts';
import { printPlain } from '../../text/print/print.ts';
import { HOUSE, type Reader } from '../../text/reader.ts';
import { isText } from '../../text/within.ts';
import { messages } from './messages.ts';
import { wordsFor } from './words-for.ts';

const leaves = (value: unknown, path: string): readonly (readonly [string, unknown])[] =>
  typeof value === 'object' && value !== null && !isText(value)
    ? Object.entries(value).flatMap(([k, v]) => leaves(v, `${path}.${k}`))
    : [[path, value]];

const language: Language = {
  code: 'de',
  templates: {
    'page.jobs.bin': { by: 'jobs', forms: { one: 'Im Papierkorb liegt {jobs}', other: 'Im Papierkorb liegen {jobs}' } },
    'page.field.height': 'Dicke',
    'page.sheet.help': 'Über „{label}“',
  },
  nouns: { job: { '': { one: 'Auftrag', other: 'Aufträge' } } },
  junctions: { and: ' und ', or: ' oder ', comma: ', ' },
  joints: {},
};
const german: Reader = { ...HOUSE, language };

describe('the table of messages', () => {
  const all = leaves(messages, '');

  it('holds texts and makers of texts, and nothing else', () => {
    expect(all.length).toBeGreaterThan(400);
    expect(all.filter(([, value]) => !isText(value) && typeof value !== 'function')).toEqual([]);
  });

  it('has no text of blanks alone', () => {
    const blank = all.filter(([, value]) => isText(value) && printPlain(value).trim() === '');
    expect(blank.map(([path]) => path)).toEqual([]);
  });
});

describe('the words for one reader', () => {
  it('are printed once, in the same places', () => {
    expect(wordsFor(HOUSE)).toBe(wordsFor(HOUSE));
    expect(leaves(wordsFor(HOUSE), '').map(([path]) => path)).toEqual(leaves(messages, '').map(([path]) => path));
  });

  it('take templates, plurals and nouns of his language, and English for what it lacks', () => {
    const { jobs, sheet } = wordsFor(german);
    expect([jobs.bin(1), jobs.bin(2), jobs.title]).toEqual(['Im Papierkorb liegt 1 Auftrag', 'Im Papierkorb liegen 2 Aufträge', 'Jobs']);
    expect(sheet.help(messages.fields.label('height'))).toBe('Über „Dicke“');
  });

  it('begin a label within a sentence with a small letter in English', () => {
    expect(wordsFor(HOUSE).sheet.help(messages.fields.label('height'))).toBe('About thickness');
  });
});
