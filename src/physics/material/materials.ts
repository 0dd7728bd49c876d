/** The work materials the house knows, each constant a Figure with its spread, basis and source. */

import { type Figure, given } from '../../quantity/figure.ts';
import { sideBySide } from '../../sequence/sequence.ts';
import type { Unit } from '../../text/unit.ts';
import type { Family, Material, NonConductor } from './material.ts';
import { type MaterialRow, materialRows, nonConductorRows } from './material-table.ts';

interface Property {
  readonly key: 'density' | 'expansion' | 'solidus' | 'conductivity' | 'heat' | 'fusion' | 'resistivity';
  readonly words: string;
  readonly unit: Unit;
  /** One standard deviation as a share of the value; published values of one alloy differ by twice that. */
  readonly spread: number;
}

const properties: readonly Property[] = [
  { key: 'density', words: 'density', unit: 'g/cm³', spread: 0.005 },
  { key: 'expansion', words: 'thermal expansion', unit: '1e-6/K', spread: 0.03 },
  { key: 'solidus', words: 'melting begins', unit: '°C', spread: 0.01 },
  { key: 'conductivity', words: 'heat conductivity', unit: 'W/mK', spread: 0.075 },
  { key: 'heat', words: 'specific heat', unit: 'J/kgK', spread: 0.05 },
  { key: 'fusion', words: 'heat of fusion', unit: 'kJ/kg', spread: 0.1 },
  { key: 'resistivity', words: 'resistivity', unit: 'µΩm', spread: 0.06 },
];

/** How well the index of a family is known, one standard deviation as a share; tool steel is the yardstick itself. */
const indexSpread = (row: MaterialRow): number => {
  if (row.family === 'tool steel') return 0.03;
  return hardlyCut.includes(row.family) ? 0.25 : 0.1;
};

const hardlyCut: readonly Family[] = ['refractory', 'pcd', 'magnesium', 'zirconium'];

const constant = (row: MaterialRow, property: Property, value: number): Figure => {
  const { key, words, unit, spread } = property;
  const weak = row.weak?.some((w) => w === key) === true;
  const seen = row.seen?.of.some((s) => s === key) === true ? row.seen.source : undefined;
  return given({
    key: `material.${row.id}.${key}`,
    name: `${words} of ${row.name}`,
    value,
    unit,
    deviation: value * spread * (weak ? 3 : 1),
    basis: seen === undefined ? 'assumed' : 'published',
    source: seen ?? 'material-handbooks',
    warnings: weak ? [`the ${words} of ${row.name} is weakly known`] : [],
  });
};

const material = (row: MaterialRow): Material => {
  const of = Object.fromEntries(sideBySide(properties, row.constants).map(([p, value]) => [p.key, constant(row, p, value)])) as Record<
    Property['key'],
    Figure
  >;
  const factor = (key: 'index' | 'fineness', name: string, value: number, deviation: number): Figure =>
    given({ key: `material.${row.id}.${key}`, name, value, unit: '1', deviation, basis: 'assumed', source: 'starting-model' });
  return {
    id: row.id,
    name: row.name,
    family: row.family,
    ...of,
    index: factor('index', `cutting rate of ${row.name} against tool steel`, row.index, row.index * indexSpread(row)),
    fineness: factor('fineness', `Ra in ${row.name} against tool steel`, row.family === 'carbide' ? 0.7 : 1, 0.05),
    cautions: row.cautions ?? [],
  };
};

export const materials: readonly Material[] = materialRows.map(material);

export const nonConductors: readonly NonConductor[] = nonConductorRows.map(([id, name, resistivity]) => ({
  id,
  name,
  resistivity: given({
    key: `material.${id}.resistivity`,
    name: `resistivity of ${name}`,
    value: resistivity,
    unit: 'Ωm',
    deviation: resistivity / 2,
    basis: 'assumed',
    source: 'material-handbooks',
  }),
}));
