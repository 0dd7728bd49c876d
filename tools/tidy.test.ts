/** The house is tidy, and the tidy tool sees what is not. */
import { existsSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { sourceFiles } from './source-files.ts';
import { leftBehind, longFiles, longFunctions, namedInVain, sameTestNames, withoutPurpose } from './tidy.ts';

const files = sourceFiles('.', ['src', 'tools', 'test']);
const folders = (readdirSync('src', { recursive: true, encoding: 'utf8' }) as string[])
  .map((f) => join('src', f))
  .filter((f) => statSync(f).isDirectory());

describe('the house', () => {
  it('keeps every file and every function within the walls', () => {
    expect([...longFiles(files), ...longFunctions(files)]).toEqual([]);
  });

  it('says at the top of every file what it is for', () => {
    expect(withoutPurpose(files)).toEqual([]);
  });

  it('leaves no unfinished work behind and nothing restless in the core', () => {
    expect(leftBehind(files)).toEqual([]);
  });

  it('names every test once', () => {
    expect(sameTestNames(files)).toEqual([]);
  });

  it.each(folders)('has a sign of at most 15 lines on the door of %s', (folder) => {
    const sign = join(folder, 'README.md');
    expect(existsSync(sign), `${sign} is missing`).toBe(true);
    const text = readFileSync(sign, 'utf8');
    expect(text.trimEnd().split('\n').length).toBeLessThanOrEqual(15);
    expect(namedInVain({ path: sign.replaceAll('\\', '/'), text }, existsSync)).toEqual([]);
  });
});

describe('the tidy tool', () => {
  const body = (lines: number): string => `{\n${'  x();\n'.repeat(lines)}}`;
  const file = (text: string): { path: string; text: string }[] => [{ path: 'src/planted.ts', text }];

  it('sees a file and a function over the wall', () => {
    expect(longFiles(file('x;\n'.repeat(401)))).toHaveLength(1);
    expect(longFiles(file('x;\n'.repeat(400)))).toHaveLength(0);
    expect(longFunctions(file(`const f = () => ${body(60)};`))).toHaveLength(1);
    expect(longFunctions(file(`const f = () => ${body(58)};`))).toHaveLength(0);
    expect(longFunctions(file(`describe('a', () => ${body(80)});`))).toHaveLength(0);
  });

  it('sees a file without a purpose, words left behind and restless calls', () => {
    expect(withoutPurpose(file('const x = 1;'))).toHaveLength(1);
    expect(leftBehind(file(`// ${'TO'}DO later`))).toHaveLength(1);
    expect(leftBehind(file('const x = Math.random();'))).toHaveLength(1);
  });

  it('sees a file and a folder that a sign names and that are not there', () => {
    const sign = (text: string) => namedInVain({ path: 'src/plan/README.md', text }, existsSync);
    expect(sign('see `plan.ts`, `cut/plan-cut.ts`, `physics/cut/`, `docs/proof.md`, `*.checks.ts`, `plan`')).toEqual([]);
    expect(sign('see\n`gone.ts` and `gone/`').map((u) => u.line)).toEqual([2, 2]);
  });

  it('sees a test name that stands twice', () => {
    const twice = [{ path: 'a.test.ts', text: "describe('a', () => { it('b', f); it('b', f); it('c', f); });" }];
    expect(sameTestNames(twice)).toHaveLength(1);
  });
});
