/** What all passes of one cut share, as Figures: wire, height, rate by the model, crater size, form error of the rough cut. */

import type { Figure } from '../../quantity/figure.ts';
import { apply } from '../../quantity/formula.ts';
import { say } from '../../text/say.ts';
import * as model from '../starting-model.ts';
import { wireLeaf } from '../wire/wire-leaves.ts';
import { workHeight } from '../work-height.ts';
import { areaRate, heightShare, wireShare } from './area-rate.ts';
import type { CutConditions } from './conditions.ts';
import { roughFormError, sparksPerLength, wireSpan } from './form-error.ts';
import { formFloorOf, servoLimitOf } from './machine-leaves.ts';
import { wireSize } from './spark-gap.ts';

export interface CutFigures {
  readonly diameter: Figure;
  readonly height: Figure;
  readonly limit: Figure;
  readonly floor: Figure;
  /** Crater and gap size for this wire, against 0.25 mm. */
  readonly size: Figure;
  /** Area rate of the rough cut, as if there were no servo limit. */
  readonly rate: Figure;
  readonly roughFormError: Figure;
}

/** The conditions must have passed checkCut without a refusal. */
export const cutFigures = (conditions: CutConditions): CutFigures => {
  const { wire, machine } = conditions;
  const diameter = wireLeaf(wire, 'diameter');
  const height = workHeight(conditions.height);
  const floor = formFloorOf(machine);
  const wirePart = apply(wireShare, { d: diameter, scale: model.wireScale, power: model.wirePower }, { key: 'cut.wire-share' });
  const heightPart = apply(heightShare, { height, thin: model.thinScale, tall: model.tallScale }, { key: 'cut.height-share' });
  return {
    diameter,
    height,
    limit: servoLimitOf(machine),
    floor,
    size: apply(wireSize, { d: diameter, reference: model.finishWire }, { key: 'cut.size' }),
    rate: rateFigure(conditions, wirePart, heightPart),
    roughFormError: roughForm(conditions, { height, floor, wirePart, heightPart }),
  };
};

const rateFigure = ({ material, flush, factors }: CutConditions, wirePart: Figure, heightPart: Figure): Figure =>
  apply(
    areaRate,
    {
      scale: model.rateScale,
      wire: wirePart,
      height: heightPart,
      index: material.index,
      flush: model.flushFactors[flush],
      factor: factors?.rate ?? model.rateFactor,
    },
    { key: 'cut.rate', name: say('cut.rate')`area rate of the rough cut by the model` },
  );

interface FormParts {
  readonly height: Figure;
  readonly floor: Figure;
  readonly wirePart: Figure;
  readonly heightPart: Figure;
}

const roughForm = ({ wire }: CutConditions, { height, floor, wirePart, heightPart }: FormParts): Figure =>
  apply(
    roughFormError,
    {
      reference: model.formRough,
      push: apply(sparksPerLength, { wire: wirePart, heightShare: heightPart, height }, { key: 'cut.push' }),
      span: apply(wireSpan, { height, guides: model.guideDistance }, { key: 'cut.span' }),
      tension: wireLeaf(wire, 'tension'),
      floor,
      ...referenceCut(),
    },
    { key: 'pass.1.form-error', name: say('cut.pass-1-form-error')`form error after the rough cut` },
  );

/** The cut that the remembered form error belongs to. */
const referenceCut = (): { readonly referencePush: Figure; readonly referenceSpan: Figure; readonly referenceTension: Figure } => {
  const wire = apply(wireShare, { d: model.formWire, scale: model.wireScale, power: model.wirePower }, { key: 'reference.wire-share' });
  const heights = { height: model.formHeight, thin: model.thinScale, tall: model.tallScale };
  const heightPart = apply(heightShare, heights, { key: 'reference.height-share' });
  return {
    referencePush: apply(sparksPerLength, { wire, heightShare: heightPart, height: model.formHeight }, { key: 'reference.push' }),
    referenceSpan: apply(wireSpan, { height: model.formHeight, guides: model.guideDistance }, { key: 'reference.span' }),
    referenceTension: model.formTension,
  };
};
