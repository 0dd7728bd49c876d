/** The passes of a ladder of energies as Figures: offset, feed, finish and the rest, each of which can be asked why. */

import { type Figure, given } from '../../quantity/figure.ts';
import { apply } from '../../quantity/formula.ts';
import { saidBy } from '../../quantity/source.ts';
import { isFilled, lastOf, mapFilled, type NonEmpty, neighbours } from '../../sequence/sequence.ts';
import { passName } from '../../text/pass-name.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import * as model from '../starting-model.ts';
import { areaRateFromFeed, removalRate, roughFeed } from './area-rate.ts';
import type { CutConditions } from './conditions.ts';
import { type CutFigures, cutFigures } from './cut-figures.ts';
import { formErrorLeft } from './form-error.ts';
import { saidOfMachine } from './machine-leaves.ts';
import { skimFeed, skimStock, stockLeft } from './skim.ts';
import { kerf, sparkGap, wireOffset } from './spark-gap.ts';
import { damageDepth, passFinish, recastLayer } from './surface.ts';

export interface LadderRow {
  /** Counts from 1, the rough cut. */
  readonly number: number;
  readonly energy: Figure;
  /** mm */
  readonly gap: Figure;
  /** What this pass takes off per side, mm; for the rough cut its whole kerf. */
  readonly taken: Figure;
  /** Taken off later, per side, mm. */
  readonly stock: Figure;
  /** Wire centre to the wanted surface, mm. */
  readonly offset: Figure;
  /** Along the contour, mm/min. */
  readonly feed: Figure;
  /** mm²/min */
  readonly areaRate: Figure;
  /** µm after this pass. */
  readonly ra: Figure;
  /** Crater and recast layer left, µm. */
  readonly damage: Figure;
  /** Recast layer alone, µm. */
  readonly recast: Figure;
  /** Lag, bow and what is left of them, µm. */
  readonly formError: Figure;
}

/**
 * One row per energy (cube root of pulse energy against the rough; the first is 1, each later one in 0..1).
 * Keys are 'pass.1.feed' and so on. The conditions must have passed checkCut without a refusal.
 */
export const ladderRows = (conditions: CutConditions, energies: NonEmpty<number>): NonEmpty<LadderRow> => {
  const cut = cutFigures(conditions);
  const [rough, ...skims] = takenOf(cut, surfacesOf(conditions, cut, energies));
  const removal = apply(
    removalRate,
    { rate: cut.rate, kerf: rough.taken },
    { key: 'cut.removal', name: say('cut.removal')`removal rate of the rough cut` },
  );
  return mapFilled(stocked([rough, ...skims]), (surface, i) => {
    const feed = i === 0 ? roughFeedOf(cut) : skimFeedOf(i, cut, { energy: surface.energy, taken: surface.taken, removal });
    const offset = apply(wireOffset, { d: cut.diameter, gap: surface.gap, stock: surface.stock }, called(i, 'offset'));
    const rate = apply(areaRateFromFeed, { feed, height: cut.height }, called(i, 'area-rate'));
    return { number: i + 1, ...surface, offset, feed, areaRate: rate };
  });
};

/** 'feed of the rough cut', 'Ra after skim 2': passes count from 1, skims from the second pass on. */
export const called = (index: number, key: keyof typeof names): { readonly key: string; readonly name: Text } => ({
  key: `pass.${index + 1}.${key}`,
  name: names[key](passName(index)),
});

const names = phrases('pass-figure', {
  energy: (pass: Text) => say`energy setting of ${{ pass }}`,
  gap: (pass: Text) => say`spark gap of ${{ pass }}`,
  ra: (pass: Text) => say`Ra after ${{ pass }}`,
  damage: (pass: Text) => say`damage depth after ${{ pass }}`,
  recast: (pass: Text) => say`recast layer after ${{ pass }}`,
  'form-error': (pass: Text) => say`form error after ${{ pass }}`,
  taken: (pass: Text) => say`stock taken off per side by ${{ pass }}`,
  stock: (pass: Text) => say`stock left for later passes by ${{ pass }}`,
  offset: (pass: Text) => say`offset of ${{ pass }}`,
  feed: (pass: Text) => say`feed of ${{ pass }}`,
  'area-rate': (pass: Text) => say`area rate of ${{ pass }}`,
});

type Surface = Pick<LadderRow, 'energy' | 'gap' | 'ra' | 'damage' | 'recast' | 'formError'>;

const surfacesOf = (conditions: CutConditions, cut: CutFigures, [rough, ...skims]: NonEmpty<number>): NonEmpty<Surface> => {
  const surfaces: [Surface, ...Surface[]] = [{ ...surfaceOf(0, conditions, cut, rough), formError: cut.roughFormError }];
  const left = { left: model.formLeft, floor: cut.floor };
  for (const energy of skims) {
    const i = surfaces.length;
    const formError = apply(formErrorLeft, { before: lastOf(surfaces).formError, ...left }, called(i, 'form-error'));
    surfaces.push({ ...surfaceOf(i, conditions, cut, energy), formError });
  }
  return surfaces;
};

const surfaceOf = (i: number, conditions: CutConditions, cut: CutFigures, value: number): Omit<Surface, 'formError'> => {
  const { size } = cut;
  const as = called(i, 'energy');
  const energy = given({ key: as.key, name: as.name, value, unit: '1', ...saidOfMachine(conditions.machine) });
  const factors = { gap: conditions.factors?.gap ?? model.gapFactor, finish: model.finishFactorAt(conditions.factors?.finish, value) };
  const { fineness } = conditions.material;
  const ra = apply(passFinish, { rough: model.roughFinish, size, fineness, energy, factor: factors.finish }, called(i, 'ra'));
  return {
    energy,
    gap: apply(sparkGap, { least: model.gapLeast, rise: model.gapRise, energy, size, factor: factors.gap }, called(i, 'gap')),
    ra,
    damage: apply(damageDepth, { ra, share: model.damagePerFinish }, called(i, 'damage')),
    recast: apply(recastLayer, { ra, ...model.recastLaw }, called(i, 'recast')),
  };
};

type Taken = Surface & Pick<LadderRow, 'taken'>;

const takenOf = (cut: CutFigures, surfaces: NonEmpty<Surface>): NonEmpty<Taken> => [
  { ...surfaces[0], taken: roughKerf(cut, surfaces[0]) },
  ...neighbours(surfaces).map(([before, surface], i) => ({ ...surface, taken: takenBy(i + 1, before) })),
];

const roughKerf = (cut: CutFigures, rough: Surface): Figure =>
  apply(kerf, { d: cut.diameter, gap: rough.gap }, { key: 'cut.kerf', name: say('cut.kerf')`kerf of the rough cut` });

const takenBy = (i: number, before: Surface): Figure =>
  apply(skimStock, { damage: before.damage, formError: before.formError, share: model.formTaken }, called(i, 'taken'));

type Stocked = Taken & Pick<LadderRow, 'stock'>;

/** After each pass, what the later ones still take; nothing after the last. */
const stocked = ([pass, ...later]: NonEmpty<Taken>, i = 0): NonEmpty<Stocked> => {
  const as = called(i, 'stock');
  if (!isFilled(later))
    return [
      {
        ...pass,
        stock: given({
          key: as.key,
          name: say('cut.last-stock')`${{ stock: as.name }}, the last`,
          value: 0,
          unit: 'mm',
          basis: 'counted',
          source: saidBy.passLadder,
        }),
      },
    ];
  const [next, ...others] = stocked(later, i + 1);
  return [{ ...pass, stock: apply(stockLeft, { next: next.taken, later: next.stock }, as) }, next, ...others];
};

const roughFeedOf = (cut: CutFigures): Figure =>
  apply(roughFeed, { rate: cut.rate, height: cut.height, limit: cut.limit }, called(0, 'feed'));

interface SkimParts {
  readonly energy: Figure;
  readonly taken: Figure;
  readonly removal: Figure;
}

const skimFeedOf = (i: number, cut: CutFigures, { energy, taken, removal }: SkimParts): Figure =>
  apply(skimFeed, { removal, energy, power: model.skimPower, height: cut.height, stock: taken, limit: cut.limit }, called(i, 'feed'));
