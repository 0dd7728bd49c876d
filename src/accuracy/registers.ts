/**
 * Correction from measurement. Sign: `left` is metal left per side, mm at 20 °C: an opening measured too small and a part measured too
 * large both have metal left, and the register goes down by as much; metal gone is negative, and the register goes up.
 */

import type { Kept, Pass } from '../plan/plan.ts';
import { type Figure, given } from '../quantity/figure.ts';
import { apply, type Formula } from '../quantity/formula.ts';
import { sizeAtReference } from './program-scale.ts';

/** A size of a cut contour as it was measured. */
export interface Measured {
  readonly loop: string;
  /** `die`: across an opening. `punch`: across a part. */
  readonly kept: Kept;
  /** mm, as read, and as the drawing has it. */
  readonly size: number;
  readonly expected: number;
  /** °C of the part while it was measured. */
  readonly temperature: number;
  /** Cut faces that the size lies between. */
  readonly sides: 1 | 2;
  /** One standard deviation of the reading, mm, and of its temperature, °C. */
  readonly doubt?: number;
  readonly temperatureDoubt?: number;
}

export interface Deviation {
  readonly measured: Measured;
  /** mm at 20 °C. */
  readonly size: Figure;
  /** Per side, mm: above 0 metal is left, below 0 it is gone. */
  readonly left: Figure;
}

export const metalLeft: Formula<'size' | 'expected' | 'sides' | 'sense'> = {
  name: 'metal left per side',
  text: 'left = sense · (size at 20 °C - size of the drawing) / sides; sense 1 for a part, -1 for an opening',
  source: 'definition',
  unit: 'mm',
  inputs: {
    size: { unit: 'mm', name: 'size at 20 °C' },
    expected: { unit: 'mm', name: 'size of the drawing' },
    sides: { unit: '1', name: 'cut faces' },
    sense: { unit: '1', name: 'sense' },
  },
  compute: ({ size, expected, sides, sense }) => (sense * (size - expected)) / sides,
};

export const correctedRegister: Formula<'register' | 'left'> = {
  name: 'corrected register',
  text: 'new register = register - metal left per side',
  source: 'definition',
  unit: 'mm',
  inputs: { register: { unit: 'mm', name: 'register as it was' }, left: { unit: 'mm', name: 'metal left per side' } },
  compute: ({ register, left }) => register - left,
};

/** The reverse: what becomes of a size when the registers change. */
export const sizeAfterChange: Formula<'size' | 'change' | 'sides' | 'sense'> = {
  name: 'size after a change of the registers',
  text: 'size = size before + sense · sides · change; sense 1 for a part, -1 for an opening',
  source: 'definition',
  unit: 'mm',
  inputs: {
    size: { unit: 'mm', name: 'size before' },
    change: { unit: 'mm', name: 'change of the registers' },
    sides: { unit: '1', name: 'cut faces' },
    sense: { unit: '1', name: 'sense' },
  },
  compute: ({ size, change, sides, sense }) => size + sense * sides * change,
};

export const senseOfSize = (kept: Kept): 1 | -1 => (kept === 'punch' ? 1 : -1);

/** Reads a size in the shop: a micrometre; a hand on the part warms it by about a degree. */
const USUAL = { doubt: 0.001, temperatureDoubt: 1 } as const;

export const deviationOfMeasured = (measured: Measured, expansion: Figure): Deviation => {
  const leaf = leafOf(measured);
  const size = apply(
    sizeAtReference,
    {
      size: leaf('measured', `size of ${measured.loop} as measured`, measured.size, 'mm', measured.doubt ?? USUAL.doubt),
      expansion,
      temperature: leaf(
        'temperature',
        `temperature of ${measured.loop} while measured`,
        measured.temperature,
        '°C',
        measured.temperatureDoubt ?? USUAL.temperatureDoubt,
      ),
    },
    { key: keyOf(measured, 'size'), name: `size of ${measured.loop} at 20 °C` },
  );
  const left = apply(
    metalLeft,
    {
      size,
      expected: leaf('expected', `size of ${measured.loop} on the drawing`, measured.expected, 'mm', 0),
      sides: leaf('sides', 'cut faces', measured.sides, '1', 0),
      sense: leaf('sense', 'sense', senseOfSize(measured.kept), '1', 0),
    },
    { key: keyOf(measured, 'left'), name: `metal left per side on ${measured.loop}` },
  );
  return { measured, size, left };
};

export interface NewRegister {
  readonly pass: number;
  readonly register: number;
  /** mm */
  readonly before: number;
  readonly after: Figure;
}

/** Every pass moves by the same, so that each leaves the stock it left before. `registers` are those set in the control, mm by number. */
export const newRegisters = (
  passes: readonly Pass[],
  registers: ReadonlyMap<number, number>,
  left: Figure,
  key = 'correct',
): readonly NewRegister[] =>
  passes.map((pass) => {
    const before = registers.get(pass.register) ?? pass.offset.value;
    const set = given({
      key: `${key}.register.${pass.register}.before`,
      name: `register D${pass.register} as it was`,
      value: before,
      unit: 'mm',
      basis: 'shop',
      source: 'the program',
    });
    const after = apply(
      correctedRegister,
      { register: set, left },
      { key: `${key}.register.${pass.register}`, name: `register D${pass.register} corrected` },
    );
    return { pass: pass.number, register: pass.register, before, after };
  });

/** The size, mm at 20 °C, that a contour has after its registers change by `change` mm. */
export const sizeAfter = ({ measured, size }: Deviation, change: number): number =>
  sizeAfterChange.compute({ size: size.value, change, sides: measured.sides, sense: senseOfSize(measured.kept) });

const keyOf = ({ loop }: Measured, what: string): string => `correct.${loop}.${what}`;

const leafOf =
  (measured: Measured) =>
  (what: string, name: string, value: number, unit: Figure['unit'], deviation: number): Figure =>
    given({
      key: keyOf(measured, what),
      name,
      value,
      unit,
      deviation,
      basis: what === 'expected' ? 'drawing' : 'measured',
      source: what === 'expected' ? 'the drawing' : 'who measured it',
    });
