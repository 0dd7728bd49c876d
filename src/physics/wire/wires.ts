/** The wires a shop begins with; prices are invented and only in plausible proportion to each other. */
import type { Wire } from './wire.ts';

type Row = readonly [kind: Wire['kind'], diameter: number, tension: number, speed: number, price: number, spool: number, inStock: boolean];

/** g/cm³: handbook values, from memory; coated brass counts as brass. */
const densities: Readonly<Record<Wire['kind'], number>> = {
  brass: 8.5,
  'coated brass': 8.5,
  molybdenum: 10.22,
  tungsten: 19.3,
  'steel-cored': 8.1,
};

/** Tension stays near half of what the wire stands hot; a finer wire runs slower since less heat goes into it. */
const rows: readonly Row[] = [
  ['brass', 0.3, 16, 10, 1400, 8, true],
  ['brass', 0.25, 12, 10, 1450, 8, true],
  ['brass', 0.2, 8.5, 9, 1700, 8, true],
  ['brass', 0.15, 5, 8, 2600, 5, true],
  ['brass', 0.1, 2.5, 7, 6500, 3.5, true],
  ['coated brass', 0.3, 16, 10, 1900, 8, false],
  ['coated brass', 0.25, 12, 10, 2000, 8, false],
  ['coated brass', 0.2, 8.5, 9, 2300, 8, false],
  ['coated brass', 0.15, 5, 8, 3500, 5, false],
  ['coated brass', 0.1, 2.5, 7, 8500, 3.5, false],
  ['molybdenum', 0.1, 5.5, 6, 30000, 1, false],
  ['molybdenum', 0.07, 2.8, 6, 75000, 0.5, false],
  ['tungsten', 0.05, 2.2, 6, 150000, 0.5, false],
  ['tungsten', 0.03, 0.9, 6, 420000, 0.25, false],
];

export const wires: readonly Wire[] = rows.map(([kind, diameter, tension, speed, price, spool, inStock]) => ({
  id: `${kind.replace(' ', '-')}-${diameter.toFixed(2)}`,
  name: `${diameter.toFixed(2)} mm ${kind}`,
  diameter,
  kind,
  density: densities[kind],
  tension,
  speed,
  price,
  spool,
  inStock,
}));
