/**
 * Correction from measurement. Sign: `left` is metal left per side, mm at 20 °C: an opening measured too small and a part measured too
 * large both have metal left, and the register goes down by as much; metal gone is negative, and the register goes up.
 */

import type { Kept, Pass } from '../plan/plan.ts';
import { type Figure, given } from '../quantity/figure.ts';
import { apply, type Formula } from '../quantity/formula.ts';
import { saidBy } from '../quantity/source.ts';
import { contour, term } from '../text/part.ts';
import { phrases, say } from '../text/say.ts';
import type { Text } from '../text/text.ts';
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
  name: say('accuracy.metal-left')`stock left per side`,
  text: say('accuracy.metal-left.by')`left = sense · (size at 20 °C - nominal size) / sides; sense 1 for a part, -1 for an opening`,
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
  name: say('accuracy.corrected-register')`corrected register`,
  text: say('accuracy.corrected-register.by')`new register = register - stock left per side`,
  source: 'definition',
  unit: 'mm',
  inputs: { register: { unit: 'mm', name: 'register as it was' }, left: { unit: 'mm', name: 'metal left per side' } },
  compute: ({ register, left }) => register - left,
};

/** The reverse: what becomes of a size when the registers change. */
export const sizeAfterChange: Formula<'size' | 'change' | 'sides' | 'sense'> = {
  name: say('accuracy.size-after-change')`size after a change of the registers`,
  text: say('accuracy.size-after-change.by')`size = size before + sense · sides · change; sense 1 for a part, -1 for an opening`,
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

const names = phrases('measured-size', {
  measured: (loop: string) => say`measurement of ${{ loop: contour(loop) }}`,
  temperature: (loop: string) => say`temperature of ${{ loop: contour(loop) }} when measured`,
  size: (loop: string) => say`size of ${{ loop: contour(loop) }} at 20 °C`,
  drawn: (loop: string) => say`nominal size of ${{ loop: contour(loop) }}`,
  left: (loop: string) => say`stock left per side on ${{ loop: contour(loop) }}`,
  before: (register: number) => say`old register ${{ register: term(`D${register}`) }}`,
  corrected: (register: number) => say`corrected register ${{ register: term(`D${register}`) }}`,
});

/** Reads a size in the shop: a micrometre; a hand on the part warms it by about a degree. */
const USUAL = { doubt: 0.001, temperatureDoubt: 1 } as const;

export const deviationOfMeasured = (measured: Measured, expansion: Figure): Deviation => {
  const leaf = leafOf(measured);
  const size = apply(
    sizeAtReference,
    {
      size: leaf('measured', names.measured(measured.loop), measured.size, 'mm', measured.doubt ?? USUAL.doubt),
      expansion,
      temperature: leaf(
        'temperature',
        names.temperature(measured.loop),
        measured.temperature,
        '°C',
        measured.temperatureDoubt ?? USUAL.temperatureDoubt,
      ),
    },
    { key: keyOf(measured, 'size'), name: names.size(measured.loop) },
  );
  const left = apply(
    metalLeft,
    {
      size,
      expected: leaf('expected', names.drawn(measured.loop), measured.expected, 'mm', 0),
      sides: leaf('sides', say('accuracy.sides')`cut faces`, measured.sides, '1', 0),
      sense: leaf('sense', say('accuracy.sense')`sense`, senseOfSize(measured.kept), '1', 0),
    },
    { key: keyOf(measured, 'left'), name: names.left(measured.loop) },
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
      name: names.before(pass.register),
      value: before,
      unit: 'mm',
      basis: 'counted',
      source: saidBy.program,
    });
    const after = apply(
      correctedRegister,
      { register: set, left },
      { key: `${key}.register.${pass.register}`, name: names.corrected(pass.register) },
    );
    return { pass: pass.number, register: pass.register, before, after };
  });

/** The size, mm at 20 °C, that a contour has after its registers change by `change` mm. */
export const sizeAfter = ({ measured, size }: Deviation, change: number): number =>
  sizeAfterChange.compute({ size: size.value, change, sides: measured.sides, sense: senseOfSize(measured.kept) });

const keyOf = ({ loop }: Measured, what: string): string => `correct.${loop}.${what}`;

const leafOf =
  (measured: Measured) =>
  (what: string, name: Text, value: number, unit: Figure['unit'], deviation: number): Figure =>
    given({
      key: keyOf(measured, what),
      name,
      value,
      unit,
      deviation,
      basis: what === 'expected' ? 'drawing' : 'measured',
      source: what === 'expected' ? saidBy.drawing : saidBy.measurer,
    });
