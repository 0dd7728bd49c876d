/** Every finding that a layer can state has its page, and every page belongs to a finding. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Catalogue } from '../src/text/finding.ts';

const catalogues = import.meta.glob<{ catalogue: Catalogue }>('../src/**/findings.ts', { eager: true });
const codes = Object.entries(catalogues).flatMap(([file, module]) => Object.keys(module.catalogue).map((code) => ({ code, file })));
const pages = readdirSync('docs/findings')
  .filter((f) => f.endsWith('.md') && f !== 'README.md')
  .map((f) => f.slice(0, -3));

describe('the catalogue of findings', () => {
  it('has a page for every code and a code for every page', () => {
    expect(pages.toSorted()).toEqual(codes.map((c) => c.code).toSorted());
  });

  it('gives each code once and in plain words', () => {
    expect(new Set(codes.map((c) => c.code)).size).toBe(codes.length);
    for (const { code } of codes) expect(code).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
  });

  it.each(codes)('has a page worth reading for $code', ({ code }) => {
    const page = readFileSync(`docs/findings/${code}.md`, 'utf8').trim();
    expect(page.startsWith('# ')).toBe(true);
    expect(page.split('\n').length).toBeGreaterThanOrEqual(4);
    expect(page.length).toBeGreaterThan(150);
  });
});
