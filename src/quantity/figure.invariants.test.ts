/** The spread of a figure follows its leaves by identity, whatever is made of them. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { explain, explainLines } from '../text/print/explain.ts';
import { deviationOf, type Figure, given } from './figure.ts';
import { apply, type Formula } from './formula.ts';
import { saidBy, saidOf } from './source.ts';
import { allWarnings } from './warnings.fixture.ts';

const settings = { seed: 99, numRuns: 500 } as const;
const number = fc.double({ min: 0.01, max: 1000, noNaN: true });
const share = fc.double({ min: 0, max: 0.3, noNaN: true });
const leaf = fc
  .tuple(number, share)
  .map(
    ([value, s]): Figure =>
      given({ key: 'leaf', name: saidOf('leaf'), value, unit: '1', deviation: value * s, basis: 'assumed', source: saidOf('the test') }),
  );

const formula = (text: string, compute: (v: Readonly<Record<'a' | 'b', number>>) => number): Formula<'a' | 'b'> => ({
  name: saidOf(text),
  text: saidOf(`y = ${text}`),
  source: 'the-test',
  unit: '1',
  inputs: { a: { unit: '1', name: 'a' }, b: { unit: '1', name: 'b' } },
  compute,
});
const sum = formula('a + b', ({ a, b }) => a + b);
const difference = formula('a - b', ({ a, b }) => a - b);
const product = formula('a b', ({ a, b }) => a * b);
const quotient = formula('a / b', ({ a, b }) => a / b);
const smaller: Formula<'a' | 'b'> = { ...formula('the smaller of a and b', ({ a, b }) => Math.min(a, b)), bends: true };
const of = (f: Formula<'a' | 'b'>, a: Figure, b: Figure): Figure => apply(f, { a, b }, { key: 'made' });
const near = (a: number, b: number, scale: number): void => expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-6 * scale);

describe('spread carried from the leaves by identity', () => {
  it('does not count a leaf twice', () => {
    fc.assert(
      fc.property(leaf, (x) => {
        near(deviationOf(of(sum, x, x)), 2 * deviationOf(x), x.value);
        near(deviationOf(of(difference, x, x)), 0, x.value);
        near(deviationOf(of(quotient, x, x)), 0, 1);
        near(deviationOf(of(product, x, x)), 2 * x.value * deviationOf(x), x.value ** 2);
      }),
      settings,
    );
  });

  it('adds independent leaves by root of squares', () => {
    fc.assert(
      fc.property(leaf, leaf, (x, y) => {
        near(deviationOf(of(sum, x, y)), Math.hypot(deviationOf(x), deviationOf(y)), x.value + y.value);
        near(deviationOf(of(difference, of(sum, x, y), y)), deviationOf(x), x.value + y.value);
      }),
      settings,
    );
  });

  it('keeps low and high the same way about the value, and a figure at its limit has a spread all the same', () => {
    fc.assert(
      fc.property(leaf, leaf, (x, y) => {
        const least = of(smaller, x, y);
        near(least.high - least.value, least.value - least.low, least.value);
        if (x.value === y.value || deviationOf(x) === 0) return;
        expect(deviationOf(of(smaller, x, given({ ...x, deviation: 0, basis: 'assumed' })))).toBeGreaterThan(0);
      }),
      settings,
    );
  });

  it('refuses what is no number', () => {
    const zero = given({ key: 'zero', name: saidOf('zero'), value: 0, unit: '1', basis: 'assumed', source: saidOf('the test') });
    expect(() => of(quotient, zero, zero)).toThrow('made is not a number');
  });
});

describe('the why of a figure', () => {
  const height = given({ key: 'height', name: saidOf('height'), value: 50, unit: 'mm', basis: 'drawing', source: saidBy.drawing });
  const rate = given({
    key: 'rate',
    name: saidOf('rate'),
    value: 170,
    unit: 'mm²/min',
    deviation: 40,
    basis: 'shop',
    source: saidBy.shopFile,
    warnings: [saidOf('never measured')],
  });
  const feed = apply(
    { ...quotient, inputs: { a: { unit: 'mm²/min', name: 'rate' }, b: { unit: 'mm', name: 'height', high: 40 } } },
    { a: rate, b: height },
    { key: 'feed', name: saidOf('feed') },
  );
  const both = of(sum, feed, feed);

  it('tells value, formula, numbers put in, source, warnings and children', () => {
    expect(explainLines(explain(feed))).toEqual([
      'feed = 3.40 ± 0.80   [feed]',
      '  by: y = a / b   (the-test)',
      '  put in: rate = 170 ± 40 mm²/min; height = 50 mm',
      '  note: height 50 mm is outside any to 40 mm, the range in which a / b holds',
      '  rate = 170 ± 40 mm²/min   [rate]',
      '    shop: the shop file',
      '    note: never measured',
      '  height = 50 mm   [height]',
      '    drawing: the drawing',
    ]);
  });

  it('tells a figure that goes in twice only once in full', () => {
    const tree = explain(both);
    expect(tree.from.map((f) => [f.key, f.told, f.from.length])).toEqual([
      ['feed', false, 2],
      ['feed', true, 0],
    ]);
    expect(explainLines(tree).at(-1)).toBe('  feed = 3.40 ± 0.80   [feed, told above]');
  });

  it('gathers every warning once', () => {
    expect(allWarnings(both)).toEqual(['height 50 mm is outside any to 40 mm, the range in which a / b holds', 'never measured']);
  });
});
