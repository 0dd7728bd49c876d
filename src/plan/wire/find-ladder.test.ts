/** The pass ladder is the cheapest there is, and says the best where there is none. */
import { describe, expect, it } from 'vitest';
import { there } from '../../../test/there.ts';
import { cutModel } from '../../physics/cut/model.ts';
import { deviationOf, type Figure, given } from '../../quantity/figure.ts';
import { saidBy } from '../../quantity/source.ts';
import { lastOf } from '../../sequence/sequence.ts';
import { NOTHING } from '../../text/say.ts';
import { questionFor } from '../plan.fixture.ts';
import { conditionsOf } from './choose-wire.ts';
import { excessOf, findLadder, finishedBy, meanAimed } from './find-ladder.ts';

const question = questionFor([], { height: 50 });
const wire = there(question.wires.find((w) => w.id === 'brass-0.25'));
const conditions = conditionsOf(wire, question);
const ladder = (finish: number, tolerance = 0.02) => findLadder(conditions, { finish, finishRule: 'mean', tolerance });

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
      if (excessOf(few, finishedBy(few, model, { energy: last, formError, skims: energies.length - 1 }), asked) <= 1)
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

  it('plans the mean below the limit by the rule asked: 0.656 of 0.8 for 16 %, 0.576 for 5 %', () => {
    const asked = { finish: 0.8, tolerance: 0.02 };
    expect([meanAimed(asked, 0.2), meanAimed({ ...asked, finishRule: 'maximum' }, 0.2)].map((ra) => ra.toFixed(3))).toEqual([
      '0.656',
      '0.576',
    ]);
    const finishes = (['mean', '16%', 'maximum'] as const).map((finishRule) => {
      const found = findLadder(conditions, { ...asked, finishRule });
      return found.kind === 'found' ? cutModel(conditions).ra(lastOf(found.energies)) : Number.NaN;
    });
    expect(finishes[0]).toBeGreaterThan(0.7);
    expect(finishes[1]).toBeLessThanOrEqual(0.656);
    expect(finishes[2]).toBeLessThanOrEqual(0.576);
  });

  it('is less sure of the finish of fine passes: a quarter below 0.3 of the energy, a fifth above, or what the shop log has learned', () => {
    const own = deviationOf(conditions.material.fineness) / conditions.material.fineness.value;
    const spread = (energy: number, learned?: Figure) =>
      Math.sqrt(cutModel({ ...conditions, factors: learned && { finish: learned } }).raSpread(energy) ** 2 - own ** 2);
    expect([0.31, 0.29].map((energy) => spread(energy))).toEqual([expect.closeTo(0.2, 9), expect.closeTo(0.25, 9)]);
    const learned = given({ key: 'f', name: NOTHING, value: 2, unit: '1', deviation: 0.1, basis: 'shop', source: saidBy.shopLog });
    expect([0.31, 0.29].map((energy) => spread(energy, learned))).toEqual([expect.closeTo(0.05, 9), expect.closeTo(0.05, 9)]);
  });

  it('takes one pass more where that holds what is asked with k of 2 or 3, and says the best where none does', () => {
    const passes = (tolerance: number, confidence: number): number | string => {
      const found = findLadder(conditions, { finish: 1.6, finishRule: 'mean', tolerance, confidence });
      return found.kind === 'found' ? found.energies.length : found.kind;
    };
    expect([1, 2, 3].map((k) => passes(0.0105, k))).toEqual([2, 3, 3]);
    expect(passes(0.0035, 1)).not.toBe('tolerance out of reach');
    expect(passes(0.0035, 3)).toBe('tolerance out of reach');
  });

  it('leaves the program its share of the tolerance', () => {
    const best = findLadder(conditions, { finish: 1.6, tolerance: 0.001 });
    const tight = best.kind === 'tolerance out of reach' ? best.best * 1.001 : Number.NaN;
    expect(findLadder(conditions, { finish: 1.6, tolerance: tight }).kind).toBe('found');
    expect(findLadder(conditions, { finish: 1.6, tolerance: tight, reserve: 0.0005 })).toMatchObject({ kind: 'tolerance out of reach' });
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
