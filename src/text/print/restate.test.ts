/** Sentences in inches and with a decimal comma: every quantity is told anew, and nothing else is touched. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { restated, type Telling } from './restate.ts';

const INCH: Telling = { length: 'inch', finish: 'µin', decimalMark: '.', groupMark: ',', names: ['0.25 mm brass'] };
const COMMA: Telling = { length: 'mm', finish: 'µm', decimalMark: ',', groupMark: '.', names: ['1.2379'] };

describe('a sentence told anew', () => {
  it.each([
    ['The block is 25 mm high.', 'The block is 0.984 in high.'],
    ['holds ±0.006 mm and Ra 1.6 µm', 'holds ±0.000237 in and Ra 63 µin'],
    ['off by 4.2 µm there', 'off by 165 µin there'],
    ['from 1 to 3 mm, 44 × 47.7 mm', 'from 0.0394 to 0.118 in, 1.73 × 1.88 in'],
    ['at 7.1 mm/min, 120 mm²/min and 1,234.5 m of wire', 'at 0.28 in/min, 0.186 in²/min and 4,050.2 ft of wire'],
    ['with 0.25 mm brass wire, 0.2 mm over', 'with 0.25 mm brass wire, 0.00787 in over'],
    ['Ra 0.8 to 1.6 µm', 'Ra 31.5 to 63 µin'],
    ['L12, D3, M00, N40, ISO 286-1, 2026-11-25, 07:00', 'L12, D3, M00, N40, ISO 286-1, 2026-11-25, 07:00'],
    ['at (12.000, 6.928), R 0.165 mm', 'at (12.000, 6.928), R 0.0065 in'],
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

  it.each([
    ['the stock is 100 by 80 mm; the machine travels 350 by 250 mm', 'the stock is 3.94 by 3.15 in; the machine travels 13.8 by 9.84 in'],
    ['Datum at X 12 Y 3 mm of the drawing', 'Datum at X 0.472 Y 0.118 in of the drawing'],
    ['L1, THE PART OF 2.4 KG, 78 X 78 X 90 MM, HANGS', 'L1, THE PART OF 2.4 KG, 3.07 X 3.07 X 3.54 IN, HANGS'],
    ['A class coarser: Ra 1.6 µm instead of 0.8 µm', 'A class coarser: Ra 63 µin instead of 31.5 µin'],
    ['the rough cut is off by 15.2 µm there, skim 1 by 5.3 µm', 'the rough cut is off by 598 µin there, skim 1 by 209 µin'],
    ['0.003336 ± 0.000066 mm, 1150 ± 270 m, 5.6 ± 1.7 mm/min', '0.0001313 ± 0.0000026 in, 3773 ± 886 ft, 0.220 ± 0.067 in/min'],
    ['at x -12.5 mm, y 0 mm', 'at x -0.492 in, y 0 in'],
    ['right, +0.14 µm to −0.07 µm', 'right, +5.51 µin to −2.76 µin'],
    ["the machine's own 1.5 µm, ISO 9013 from 0.5–32 mm", "the machine's own 59.1 µin, ISO 9013 from 0.0197–1.26 in"],
  ])('in the sentences of the core: %s', (before, after) => {
    expect(restated(before, INCH)).toBe(after);
  });

  it.each([
    ['at x -12.5 mm, y (98.000, -58.000)', 'at x -12,5 mm, y (98,000; -58,000)'],
    ['offsets 0.21, 0.17, 3 and holes 1, 2, 3', 'offsets 0,21; 0,17; 3 and holes 1, 2, 3'],
  ])('with a comma, signs and lists too: %s', (before, after) => {
    expect(restated(before, COMMA)).toBe(after);
  });

  it.each([
    'What was measured goes back as “L2: 24.006 of 24 at 22 mm”',
    '\'0.25 mm\' is no wire; "1.5 mm" neither; `3.2 mm`',
    '1 inch = 25.4 mm',
    'the 5mm of 3 m-wires, 2 mmHg, 1/4 in, set core.L2 to slug, version 1.2.3, 17-4PH',
  ])('leaves alone what is quoted, defined or named: %s', (before) => {
    expect(restated(before, { ...INCH, decimalMark: ',', groupMark: '.' })).toBe(before);
  });

  it('tells places as drawn, unless the unit of the drawing is known', () => {
    expect(restated('at (8.000, -9.000)', INCH)).toBe('at (8.000, -9.000)');
    expect(restated('at (8.000, -9.000)', { ...INCH, drawn: 1 })).toBe('at (0.315, -0.3543)');
    expect(restated('left (at X 98, Y 58.5, L2)', { ...INCH, drawn: 1 })).toBe('left (at X 3.8583, Y 2.3031, L2)');
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
