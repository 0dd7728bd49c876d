/**
 * The pass ladder: the cheapest sequence of energies that reaches the finish and the tolerance asked for, found by dynamic
 * programming over the machine's energy settings. Cheapest is least time, the sum of 1 / feed over the passes.
 */

import type { CutConditions } from '../../physics/cut/conditions.ts';
import { type CutModel, cutModel } from '../../physics/cut/model.ts';
import type { NonEmpty } from '../../sequence/sequence.ts';
import { deviationNow } from './deviation-of-passes.ts';

export interface LadderAsked {
  /** Ra, µm. */
  readonly finish: number;
  /** Either side of the drawing, mm. */
  readonly tolerance: number;
}

export type Ladder =
  | {
      readonly kind: 'found';
      /** Cube root of pulse energy against the rough, falling from 1. */
      readonly energies: NonEmpty<number>;
      /** Minutes for one mm of contour, all passes together. */
      readonly minutesPerMillimetre: number;
    }
  /** Ra µm that the lowest setting gives. */
  | { readonly kind: 'finish out of reach'; readonly best: number }
  /** mm that the best ladder with the finish asked for holds. */
  | { readonly kind: 'tolerance out of reach'; readonly best: number };

/** More passes than any shop makes: the search ends there. */
const MOST_PASSES = 12;

/** A hair of slack, so that a finish asked for as 0.4 is not missed by rounding. */
const SLACK = 1 + 1e-9;

/** The quickest way to a setting in some number of passes. */
export interface Way {
  /** For one mm of contour. */
  readonly minutes: number;
  readonly setting: number;
  readonly energy: number;
  /** None for the rough cut. */
  readonly before?: Way;
}

/** The conditions must have passed checkCut without a refusal. */
export const findLadder = (conditions: CutConditions, asked: LadderAsked): Ladder => {
  const model = cutModel(conditions);
  const settings = conditions.machine.energySettings;
  let row: readonly Way[] = [roughOnly(model)];
  let formError = model.formErrorStart;
  let found: { readonly way: Way; readonly passes: number } | undefined;
  let bestDeviation = Infinity;
  for (let passes = 1; passes <= MOST_PASSES; passes += 1) {
    for (const way of row) {
      if (model.ra(way.energy) > asked.finish * SLACK) continue;
      const deviation = deviationNow(conditions, formError, model.gap(way.energy));
      bestDeviation = Math.min(bestDeviation, deviation);
      if (deviation > asked.tolerance * SLACK) continue;
      // Of ways that take the same time the one with fewer passes is taken, and of those the one with the finer last pass.
      const faster = found === undefined || way.minutes < found.way.minutes * (1 - 1e-12);
      const finer = found?.passes === passes && way.minutes <= found.way.minutes * (1 + 1e-12);
      if (faster || finer) found = { way, passes };
    }
    row = nextRow(row, model, settings, formError);
    formError = model.formErrorAfter(formError);
  }
  if (found !== undefined) return { kind: 'found', energies: energiesOf(found.way), minutesPerMillimetre: found.way.minutes };
  const finest = model.ra(Math.min(...settings));
  if (finest > asked.finish * SLACK) return { kind: 'finish out of reach', best: finest };
  return { kind: 'tolerance out of reach', best: bestDeviation };
};

/** The rough cut alone, always with the whole energy. */
export const roughOnly = (model: CutModel): Way => ({ minutes: 1 / model.roughFeed, setting: 0, energy: 1 });

/** Cheapest way to each setting with one pass more, where there is one. Each skim uses less energy than the pass before. */
export const nextRow = (row: readonly Way[], model: CutModel, settings: readonly number[], formError: number): readonly Way[] => {
  const starts = row.map((way) => ({ way, stock: model.stock(way.energy, formError) }));
  return settings.flatMap((energy, setting) => {
    let best: Way | undefined;
    for (const { way, stock } of starts) {
      if (way.setting >= setting) continue;
      const minutes = way.minutes + 1 / model.skimFeed(energy, stock);
      if (best === undefined || minutes <= best.minutes * (1 + 1e-12)) best = { minutes, setting, energy, before: way };
    }
    return best === undefined ? [] : [best];
  });
};

export const energiesOf = ({ before, energy }: Way): NonEmpty<number> =>
  before === undefined ? [energy] : [...energiesOf(before), energy];
