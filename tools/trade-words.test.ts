/** The page and its server speak the words of the trade: none of their sentences has a coined one. */
import { describe, expect, it } from 'vitest';
import { sourceFiles } from './source-files.ts';
import { templatesIn } from './templates.ts';
import { COINED, coinedIn } from './trade-words.ts';

/** Folders whose sentences are held to it. */
const HELD = ['src/app', 'src/server', 'src/job/files'];

/** A sentence of before for every entry of the list. */
const BEFORE = [
  'Nothing can be said here.',
  'A program is held against this drawing.',
  'Annex of whys',
  '{loop} is begun from the edge',
  'Nobody is needed between start and end.',
  'The way of the wire',
  'the core is burnt away',
  'The hole is eroded.',
  'an energy rung of the machine',
  'Zero of the program',
  'at most {left} left on',
  'There is no material of that name in the house.',
  'per root kilogram',
  'price = cost × (1 + margin)',
  '{height} high',
  'core piece that comes out, dots',
  'To be asked',
  'Put away {name}',
  'Taken for granted',
];

describe('the words of the trade', () => {
  it('are those of page and server: no sentence has a coined one', () => {
    const files = sourceFiles('.', HELD).filter((f) => !/\.(test|fixture)\.tsx?$/.test(f.path));
    const { templates } = templatesIn(files);
    expect(templates.length).toBeGreaterThan(600);
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
});
