/** Every check row of the house is held against what its source printed, and the runner sees what is planted. */
import { describe, expect, it } from 'vitest';
import type { CheckRow } from '../src/quantity/check.ts';
import { NOTHING } from '../src/text/say.ts';
import { type CheckCollection, collectChecks, judgeChecks, judgeRow, numberIn } from '../tools/checks.ts';

/** Rows there have been, all of which run code of the product: raise it when rows are added, never lower it. */
const leastRows = 1063;

const good: CheckRow = {
  id: 'X-1',
  source: 'book',
  place: 'p. 1',
  how: 'printed and seen',
  question: 'one and one',
  value: '2.0',
  ours: () => 2.04,
};
const collection = (rows: readonly CheckRow[], more: Partial<CheckCollection> = {}): CheckCollection => ({
  rows,
  sources: ['book'],
  named: [],
  fromMemory: [],
  formulas: [],
  checkTexts: [],
  runs: new Map(rows.map((r) => [r.id, ['src/plan/plan.ts#plan']])),
  product: new Set(['src/plan/plan.ts#plan']),
  ...more,
});
const kinds = (c: CheckCollection, floor = 0): readonly string[] => judgeChecks(c, floor).map((p) => p.kind);

describe('check rows of the house', () => {
  it('agree with what others printed, name sources that are there, and never become fewer', async () => {
    const problems = judgeChecks(await collectChecks(), leastRows);
    if (problems.length > 0) console.error(problems.map((p) => `${p.kind.padEnd(18)} ${p.sentence}`).join('\n'));
    expect(problems).toEqual([]);
  });
});

describe('the judge of check rows', () => {
  const formula = { name: NOTHING, text: NOTHING, source: 'book', unit: '1', inputs: {}, compute: () => 1 } as const;
  it.each<[string, CheckCollection]>([
    ['value', collection([{ ...good, ours: () => 2.06 }])],
    ['value', collection([{ ...good, ours: () => Number.NaN }])],
    ['value', collection([{ ...good, value: 'yes', ours: () => 'no' }])],
    [
      'value',
      collection([
        {
          ...good,
          ours: () => {
            throw new Error('not today');
          },
        },
      ]),
    ],
    ['id twice', collection([good, good])],
    ['no such source', collection([{ ...good, source: 'lost' }], { sources: [] })],
    ['source unused', collection([good], { sources: ['book', 'unread'] })],
    ['no reason', collection([{ ...good, wider: { tolerance: 1, reason: ' ' } }])],
    ['formula unchecked', collection([good], { formulas: [{ identifier: 'f', file: 'f.ts', formula }] })],
    ['no reason', collection([{ ...good, limits: { low: 2, high: 3, reason: '' } }])],
    ['value', collection([{ ...good, limits: { low: 1, high: 2, reason: 'a range' } }])],
    ['limits', collection([{ ...good, limits: { low: 2.01, high: 3, reason: 'a range' } }])],
    ['not of the product', collection([good], { runs: new Map() })],
    ['not of the product', collection([good], { product: new Set(['src/plan/plan.ts#other']) })],
    ['remembered', collection([good], { fromMemory: ['iso-9013'] })],
    ['common practice', collection([{ ...good, id: 'CP-1' }])],
  ])('finds a planted fault: %s', (kind, planted) => {
    expect(kinds(planted)).toEqual([kind]);
  });

  it('finds that rows have gone', () => {
    expect(kinds(collection([good]), 2)).toEqual(['too few rows']);
  });

  it('takes half of the last printed digit as tolerance', () => {
    expect(numberIn('0.350')).toEqual({ value: 0.35, half: 0.0005 });
    expect(numberIn('−12')).toEqual({ value: -12, half: 0.5 });
    expect(numberIn('2…18')).toBeUndefined();
    expect(judgeRow(good).holds).toBe(true);
    expect(judgeRow({ ...good, value: '2.04', ours: () => 2.0451 }).holds).toBe(false);
  });
});
