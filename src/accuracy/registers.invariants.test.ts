/** Corrections of simulated errors: the size comes back, the stocks stay, and there and back is nothing. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { there } from '../../test/there.ts';
import { findMaterial } from '../physics/material/find-material.ts';
import { planned, plate, questionFor } from '../plan/plan.fixture.ts';
import { correctionOf } from './correction.ts';
import { programScale } from './program-scale.ts';
import { deviationOfMeasured, type Measured, sizeAfter } from './registers.ts';

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const plan = planned(questionFor(plate()));
const registers = new Map(plan.passes.map((p) => [p.register, Number(p.offset.value.toFixed(4))]));
const found = findMaterial('d2');
if (found.kind !== 'material') throw new Error('the list of materials has no d2');
const { expansion } = found.material;

const simulated = fc.record({
  loop: fc.constantFrom('L1', 'L2', 'L3', 'L4', 'L5'),
  drawn: number(2, 300),
  /** By how much the gap is larger than the register was set for, mm. */
  error: number(-0.019, 0.019),
  temperature: number(10, 40),
  sides: fc.constantFrom(1, 2),
});

/** What a machine leaves whose sparks reach `error` further than was thought, with the last register at `register`: mm at 20 °C. */
const cutSize = (drawn: number, error: number, register: number, sides: number, kept: 'die' | 'punch'): number => {
  const beyond = (registers.get(there(plan.passes.at(-1)).register) as number) + error - register;
  return kept === 'die' ? drawn + sides * beyond : drawn - sides * beyond;
};

describe('a correction from measurement', () => {
  it('restores the size of a simulated error to 0.1 µm with registers as a control takes them, and every stock stays', () => {
    fc.assert(
      fc.property(simulated, ({ loop, drawn, error, temperature, sides }) => {
        const { kept } = there(plan.contours.find((c) => c.loop === loop));
        const last = registers.get(there(plan.passes.at(-1)).register) as number;
        const warm = programScale.compute({ expansion: expansion.value, temperature });
        const measured: Measured = {
          loop,
          kept,
          size: cutSize(drawn, error, last, sides, kept) * warm,
          expected: drawn,
          temperature,
          sides: sides as 1 | 2,
        };
        const correction = correctionOf({ plan, registers, measured: [measured], expansion, tolerance: 0.02 });
        const set = Number(there(correction.registers.at(-1)).after.value.toFixed(4));
        expect(Math.abs(cutSize(drawn, error, set, sides, kept) - drawn)).toBeLessThanOrEqual(0.0001 + 1e-9);
        const exact = there(correction.registers.at(-1)).after.value;
        expect(Math.abs(cutSize(drawn, error, exact, sides, kept) - drawn)).toBeLessThan(1e-9);
        const stocks = correction.registers.map((r) => r.after.value - exact);
        const before = correction.registers.map((r) => r.before - last);
        for (const [i, stock] of stocks.entries()) expect(stock).toBeCloseTo(there(before[i]), 9);
        expect(there(correction.sizes[0]).next).toBeCloseTo(drawn, 6);
      }),
      { seed: 7, numRuns: 120 },
    );
  });

  it('gives the same size back when a change of the registers is taken back', () => {
    fc.assert(
      fc.property(simulated, number(-0.02, 0.02), ({ loop, drawn, error, temperature, sides }, change) => {
        const { kept } = there(plan.contours.find((c) => c.loop === loop));
        const measured: Measured = { loop, kept, size: drawn + error, expected: drawn, temperature, sides: sides as 1 | 2 };
        const deviation = deviationOfMeasured(measured, expansion);
        const changed = sizeAfter(deviation, change);
        expect(changed - deviation.size.value).toBeCloseTo((kept === 'die' ? -1 : 1) * sides * change, 9);
        expect(changed + sizeAfter(deviation, -change)).toBeCloseTo(2 * deviation.size.value, 9);
      }),
      { seed: 8, numRuns: 60 },
    );
  });
});
