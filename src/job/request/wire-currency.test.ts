/** No price mixes currencies: what is left out, refused and asked about, and where in the shop. */
import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { runWith } from '../../cli/inputs.ts';
import { sentenceOf } from '../../text/finding.fixture.ts';
import type { JobRun } from '../job-run.ts';
import { runUpTo } from '../pipeline/pipeline.ts';
import { currencyFindings, pricedWires, withoutPrice } from './wire-currency.ts';

const plain = runWith({ shape: { kind: 'gear', module: 2, teeth: 16 } }, 'gear.job.json', (path) => path, {}, '2026-12-01');
const [euro] = plain.shop.rates.slice(-1);
const [first, second] = plain.shop.wires;
const shopWith = (wires: readonly JobRun['shop']['wires'][number][], currencies: readonly string[] = ['EUR']): JobRun => ({
  ...plain,
  shop: {
    ...plain.shop,
    wires: [...wires],
    rates: currencies.map((currency, i) => ({ ...there(euro), from: `${2026 + i}-01-01`, currency })),
  },
});
const [brass, other] = [there(first), there(second)];
const inDollars = { ...other, currency: 'USD' };

describe('a wire that is priced in another currency than the rates', () => {
  it('is left out of the choice, with its place in the shop', () => {
    const run = shopWith([brass, inDollars]);
    expect(pricedWires(run)).toEqual([brass]);
    expect(withoutPrice(run)).toEqual([]);
    const [told, ...more] = currencyFindings(run);
    expect([told?.code, told?.severity, told?.place, more]).toEqual([
      'currencies-mixed',
      'warning',
      { kind: 'field', path: 'wires.1.currency' },
      [],
    ]);
    expect(sentenceOf(told)).toMatch(/ wire is left out: it is priced in USD, and the rates on 2026-12-01 are in EUR\.$/);
  });

  it.each([
    ['named by the job', { ...shopWith([brass, inDollars]), job: { ...plain.job, wire: other.id } }],
    ['the only one', shopWith([inDollars])],
  ])('refuses the job where it is %s', (_, run) => {
    const answer = runUpTo(run, 'answer');
    if (answer.kind !== 'bad input') throw new Error(answer.kind);
    expect(answer.findings.map((f) => [f.code, f.severity])).toEqual([['currencies-mixed', 'refusal']]);
    expect(sentenceOf(answer.findings[0])).toMatch(/in EUR, and the price of .* wire is in another currency: a price does not mix two\.$/);
  });

  it('is taken where both are the same, however they are written', () => {
    const run = shopWith([{ ...brass, currency: 'eur' }]);
    expect([pricedWires(run).length, currencyFindings(run), withoutPrice(run)]).toEqual([1, [], []]);
  });
});

describe('a price that names no currency', () => {
  it('is asked about where the rates of the shop are in several', () => {
    const run = shopWith([brass, { ...other, currency: 'EUR' }], ['EUR', 'JPY']);
    const priced = { ...run, job: { ...run.job, stock: { price: 950 } } };
    expect(currencyFindings(run).map((f) => [f.code, f.severity, f.place])).toEqual([
      ['currency-not-named', 'doubt', { kind: 'field', path: 'wires.0.currency' }],
    ]);
    expect(currencyFindings(priced).map((f) => f.place)).toEqual([
      { kind: 'field', path: 'wires.0.currency' },
      { kind: 'field', path: 'stock.price' },
    ]);
    expect(sentenceOf(currencyFindings(run)[0])).toMatch(/names none: it is read as EUR\.$/);
    expect(sentenceOf(currencyFindings({ ...run, day: '2027-02-01' })[1])).toMatch(/names none: it is read as JPY\.$/);
  });

  it('is no question where they are all in one', () => {
    expect(currencyFindings(shopWith([brass, other], ['EUR', 'EUR']))).toEqual([]);
  });
});
