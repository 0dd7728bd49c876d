/** All that is printed speaks the words of the trade, and a coined word that comes back is seen. */
import { describe, expect, it } from 'vitest';
import { sourceFiles } from './source-files.ts';
import { templatesIn } from './templates.ts';
import { COINED, coinedIn } from './trade-words.ts';

/** Sentences of before: for each word that is refused at least one. */
const BEFORE = [
  'What was told stands below.',
  'Nothing can be said here.',
  'A program is held against this drawing.',
  'Annex of whys',
  '{loop} is begun on a curve.',
  '{loop} is begun from the edge',
  'On the clock',
  'Nobody is needed between start and end.',
  'The machine runs alone.',
  'The way of the wire',
  '{loop} is burned out whole.',
  'the core is burnt away',
  'The hole is eroded.',
  'an energy rung of the machine',
  'Zero of the program',
  'X and Y from the zero of the drawing.',
  'Mended: {what}',
  '{amount} of metal are gone per side',
  'at most {left} left on',
  'There is no material of that name in the house.',
  '{error} are to be expected.',
  '{pieces} in all',
  'This is dear.',
  'per root kilogram',
  'price = cost × (1 + margin)',
  '{height} high',
  'runner-up',
  '{wire} drops out: {why}',
  'core piece that comes out, dots',
  'Ra {finish} is asked for.',
  'Take it out, then run on.',
  'To be asked',
  'For the record',
  'Put away {name}',
  'Taken for granted',
];

describe('the words of the trade', () => {
  it('are those of all that is printed: no sentence has a coined one', () => {
    const { templates } = templatesIn(sourceFiles('.', ['src']).filter((f) => !/\.(test|fixture)\.tsx?$/.test(f.path)));
    expect(templates.length).toBeGreaterThan(2000);
    const coined = templates.flatMap(({ key, template }) => coinedIn(template).map((word) => `${key}: ${word} in '${template}'`));
    expect(coined).toEqual([]);
  });

  it.each(BEFORE)("would be missed in '%s'", (sentence) => {
    expect(coinedIn(sentence)).not.toEqual([]);
  });

  it('have an example for every word that is refused', () => {
    expect(
      COINED.filter(({ use }) => !BEFORE.some((sentence) => coinedIn(sentence).some((found) => found.endsWith(`(${use})`)))).map(
        ({ use }) => use,
      ),
    ).toEqual([]);
  });

  it('are not looked for in the names of holes, nor where the trade says so itself', () => {
    expect(coinedIn('{told} by {nobody}, {rung}: a slug that drops out')).toEqual([]);
    expect(coinedIn('{sheets} in one stack, {high} high with {gap} between sheets')).toEqual([]);
  });
});
