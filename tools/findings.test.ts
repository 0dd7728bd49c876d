/** The findings that layers can state: each has its entry in the manual and its place in docs/findings, and a test that provokes it. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { chapters, manualOf } from '../src/job/handout/manual-of-all.ts';
import type { Catalogue } from '../src/text/finding.ts';
import { stretchesOf } from '../src/text/manual.ts';
import { manualPages } from './manual-pages.ts';
import { unprovoked } from './provoked.ts';
import { modulesAt, sourceFiles } from './source-files.ts';

const modules = await modulesAt<{ readonly catalogue: Catalogue }>(
  sourceFiles('.', ['src']).flatMap(({ path }) => (path.endsWith('/findings.ts') ? [path] : [])),
);
const codes = Object.values(modules).flatMap((module) => Object.keys(module.catalogue));
const entries = chapters.flatMap(({ manual }) => Object.entries(manual).map(([code, entry]) => ({ code, ...entry })));

/** Words that the trade does not use so; its own stand in docs/GLOSSARY.md. */
const COINED =
  /\btold\b|held against|begun from|on the clock|o'clock|\b(some|no)body\b|burnt (out|away)|\beroded\b|\bmended\b|to be expected|root kilogram|runner-up|drops out|way in\b|way of the wire|what to do/i;

/** What is wrong with the words of an entry. */
const faults = ({ title, texts }: { readonly title: string; readonly texts: readonly string[] }): readonly string[] => [
  ...(/[.:]$/.test(title) || title.length > 90 ? ['the title is no heading'] : []),
  ...texts.filter((t) => !/^[\p{Lu}"`0-9µ][^\n]*[.?]$/u.test(t)).map((t) => `no paragraph of whole sentences: ${t}`),
  ...texts.filter((t) => t.startsWith(title)).map((t) => `says the title again: ${t}`),
  ...texts.filter((t) => stretchesOf(t).some((s) => !s.typed && /[<>*_[\]#`]/.test(s.words)) || t.split('`').length % 2 === 0),
  ...[title, ...texts].flatMap((t) => COINED.exec(t)?.[0] ?? []),
];

describe('the catalogue of findings', () => {
  it('has every layer in the list of chapters, with its own codes', () => {
    expect(chapters.map((c) => `src/${c.folder}/findings.ts`).toSorted()).toEqual(Object.keys(modules).toSorted());
    for (const { folder, catalogue } of chapters) expect(catalogue).toBe(modules[`src/${folder}/findings.ts`]?.catalogue);
  });

  it('gives each code once and in plain words', () => {
    expect(codes.length).toBeGreaterThan(250);
    expect(new Set(codes).size).toBe(codes.length);
    for (const code of codes) expect(code).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
  });

  it('has a manual that explains its codes and no others', () => {
    for (const { catalogue, manual } of chapters) expect(Object.keys(manual)).toEqual(Object.keys(catalogue));
    expect(manualOf('no-such-code')).toBeUndefined();
  });

  it('calls no two findings the same', () => {
    const titles = entries.map((e) => e.title);
    expect(titles.filter((title, i) => titles.indexOf(title) !== i)).toEqual([]);
  });

  it.each(entries)('words $code as heading and paragraphs, in the words of the trade', ({ title, meaning, matters, remedy }) => {
    expect(faults({ title, texts: [meaning, ...(matters === undefined ? [] : [matters]), remedy] })).toEqual([]);
  });

  it('would find a title that runs on into its text, and coined words', () => {
    const found = faults({ title: 'The block is thin.', texts: ['The block is thin. It bends', 'Set <loop> as told.', 'Mind the `kerf.'] });
    expect(found).toHaveLength(6);
  });
});

describe('the pages of docs/findings', () => {
  const written = Object.fromEntries(readdirSync('docs/findings').map((f) => [f, readFileSync(`docs/findings/${f}`, 'utf8')]));

  it('are as `npm run manual` writes them today', () => {
    expect(written).toEqual(manualPages(chapters));
  });

  it('have under the anchor of each code the title of the catalogue', () => {
    const headings = Object.values(written).flatMap((text) => [...text.matchAll(/<a id="(.+)"><\/a>\n#+ (.+)\n/g)]);
    expect(headings.length).toBe(codes.length);
    for (const [, code, title] of headings) expect(title).toBe(manualOf(code as string)?.title);
  });

  it('have no room for a layer that is not on the list', () => {
    expect(() => manualPages([{ folder: 'moon', catalogue: {}, manual: {} }])).toThrow('no page for moon');
  });
});

describe('the tests of findings', () => {
  it('provoke every one of them', () => {
    const tests = sourceFiles('.', ['src', 'test']).filter((f) => f.path.endsWith('.test.ts'));
    expect(unprovoked(codes, tests)).toEqual([]);
  });

  it('would be found to provoke nothing where they only name a code, or say that it does not come', () => {
    const text = "expect(codes).toContain('a'); expect(codes).not.toContain('b'); const made = [find('c', 'A sentence.')]; // 'd'";
    expect(unprovoked(['a', 'b', 'c', 'd'], [{ path: 'src/x.test.ts', text }])).toEqual(['b', 'c', 'd']);
  });
});
