/** Ladders of passes come out as the starting model was written down, and each row can be asked why. */

import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { sideBySide } from '../../sequence/sequence.ts';
import { findMaterial } from '../material/find-material.ts';
import { wires } from '../wire/wires.ts';
import type { CutConditions } from './conditions.ts';
import { standardMachine } from './machine.ts';
import { type CutModel, cutModel } from './model.ts';
import { ladderRows } from './pass-rows.ts';

const steel = (): CutConditions => {
  const answer = findMaterial('d2');
  if (answer.kind !== 'material') throw new Error('d2 must be known');
  const wire = there(wires.find((w) => w.id === 'brass-0.25'));
  return { wire, material: answer.material, height: 50, flush: 'sealed', machine: standardMachine };
};

interface Ladder {
  readonly passes: number;
  /** Minutes per mm along the contour. */
  readonly time: number;
}

/** The cheapest ladder for a wanted Ra: least time to each setting after each number of passes, since form error follows from that number. */
const cheapest = (model: CutModel, settings: readonly number[], ra: number): Ladder => {
  let row = new Map([[1, 1 / model.roughFeed]]);
  let formError = model.formErrorStart;
  let best: Ladder = { passes: 0, time: Number.POSITIVE_INFINITY };
  for (let passes = 1; passes <= 10; passes++) {
    const next = new Map<number, number>();
    for (const [energy, time] of row) {
      if (model.ra(energy) <= ra) best = time < best.time ? { passes, time } : best;
      const stock = model.stock(energy, formError);
      for (const e of settings.filter((r) => r < energy)) {
        next.set(e, Math.min(next.get(e) ?? Number.POSITIVE_INFINITY, time + 1 / model.skimFeed(e, stock)));
      }
    }
    formError = model.formErrorAfter(formError);
    row = next;
  }
  return best;
};

describe('the pass ladder that the starting model supports', () => {
  it.each([
    [1.6, 2, 1.3],
    [0.8, 3, 1.9],
    [0.4, 5, 3.2],
    [0.2, 6, 6.5],
  ])('reaches Ra %f in %i passes and %f times the rough time', (ra, passes, times) => {
    const model = cutModel(steel());
    const ladder = cheapest(model, standardMachine.energySettings, ra);
    expect(ladder.passes).toBe(passes);
    expect((ladder.time * model.roughFeed).toFixed(1)).toBe(times.toFixed(1));
  });

  it('gives as Figures what the plain model gives as numbers', () => {
    const conditions = steel();
    const model = cutModel(conditions);
    const energies = [1, 0.562, 0.282, 0.141] as const;
    const rows = ladderRows(conditions, energies);
    let formError = model.formErrorStart;
    let before: number | undefined;
    for (const [row, e] of sideBySide(rows, energies)) {
      expect(row.gap.value).toBeCloseTo(model.gap(e), 12);
      expect(row.ra.value).toBeCloseTo(model.ra(e), 12);
      expect(row.damage.value).toBeCloseTo(model.damage(e), 12);
      if (before !== undefined) {
        const stock = model.stock(before, formError);
        expect(row.taken.value).toBeCloseTo(stock, 12);
        expect(row.feed.value).toBeCloseTo(model.skimFeed(e, stock), 12);
        formError = model.formErrorAfter(formError);
      } else expect(row.feed.value).toBeCloseTo(model.roughFeed, 12);
      expect(row.formError.value).toBeCloseTo(formError, 12);
      before = e;
    }
  });
});
