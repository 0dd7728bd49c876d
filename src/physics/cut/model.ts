/** The starting model as plain numbers, for the planner's search; ladder.ts gives the same values as Figures that can be asked why. */

import { deviationOf } from '../../quantity/figure.ts';
import * as model from '../starting-model.ts';
import { areaRate, heightShare, removalRate, roughFeed, wireShare } from './area-rate.ts';
import type { CutConditions } from './conditions.ts';
import { formErrorLeft, roughFormError, sparksPerLength, wireSpan } from './form-error.ts';
import { skimFeed, skimStock } from './skim.ts';
import { kerf, sparkGap, wireSize } from './spark-gap.ts';
import { damageDepth, passFinish, recastLayer } from './surface.ts';

/** Energies `e` are cube roots of pulse energy against the rough: 0 < e <= 1. */
export interface CutModel {
  /** Of the rough cut, mm²/min, as if there were no servo limit. */
  readonly rate: number;
  /** Of the rough cut along the contour, mm/min. */
  readonly roughFeed: number;
  /** Of the rough cut, mm. */
  readonly kerf: number;
  /** After the rough cut, µm. */
  readonly ra1: number;
  /** Lag and bow after the rough cut, µm. */
  readonly formErrorStart: number;
  /** mm */
  readonly gap: (e: number) => number;
  /** µm */
  readonly ra: (e: number) => number;
  /** One standard deviation of the logarithm of Ra. */
  readonly raSpread: (e: number) => number;
  /** Crater and recast layer, µm. */
  readonly damage: (e: number) => number;
  /** Recast layer alone, µm. */
  readonly recast: (e: number) => number;
  /** Form error after a skim, µm, from that before it, µm. */
  readonly formErrorAfter: (before: number) => number;
  /** What a skim takes off per side, mm, after a pass with energy `e` that left `formError` µm. */
  readonly stock: (e: number, formError: number) => number;
  /** Along the contour, mm/min, of a skim with energy `e` that takes `stock` mm per side. */
  readonly skimFeed: (e: number, stock: number) => number;
  /** The largest energy with Ra at most `ra` µm; above 1 when the rough cut already does. */
  readonly energyFor: (ra: number) => number;
}

/** The conditions must have passed checkCut without a refusal. */
export const cutModel = (conditions: CutConditions): CutModel => {
  const { wire, height, machine } = conditions;
  const { rate, push } = rateOf(conditions);
  const finishFactor = (conditions.factors?.finish ?? model.finishFactor).value;
  const gapFactor = (conditions.factors?.gap ?? model.gapFactor).value;
  const size = wireSize.compute({ d: wire.diameter, reference: model.finishWire.value });
  const fineness = conditions.material.fineness.value;
  const gap = (energy: number): number =>
    sparkGap.compute({ least: model.gapLeast.value, rise: model.gapRise.value, energy, size, factor: gapFactor });
  const ra = (energy: number): number =>
    passFinish.compute({ rough: model.roughFinish.value, size, fineness, energy, factor: finishFactor });
  const damage = (energy: number): number => damageDepth.compute({ ra: ra(energy), share: model.damagePerFinish.value });
  const roughKerf = kerf.compute({ d: wire.diameter, gap: gap(1) });
  const removal = removalRate.compute({ rate, kerf: roughKerf });
  const limit = machine.servoLimit;
  const { scale, power, least } = model.recastLaw;
  return {
    rate,
    roughFeed: roughFeed.compute({ rate, height, limit }),
    kerf: roughKerf,
    ra1: ra(1),
    formErrorStart: formErrorStart(conditions, push),
    gap,
    ra,
    raSpread: (e) => raSpread(conditions, e),
    damage,
    recast: (e) => recastLayer.compute({ ra: ra(e), scale: scale.value, power: power.value, least: least.value }),
    formErrorAfter: (before) => formErrorLeft.compute({ before, left: model.formLeft.value, floor: machine.bestFormError }),
    stock: (e, formError) => skimStock.compute({ damage: damage(e), formError, share: model.formTaken.value }),
    skimFeed: (e, stock) => skimFeed.compute({ removal, energy: e, power: model.skimPower.value, height, stock, limit }),
    energyFor: (wanted) => wanted / ra(1),
  };
};

const raSpread = ({ material: { fineness }, factors }: CutConditions, energy: number): number => {
  const factor = model.finishFactorAt(factors?.finish, energy);
  return Math.hypot(deviationOf(factor) / factor.value, deviationOf(fineness) / fineness.value);
};

/** Area rate, and sparks per length of wire: what the same wire would cut in tool steel, over the height. */
const rateOf = ({ wire, material, height, flush, factors }: CutConditions): { readonly rate: number; readonly push: number } => {
  const wirePart = wireShare.compute({ d: wire.diameter, scale: model.wireScale.value, power: model.wirePower.value });
  const heightPart = heightShare.compute({ height, thin: model.thinScale.value, tall: model.tallScale.value });
  const rate = areaRate.compute({
    scale: model.rateScale.value,
    wire: wirePart,
    height: heightPart,
    index: material.index.value,
    flush: model.flushFactors[flush].value,
    factor: (factors?.rate ?? model.rateFactor).value,
  });
  return { rate, push: sparksPerLength.compute({ wire: wirePart, heightShare: heightPart, height }) };
};

const formErrorStart = ({ wire, height, machine }: CutConditions, push: number): number => {
  const span = (h: number): number => wireSpan.compute({ height: h, guides: model.guideDistance.value });
  return roughFormError.compute({
    reference: model.formRough.value,
    push,
    referencePush: referencePush(),
    span: span(height),
    referenceSpan: span(model.formHeight.value),
    tension: wire.tension,
    referenceTension: model.formTension.value,
    floor: machine.bestFormError,
  });
};

const referencePush = (): number => {
  const wirePart = wireShare.compute({ d: model.formWire.value, scale: model.wireScale.value, power: model.wirePower.value });
  const height = model.formHeight.value;
  const heightPart = heightShare.compute({ height, thin: model.thinScale.value, tall: model.tallScale.value });
  return sparksPerLength.compute({ wire: wirePart, heightShare: heightPart, height });
};
