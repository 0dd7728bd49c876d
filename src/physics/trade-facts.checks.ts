/** The starting model against what everybody in the trade knows, without a source. */

import { thermalGrowth } from '../accuracy/thermal-growth.ts';
import type { CheckRow } from '../quantity/check.ts';
import { neighbours } from '../sequence/sequence.ts';
import { conditions, diameters, energies, heights, model, plain, yes } from './cases.fixture.ts';
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
const finerNever = (worse: (fine: Wire, thick: Wire) => boolean): string =>
  yes(kinds.every((k) => neighbours(family(k)).every(([fine, thick]) => worse(fine, thick))));

const practice = (id: string, question: string, ours: () => number | string, value = 'yes'): CheckRow => ({
  id: `CP-${id}`,
  source: 'common-practice',
  place: id,
  how: 'memory',
  question,
  value,
  ours,
});

const growth = (material: string): number =>
  thermalGrowth.compute({ expansion: conditions({ material }).material.expansion.value, length: 100, rise: 1 });

const refused = (diameter: number): boolean => checkCut({ ...conditions({ wire: plain(diameter) }) }).some((f) => f.severity === 'refusal');

export const checks: readonly CheckRow[] = [
  practice('wire-range', 'are wires from 0.025 to 0.356 mm accepted, and those just outside refused?', () =>
    yes(!refused(wireRange.low) && !refused(0.356) && diameters.every((d) => !refused(d)) && refused(0.0249) && refused(0.3561)),
  ),
  practice('finer-never-faster', 'is a finer wire never faster?', () =>
    yes(
      heights.every(
        (height) => finerNever((fine, thick) => model({ wire: fine, height }).rate <= model({ wire: thick, height }).rate) === 'yes',
      ),
    ),
  ),
  practice('finer-never-cheaper', 'is a finer wire never cheaper per area, at machine rates of 30 to 120 an hour?', () =>
    yes(
      [3000, 6000, 12000].every((rate) =>
        heights.every((h) => finerNever((fine, thick) => cost(fine, rate, h) >= cost(thick, rate, h)) === 'yes'),
      ),
    ),
  ),
  practice('sealed-never-slower', 'are sealed nozzles never slower than lifted ones?', () =>
    yes(
      heights.every((height) => {
        const sealed = model({ height, flush: 'sealed' });
        const one = model({ height, flush: 'one side' });
        const lifted = model({ height, flush: 'lifted' });
        return (
          sealed.rate >= one.rate && one.rate >= lifted.rate && energies.every((e) => sealed.skimFeed(e, 0.01) >= lifted.skimFeed(e, 0.01))
        );
      }),
    ),
  ),
  practice('non-conductor-refused', 'are ceramics, glass and plastics refused?', () =>
    yes(['alumina', 'zirconia', 'glass', 'acrylic', 'nylon'].every((m) => findMaterial(m).kind === 'non-conductor')),
  ),
  ...['4140', 'o1', 'a2', 's7'].map((material) => ({
    ...practice(`steel-grows-${material}`, `growth of 100 mm of ${material} by one degree, µm`, () => growth(material), '1.15'),
    wider: { tolerance: 0.12, reason: 'steels differ by a tenth' },
  })),
];
