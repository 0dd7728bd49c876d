/** What is kept of a text is read only where it is whole. */
import { describe, expect, it } from 'vitest';
import { isKeptText } from './kept.ts';
import { contour, count, figured, limit, list, mm, moment, money, name, quantities } from './part.ts';
import { printPlain } from './print/print.ts';
import { say } from './say.ts';
import type { Text } from './text.ts';

const said = say`${{ wire: name('brass') }} ${{ loops: list([contour('L1'), contour('L2')], 'and') }} ${{ size: quantities([1, 2], 'x', 'mm') }} ${{ each: money(27677, 'EUR') }} ${{ within: limit(0.007) }} ${{ pieces: count(2, 'piece') }} ${{ at: moment(0) }} ${{ feed: figured({ value: 5, low: 4, high: 6, unit: 'mm/min' }) }} ${{ inner: say`${{ length: mm(3) }}.` }}`;
const kept = (text: Text): unknown => JSON.parse(JSON.stringify(text));

describe('a text that was kept', () => {
  it('is read as it was written', () => {
    const read = kept(said);
    expect(isKeptText(read) && printPlain(read)).toBe(printPlain(said));
  });

  it.each([
    ['a sentence', 'Yes.'],
    ['a hole that nothing fills', { template: '{wire} holds', holes: {} }],
    ['a part of another kind', { template: '{wire}', holes: { wire: { kind: 'legacy', sentence: 'Yes.' } } }],
    ['a part with more than it has', { template: '{wire}', holes: { wire: { kind: 'name', name: 'brass', more: 1 } } }],
    ['no number', { template: '{n}', holes: { n: { kind: 'count', count: null } } }],
    ['more digits than a number has', { template: '{n}', holes: { n: { kind: 'number', amount: { value: 1, digits: { fixed: 200 } } } } }],
    ['a currency that is none', { template: '{m}', holes: { m: { kind: 'money', minor: 1, currency: 'euro' } } }],
    ['a text within that is none', { template: '{t}', holes: { t: { kind: 'text', text: { template: '{x}', holes: {} } } } }],
    ['more than a line', { template: 'a'.repeat(20_000), holes: {} }],
  ])('is refused: %s', (_, value) => {
    expect(isKeptText(value)).toBe(false);
  });
});
