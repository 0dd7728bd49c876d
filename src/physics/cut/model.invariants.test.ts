/** Laws that the starting model keeps for every wire, height, material and energy. */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { deviationOf, type Figure } from '../../quantity/figure.ts';
import { allWarnings } from '../../quantity/warnings.fixture.ts';
import { lastOf, type NonEmpty, neighbours } from '../../sequence/sequence.ts';
import { materials } from '../material/materials.ts';
import { wires } from '../wire/wires.ts';
import type { CutConditions, Flush } from './conditions.ts';
import { standardMachine } from './machine.ts';
import { cutModel } from './model.ts';
import { ladderRows } from './pass-rows.ts';

const settings = { seed: 20240617, numRuns: 200 } as const;
const machine = { ...standardMachine, height: 1000, wire: { low: 0.025, high: 0.356 } };

const conditions: fc.Arbitrary<CutConditions> = fc.record({
  wire: fc
    .record({ wire: fc.constantFrom(...wires), diameter: fc.double({ min: 0.025, max: 0.356, noNaN: true }) })
    .map(({ wire, diameter }) => ({ ...wire, diameter })),
  material: fc.constantFrom(...materials),
  height: fc.double({ min: 1, max: 1000, noNaN: true }),
  flush: fc.constantFrom<Flush>('sealed', 'one side', 'lifted'),
  machine: fc.constant(machine),
});
const energy = fc.double({ min: 0.03, max: 1, noNaN: true });
/** A falling ladder that begins with the rough. */
const ladder = fc
  .uniqueArray(fc.constantFrom(...machine.energySettings.slice(1)), { maxLength: 8 })
  .map((settings): NonEmpty<number> => [1, ...settings.toSorted((a, b) => b - a)]);

describe('laws of the starting model', () => {
  it('grow with energy: gap, Ra, damage and the feed of a skim', () => {
    fc.assert(
      fc.property(conditions, energy, energy, fc.double({ min: 0.001, max: 0.2, noNaN: true }), (c, a, b, stock) => {
        const model = cutModel(c);
        const [low, high] = [Math.min(a, b), Math.max(a, b)];
        expect(model.gap(low)).toBeLessThanOrEqual(model.gap(high));
        expect(model.ra(low)).toBeLessThanOrEqual(model.ra(high));
        expect(model.damage(low)).toBeLessThanOrEqual(model.damage(high));
        expect(model.skimFeed(low, stock)).toBeLessThanOrEqual(model.skimFeed(high, stock));
        expect(model.skimFeed(high, stock)).toBeLessThanOrEqual(machine.servoLimit);
        expect(model.gap(low)).toBeGreaterThan(0);
      }),
      settings,
    );
  });

  it('give a rate that rises to one flat top over height and falls after it', () => {
    const heights = Array.from({ length: 400 }, (_, i) => 1 + i * 2.5);
    fc.assert(
      fc.property(conditions, (c) => {
        const rates = heights.map((height) => cutModel({ ...c, height }).rate);
        const top = rates.indexOf(Math.max(...rates));
        expect(heights[top]).toBeGreaterThan(50);
        expect(heights[top]).toBeLessThan(150);
        expect(neighbours(rates).every(([before, rate], i) => (i < top ? rate > before : rate < before))).toBe(true);
      }),
      { ...settings, numRuns: 20 },
    );
  });

  it('are never faster with a nozzle lifted or a finer wire, at any height and in any material', () => {
    fc.assert(
      fc.property(conditions, fc.double({ min: 0.025, max: 0.356, noNaN: true }), (c, diameter) => {
        const rate = (flush: Flush): number => cutModel({ ...c, flush }).rate;
        expect(rate('sealed')).toBeGreaterThan(rate('one side'));
        expect(rate('one side')).toBeGreaterThan(rate('lifted'));
        const other = cutModel({ ...c, wire: { ...c.wire, diameter } }).rate;
        expect(Math.sign(other - cutModel(c).rate) * Math.sign(diameter - c.wire.diameter)).toBeGreaterThanOrEqual(0);
      }),
      settings,
    );
  });

  it('carry offsets inward from pass to pass and leave no stock after the last', () => {
    fc.assert(
      fc.property(conditions, ladder, (c, energies) => {
        const rows = ladderRows(c, energies);
        for (const row of rows) expect(row.offset.value).toBeCloseTo(c.wire.diameter / 2 + row.gap.value + row.stock.value, 12);
        for (const [before, row] of neighbours(rows)) {
          expect(row.offset.value).toBeLessThan(before.offset.value);
          expect(row.taken.value * 1000).toBeGreaterThanOrEqual(before.damage.value * (1 - 1e-12));
          expect(row.formError.value).toBeLessThanOrEqual(before.formError.value);
          expect(before.stock.value - row.stock.value).toBeCloseTo(row.taken.value, 12);
        }
        expect(lastOf(rows).stock.value).toBe(0);
      }),
      { ...settings, numRuns: 60 },
    );
  });

  it('give only numbers, with a spread, for everything that checkCut lets through', () => {
    fc.assert(
      fc.property(conditions, ladder, (c, energies) => {
        for (const row of ladderRows(c, energies)) {
          const figures = Object.values(row).filter((v): v is Figure => typeof v === 'object');
          for (const f of figures) {
            expect(Number.isFinite(f.value) && Number.isFinite(f.low) && Number.isFinite(f.high)).toBe(true);
            expect(f.value).toBeGreaterThanOrEqual(0);
          }
          expect(deviationOf(row.feed)).toBeGreaterThan(0);
          expect(deviationOf(row.gap)).toBeGreaterThan(0);
          expect(allWarnings(row.offset)).toEqual([]);
        }
      }),
      { ...settings, numRuns: 60 },
    );
  });
});
