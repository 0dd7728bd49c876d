/** The work materials the house knows, each constant a Figure with its spread, basis and source. */

import { type Figure, given } from '../../quantity/figure.ts';
import { sideBySide } from '../../sequence/sequence.ts';
import { name as asName } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import type { Unit } from '../../text/unit.ts';
import type { Family, Material, NonConductor } from './material.ts';
import { type MaterialRow, materialRows, nonConductorRows } from './material-table.ts';

interface Property {
  readonly key: 'density' | 'expansion' | 'solidus' | 'conductivity' | 'heat' | 'fusion' | 'resistivity';
  readonly unit: Unit;
  /** One standard deviation as a share of the value; published values of one alloy differ by twice that. */
  readonly spread: number;
}

const properties: readonly Property[] = [
  { key: 'density', unit: 'g/cm³', spread: 0.005 },
  { key: 'expansion', unit: '1e-6/K', spread: 0.03 },
  { key: 'solidus', unit: '°C', spread: 0.01 },
  { key: 'conductivity', unit: 'W/mK', spread: 0.075 },
  { key: 'heat', unit: 'J/kgK', spread: 0.05 },
  { key: 'fusion', unit: 'kJ/kg', spread: 0.1 },
  { key: 'resistivity', unit: 'µΩm', spread: 0.06 },
];

/** What the constants of a material are called: 'density of 1.2379'. */
export const names = phrases('material-constant', {
  density: (material: string) => say`density of ${{ material: asName(material) }}`,
  expansion: (material: string) => say`thermal expansion of ${{ material: asName(material) }}`,
  solidus: (material: string) => say`start of melting of ${{ material: asName(material) }}`,
  conductivity: (material: string) => say`heat conductivity of ${{ material: asName(material) }}`,
  heat: (material: string) => say`specific heat of ${{ material: asName(material) }}`,
  fusion: (material: string) => say`heat of fusion of ${{ material: asName(material) }}`,
  resistivity: (material: string) => say`resistivity of ${{ material: asName(material) }}`,
  index: (material: string) => say`cutting rate of ${{ material: asName(material) }} against tool steel`,
  fineness: (material: string) => say`Ra in ${{ material: asName(material) }} against tool steel`,
});

/** How well the index of a family is known, one standard deviation as a share; tool steel is the yardstick itself. */
const indexSpread = (row: MaterialRow): number => {
  if (row.family === 'tool steel') return 0.03;
  return hardlyCut.includes(row.family) ? 0.25 : 0.1;
};

const hardlyCut: readonly Family[] = ['refractory', 'pcd', 'magnesium', 'zirconium'];

const constant = (row: MaterialRow, property: Property, value: number): Figure => {
  const { key, unit, spread } = property;
  const name = names[key](row.name);
  const weak = row.weak?.some((w) => w === key) === true;
  const seen = row.seen?.of.some((s) => s === key) === true ? row.seen.source : undefined;
  return given({
    key: `material.${row.id}.${key}`,
    name,
    value,
    unit,
    deviation: value * spread * (weak ? 3 : 1),
    basis: seen === undefined ? 'assumed' : 'published',
    source: { file: seen ?? 'material-handbooks' },
    warnings: weak ? [say('material.weakly-known')`the ${{ constant: name }} is poorly known`] : [],
  });
};

const material = (row: MaterialRow): Material => {
  const of = Object.fromEntries(sideBySide(properties, row.constants).map(([p, value]) => [p.key, constant(row, p, value)])) as Record<
    Property['key'],
    Figure
  >;
  const factor = (key: 'index' | 'fineness', name: Text, value: number, deviation: number): Figure =>
    given({ key: `material.${row.id}.${key}`, name, value, unit: '1', deviation, basis: 'assumed', source: { file: 'starting-model' } });
  return {
    id: row.id,
    formerly: row.formerly,
    name: row.name,
    family: row.family,
    ...of,
    index: factor('index', names.index(row.name), row.index, row.index * indexSpread(row)),
    fineness: factor('fineness', names.fineness(row.name), row.family === 'carbide' ? 0.7 : 1, 0.05),
    cautions: row.cautions ?? [],
  };
};

export const materials: readonly Material[] = materialRows.map(material);

export const nonConductors: readonly NonConductor[] = nonConductorRows.map(([id, name, resistivity]) => ({
  id,
  name,
  resistivity: given({
    key: `material.${id}.resistivity`,
    name: names.resistivity(name),
    value: resistivity,
    unit: 'Ωm',
    deviation: resistivity / 2,
    basis: 'assumed',
    source: { file: 'material-handbooks' },
  }),
}));
