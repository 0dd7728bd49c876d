/** Wire used up and what cutting costs, against sums done by hand. */
import { describe, expect, it } from 'vitest';
import { costPerArea, spoolHours, wireLength, wireMass } from './wire-use.ts';

describe('wire used up and what cutting costs, worked by hand', () => {
  it('takes 600 m and 240 g in an hour at 10 m/min and 0.4 g/m', () => {
    expect(wireLength.compute({ minutes: 60, speed: 10 })).toBe(600);
    expect(wireMass.compute({ length: 600, massPerLength: 0.0004 })).toBeCloseTo(0.24, 12);
    expect(spoolHours.compute({ spool: 6, massPerLength: 0.0004, speed: 10 })).toBeCloseTo(25, 12);
  });

  it('costs 5,000 and 250 g at 2,000 a kilogram per hour: 5,500 for 0.0099 m² is 555,555.6 a square metre', () => {
    expect(costPerArea.compute({ machine: 5000, wirePerHour: 250, price: 2000, rate: 165 })).toBeCloseTo(555555.5556, 3);
  });
});
