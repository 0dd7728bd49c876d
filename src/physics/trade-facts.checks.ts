/** The starting model against what everybody in the trade knows, without a source. */

import { thermalGrowth } from '../accuracy/thermal-growth.ts';
import type { CheckRow } from '../quantity/check.ts';
import { neighbours } from '../sequence/sequence.ts';
import { conditions, diameters, heights, model, plain, yes } from './cases.fixture.ts';
import { checkCut } from './cut/check-cut.ts';
import { findMaterial } from './material/find-material.ts';
import { wireRange } from './starting-model.ts';
import type { Wire } from './wire/wire.ts';
import { cuttingMinuteCost } from './wire/wire-use.ts';
import { wires } from './wire/wires.ts';

/** Minor money units per square metre with a machine rate from cheap to dear. */
const cost = (wire: Wire, machine: number, height: number): number =>
  (cuttingMinuteCost.compute({ ...wire, machine }) / model({ wire, height }).rate) * 1e6;

const kinds = [...new Set(wires.map((w) => w.kind))];
const family = (kind: Wire['kind']): readonly Wire[] => wires.filter((w) => w.kind === kind).sort((a, b) => a.diameter - b.diameter);
/** Of each wire and the next thicker one of its kind. */
const pairs = kinds.flatMap((k) => neighbours(family(k)));
const greatest = (ratio: (fine: Wire, thick: Wire) => number): number => Math.max(...pairs.map(([fine, thick]) => ratio(fine, thick)));
const least = (ratio: (fine: Wire, thick: Wire) => number): number => Math.min(...pairs.map(([fine, thick]) => ratio(fine, thick)));

const practice = (id: string, question: string, ours: () => number | string, value = 'yes'): CheckRow => ({
  id: `CP-${id}`,
  source: 'common-practice',
  place: id,
  how: 'memory',
  question,
  value,
  ours,
});

const within = (id: string, question: string, value: string, [low, high]: readonly [number, number], ours: () => number): CheckRow => ({
  ...practice(id, question, ours, value),
  limits: { low, high, reason: 'what the trade agrees on' },
});

const growth = (material: string): number =>
  thermalGrowth.compute({ expansion: conditions({ material }).material.expansion.value, length: 100, rise: 1 });

const refused = (diameter: number): boolean => checkCut({ ...conditions({ wire: plain(diameter) }) }).some((f) => f.severity === 'refusal');

export const checks: readonly CheckRow[] = [
  practice('wire-range', 'are wires from 0.025 to 0.356 mm accepted, and those just outside refused?', () =>
    yes(!refused(wireRange.low) && !refused(0.356) && diameters.every((d) => !refused(d)) && refused(0.0249) && refused(0.3561)),
  ),
  within('finer-never-faster', 'greatest rate of a finer wire of the house against the next thicker one', '1', [0, 1], () =>
    greatest((fine, thick) =>
      Math.max(...heights.map((height) => model({ wire: fine, height }).rate / model({ wire: thick, height }).rate)),
    ),
  ),
  within('finer-never-cheaper', 'least cost by area of a finer wire against the next thicker one, at 30 to 120 an hour', '1', [1, 10], () =>
    least((fine, thick) =>
      Math.min(...[3000, 6000, 12000].flatMap((rate) => heights.map((h) => cost(fine, rate, h) / cost(thick, rate, h)))),
    ),
  ),
  within(
    'flush-one-side',
    'rate with one nozzle off the work against both on it',
    '0.75',
    [0.65, 0.85],
    () => model({ flush: 'one side' }).rate / model().rate,
  ),
  within(
    'flush-lifted',
    'rate with both nozzles off the work against both on it',
    '0.5',
    [0.4, 0.6],
    () => model({ flush: 'lifted' }).rate / model().rate,
  ),
  practice('non-conductor-refused', 'are ceramics, glass and plastics refused?', () =>
    yes(['alumina', 'zirconia', 'glass', 'acrylic', 'nylon'].every((m) => findMaterial(m).kind === 'non-conductor')),
  ),
  ...['4140', 'o1', 'a2', 's7'].map((material) => ({
    ...practice(`steel-grows-${material}`, `growth of 100 mm of ${material} by one degree, µm`, () => growth(material), '1.15'),
    wider: { tolerance: 0.12, reason: 'steels differ by a tenth' },
  })),
];
