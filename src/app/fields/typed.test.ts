/** What users type, read as values. */
import { describe, expect, it } from 'vitest';
import { numbersIn, type Units } from '../../text/print/reader.ts';
import { HOUSE } from '../../text/reader.ts';
import { wordsFor } from '../words/words-for.ts';
import { readCount, readFinish, readLength, readList, readNumber } from './typed.ts';
import { readSizes } from './typed-sizes.ts';

const words = wordsFor(HOUSE).typed;

const units: Units = { lengthUnit: 'mm', finishUnit: 'µm', locale: 'en-US' };
const mm = numbersIn(units);
const inch = numbersIn({ ...units, lengthUnit: 'inch', finishUnit: 'µin' });
const german = numbersIn({ ...units, locale: 'de-DE' });

describe('typed lengths', () => {
  it.each([
    ['0.25', 0.25],
    ['0.25 mm', 0.25],
    ['0,25', 0.25],
    ['.010 in', 0.254],
    ['10 thou', 0.254],
    ['1/4 in', 6.35],
    ['1 1/2"', 38.1],
    ['250 µm', 0.25],
    ['±0.008', 0.008],
    ['+/- 0.008 mm', 0.008],
  ])('%s is %f mm', (text, value) => {
    expect(readLength(text, mm, words)).toMatchObject({ kind: 'value', value });
  });

  it('a bare number is in the unit of the user', () => {
    expect(readLength('.010', inch, words)).toEqual({ kind: 'value', value: 0.254, said: '0.01 in' });
  });

  it('a comma before three digits is asked about, but not where decimals have a comma', () => {
    expect(readLength('1,250', mm, words)).toEqual({
      kind: 'choices',
      readings: [
        { value: 1.25, said: '1.25 mm' },
        { value: 1250, said: '1250 mm' },
      ],
    });
    expect(readLength('1,250', german, words)).toEqual({ kind: 'value', value: 1.25, said: '1,25 mm' });
  });

  it('a point before three digits is asked about where decimals have a comma', () => {
    expect(readLength('1.250', german, words)).toMatchObject({ kind: 'choices', readings: [{ value: 1.25 }, { value: 1250 }] });
    expect(readLength('0.250', german, words)).toMatchObject({ kind: 'value', value: 0.25 });
  });

  it('mils are asked about', () => {
    expect(readLength('5 mil', mm, words)).toMatchObject({ kind: 'choices', readings: [{ value: 0.127 }, { value: 5 }] });
  });

  it('what is none says why', () => {
    expect(readLength('thick', mm, words)).toEqual({ kind: 'wrong', reason: 'Not a length: there is no number in it.' });
  });
});

describe('typed finishes', () => {
  it.each([
    ['0.8', 0.8],
    ['Ra 0,8', 0.8],
    ['32 µin', 0.8128],
    ['N6', 0.8],
    ['VDI 18', 0.794328],
  ])('%s is Ra %f µm', (text, value) => {
    expect(readFinish(text, mm, words)).toMatchObject({ kind: 'value', value });
  });

  it('a bare number is in the unit the user chose for finishes', () => {
    expect(readFinish('32', inch, words)).toMatchObject({ kind: 'value', value: 0.8128 });
    expect(readFinish('0.8 µm', inch, words)).toMatchObject({ kind: 'value', value: 0.8 });
  });

  it('Rz is a choice of a safe Ra and one that might do', () => {
    expect(readFinish('Rz 6.3', mm, words)).toMatchObject({ kind: 'choices', readings: [{ value: 0.828947 }, { value: 1.575 }] });
  });
});

describe('typed numbers and lists', () => {
  it('numbers have a point or a comma', () => {
    expect([readNumber('20,5', german, words), readNumber('20.5', mm, words), readNumber('−3', mm, words)]).toMatchObject([
      { value: 20.5 },
      { value: 20.5 },
      { value: -3 },
    ]);
    expect(readNumber('2x', mm, words)).toEqual({ kind: 'wrong', reason: "'2x' is not a number." });
  });

  it('whole numbers may be grouped and are never cut', () => {
    expect([readCount('1,000', mm, words), readCount('1.000', german, words), readCount("1'000", mm, words)]).toMatchObject([
      { value: 1000 },
      { value: 1000 },
      { value: 1000 },
    ]);
    expect(readCount('2.5', mm, words)).toEqual({ kind: 'wrong', reason: "'2.5' is not a whole number." });
  });

  it('lists take a decimal comma, and say which entry is none', () => {
    const lengths = (text: string, numbers = mm) => readList(text, (part) => readLength(part, numbers, words), words);
    expect(lengths('0,2; 0,15 mm', german)).toMatchObject({ kind: 'value', value: [0.2, 0.15] });
    expect(lengths('0.2, 0.15')).toMatchObject({ kind: 'value', value: [0.2, 0.15] });
    expect(lengths('0.2; wide')).toEqual({ kind: 'wrong', reason: 'Not a length: there is no number in it.' });
  });
});

describe('typed sizes with limits of their own', () => {
  it.each([
    ['bore 24 ±0.01', mm, [{ name: 'bore', length: 24, tolerance: 0.01 }]],
    [
      'bore: 24 mm ± 10 µm; slot 5 +/-0.02 on one side',
      mm,
      [
        { name: 'bore', length: 24, tolerance: 0.01 },
        { name: 'slot', length: 5, tolerance: 0.02, sides: 1 },
      ],
    ],
    ['slot 2: 1 1/4 in ±.001', inch, [{ name: 'slot 2', length: 31.75, tolerance: 0.0254 }]],
    ['Breite 12,5 ±0,01', german, [{ name: 'Breite', length: 12.5, tolerance: 0.01 }]],
  ])('%s', (text, numbers, value) => {
    const typed = readSizes(text, numbers, words);
    expect(typed).toMatchObject({ kind: 'value', value });
    // What is shown of it reads as the same again.
    if (typed.kind === 'value') expect(readSizes(typed.said, numbers, words)).toMatchObject({ kind: 'value', value });
  });

  it.each(['24 ±0.01', 'bore 24', 'bore ±0.01', 'bore: wide ±0.01', 'bore 24 ±'])('are not guessed at: %s', (text) => {
    expect(readSizes(text, mm, words).kind).toBe('wrong');
  });
});
