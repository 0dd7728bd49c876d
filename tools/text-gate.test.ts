/** Numbers are written out by the printer alone and sentences are read by nobody; the gate sees where it is otherwise. */
import { describe, expect, it } from 'vitest';
import { isTest, sourceFiles } from './source-files.ts';
import { idle, NUMBERS, readSentences, SENTENCES, writtenNumbers } from './text-gate.ts';

const files = sourceFiles('.', ['src']).filter(({ path }) => !isTest(path) && !path.endsWith('.d.ts'));

describe('the text gate', () => {
  it('lets numbers be written out by the printer and the writers of files alone', () => {
    expect(files.length).toBeGreaterThan(500);
    expect(writtenNumbers(files)).toEqual([]);
  });

  it('lets nobody read what is said', () => {
    expect(readSentences(files)).toEqual([]);
  });

  it('exempts nobody who needs it no more', () => {
    expect(idle(files, NUMBERS, writtenNumbers)).toEqual([]);
    expect(idle(files, SENTENCES, readSentences)).toEqual([]);
  });
});

const planted = (code: string, path = 'src/plan/planted.ts') => [{ path, text: `/** Planted. */\n${code}` }];

describe('the tool that finds written numbers', () => {
  it.each([
    'const a = x.toFixed(2);',
    'const a = x.toPrecision(3);',
    'const a = x.y?.toLocaleString();',
    "const a = new Intl.NumberFormat('de').format(x);",
    // biome-ignore lint/suspicious/noTemplateCurlyInString: planted code
    'const a = `${Number(x.toFixed(2))} mm`;',
    'const a = String(Number(x.toFixed(2)));',
    'const a = Number(x.toFixed(2)).toString();',
  ])('sees %s', (code) => {
    expect(writtenNumbers(planted(code)).map((f) => f.line)).toEqual([2]);
  });

  it.each(['const a = Number(x.toFixed(2));', 'const a = own.Intl;', 'const a = x.toFixed;'])('does not mind %s', (code) => {
    expect(writtenNumbers(planted(code))).toEqual([]);
  });

  it('does not look where numbers are printed', () => {
    expect(writtenNumbers(planted('const a = x.toFixed(2);', 'src/text/print/planted.ts'))).toEqual([]);
  });
});

describe('the tool that finds whoever reads a sentence', () => {
  it.each([
    "const a = finding.text.replace('a', 'b');",
    "const a = view.sentence.includes('Yes');",
    'const a = f.remedy?.trim();',
    'const a = (f.done as string).toLowerCase();',
    'const a = /slug/.test(stop.comment);',
    'const a = /^Yes/.exec(sentence);',
    "const a = printPlain(t).split(' ');",
    'const a = comment.toUpperCase();',
  ])('sees %s', (code) => {
    expect(readSentences(planted(code)).map((f) => f.line)).toEqual([2]);
  });

  it.each(["const a = text.split(' ');", 'const a = finding.text;', "const a = list.includes('a');"])('does not mind %s', (code) => {
    expect(readSentences(planted(code))).toEqual([]);
  });

  it('does not look where programs are read', () => {
    expect(readSentences(planted("const a = stop.comment.includes('SLUG');", 'src/nc/read/planted.ts'))).toEqual([]);
  });
});
