/** Every sentence that is said as data has a key of its own, and the tool that lists them sees one that has none. */
import { describe, expect, it } from 'vitest';
import { sourceFiles } from './source-files.ts';
import { templatesIn } from './templates.ts';

/** Written so that this file holds no placeholder of its own. */
const hole = (inner: string): string => `$${'{'}${inner}}`;

const PLANTED: readonly (readonly [what: string, text: string])[] = [
  ['a sentence outside of a finding and of a table', 'const a = say`Alone.`;'],
  ['a hole without a name', `find('x', say\`${hole('part')} is open.\`);`],
  ['a hole of two names', `find('x', say\`${hole('{ a: p, b: q }')} is open.\`);`],
  ['two sentences under one key', "find('x', say`One.`); find('x', say`Two.`);"],
  ['two sentences in one entry', "phrases('p', { a: (n) => (n === 1 ? say`One.` : say`Many.`) });"],
];

const listed = (text: string) => templatesIn([{ path: 'src/planted.ts', text }]);

describe('sentences that are said as data', () => {
  it('have each a key and named holes', () => {
    const { templates, faults } = templatesIn(sourceFiles('.', ['src']).filter((f) => !/\.(test|fixture)\.tsx?$/.test(f.path)));
    expect(faults).toEqual([]);
    expect(templates.length).toBeGreaterThan(120);
  });

  it.each(PLANTED)('%s is seen', (_, text) => {
    expect(listed(text).faults).toHaveLength(1);
  });

  it('take their key from the finding, the table or the tag', () => {
    const text = `
      find('open', say\`{nothing}\`.length, 1);
      find('open-chain', say\`\${{ loop: x }} is open.\`, { done: say\`Left.\`, remedy: remedy(say\`Close it.\`, { field: 'join' }) });
      say('a/b')\`Here.\`;
      phrases('area', { entry: say\`Static.\`, made: (x) => say\`Made of \${{ x }}.\` });`;
    expect(listed(text).templates.map((t) => [t.key, t.template])).toEqual([
      ['open', '{nothing}'],
      ['open-chain', '{loop} is open.'],
      ['open-chain.done', 'Left.'],
      ['open-chain.remedy', 'Close it.'],
      ['a/b', 'Here.'],
      ['area.entry', 'Static.'],
      ['area.made', 'Made of {x}.'],
    ]);
  });
});
