/** All that is said is said in the words of the trade, one for each thing, and an old word that comes back is seen. */
import { describe, expect, it } from 'vitest';
import { oldWords } from './old-words.ts';
import { sourceFiles } from './source-files.ts';
import { templatesIn } from './templates.ts';

/** One sentence for each old word, as it was once said. */
const PLANTED = [
  'What was told stands below.',
  'The program is held against the drawing.',
  '{loop} is begun on a curve.',
  'On the clock',
  'It runs at night, when nobody is there.',
  'The machine runs alone.',
  'The way of the wire',
  '{loop} is burned out whole.',
  'Start holes are eroded.',
  'energy rung of {pass}',
  'X and Y from the zero of the drawing.',
  'Mended: {what}',
  '{amount} of metal are gone per side',
  'The wires of the house.',
  '{error} are to be expected.',
  '{pieces} in all',
  'This is dear.',
  'µm per root kilogram',
  'runner-up',
  '{wire} drops out: {why}',
  'Ra {finish} is asked for.',
  'Take it out, then run on.',
  'For the record',
];

describe('the words of all that is said', () => {
  const { templates } = templatesIn(sourceFiles('.', ['src']).filter((f) => !/\.(test|fixture)\.tsx?$/.test(f.path)));

  it('are those of the trade', () => {
    expect(oldWords(templates)).toEqual([]);
  });

  it.each(PLANTED)('would be found in: %s', (template) => {
    expect(oldWords([{ key: 'planted', template }])).toHaveLength(1);
  });

  it('are not looked for in the names of holes', () => {
    expect(oldWords([{ key: 'planted', template: '{told} by {nobody}, {rung}: a slug that drops out' }])).toEqual([]);
  });
});
