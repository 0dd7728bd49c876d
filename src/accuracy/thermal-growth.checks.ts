/** Growth with temperature and constants of materials against what others print (CHECKS C). */

import type { Material } from '../physics/material/material.ts';
import { materials } from '../physics/material/materials.ts';
import type { CheckRow } from '../quantity/check.ts';
import { thermalGrowth } from './thermal-growth.ts';

const material = (id: string): Material => {
  const found = materials.find((m) => m.id === id);
  if (found === undefined) throw new Error(`no material ${id}`);
  return found;
};
const growth = (expansion: number, length: number, rise: number): number => thermalGrowth.compute({ expansion, length, rise });

export const checks: readonly CheckRow[] = [
  {
    id: 'C-01',
    source: 'iso-1',
    place: 'worked from the definition',
    how: 'recomputed',
    question: 'growth of 100 mm of steel at 11.5e-6/K by 5 K, µm',
    value: '5.750',
    ours: () => growth(11.5, 100, 5),
  },
  {
    id: 'C-01b',
    source: 'iso-1',
    place: 'worked from the definition',
    how: 'recomputed',
    question: 'growth of 250 mm of aluminium at 23.6e-6/K by 3 K, µm',
    value: '17.7',
    ours: () => growth(23.6, 250, 3),
  },
  {
    id: 'C-02',
    source: 'ti-6al-4v-pages',
    place: 'expansion 8.6e-6/K, 0 to 100 °C',
    how: 'secondary page',
    question: 'growth of 200 mm of Ti-6Al-4V by -4 K, µm, with our expansion',
    value: '-6.880',
    ours: () => growth(material('ti-6al-4v').expansion.value, 200, -4),
  },
  {
    id: 'C-03a',
    source: 'alloy-625-paper',
    place: 'table 3',
    how: 'printed and seen',
    question: 'conductivity of alloy 625, W/mK',
    value: '9.8',
    ours: () => material('n06625').conductivity.value,
  },
  {
    id: 'C-03b',
    source: 'alloy-625-paper',
    place: 'table 3',
    how: 'printed and seen',
    question: 'specific heat of alloy 625, J/kgK',
    value: '410',
    ours: () => material('n06625').heat.value,
  },
  {
    id: 'C-03c',
    source: 'alloy-625-paper',
    place: 'table 3',
    how: 'printed and seen',
    question: 'density of alloy 625, g/cm³ (value 8440 kg/m³)',
    value: '8.440',
    ours: () => material('n06625').density.value,
  },
  {
    id: 'C-03d',
    source: 'alloy-625-paper',
    place: 'table 3',
    how: 'printed and seen',
    question: 'melting point of alloy 625, K',
    value: '1623',
    ours: () => material('n06625').solidus.value + 273.15,
    limits: { low: 1553, high: 1623, reason: 'one temperature for a range of melting; ours is where it begins, at most 70 K below' },
  },
  {
    id: 'C-03e',
    source: 'superalloy-simulation-2015',
    place: 'table 1, polynomial at 20 °C',
    how: 'recomputed',
    question: 'conductivity of alloy 718, W/mK',
    value: '8.58',
    ours: () => material('n07718').conductivity.value,
    limits: { low: 8.58, high: 11.6, reason: 'handbooks print 11.4, a third above the paper: published values of one alloy differ so' },
  },
  {
    id: 'C-03f',
    source: 'superalloy-simulation-2015',
    place: 'table 1, polynomial at 20 °C',
    how: 'recomputed',
    question: 'specific heat of alloy 718, J/kgK',
    value: '434',
    ours: () => material('n07718').heat.value,
    wider: { tolerance: 22, reason: '5 % is the spread of published specific heats' },
  },
  {
    id: 'C-04a',
    source: 'ti-6al-4v-paper',
    place: 'table 5',
    how: 'printed and seen',
    question: 'density of Ti-6Al-4V, g/cm³',
    value: '4.5',
    ours: () => material('ti-6al-4v').density.value,
    wider: { tolerance: 0.08, reason: 'the paper rounds to one decimal; a second page prints 4.42' },
  },
  {
    id: 'C-04b',
    source: 'ti-6al-4v-pages',
    place: 'density',
    how: 'secondary page',
    question: 'density of Ti-6Al-4V, g/cm³',
    value: '4.42',
    ours: () => material('ti-6al-4v').density.value,
    wider: { tolerance: 0.0442, reason: 'pages print 4.42 to 4.43: 1 % is the band of published densities' },
  },
  {
    id: 'C-04c',
    source: 'ti-6al-4v-paper',
    place: 'table 5',
    how: 'printed and seen',
    question: 'conductivity of Ti-6Al-4V, W/mK',
    value: '6.6',
    ours: () => material('ti-6al-4v').conductivity.value,
    wider: { tolerance: 0.99, reason: 'published conductivities of one alloy differ by 15 %' },
  },
  {
    id: 'C-04d',
    source: 'ti-6al-4v-paper',
    place: 'table 5',
    how: 'printed and seen',
    question: 'melting point of Ti-6Al-4V, K',
    value: '1933',
    ours: () => material('ti-6al-4v').solidus.value + 273.15,
    wider: { tolerance: 60, reason: 'one temperature is printed for a range of melting that is 56 K wide; ours is where it begins' },
  },
  {
    id: 'C-04e',
    source: 'ti-6al-4v-paper',
    place: 'table 5',
    how: 'printed and seen',
    question: 'expansion of Ti-6Al-4V, 1e-6/K',
    value: '9.4',
    ours: () => material('ti-6al-4v').expansion.value,
    limits: {
      low: 8.5,
      high: 9.4,
      reason: 'the paper’s is a mean up to high temperature; pages print 8.6 up to 100 °C and 9.2 up to 300 °C',
    },
  },
  {
    id: 'C-04f',
    source: 'ti-6al-4v-pages',
    place: 'resistivity 170 µΩcm',
    how: 'secondary page',
    question: 'resistivity of Ti-6Al-4V, µΩm',
    value: '1.70',
    ours: () => material('ti-6al-4v').resistivity.value,
  },
];
