/** Numbers are read to the last bit or not at all. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { numberIn } from './number.ts';

const read = (text: string): number => numberIn(new TextEncoder().encode(text), 0, text.length);

describe('a number in a DXF file', () => {
  it.each([
    ['0', 0],
    ['-12.5', -12.5],
    ['+3', 3],
    ['.25', 0.25],
    ['7.', 7],
    ['1e3', 1000],
    ['1.5E-3', 0.0015],
    ['1.0D+02', 100],
    ['2.5d-1', 0.25],
    ['0.7071067811865476', Math.SQRT1_2],
    ['-41.272077938642141', -41.272077938642141],
    ['9007199254740993', 9007199254740992],
    ['0.1000000000000000055511151231257827', 0.1],
  ])('reads %s', (text, value) => {
    expect(read(text)).toBe(value);
  });

  it.each([
    '',
    '-',
    '.',
    '1,5',
    '1.2.3',
    'nan',
    'inf',
    '1e999',
    '-1e999',
    '0x10',
    '1e',
    '1e+',
    '12 3',
    '1.0F2',
    '--1',
    '1-',
    'e5',
    '9'.repeat(500),
  ])('refuses "%s"', (text) => {
    expect(read(text)).toBeNaN();
  });

  it('gives the same double as the language does, for every way of writing one', () => {
    const written = fc.tuple(fc.double({ noNaN: true, min: -1e12, max: 1e12 }), fc.integer({ min: 0, max: 20 }));
    fc.assert(
      fc.property(written, ([value, places]) => {
        for (const text of [String(value), value.toFixed(places), value.toExponential(places), value.toPrecision(places + 1)])
          expect(read(text)).toBe(Number(text));
      }),
      { numRuns: 3000, seed: 7 },
    );
  });

  it('is right on halves between two doubles, where one rounding too many shows', () => {
    for (let i = 0; i < 2000; i++) {
      const low = 1 + i / 2 ** 52;
      const half = BigInt(2 * (2 ** 52 + i) + 1);
      // low + half of the last place, exactly: 53 binary places are 53 decimal ones at most.
      const digits = (half * 5n ** 53n).toString().padStart(54, '0');
      const text = `${digits.slice(0, -53)}.${digits.slice(-53)}`;
      expect(read(text)).toBe(Number(text));
      expect(read(text.slice(0, 19))).toBe(Number(text.slice(0, 19)));
      expect(low).toBeLessThan(2);
    }
  });
});
