/** Nothing is promised to the compiler that nobody looked at, and the tool sees where something is. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { isTest, sourceFiles } from './source-files.ts';
import { conditionalSpreads, isMarked, unlookedAt } from './tidy-promises.ts';

const files = sourceFiles('.', ['src']).filter(({ path }) => !isTest(path));

describe('the source', () => {
  it("has '!' only where plain numbers are read out of long arrays", () => {
    expect(unlookedAt(files)).toEqual([]);
  });

  it('writes fields that may be missing as they are', () => {
    expect(conditionalSpreads(files)).toEqual([]);
  });

  it("lets the linter pass over '!' in marked files alone", () => {
    const { overrides } = JSON.parse(readFileSync('biome.json', 'utf8')) as { overrides: { includes: string[] }[] };
    const named = overrides.flatMap(({ includes }) => includes).filter((path) => path.startsWith('src/') && !path.includes('*'));
    expect(named.toSorted()).toEqual(files.filter(isMarked).map(({ path }) => path));
  });
});

describe('the tool', () => {
  const file = (text: string) => [{ path: 'src/planted.ts', text }];

  it("sees '!' in a file without the mark, and a mark without '!'", () => {
    expect(unlookedAt(file('/** Purpose. */\nconst a = b[0]!;\nconst c = !d;'))).toEqual([
      { file: 'src/planted.ts', line: 2, what: "'!' where nobody looked whether it is there" },
    ]);
    expect(unlookedAt(file('/** Plain numbers: `!` stands where one is read. */\nconst a = b[0]!;'))).toEqual([]);
    expect(unlookedAt(file('/** Purpose. */\n/** `!` stands where one is read. */\nconst a = b[0]!;'))).toHaveLength(1);
    expect(unlookedAt(file('/** Plain numbers: `!` stands where one is read. */\nconst a = b[0];'))).toHaveLength(1);
  });

  it('sees a spread of something or nothing, and no other', () => {
    for (const spread of ['(a === undefined ? {} : { a })', '(a ? ({ a } as const) : {})', '(a && { a })'])
      expect(conditionalSpreads(file(`/** P. */\nconst x = { b, ...${spread} };`)).map(({ line }) => line)).toEqual([2]);
    for (const spread of ['rest', '(a ? { a } : { b })', '(a ?? b)', '(a && recordOf(a))'])
      expect(conditionalSpreads(file(`/** P. */\nconst x = { b, ...${spread} };`))).toEqual([]);
    expect(conditionalSpreads(file('/** P. */\nconst x = [b, ...(a ? [] : [a])];'))).toEqual([]);
  });
});
