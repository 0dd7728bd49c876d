/** Wires as shops run them: speed, tension and density, from memory. */
import { there } from '../../../test/there.ts';
import type { CheckRow } from '../../quantity/check.ts';
import { wires } from './wires.ts';

/** Wire, speed m/min, tension N, density g/cm³. */
const REMEMBERED = `
brass-0.30 10 16 8.5 | brass-0.25 10 12 8.5 | brass-0.20 9 8.5 8.5 | brass-0.15 8 5 8.5 | brass-0.10 7 2.5 8.5 | coated-brass-0.30 10 16 8.5 |
coated-brass-0.25 10 12 8.5 | coated-brass-0.20 9 8.5 8.5 | coated-brass-0.15 8 5 8.5 | coated-brass-0.10 7 2.5 8.5 | molybdenum-0.10 6 5.5 10.22 |
molybdenum-0.07 6 2.8 10.22 | tungsten-0.05 6 2.2 19.3 | tungsten-0.03 6 0.9 19.3`;

const KEYS = ['speed', 'tension', 'density'] as const;
const UNITS = { speed: 'm/min', tension: 'N', density: 'g/cm³' } as const;

/** Speeds and tensions are a matter of taste, densities are not. */
const SHARES = { speed: 0.2, tension: 0.2, density: 0.02 } as const;

export const checks: readonly CheckRow[] = REMEMBERED.trim()
  .split(/\s*\|\s*/)
  .flatMap((text) => {
    const [id = '', ...values] = text.split(' ');
    return KEYS.map((key, i): CheckRow => {
      const value = there(values[i]);
      return {
        id: `F-10-${id}-${key}`,
        source: 'starting-model',
        place: 'wires as shops run them',
        how: 'memory',
        question: `${key} of ${id}, ${UNITS[key]}`,
        value,
        ours: () => there(wires.find((w) => w.id === id))[key],
        wider: { tolerance: Number(value) * SHARES[key], reason: 'shops differ by as much' },
      };
    });
  });
