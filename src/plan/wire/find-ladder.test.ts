/** The pass ladder is the cheapest there is, and says the best where there is none. */
import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { cutModel } from '../../physics/cut/model.ts';
import { questionFor } from '../plan.fixture.ts';
import { conditionsOf } from './choose-wire.ts';
import { deviationNow } from './deviation-of-passes.ts';
import { findLadder } from './find-ladder.ts';

const question = questionFor([], { height: 50 });
const wire = there(question.wires.find((w) => w.id === 'brass-0.25'));
const conditions = conditionsOf(wire, question);
const ladder = (finish: number, tolerance = 0.02) => findLadder(conditions, { finish, tolerance });

describe('the pass ladder', () => {
  it.each([
    [1.6, 2],
    [0.8, 3],
    [0.4, 5],
    [0.2, 6],
  ])('with 0.25 wire in 50 mm steel reaches Ra %s in %s passes', (finish, passes) => {
    const found = ladder(finish);
    expect(found.kind === 'found' && found.energies.length).toBe(passes);
  });

  it('is no dearer than any other sequence over a few settings', () => {
    const machine = { ...conditions.machine, energySettings: [1, 0.8, 0.6, 0.4, 0.3, 0.2] };
    const few = { ...conditions, machine };
    const model = cutModel(few);
    const asked = { finish: 0.9, tolerance: 0.008 };
    let best = Number.POSITIVE_INFINITY;
    for (let choice = 0; choice < 32; choice += 1) {
      const energies = [1, ...machine.energySettings.slice(1).filter((_, i) => (choice >> i) & 1)];
      let [minutes, formError] = [1 / model.roughFeed, model.formErrorStart];
      energies.slice(1).forEach((e, i) => {
        minutes += 1 / model.skimFeed(e, model.stock(there(energies[i]), formError));
        formError = model.formErrorAfter(formError);
      });
      const last = there(energies.at(-1));
      if (model.ra(last) <= asked.finish && deviationNow(few, formError, model.gap(last)) <= asked.tolerance)
        best = Math.min(best, minutes);
    }
    const found = findLadder(few, asked);
    expect(found.kind === 'found' && found.minutesPerMillimetre).toBeCloseTo(best, 12);
  });

  it('says the best there is where finish or tolerance cannot be had', () => {
    const finest = ladder(0.05);
    expect(finest.kind).toBe('finish out of reach');
    expect(finest.kind === 'finish out of reach' && finest.best).toBeCloseTo(cutModel(conditions).ra(0.05), 2);
    const closest = ladder(1.6, 0.001);
    expect(closest.kind).toBe('tolerance out of reach');
    expect(closest.kind === 'tolerance out of reach' && ladder(1.6, closest.best * 1.0001).kind).toBe('found');
  });

  it('costs no less for a better finish or a closer tolerance', () => {
    const minutes = (finish: number, tolerance: number): number => {
      const found = ladder(finish, tolerance);
      return found.kind === 'found' ? found.minutesPerMillimetre : Number.POSITIVE_INFINITY;
    };
    expect([3, 1.6, 0.8, 0.4, 0.2].map((f) => minutes(f, 0.02))).toEqual(
      [3, 1.6, 0.8, 0.4, 0.2].map((f) => minutes(f, 0.02)).toSorted((a, b) => a - b),
    );
    expect([0.03, 0.01, 0.005, 0.003].map((t) => minutes(3, t))).toEqual(
      [0.03, 0.01, 0.005, 0.003].map((t) => minutes(3, t)).toSorted((a, b) => a - b),
    );
  });
});
