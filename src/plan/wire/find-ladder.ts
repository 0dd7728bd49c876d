/**
 * The pass ladder: the cheapest sequence of energies that reaches the finish and the tolerance asked for, found by dynamic
 * programming over the machine's energy rungs. Cheapest is least time, the sum of 1 / feed over the passes.
 */
import type { CutConditions } from '../../physics/cut/conditions.ts';
import { type CutModel, cutModel } from '../../physics/cut/model.ts';
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
      readonly energies: readonly number[];
      /** Minutes for one mm of contour, all passes together. */
      readonly minutesPerMillimetre: number;
    }
  /** Ra µm that the lowest rung gives. */
  | { readonly kind: 'finish out of reach'; readonly best: number }
  /** mm that the best ladder with the finish asked for holds. */
  | { readonly kind: 'tolerance out of reach'; readonly best: number };

/** More passes than any shop makes: the search ends there. */
const MOST_PASSES = 12;

/** A hair of slack, so that a finish asked for as 0.4 is not missed by rounding. */
const SLACK = 1 + 1e-9;

export interface State {
  readonly minutes: number;
  /** Rung of the pass before; -1 for the rough cut. */
  readonly before: number;
}

/** The conditions must have passed checkCut without a refusal. */
export const findLadder = (conditions: CutConditions, asked: LadderAsked): Ladder => {
  const model = cutModel(conditions);
  const rungs = conditions.machine.rungs;
  const table: (readonly (State | undefined)[])[] = [[{ minutes: 1 / model.roughFeed, before: -1 }]];
  const formErrors = [model.formErrorStart];
  let found: { readonly minutes: number; readonly passes: number; readonly rung: number } | undefined;
  let bestDeviation = Infinity;
  for (let passes = 1; passes <= MOST_PASSES; passes += 1) {
    const formError = formErrors[passes - 1]!;
    const row = table[passes - 1]!;
    row.forEach((state, rung) => {
      if (state === undefined || model.ra(rungs[rung]!) > asked.finish * SLACK) return;
      const deviation = deviationNow(conditions, formError, model.gap(rungs[rung]!));
      bestDeviation = Math.min(bestDeviation, deviation);
      if (deviation > asked.tolerance * SLACK) return;
      // Of ways that take the same time the one with fewer passes is taken, and of those the one with the finer last pass.
      const faster = found === undefined || state.minutes < found.minutes * (1 - 1e-12);
      const finer = found?.passes === passes && state.minutes <= found.minutes * (1 + 1e-12);
      if (faster || finer) found = { minutes: state.minutes, passes, rung };
    });
    table.push(nextRow(row, model, rungs, formError));
    formErrors.push(model.formErrorAfter(formError));
  }
  if (found !== undefined)
    return { kind: 'found', energies: traced(table, found.passes, found.rung, rungs), minutesPerMillimetre: found.minutes };
  const finest = model.ra(rungs.at(-1)!);
  if (finest > asked.finish * SLACK) return { kind: 'finish out of reach', best: finest };
  return { kind: 'tolerance out of reach', best: bestDeviation };
};

/** Cheapest way to each rung with one pass more. Each skim uses less energy than the pass before. */
export const nextRow = (
  row: readonly (State | undefined)[],
  model: CutModel,
  rungs: readonly number[],
  formError: number,
): readonly (State | undefined)[] => {
  const next: (State | undefined)[] = rungs.map(() => undefined);
  row.forEach((state, before) => {
    if (state === undefined) return;
    const stock = model.stock(rungs[before]!, formError);
    for (let rung = before + 1; rung < rungs.length; rung += 1) {
      const minutes = state.minutes + 1 / model.skimFeed(rungs[rung]!, stock);
      const known = next[rung];
      if (known === undefined || minutes <= known.minutes * (1 + 1e-12)) next[rung] = { minutes, before };
    }
  });
  return next;
};

export const traced = (
  table: readonly (readonly (State | undefined)[])[],
  passes: number,
  last: number,
  rungs: readonly number[],
): number[] => {
  const energies: number[] = [];
  let rung = last;
  for (let n = passes; n >= 1; n -= 1) {
    energies.unshift(rungs[rung]!);
    rung = table[n - 1]![rung]!.before;
  }
  return energies;
};
