/** A pass table that the shop entered beats the model, and is refused where it cannot be. */

import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { deviationOf } from '../../quantity/figure.ts';
import { saidBy } from '../../quantity/source.ts';
import { mapFilled } from '../../sequence/sequence.ts';
import { sentenceOf } from '../../text/finding.fixture.ts';
import { conditions } from '../cases.fixture.ts';
import { ladderRows } from './pass-rows.ts';
import { fittingTables, type PassTable, passTableSchema, tableRows } from './pass-table.ts';

const table: PassTable = passTableSchema.parse({
  wire: 'brass-0.25',
  material: 'd2',
  height: { low: 30, high: 60 },
  passes: [
    { offset: 0.19, feed: 3.1, ra: 2.9, gap: 0.036 },
    { offset: 0.15, feed: 7, ra: 1.4, gap: 0.016 },
    { offset: 0.134, feed: 6, ra: 0.75 },
  ],
});
const rows = (t: PassTable) => {
  const answer = tableRows(conditions(), t);
  if (answer.kind !== 'rows') throw new Error(sentenceOf(answer.finding));
  return answer.rows;
};
const withPass = (index: number, more: Partial<PassTable['passes'][number]>): PassTable => ({
  ...table,
  passes: mapFilled(table.passes, (p, i) => (i === index ? { ...p, ...more } : p)),
});

describe("the shop's own pass table", () => {
  it('is what it says, and its last gap is what the last offset leaves', () => {
    const [rough, ...skims] = rows(table);
    const [first, last] = [there(skims[0]), there(skims[1])];
    expect(rough.feed.value).toBe(3.1);
    expect(deviationOf(rough.feed)).toBeCloseTo(0.31, 12);
    expect(rough.feed.source).toBe(saidBy.passTable);
    expect(rough.stock.value).toBeCloseTo(0.029, 12);
    expect(first.taken.value).toBeCloseTo(0.02, 12);
    expect(last.gap.value).toBeCloseTo(0.009, 12);
    expect(deviationOf(last.gap)).toBeCloseTo(0.001, 6);
    expect(last.stock.value).toBeCloseTo(0, 12);
    expect(last.taken.value).toBeCloseTo(0.009, 12);
    expect(last.ra.value).toBe(0.75);
    expect(rough.areaRate.value).toBeCloseTo(155, 9);
  });

  it('has the same keys as the model gives, and takes from it what was not entered', () => {
    const modelled = ladderRows(conditions(), [1, 0.5, 0.25]);
    expect(rows(table).map((r) => Object.values(r).map((f) => f.key ?? f))).toEqual(
      modelled.map((r) => Object.keys(rows(table)[0]).map((k) => r[k as 'gap'].key ?? r[k as 'gap'])),
    );
    expect(rows(withPass(0, { gap: undefined }))[0].gap.value).toBeCloseTo(0.037, 12);
    expect(there(rows(table)[1]).formError.value).toBeCloseTo(7, 12);
  });

  it.each([
    ['no spark gap', withPass(2, { offset: 0.12 })],
    ['too near', withPass(0, { gap: 0.08 })],
    ['removes nothing', withPass(1, { offset: 0.19 })],
  ])('is refused where a pass leaves %s', (words, wrong) => {
    const answer = tableRows(conditions(), wrong);
    if (answer.kind !== 'inconsistent') throw new Error(answer.kind);
    expect(answer.finding).toMatchObject({ code: 'pass-table-inconsistent', severity: 'refusal' });
    expect(sentenceOf(answer.finding)).toContain(words);
  });

  it('is taken only for its own wire, material, height, flush and machine', () => {
    const fits = (c = conditions(), t = table): number => fittingTables([t], c).length;
    expect(fits()).toBe(1);
    expect(fits(conditions({ height: 61 }))).toBe(0);
    expect(fits(conditions({ material: 'a2' }))).toBe(0);
    expect(fits(conditions({ flush: 'lifted' }))).toBe(0);
    expect(fits({ ...conditions(), wire: { ...conditions().wire, id: 'other' } })).toBe(0);
    expect(fits(conditions(), { ...table, machine: 'another' })).toBe(0);
    expect(fits(conditions(), { ...table, machine: 'standard' })).toBe(1);
  });
});
