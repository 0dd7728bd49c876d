/** Wire used up and what cutting costs, against sums done by hand. */
import { describe, expect, it } from 'vitest';
import { cuttingMinuteCost, metresOfWire, spoolShare, wireKilograms, wireMetres } from './wire-use.ts';

/** Thick and heavy so that a metre weighs exactly π / 4 kg: 10 mm across, 10 g/cm³. */
const bar = { diameter: 10, density: 10 };

describe('wire used up and what cutting costs, worked by hand', () => {
  it('takes 600 m in an hour at 10 m/min, and 600 m of a wire of π / 4 kg a metre are 150 π kg', () => {
    expect(wireMetres.compute({ minutes: 60, speed: 10 })).toBe(600);
    expect(wireKilograms.compute({ ...bar, length: 600 })).toBeCloseTo(150 * Math.PI, 9);
    expect(spoolShare.compute({ mass: 150 * Math.PI, spool: 300 * Math.PI })).toBeCloseTo(0.5, 12);
  });

  it('goes as far as it takes to weigh so much', () => {
    expect(metresOfWire.compute({ ...bar, mass: 150 * Math.PI })).toBeCloseTo(600, 9);
  });

  it('costs 5,000 an hour for the machine and 4 / π for each kilogram of a wire that runs 7 m in a minute: 90.33', () => {
    expect(cuttingMinuteCost.compute({ ...bar, machine: 5000, speed: 7, price: 4 / Math.PI })).toBeCloseTo(5000 / 60 + 7, 9);
  });
});
