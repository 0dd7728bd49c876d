/** Wires, heights and machines that cannot be are refused with a sentence before any number is given. */

import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { remedyTextOf, sentenceOf } from '../../text/finding.fixture.ts';
import { findMaterial } from '../material/find-material.ts';
import { materials } from '../material/materials.ts';
import { wireSchema } from '../wire/wire.ts';
import { wires } from '../wire/wires.ts';
import { checkCut } from './check-cut.ts';
import { machineSchema, standardMachine } from './machine.ts';

const answer = findMaterial('d2');
const material = answer.kind === 'material' ? answer.material : there(materials[0]);
const codes = (diameter: number, height: number): readonly string[] =>
  checkCut({ wire: { ...there(wires[1]), diameter }, material, height, machine: standardMachine }).map((f) => f.code);

describe('whether a cut may be asked about', () => {
  it.each([
    [0.25, 50, []],
    [0.25, 300, []],
    [0.25, 0.5, ['height-hardly-known']],
    [0.25, 300.1, ['height-out-of-range']],
    [0.25, 0, ['height-out-of-range']],
    [0.25, Number.NaN, ['height-out-of-range']],
    [0.01, 50, ['wire-out-of-range']],
    [Number.NaN, 50, ['wire-out-of-range']],
    [0.05, 50, ['wire-not-for-machine']],
    [0.4, -1, ['wire-out-of-range', 'height-out-of-range']],
  ])('answers for wire %f and height %f', (diameter, height, expected) => {
    expect(codes(diameter, height)).toEqual(expected);
  });
});

describe('materials found by key', () => {
  it('knows at least 24 materials, each with constants that are numbers and with a source', () => {
    expect(materials.length).toBeGreaterThanOrEqual(24);
    for (const m of materials) {
      for (const f of [m.density, m.expansion, m.solidus, m.conductivity, m.heat, m.fusion, m.resistivity, m.index, m.fineness]) {
        expect(f.value).toBeGreaterThan(0);
        expect(f.source).not.toBe('');
        expect(f.low).toBeLessThan(f.high);
      }
    }
    expect(new Set(materials.map((m) => m.id)).size).toBe(materials.length);
  });

  it.each(['d2', 'D2', ' WC_6Co ', 'ti 6al 4v', 'tool steel D2'])('finds %s', (id) => {
    expect(findMaterial(id).kind).toBe('material');
  });

  it('names the reason for a non-conductor and offers near keys for an unknown one', () => {
    const alumina = findMaterial('alumina');
    if (alumina.kind !== 'non-conductor') throw new Error(alumina.kind);
    expect(sentenceOf(alumina.finding)).toBe(
      'alumina ceramic cannot be cut by wire: its resistivity is about 10^14 ohm·cm and a spark needs less than about 100 ohm·cm.',
    );
    const typo = findMaterial('h12');
    if (typo.kind !== 'unknown') throw new Error(typo.kind);
    expect(remedyTextOf(typo.finding)).toContain('h13');
    const empty = findMaterial('');
    if (empty.kind !== 'unknown') throw new Error(empty.kind);
    expect(remedyTextOf(empty.finding)).toContain('Known keys');
  });

  it.each([
    ['ti-6al-4v', 'combustible fines'],
    ['az31b', 'combustible fines'],
    ['6061', 'combustible fines'],
    ['zirconium', 'combustible fines'],
    ['wc-6co', 'cobalt leaching'],
    ['n07718', 'recast layer'],
  ] as const)('warns of %s: %s', (id, caution) => {
    const found = findMaterial(id);
    if (found.kind !== 'material') throw new Error(found.kind);
    expect(found.material.cautions).toContain(caution);
  });
});

describe('what a shop file may say of wires and machines', () => {
  it('accepts the house wires and machine', () => {
    for (const w of wires) expect(wireSchema.parse(w)).toEqual(w);
    expect(machineSchema.parse(standardMachine)).toEqual(standardMachine);
  });

  it.each([
    [{ ...standardMachine, energySettings: [1, 0.5, 0.5] }],
    [{ ...standardMachine, energySettings: [0.9, 0.5] }],
    [{ ...standardMachine, energySettings: [1, 0.01] }],
    [{ ...standardMachine, wire: { low: 0.3, high: 0.1 } }],
    [{ ...standardMachine, height: 0 }],
    [{ ...standardMachine, servoLimit: Number.POSITIVE_INFINITY }],
  ])('refuses a machine that cannot be: case %#', (machine) => {
    expect(machineSchema.safeParse(machine).success).toBe(false);
  });

  it.each([0.0249, 0.3561, Number.NaN])('refuses a wire of %f mm', (diameter) => {
    expect(wireSchema.safeParse({ ...wires[0], diameter }).success).toBe(false);
  });
});
