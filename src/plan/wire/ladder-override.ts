/** The ladder with just as many passes as the user wants, whether it reaches what is asked or not. */

import type { CutConditions } from '../../physics/cut/conditions.ts';
import { cutModel } from '../../physics/cut/model.ts';
import type { NonEmpty } from '../../sequence/sequence.ts';
import { energiesOf, excessOf, finishedBy, type LadderAsked, nextRow, roughOnly, type Way } from './find-ladder.ts';

export type HandLadder =
  | {
      readonly kind: 'found';
      readonly energies: NonEmpty<number>;
      readonly minutesPerMillimetre: number;
      /** Ra (µm) and deviation (mm) against what is asked, the worse of the two: up to 1 where both are reached. */
      readonly excess: number;
    }
  /** The machine has only so many energies, and each skim wants a lower one. */
  | { readonly kind: 'too many'; readonly most: number };

/** A hair of slack, so that a finish asked for as 0.4 is not missed by rounding. */
const SLACK = 1 + 1e-9;

/** The cheapest that reaches finish and tolerance; where none does, the one that comes nearest. */
export const ladderOf = (passes: number, conditions: CutConditions, asked: LadderAsked): HandLadder => {
  const model = cutModel(conditions);
  const { energySettings: settings } = conditions.machine;
  if (passes > settings.length) return { kind: 'too many', most: settings.length };
  let row: readonly Way[] = [roughOnly(model)];
  let formError = model.formErrorStart;
  for (let more = passes - 1; more > 0; more -= 1) {
    row = nextRow(row, model, settings, formError);
    formError = model.formErrorAfter(formError);
  }
  const ends = row.map((way) => {
    const excess = excessOf(conditions, finishedBy(conditions, model, { energy: way.energy, formError, skims: passes - 1 }), asked);
    return { way, minutes: way.minutes, excess: excess <= SLACK ? 1 : excess };
  });
  const best = ends.reduce((a, b) => (isBetter(b, a) ? b : a));
  return {
    kind: 'found',
    energies: energiesOf(best.way),
    minutesPerMillimetre: best.minutes,
    excess: best.excess,
  };
};

interface End {
  readonly minutes: number;
  readonly excess: number;
}

/** Of ends that reach as much and take the same time the later one, which is finer. */
const isBetter = (a: End, b: End): boolean =>
  a.excess < b.excess * (1 - 1e-12) || (a.excess <= b.excess * (1 + 1e-12) && a.minutes <= b.minutes * (1 + 1e-12));
