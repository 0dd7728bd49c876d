/** What lists and maps are relied on for is looked at: what is missing is an error, never a wrong number. */
import { describe, expect, it } from 'vitest';
import { certain, firstItem, itemAt, itemOf, lastItem, sideBySide } from './sequence.ts';

describe('what is relied on', () => {
  it('is handed back where it is there, a zero and an empty text too', () => {
    expect(itemAt([4, 0, 6], 1)).toBe(0);
    expect(itemAt(new Float64Array([4, 5]), 1)).toBe(5);
    expect([firstItem(['', 'b']), lastItem(['a', 'b'])]).toEqual(['', 'b']);
    expect(itemOf(new Map([['a', 0]]), 'a')).toBe(0);
    expect(certain(0, 'a number')).toBe(0);
  });

  it('is told by where it was looked for where it is not there', () => {
    expect(() => itemAt([4, 5], 2)).toThrow('nothing stands at 2 in a list of 2');
    expect(() => itemAt([4, 5], -1)).toThrow('nothing stands at -1 in a list of 2');
    expect(() => itemAt([4, 5], Number.NaN)).toThrow('nothing stands at NaN in a list of 2');
    expect(() => firstItem([])).toThrow('nothing stands at 0 in a list of 0');
    expect(() => lastItem([])).toThrow('nothing stands at -1 in a list of 0');
    expect(() => itemOf(new Map([['a', 1]]), 'b')).toThrow('nothing is held under b');
    expect(() => certain(undefined, 'a wire')).toThrow('relied on, and not so: a wire');
  });

  it('is two lists of one length where they are walked side by side', () => {
    expect(sideBySide([1, 2], ['a', 'b'])).toEqual([
      [1, 'a'],
      [2, 'b'],
    ]);
    expect(() => sideBySide([1, 2], ['a'])).toThrow('2 things cannot stand beside 1');
    expect(() => sideBySide([1], ['a', 'b'])).toThrow('1 things cannot stand beside 2');
  });
});
