/** Nothing that the page calls for its effect bears the name of what only makes a text. */
import { describe, expect, it } from 'vitest';
import { namesakes } from './make-texts.ts';
import { sourceFiles } from './source-files.ts';

describe('functions that only make a text', () => {
  it('have their names for themselves', () => {
    expect(namesakes(sourceFiles('.', ['src']))).toEqual([]);
  });

  it.each([
    'const say = () => show();',
    'const done = (say: () => void): void => say();',
    'function phrases() {}',
    'const f = ({ symbols }) => symbols();',
    'const { tell: say } = speaker;',
    'const [first, sentences = none] = all;',
  ])('would be seen to share them in %s', (text) => {
    expect(namesakes([{ path: 'src/planted.ts', text }])).toHaveLength(1);
    expect(namesakes([{ path: 'src/text/say.ts', text }])).toEqual([]);
  });
});
