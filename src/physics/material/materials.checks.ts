/** Constants of the materials of the house against the handbooks as they are remembered (CHECKS C), and rates against tool steel as shops say them. */

import { there } from '../../../test/there.ts';
import type { CheckRow } from '../../quantity/check.ts';
import type { Material } from './material.ts';
import { materials } from './materials.ts';

/** Density g/cm³, expansion 1e-6/K, conductivity W/mK, specific heat J/kgK. */
const HANDBOOK = `
a2 7.86 10.7 25 460 | d2 7.70 10.4 20.5 460 | h13 7.78 10.7 26 460 | s7 7.83 12.4 29.5 460 | o1 7.85 11.2 31.5 460 | 4140 7.85 12.3 42.6 473 |
s17400 7.80 10.8 18 460 | 304 8.00 17.2 16.2 500 | 316 8.00 15.9 16.3 500 | wc-6co 14.9 5.0 90 205 | wc-10co 14.5 5.5 85 210 | wc-15co 14.0 6.1 75 220 |
6061 2.70 23.6 167 896 | 7075 2.81 23.4 130 960 | ti-6al-4v 4.43 8.6 6.95 543 | n07718 8.19 13.0 11.4 435 | n06625 8.44 12.8 9.8 410 |
n10276 8.89 11.2 10 427 | copper 8.91 17.0 388 385 | brass 8.44 20.5 118 380 | graphite 1.82 6 110 710 | molybdenum 10.22 4.95 138 251 |
tungsten 19.3 4.5 173 132 | pcd 4.05 4 500 645 | az31b 1.77 26 96 1025 | zirconium 6.50 5.8 22 285`;

/** Bands that published values of one material keep, as a share: density, expansion, conductivity, heat. */
const BANDS = [0.01, 0.06, 0.15, 0.1] as const;
const KEYS = ['density', 'expansion', 'conductivity', 'heat'] as const;

const RATES = `
4140 1 | s17400 0.95 | 304 0.95 | 316 0.95 | wc-6co 0.45 | wc-10co 0.45 | wc-15co 0.45 | 6061 1.9 | 7075 1.9 | ti-6al-4v 0.75 | n07718 0.85 |
n06625 0.85 | n10276 0.85 | copper 0.75 | brass 1.2 | graphite 0.5 | molybdenum 0.7 | tungsten 0.5 | pcd 0.12 | az31b 2 | zirconium 0.7`;

const rowsOf = (table: string): readonly (readonly string[])[] =>
  table
    .trim()
    .split(/\s*\|\s*/)
    .map((row) => row.split(' '));

const materialOf = (id: string): Material => there(materials.find((m) => m.id === id));

export const checks: readonly CheckRow[] = [
  ...rowsOf(HANDBOOK).flatMap(([id = '', ...values]) =>
    KEYS.map((key, i): CheckRow => {
      const value = there(values[i]);
      return {
        id: `C-06-${id}-${key}`,
        source: 'material-handbooks',
        place: 'tables of the material',
        how: 'memory',
        question: `${key} of ${id}, ${materialOf(id)[key].unit}`,
        value,
        ours: () => materialOf(id)[key].value,
        wider: { tolerance: Number(value) * there(BANDS[i]), reason: 'published values of one material differ by as much' },
      };
    }),
  ),
  ...rowsOf(RATES).map(
    ([id = '', value = '']): CheckRow => ({
      id: `C-07-${id}`,
      source: 'starting-model',
      place: 'rates of materials',
      how: 'memory',
      question: `rate in ${id} against tool steel`,
      value,
      ours: () => materialOf(id).index.value,
      wider: { tolerance: Number(value) * 0.1, reason: 'as closely as shops agree' },
    }),
  ),
  {
    id: 'C-08',
    source: 'starting-model',
    place: 'carbide comes out finer',
    how: 'memory',
    question: 'Ra in carbide against tool steel, same pulse',
    value: '0.7',
    ours: () => materialOf('wc-10co').fineness.value,
    wider: { tolerance: 0.1, reason: 'as closely as shops agree' },
  },
];
