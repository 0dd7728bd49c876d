/** Lengths, times, money and figures as people type them and read them. */

import { describe, expect, it } from 'vitest';
import { mass, money } from '../text/part.ts';
import { printDuration } from '../text/print/duration.ts';
import { printFigure, printNumber } from '../text/print/figure.ts';
import { printMoney } from '../text/print/money.ts';
import { printPlain } from '../text/print/print.ts';
import { only } from '../text/say.ts';
import { confidenceTold } from './confidence.ts';
import { given } from './figure.ts';
import { parseFinish } from './finish.ts';
import { saidOf } from './source.ts';
import { parseLength } from './typed-length.ts';

describe('lengths as people type them', () => {
  it.each([
    ['0.25', 0.25],
    ['0.25 mm', 0.25],
    ['.010 in', 0.254],
    ['10 thou', 0.254],
    ['1/4 in', 6.35],
    ['0,25', 0.25],
    ['1 1/2"', 38.1],
    ['½ in', 12.7],
    ['1½ in', 38.1],
    ['250 µm', 0.25],
    ['250um', 0.25],
    ['1e-3 m', 1],
    ['1,234.5', 1234.5],
    ['1.234,5 mm', 1234.5],
    ['1 234,5 mm', 1234.5],
    ['1.250', 1.25],
    ['−2', -2],
    ['+3 cm', 30],
    ['2 ft', 609.6],
  ])('reads %s', (text, mm) => {
    const answer = parseLength(text);
    expect(answer.kind).toBe('length');
    expect(answer.kind === 'length' ? answer.mm : Number.NaN).toBeCloseTo(mm, 12);
  });

  it('takes a bare number in the unit that it is told', () => {
    expect(parseLength('10', 'thou')).toEqual({ kind: 'length', mm: 0.254, unit: 'thou', unitTyped: false });
  });

  it.each([
    '',
    ' ',
    '-',
    'abc',
    '1.2.3',
    '0x10',
    '3 furlongs',
    '1/0',
    '1e400',
    'NaN',
    'Infinity',
    '--1',
    '1,2,3',
    '12 mm mm',
    '9'.repeat(41),
  ])("names '%s' as no length", (text) => {
    expect(parseLength(text).kind).toBe('not a length');
  });

  it.each([
    ['1,250', [1.25, 1250]],
    ['5 mil', [0.127, 5]],
  ])('gives both readings of %s', (text, readings) => {
    const answer = parseLength(text);
    expect(answer.kind === 'ambiguous' ? answer.readings.map((r) => Number(r.mm.toFixed(9))) : []).toEqual(readings);
  });
});

describe('finishes as people type them', () => {
  it.each([
    ['Ra 0.8', 0.8],
    ['0,8', 0.8],
    ['ra0.4 µm', 0.4],
    ['N6', 0.8],
    ['n 12', 50],
    ['32 µin', 0.8128],
    ['VDI 24', 1.5849],
  ])('reads %s', (text, ra) => {
    const answer = parseFinish(text);
    expect(answer.kind === 'finish' ? answer.ra : Number.NaN).toBeCloseTo(ra, 4);
  });

  it('gives a band for Rz, never a single Ra', () => {
    const answer = parseFinish('Rz 6.3');
    expect(answer).toMatchObject({ kind: 'band', rz: 6.3, raMight: 6.3 / 4 });
    expect(answer.kind === 'band' ? answer.raSafe : Number.NaN).toBeCloseTo(0.829, 3);
  });

  it.each(['', 'smooth', 'N0', 'N13', 'N6.5', 'N6 µm', 'Ra 0', 'Ra -1', 'VDI 99', 'Ra 1e9', 'Rz 0'])("names '%s' as no finish", (text) => {
    expect(parseFinish(text).kind).toBe('not a finish');
  });
});

describe('a promise', () => {
  it.each([
    [1, 'k = 1, about 68 %'],
    [2, 'k = 2, about 95 %'],
    [2.7, 'k = 2.7, about 99.3 %'],
    [3, 'k = 3, about 99.7 %'],
  ])('of k = %s says the share that holds, to the tenth where it is nearly all', (k, text) => {
    expect(printPlain(confidenceTold(k))).toBe(text);
  });
});

describe('durations, money and masses', () => {
  it.each([
    [0, '0 s'],
    [0.5, '30 s'],
    [1, '1 min'],
    [2.5, '2 min 30 s'],
    [2.995, '3 min'],
    [35.4, '35 min'],
    [59.6, '1 h'],
    [580, '9 h 40 min'],
    [-580, '-9 h 40 min'],
    [6000, '100 h'],
  ])('prints %f minutes', (minutes, text) => {
    expect(printDuration(minutes)).toBe(text);
  });

  it.each([
    [123450, 'EUR', '1,234.50 EUR'],
    [5, 'USD', '0.05 USD'],
    [-0.4, 'USD', '0.00 USD'],
    [-123456789, 'USD', '-1,234,567.89 USD'],
    [1234, 'JPY', '1,234 JPY'],
    [1234, 'KWD', '1.234 KWD'],
    [1234.5, 'IQD', '1.235 IQD'],
    [1234, 'XAF', '1,234 XAF'],
    [1234, 'CLF', '0.1234 CLF'],
    [-0.4, 'EUR', '0.00 EUR'],
  ])('prints %f minor units of %s', (minor, currency, text) => {
    expect(printMoney(minor, currency)).toBe(text);
  });

  it.each([
    [28.5, 'EUR', '0.285 EUR/kWh'],
    [30, 'EUR', '0.30 EUR/kWh'],
    [4500, 'EUR', '45.00 EUR/kWh'],
    [27.25, 'JPY', '27.25 JPY/kWh'],
    [1234567.5, 'EUR', '12,345.675 EUR/kWh'],
    [1234567890.5, 'EUR', '12,345,678.905 EUR/kWh'],
    [994.9999999999997, 'EUR', '9.95 EUR/kWh'],
  ])('prints a rate of %f minor units of %s as it was entered', (minor, currency, text) => {
    expect(printPlain(only(money(minor, currency, 'money/kWh')))).toBe(text);
  });

  it.each([
    [0, '0 g'],
    [0.0004, '0.4 g'],
    [0.1234, '123.4 g'],
    [0.9996, '999.6 g'],
    [0.99999, '1 kg'],
    [1.155, '1.155 kg'],
    [123, '123 kg'],
  ])('prints %f kg', (kilograms, text) => {
    expect(printPlain(only(mass(kilograms, 4)))).toBe(text);
  });
});

describe('figures printed with the digits that their deviation deserves', () => {
  it.each([
    [5.5701, 1.7, '5.6'],
    [0.0370001, 0.004, '0.0370'],
    [169.91, 43, '170'],
    [12345, 620, '12350'],
    [50, 0, '50'],
    [0.790322580645, 0, '0.790323'],
    [-0.001, 0.1, '0.00'],
    [1e18, 0, '1e18'],
  ])('prints %f with deviation %f', (value, deviation, text) => {
    expect(printNumber(value, deviation)).toBe(text);
  });

  it('says value, deviation and unit, and money in its currency', () => {
    const of = (value: number, deviation: number, unit: 'mm' | '1' | 'money/h') =>
      given({ key: 'k', name: saidOf('n'), value, deviation, unit, basis: 'assumed', source: saidOf('the test') });
    expect(printFigure(of(0.2022, 0.0071, 'mm'))).toBe('0.2022 ± 0.0071 mm');
    expect(printFigure(of(1.25, 0, '1'))).toBe('1.25');
    expect(printFigure(of(4550, 250, 'money/h'), { currency: 'EUR' })).toBe('45.50 EUR/h ± 2.50 EUR/h');
  });
});
