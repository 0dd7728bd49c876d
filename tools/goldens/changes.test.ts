/** What accepting tells of files that changed, and which pictures it leaves for a look. */
import { describe, expect, it } from 'vitest';
import { changesOf, changeText } from './changes.ts';
import { picturesToSee } from './pictures.ts';
import { columns, fingerprint } from './tables.ts';

const accepted = { 'a.answer.txt': 'Yes.\none\ntwo\ntwo\n', 'a.nc': 'M02\n', 'a.stray.txt': 'x\n', 'a.proof.txt': 'right\n' };

describe('changes of goldens', () => {
  it('are told file by file with the lines that came and went; what only moved is neither', () => {
    const now = { 'a.answer.txt': 'No.\ntwo\none\n', 'a.nc': 'M02\n', 'a.proof.txt': 'right\n', 'a.sizes.txt': 'one\n' };
    expect(changesOf(accepted, now)).toEqual([
      { file: 'a.answer.txt', kind: 'changed', added: ['No.'], removed: ['Yes.', 'two'] },
      { file: 'a.sizes.txt', kind: 'new', added: ['one'], removed: [] },
      { file: 'a.stray.txt', kind: 'gone', added: [], removed: ['x'] },
    ]);
    expect(changesOf(accepted, now).map(changeText)).toEqual([
      '  a.answer.txt: changed, +1 -2\n      - Yes.\n      - two\n      + No.',
      '  a.sizes.txt: new, +1 -0',
      '  a.stray.txt: gone, +0 -1',
    ]);
  });

  it('leave lines that only moved, or an end that is missing, as changes of their own', () => {
    expect(changesOf({ a: 'one\ntwo\n' }, { a: 'two\none\n' })).toEqual([{ file: 'a', kind: 'changed', added: [], removed: [] }]);
    expect(changesOf({ a: 'one\n' }, { a: 'one' })).toHaveLength(1);
    expect(changesOf(accepted, { ...accepted })).toEqual([]);
  });

  it('show a picture only where its table changed', () => {
    const pictures = { 'a.proof.svg': '<svg/>', 'a.edges.svg': '<svg/>' };
    const changes = changesOf(accepted, { ...accepted, 'a.proof.txt': 'out of tolerance\n' });
    expect(picturesToSee(changes, pictures)).toEqual({ 'a.proof.svg': '<svg/>' });
  });
});

describe('tables of pictures', () => {
  it('stand in columns, and a fingerprint tells any other picture', () => {
    expect(
      columns(
        'Cuts',
        ['Setting', 'mm'],
        [
          ['1', '10.5'],
          ['12', '9'],
        ],
      ),
    ).toEqual(['', 'Cuts', '  Setting    mm', '  1        10.5', '  12          9']);
    expect(columns('Nothing', ['Setting'], [])).toEqual([]);
    expect(fingerprint('a.svg', '<svg/>')).toMatch(/^a\.svg: 6 characters in 1 lines, SHA-256 [0-9a-f]{64}$/);
    expect(fingerprint('a.svg', '<svg/>')).not.toBe(fingerprint('a.svg', '<svg />'));
  });
});
