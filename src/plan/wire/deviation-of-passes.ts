/** How far the finished surface may lie from the drawing: what is systematic added, and k times what is random, by root of squares. */

import type { CutConditions } from '../../physics/cut/conditions.ts';
import { lagOnArc } from '../../physics/cut/corner-error.ts';
import { positioningOf } from '../../physics/cut/machine-leaves.ts';
import type { LadderRow } from '../../physics/cut/pass-rows.ts';
import { gapFactor } from '../../physics/starting-model.ts';
import { confidenceOf, usualConfidence } from '../../quantity/confidence.ts';
import { deviationOf, type Figure, given } from '../../quantity/figure.ts';
import { apply, type Formula } from '../../quantity/formula.ts';
import { lastOf, type NonEmpty } from '../../sequence/sequence.ts';
import { say } from '../../text/say.ts';
import { type ErrorsBeside, nothingBeside, type Sureness } from '../sureness.ts';
import { REGISTER_ROOM } from './register-room.ts';

/** What is known of a last pass. */
export interface LastPass {
  /** µm */
  readonly formError: number;
  /** mm, and one standard deviation of it. */
  readonly gap: number;
  readonly gapDoubt: number;
  readonly skims: number;
}

/**
 * Wire paths tighter than this (mm) go round corners that the wire itself leaves round, with room for a larger register: those are told
 * as corners and are no part of the profile.
 */
const OWN_ROUND = REGISTER_ROOM + 0.002;

/** mm: the tightest way of the wire round an inside arc; none where it leaves every one round by itself. */
export const tightestPath = (insideRadii: readonly number[], offset: number): number | undefined => {
  const radius = insideRadii.find((r) => r - offset > OWN_ROUND);
  return radius === undefined ? undefined : radius - offset;
};

export const profileDeviation: Formula<
  'formError' | 'corner' | 'growth' | 'confidence' | 'positioning' | 'gap' | 'stress' | 'swing' | 'repeatability'
> = {
  name: say('wire.profile-deviation')`expected profile deviation`,
  text: say(
    'wire.profile-deviation.by',
  )`deviation = form error + lag on arcs + growth + k · √(positioning² + uncertainty of the gap² + stress² + variation² + repeatability²)`,
  source: 'common-practice',
  unit: 'mm',
  inputs: {
    formError: { unit: 'µm', name: 'form error left' },
    corner: { unit: 'µm', name: 'wire lag on the tightest arc' },
    growth: { unit: 'µm', name: 'growth of the part' },
    confidence: { unit: '1', name: 'k, standard deviations promised' },
    positioning: { unit: 'µm', name: 'positioning of the machine' },
    gap: { unit: 'mm', name: 'doubt about the gap of the last pass' },
    stress: { unit: 'µm', name: 'movement of the block' },
    swing: { unit: 'µm', name: 'temperature variation' },
    repeatability: { unit: 'µm', name: 'repeatability' },
  },
  compute: ({ formError, corner, growth, confidence, positioning, gap, stress, swing, repeatability }) =>
    (formError + corner + growth + confidence * Math.hypot(positioning, gap * 1000, stress, swing, repeatability)) / 1000,
};

/** mm: the same in plain numbers, for the search over ladders. */
export const deviationNow = (
  { machine, wire }: Pick<CutConditions, 'machine' | 'wire'>,
  { formError, gap, gapDoubt, skims }: LastPass,
  { confidence = usualConfidence, beside = nothingBeside }: Sureness,
): number => {
  const { sides } = beside;
  return profileDeviation.compute({
    formError: formError * sides,
    corner: cornerAt(formError, wire.diameter / 2 + gap, beside),
    growth: beside.growth,
    confidence,
    positioning: machine.positioning,
    gap: gapDoubt * sides,
    stress: beside.stress * beside.stressLeft ** skims,
    swing: beside.swing,
    repeatability: beside.repeatability,
  });
};

/** µm */
const cornerAt = (lag: number, offset: number, { insideRadii }: ErrorsBeside): number => {
  const radius = tightestPath(insideRadii, offset);
  return radius === undefined ? 0 : lagOnArc.compute({ lag, radius });
};

/** The last of the rows of a ladder, in plain numbers. */
export const lastPassOf = (rows: NonEmpty<Pick<LadderRow, 'formError' | 'gap'>>): LastPass => {
  const { formError, gap } = lastOf(rows);
  return { formError: formError.value, gap: gap.value, gapDoubt: deviationOf(gap), skims: rows.length - 1 };
};

/** Figures that are others for each family of passes have keys of their own from the second family on. */
export const accuracyFigure = (
  { machine, wire }: Pick<CutConditions, 'machine' | 'wire'>,
  rows: NonEmpty<Pick<LadderRow, 'number' | 'formError' | 'gap'>>,
  { confidence = usualConfidence, beside = nothingBeside }: Sureness,
): Figure => {
  const { formError, gap } = lastOf(rows);
  const { skims } = lastPassOf(rows);
  const [{ number: first }] = rows;
  const ofFamily = (key: string): string => (first === 1 ? key : `${key}.${first}`);
  const share = (name: keyof typeof shareNames, value: number, key = `accuracy.${name}`): Figure =>
    given({
      key,
      name: shareNames[name],
      value,
      unit: 'µm',
      basis: 'common practice',
      source: { file: 'common-practice' },
    });
  return apply(
    profileDeviation,
    {
      formError,
      corner: share('corner', cornerAt(formError.value, wire.diameter / 2 + gap.value, beside), ofFamily('accuracy.corner')),
      growth: share('growth', beside.growth),
      confidence: confidenceOf(confidence),
      positioning: positioningOf(machine),
      gap: gapDoubt(gap, ofFamily('gap.doubt')),
      stress: share('stress', beside.stress * beside.stressLeft ** skims, ofFamily('accuracy.stress')),
      swing: share('swing', beside.swing),
      repeatability: share('repeatability', beside.repeatability),
    },
    { key: ofFamily('plan.accuracy') },
  );
};

const shareNames = {
  corner: say('accuracy.share-corner')`wire lag on the tightest arc, as the error budget has it`,
  growth: say('accuracy.share-growth')`growth of the part, as the error budget has it`,
  stress: say('accuracy.share-stress')`movement of the block, as the error budget has it`,
  swing: say('accuracy.share-swing')`temperature variation, as the error budget has it`,
  repeatability: say('accuracy.share-repeatability')`repeatability, as the error budget has it`,
} as const;

/** With a register set by hand the finished face is off by as much more. */
const shiftedDeviation: Formula<'deviation' | 'shift'> = {
  name: say('wire.shifted-deviation')`expected profile deviation with registers set by hand`,
  text: say('wire.shifted-deviation.by')`deviation = expected deviation + shift`,
  source: 'definition',
  unit: 'mm',
  inputs: { deviation: { unit: 'mm', name: 'deviation expected' }, shift: { unit: 'mm', name: 'shift of the finished face' } },
  compute: ({ deviation, shift }) => deviation + shift,
};

/** The budget counts in µm. */
export const shiftInMicrometres: Formula<'shift'> = {
  name: say('wire.shift-in-micrometres')`error by registers set by hand`,
  text: say('wire.shift-in-micrometres.by')`error = 1000 shift`,
  source: 'definition',
  unit: 'µm',
  inputs: { shift: { unit: 'mm', name: 'shift of the finished face' } },
  compute: ({ shift }) => 1000 * shift,
};

/** @param shift mm, of the finished face by registers set by hand. */
export const withShift = (accuracy: Figure, shift: Figure | undefined): Figure =>
  shift === undefined
    ? accuracy
    : apply(shiftedDeviation, { deviation: { ...accuracy, key: `${accuracy.key}-expected` }, shift }, { key: accuracy.key });

/** mm: how far the gap of a pass may be off. */
export const gapDoubt = (gap: Figure, key = 'gap.doubt'): Figure =>
  given({
    key,
    name: say('wire.gap-doubt')`uncertainty of the gap`,
    value: deviationOf(gap),
    unit: 'mm',
    basis: gap.basis === 'shop' ? 'shop' : 'assumed',
    source: gap.source,
  });

/** As a share of the gap, where nothing but the model or the shop log says it. */
export const gapSpread = (factor: Figure | undefined): number => {
  const used = factor ?? gapFactor;
  return deviationOf(used) / used.value;
};
