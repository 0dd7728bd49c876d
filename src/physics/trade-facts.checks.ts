/** The starting model against what everybody in the trade knows, without a source. */

import type { CheckRow } from '../quantity/check.ts';
import { rqFromRa, rqPerRa } from '../quantity/finish.ts';
import { neighbours } from '../sequence/sequence.ts';
import { all, conditions, diameters, energies, heights, model, plain, yes } from './cases.fixture.ts';
import { checkCut } from './cut/check-cut.ts';
import { standardMachine } from './cut/machine.ts';
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

const practice = (id: string, question: string, ours: () => string): CheckRow => ({
  id: `CP-${id}`,
  source: 'common-practice',
  place: id,
  question,
  printed: 'yes',
  ours,
});

const refused = (diameter: number): boolean => checkCut({ ...conditions({ wire: plain(diameter) }) }).some((f) => f.severity === 'refusal');

export const checks: readonly CheckRow[] = [
  practice('wire-range', 'are wires from 0.025 to 0.356 mm accepted, and those just outside refused?', () =>
    yes(!refused(wireRange.low) && !refused(0.356) && diameters.every((d) => !refused(d)) && refused(0.0249) && refused(0.3561)),
  ),
  practice('finish-15-microinch', 'is a finish better than 15 µin RMS reached by skims in steel?', () =>
    yes(standardMachine.energySettings.some((e) => rqFromRa.compute({ ra: model().ra(e), ratio: rqPerRa.gaussian }) < 15 * 0.0254)),
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
  practice('same-finish-at-any-height', 'is Ra the same at 10 mm and at 1,000 mm height?', () =>
    yes(energies.every((e) => model({ height: 10 }).ra(e) === model({ height: 1000 }).ra(e))),
  ),
  practice('gap-positive', 'is the gap larger than 0 in every pass of every wire?', () =>
    yes(diameters.every((d) => standardMachine.energySettings.every((e) => model({ wire: plain(d) }).gap(e) > 0))),
  ),
  practice('more-passes-never-worse', 'do further passes never leave a worse finish or form?', () =>
    yes(
      all(energies, (a, b) => model().ra(b) <= model().ra(a)) === 'yes' &&
        heights.every((height) => {
          const m = model({ height });
          return m.formErrorAfter(m.formErrorStart) <= m.formErrorStart;
        }),
    ),
  ),
  practice('skim-takes-damage', 'does every skim take at least the damage of the pass before?', () =>
    yes(energies.every((e) => model().stock(e, 0) * 1000 >= model().damage(e) * (1 - 1e-12))),
  ),
  practice('non-conductor-refused', 'are ceramics, glass and plastics refused?', () =>
    yes(['alumina', 'zirconia', 'glass', 'acrylic', 'nylon'].every((m) => findMaterial(m).kind === 'non-conductor')),
  ),
  practice('steel-grows', 'does 100 mm of steel grow about 1.15 µm per degree?', () =>
    yes(['4140', 'o1', 'a2', 's7'].every((m) => Math.abs(conditions({ material: m }).material.expansion.value * 0.1 - 1.15) < 0.12)),
  ),
];
