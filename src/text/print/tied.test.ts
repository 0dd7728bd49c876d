/** Where a text is broken into lines a number keeps its unit, and a name every blank it was given. */
import { describe, expect, it } from 'vitest';
import { duration, limit, mass, money, name, quantity } from '../part.ts';
import { HOUSE } from '../reader.ts';
import { say } from '../say.ts';
import { printTied } from './tied.ts';

describe('a text that will be broken into lines', () => {
  it('ties numbers to their units, and nothing else', () => {
    const text = say`${{ size: limit(0.008) }} of ${{ ra: quantity(0.8, 'µm') }} at ${{ swing: quantity(20, '°C') }} for ${{ time: duration(350) }}, ${{ mass: mass(1.5) }}, ${{ price: money(54237, 'EUR') }} as ${{ layer: name('BEND 2.5 mm') }}`;
    expect(printTied(text, HOUSE, '_')).toBe('±0.008_mm of 0.8_µm at 20_°C for 5_h_50_min, 1.5_kg, 542.37_EUR as BEND 2.5 mm');
  });
});
