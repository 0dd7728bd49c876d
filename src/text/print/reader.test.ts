/** Numbers as the user reads them. */
import { describe, expect, it } from 'vitest';
import { decimalMark } from './local.ts';
import { numbersIn, type Units } from './reader.ts';

const mm: Units = { lengthUnit: 'mm', finishUnit: 'µm', currency: 'EUR', locale: 'en-US' };
const english = numbersIn(mm);
const german = numbersIn({ ...mm, locale: 'de-DE' });
const inch = numbersIn({ lengthUnit: 'inch', finishUnit: 'µin', currency: 'USD', locale: 'en-US' });

describe('numbers on the sheet', () => {
  it('have as many digits as their range deserves', () => {
    const feed = { value: 5.6482, unit: 'mm/min', low: 3.9482, high: 7.3482 } as const;
    expect([english.value(feed), english.range(feed)]).toEqual(['5.6 mm/min', '± 1.7']);
    expect([german.value(feed), german.range(feed)]).toEqual(['5,6 mm/min', '± 1,7']);
  });

  it('that are exactly so have no range', () => {
    const height = { value: 32, unit: 'mm', low: 32, high: 32 } as const;
    expect([english.value(height), english.range(height)]).toEqual(['32 mm', '']);
  });

  it('keep their sureness when they change to inches', () => {
    const offset = { value: 0.2074, unit: 'mm', low: 0.2049, high: 0.2099 } as const;
    expect([english.value(offset), inch.value(offset)]).toEqual(['0.2074 mm', '0.008165 in']);
    expect([english.range(offset), inch.range(offset)]).toEqual(['± 0.0025', '± 0.000098']);
  });

  it('print lengths without trailing zeros, in mm and in inches', () => {
    expect([english.length(0.25), german.length(0.25), inch.length(25.4), inch.length(0.254)]).toEqual([
      '0.25 mm',
      '0,25 mm',
      '1 in',
      '0.01 in',
    ]);
  });

  it('round what is promised up, never down', () => {
    expect([english.within(0.0041), english.within(0.004), inch.within(0.004)]).toEqual(['±0.005 mm', '±0.004 mm', '±0.00016 in']);
  });

  it('print finishes in µm or µin', () => {
    expect([english.finish(0.8), german.finish(0.8), inch.finish(0.8)]).toEqual(['Ra 0.8 µm', 'Ra 0,8 µm', 'Ra 31.5 µin']);
  });

  it('print money in major units with its code', () => {
    expect([english.money(213033), german.money(213033), inch.money(-5)]).toEqual(['2,130.33 EUR', '2.130,33 EUR', '−0.05 USD']);
  });

  it('print money per hour and durations', () => {
    expect(english.value({ value: 4500, unit: 'money/h', low: 4500, high: 4500 })).toBe('45.00 EUR/h');
    expect(english.value({ value: 305, unit: 'min', low: 300, high: 310 })).toBe('5 h 5 min');
  });

  it('never show a minus before nothing', () => {
    expect(english.length(-0.000001)).toBe('0 mm');
  });

  it('know the decimal mark of a language', () => {
    expect([decimalMark('en-US'), decimalMark('de-DE'), decimalMark('de-CH'), decimalMark('fr-FR')]).toEqual(['.', ',', '.', ',']);
  });
});
