/** The starting model gives the numbers it was written down with. */

import { describe, expect, it } from 'vitest';
import { deviationOf, given } from '../../quantity/figure.ts';
import { saidBy, saidOf } from '../../quantity/source.ts';
import { conditions, model, plain } from '../cases.fixture.ts';
import { standardMachine } from './machine.ts';
import { servoLimitOf } from './machine-leaves.ts';
import { cutModel } from './model.ts';
import { ladderRows } from './pass-rows.ts';

const factor = (value: number) =>
  given({
    key: 'factor.learned',
    name: saidOf('learned factor'),
    value,
    unit: '1',
    deviation: 0.03,
    basis: 'shop',
    source: saidBy.shopLog,
  });

describe('the starting model, as it was written down', () => {
  it.each([
    [25, 144],
    [50, 170],
    [100, 177],
    [300, 119],
  ])('cuts tool steel %f mm high with 0.25 wire at about %f mm²/min', (height, rate) => {
    expect(Math.abs(model({ height }).rate - rate)).toBeLessThan(1);
  });

  it.each([
    ['one side', 0.75],
    ['lifted', 0.5],
  ] as const)('loses rate with the nozzles %s', (flush, share) => {
    expect(model({ flush }).rate / model().rate).toBeCloseTo(share, 12);
  });

  it('has a gap of 3 + 34 e µm and Ra 2.8 e µm with 0.25 wire', () => {
    expect(model().gap(0.5) * 1000).toBeCloseTo(20, 12);
    expect(model().ra(0.5)).toBeCloseTo(1.4, 12);
    expect(model().damage(0.5)).toBeCloseTo(7.7, 12);
    expect(model().kerf).toBeCloseTo(0.324, 12);
  });

  it('makes craters and gap smaller with the cube root of a finer wire, and no larger with a thicker one', () => {
    expect(model({ wire: plain(0.25 / 8) }).ra(1)).toBeCloseTo(1.4, 12);
    expect(model({ wire: plain(0.25 / 8) }).gap(1)).toBeCloseTo(0.0185, 12);
    expect(model({ wire: plain(0.3) }).ra(1)).toBeCloseTo(2.8, 12);
  });

  it('comes out finer in carbide', () => {
    expect(model({ material: 'wc-6co' }).ra(1)).toBeCloseTo(1.96, 12);
    expect(model({ material: 'wc-6co' }).energyFor(0.98)).toBeCloseTo(0.5, 12);
  });

  it('lets a skim take the damage and 0.4 of the form error, and leaves 0.35 of it down to the floor of the machine', () => {
    expect(model().stock(1, 20)).toBeCloseTo((15.4 + 8) / 1000, 12);
    expect(model().formErrorAfter(20)).toBeCloseTo(7, 12);
    expect(model().formErrorAfter(2)).toBe(1.5);
  });

  it('runs a skim at the removal rate of the rough, less energy to the power of 2.25, up to the servo limit', () => {
    const m = model();
    expect(m.skimFeed(0.25, 0.01)).toBeCloseTo((m.rate * 0.324 * 0.25 ** 2.25) / (50 * 0.01), 9);
    expect(m.skimFeed(1, 0.01)).toBe(12);
    expect(model({ height: 2 }).roughFeed).toBe(12);
  });

  it('pushes the wire out of line with the square of its free length and the sparks per length, against its tension', () => {
    // 100 mm high between guides 10 mm off: f(H) / H and (H + 20)² worked by hand.
    const push = (h: number): number => 1 / (h + 12) / (1 + (h / 350) ** 2);
    expect(model().formErrorStart).toBeCloseTo(20, 9);
    expect(model({ height: 100 }).formErrorStart).toBeCloseTo(((20 * push(100)) / push(50)) * (120 / 70) ** 2, 9);
    expect(model({ wire: { ...plain(0.25), tension: 6 } }).formErrorStart).toBeCloseTo(40, 9);
    expect(model({ wire: { ...plain(0.25), tension: 60 * 12 } }).formErrorStart).toBe(1.5);
  });
});

describe('a servo', () => {
  it('does not hold its limit by a twentieth', () => {
    expect(deviationOf(servoLimitOf(standardMachine))).toBeCloseTo(0.6, 12);
  });
});

describe('what the shop log has taught', () => {
  it('bends rate, Ra and gap by its factors, and its own spread replaces that of the model', () => {
    const learned = { ...conditions(), factors: { rate: factor(1.2), finish: factor(0.9), gap: factor(1.1) } };
    expect(cutModel(learned).rate / model().rate).toBeCloseTo(1.2, 12);
    expect(cutModel(learned).ra(1)).toBeCloseTo(2.52, 12);
    expect(cutModel(learned).gap(1)).toBeCloseTo(0.0407, 12);
    const [rough] = ladderRows(learned, [1]);
    expect(rough.feed.value).toBeCloseTo(cutModel(learned).roughFeed, 12);
    expect(rough.ra.value).toBeCloseTo(2.52, 12);
    expect(rough.gap.value).toBeCloseTo(0.0407, 12);
    // 3 in 120 from the log and 3 % on the index of the material, instead of 25 %.
    expect((rough.feed.high - rough.feed.low) / 2 / rough.feed.value).toBeCloseTo(Math.hypot(0.03 / 1.2, 0.03), 6);
  });
});
