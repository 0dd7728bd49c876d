/** How far the finished surface may lie from the drawing: what is systematic added, what is random by root of squares. */

import type { CutConditions } from '../../physics/cut/conditions.ts';
import { positioningOf } from '../../physics/cut/machine-leaves.ts';
import type { LadderRow } from '../../physics/cut/pass-rows.ts';
import { gapFactor } from '../../physics/starting-model.ts';
import { deviationOf, type Figure, given } from '../../quantity/figure.ts';
import { apply, type Formula } from '../../quantity/formula.ts';
import { say } from '../../text/say.ts';

export const profileDeviation: Formula<'formError' | 'positioning' | 'gap' | 'doubt'> = {
  name: say('wire.profile-deviation')`expected profile deviation`,
  text: say('wire.profile-deviation.by')`deviation = form error + √(positioning² + (uncertainty · gap)²)`,
  source: 'common-practice',
  unit: 'mm',
  inputs: {
    formError: { unit: 'µm', name: 'form error left' },
    positioning: { unit: 'µm', name: 'positioning of the machine' },
    gap: { unit: 'mm', name: 'spark gap of the last pass' },
    doubt: { unit: '1', name: 'doubt about the gap' },
  },
  compute: ({ formError, positioning, gap, doubt }) => (formError + Math.hypot(positioning, doubt * gap * 1000)) / 1000,
};

/** mm: the same in plain numbers, for the search over ladders. */
export const deviationNow = ({ machine, factors }: CutConditions, formError: number, gap: number): number =>
  profileDeviation.compute({ formError, positioning: machine.positioning, gap, doubt: doubtOf(factors?.gap) });

export const accuracyFigure = (conditions: CutConditions, last: LadderRow): Figure => {
  const { machine, factors } = conditions;
  return apply(
    profileDeviation,
    {
      formError: last.formError,
      positioning: positioningOf(machine),
      gap: last.gap,
      doubt: gapDoubt(factors?.gap),
    },
    { key: 'plan.accuracy' },
  );
};

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
    : apply(shiftedDeviation, { deviation: { ...accuracy, key: 'plan.accuracy-expected' }, shift }, { key: accuracy.key });

/** How far the gap may be off, as a share of it. */
export const gapDoubt = (factor: Figure | undefined): Figure =>
  given({
    key: 'gap.doubt',
    name: say('wire.gap-doubt')`uncertainty of the gap`,
    value: doubtOf(factor),
    unit: '1',
    basis: 'assumed',
    source: (factor ?? gapFactor).source,
  });

const doubtOf = (factor: Figure | undefined): number => {
  const used = factor ?? gapFactor;
  return deviationOf(used) / used.value;
};
