/**
 * The pass ladder: the cheapest sequence of energies that reaches the finish and the tolerance asked for, found by dynamic
 * programming over the machine's energy settings. Cheapest is least time, the sum of 1 / feed over the passes.
 */

import type { CutConditions } from '../../physics/cut/conditions.ts';
import { type CutModel, cutModel } from '../../physics/cut/model.ts';
import type { LadderRow } from '../../physics/cut/pass-rows.ts';
import { deviationOf } from '../../quantity/figure.ts';
import { aimedFinish, type FinishRule, usualFinishRule } from '../../quantity/finish-rule.ts';
import { lastOf, type NonEmpty } from '../../sequence/sequence.ts';
import type { Sureness } from '../sureness.ts';
import { deviationNow, gapSpread, type LastPass, lastPassOf } from './deviation-of-passes.ts';

export interface LadderAsked extends Sureness {
  /** Ra, µm. */
  readonly finish: number;
  readonly finishRule?: FinishRule | undefined;
  /** Either side of the drawing, mm, and what of it the program itself takes. */
  readonly tolerance: number;
  readonly reserve?: number | undefined;
}

/** What a last pass leaves: where the surface lies, and how rough it is. */
export interface Finished extends LastPass {
  /** µm, and one standard deviation of its logarithm. */
  readonly ra: number;
  readonly raSpread: number;
}

/** Ra (µm) and deviation (mm) of a ladder against what is asked, the worse of the two: up to 1 where both are reached. */
export const excessOf = (conditions: Pick<CutConditions, 'machine' | 'wire'>, last: Finished, asked: LadderAsked): number =>
  Math.max(last.ra / meanAimed(asked, last.raSpread), deviationNow(conditions, last, asked) / toleranceLeft(asked));

/** µm: the mean Ra to be planned for what is asked. */
export const meanAimed = ({ finish, finishRule = usualFinishRule }: LadderAsked, spread: number): number =>
  aimedFinish(finish, finishRule, spread);

/** mm: what the machine may use of the tolerance. */
export const toleranceLeft = ({ tolerance, reserve = 0 }: Pick<LadderAsked, 'tolerance' | 'reserve'>): number =>
  Math.max(tolerance - reserve, 1e-9);

/** The end of a ladder that is still searched for. */
export const finishedBy = (
  conditions: CutConditions,
  model: CutModel,
  { energy, formError, skims }: { readonly energy: number; readonly formError: number; readonly skims: number },
): Finished => {
  const gap = model.gap(energy);
  return {
    formError,
    gap,
    gapDoubt: gap * gapSpread(conditions.factors?.gap),
    skims,
    ra: model.ra(energy),
    raSpread: model.raSpread(energy),
  };
};

export type Ladder =
  | {
      readonly kind: 'found';
      /** Cube root of pulse energy against the rough, falling from 1. */
      readonly energies: NonEmpty<number>;
      /** Minutes for one mm of contour, all passes together. */
      readonly minutesPerMillimetre: number;
    }
  /** Ra µm that the lowest setting can be promised to reach. */
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

export const finishedRows = (rows: NonEmpty<LadderRow>): Finished => {
  const { ra } = lastOf(rows);
  return { ...lastPassOf(rows), ra: ra.value, raSpread: deviationOf(ra) / ra.value };
};

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
      const last = finishedBy(conditions, model, { energy: way.energy, formError, skims: passes - 1 });
      if (last.ra > meanAimed(asked, last.raSpread) * SLACK) continue;
      const deviation = deviationNow(conditions, last, asked);
      bestDeviation = Math.min(bestDeviation, deviation);
      if (deviation > toleranceLeft(asked) * SLACK) continue;
      // Of ways that take the same time the one with fewer passes is taken, and of those the one with the finer last pass.
      const faster = found === undefined || way.minutes < found.way.minutes * (1 - 1e-12);
      const finer = found?.passes === passes && way.minutes <= found.way.minutes * (1 + 1e-12);
      if (faster || finer) found = { way, passes };
    }
    row = nextRow(row, model, settings, formError);
    formError = model.formErrorAfter(formError);
  }
  if (found !== undefined) return { kind: 'found', energies: energiesOf(found.way), minutesPerMillimetre: found.way.minutes };
  const least = Math.min(...settings);
  // As a limit under the rule asked, so that it is what could be promised.
  const finest = (model.ra(least) * asked.finish) / meanAimed(asked, model.raSpread(least));
  if (finest > asked.finish * SLACK) return { kind: 'finish out of reach', best: finest };
  return { kind: 'tolerance out of reach', best: bestDeviation + (asked.reserve ?? 0) };
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
