/** The constants of the starting model, all in one place, each with what it is, how sure it is and where it comes from. */

import { type Figure, given } from '../quantity/figure.ts';
import { say } from '../text/say.ts';
import type { Text } from '../text/text.ts';
import type { Unit } from '../text/unit.ts';

/** Almost everything here is remembered shop experience: tried for plausibility against the papers in sources/, and bent by the shop's own log. */
const remembered = (key: string, name: Text, value: number, unit: Unit, deviation = 0): Figure =>
  given({ key: `model.${key}`, name, value, unit, deviation, basis: 'assumed', source: { file: 'starting-model' } });

export const rateScale = remembered(
  'rate.scale',
  say('physics.rate-scale')`area rate of a very thick wire in tool steel at the best height`,
  266,
  'mm²/min',
);
export const wireScale = remembered(
  'rate.wire',
  say('physics.rate-wire')`wire diameter at which the rate is half that of a very thick wire`,
  0.13,
  'mm',
);
export const wirePower = remembered(
  'rate.wire-power',
  say('physics.rate-wire-power')`how sharply the rate falls with a finer wire`,
  2.2,
  '1',
);
export const thinScale = remembered('rate.thin', say('physics.rate-thin')`height below which end losses take half the rate`, 12, 'mm');
export const tallScale = remembered('rate.tall', say('physics.rate-tall')`height at which flushing has halved the rate`, 350, 'mm');

export const flushFactors = {
  sealed: remembered('flush.sealed', say('physics.flush-sealed')`flush factor, both nozzles on the work`, 1, '1'),
  'one side': remembered('flush.one-side', say('physics.flush-one-side')`flush factor, one nozzle raised`, 0.75, '1'),
  lifted: remembered('flush.lifted', say('physics.flush-lifted')`flush factor, both nozzles raised`, 0.5, '1'),
} as const;

export const roughFinish = remembered(
  'finish.rough',
  say('physics.finish-rough')`Ra of a rough cut with 0.25 wire in tool steel`,
  2.8,
  'µm',
);
export const finishWire = remembered('finish.wire', say('physics.finish-wire')`wire above which a thicker one cuts no rougher`, 0.25, 'mm');
export const damagePerFinish = remembered(
  'damage.per-finish',
  say('physics.damage-per-finish')`depth of crater and recast layer, in Ra`,
  5.5,
  '1',
);
/** Chosen on what two papers print of stainless steel (choudhuri-2018, finish-passes-2012); their own error is about a third. */
export const recastLaw = {
  scale: remembered('recast.scale', say('physics.recast-scale')`recast layer at Ra 1 µm`, 1.7, 'µm', 0.6),
  power: remembered('recast.power', say('physics.recast-power')`how the recast layer grows with Ra`, 1.6, '1'),
  least: remembered('recast.least', say('physics.recast-least')`least recast layer after fine passes`, 1, 'µm'),
} as const;

export const gapLeast = remembered('gap.least', say('physics.gap-least')`spark gap at vanishing energy`, 3, 'µm');
export const gapRise = remembered('gap.rise', say('physics.gap-rise')`by how much the gap of a rough cut is wider`, 34, 'µm');

export const skimPower = remembered(
  'skim.power',
  say('physics.skim-power')`how removal rate falls with the cube root of pulse energy`,
  2.25,
  '1',
);
export const formTaken = remembered('skim.form', say('physics.skim-form')`share of the form error that a skim takes as stock`, 0.4, '1');
export const formLeft = remembered('form.left', say('physics.form-left')`share of the form error left by a skim`, 0.35, '1');

export const formRough = remembered(
  'form.rough',
  say('physics.form-rough')`lag and bow of a rough cut: 0.25 wire at 12 N, 50 mm height`,
  20,
  'µm',
  6,
);
export const formHeight = remembered('form.height', say('physics.form-height')`height of that rough cut`, 50, 'mm');
export const formWire = remembered('form.wire', say('physics.form-wire')`wire of that rough cut`, 0.25, 'mm');
export const formTension = remembered('form.tension', say('physics.form-tension')`tension in that rough cut`, 12, 'N');
export const guideDistance = remembered('form.guides', say('physics.form-guides')`from each face of the work to the wire guide`, 10, 'mm');

/** Until the shop's own log says better, these three carry the spread of everything the model gives. */
export const rateFactor = given({
  key: 'factor.rate',
  name: say('physics.factor-rate')`factor on cutting rate, not yet learned from the shop log`,
  value: 1,
  unit: '1',
  deviation: 0.25,
  basis: 'assumed',
  source: { file: 'starting-model' },
});

export const finishFactor = given({
  key: 'factor.finish',
  name: say('physics.factor-finish')`factor on Ra, not yet learned from the shop log`,
  value: 1,
  unit: '1',
  deviation: 0.2,
  basis: 'assumed',
  source: { file: 'starting-model' },
});

const fineFinishFactor = given({
  key: 'factor.finish-fine',
  name: say('physics.factor-finish-fine')`factor on Ra of fine passes, not yet learned from the shop log`,
  value: 1,
  unit: '1',
  deviation: 0.25,
  basis: 'assumed',
  source: { file: 'starting-model' },
});

/** Below this energy the cube root of pulse energy says less of Ra: in open data of a nickel alloy it is off by 16 % there. */
const FINE = 0.3;

/** Where the shop log has learned the factor, its spread is that of the log at any energy. */
export const finishFactorAt = (learned: Figure | undefined, energy: number): Figure =>
  learned ?? (energy < FINE ? fineFinishFactor : finishFactor);

/** Four micrometres on the 37 of a rough cut, and in proportion on the smaller gaps of skims. */
export const gapFactor = given({
  key: 'factor.gap',
  name: say('physics.factor-gap')`factor on spark gap, not yet learned from the shop log`,
  value: 1,
  unit: '1',
  deviation: 0.108,
  basis: 'assumed',
  source: { file: 'starting-model' },
});

/** Of a face that was cut before and measured to 1 µm, by a trial cut or with the offsets of the shop's own table. */
export const trialDoubt = remembered(
  'gap.trial',
  say('physics.gap-trial')`uncertainty of the gap after a trial cut that was measured`,
  1,
  'µm',
);

/** A servo does not hold its limit all the way round: one standard deviation as a share of it. From memory. */
export const servoSpread = 0.05;

/**
 * For the rate of a material nobody has cut: how it falls with the energy to melt, the conductivity (W/mK) and resistivity (µΩm) that
 * halve it, tool steel as the yardstick (J/mm³, W/mK, µΩm), and the doubt left. Fitted to the metals whose rate is remembered.
 */
export const indexEstimate = {
  meltPower: 0.7,
  halvingConductivity: 280,
  halvingResistivity: 2.1,
  toolSteel: { melt: 7.7, conductivity: 20.5, resistivity: 0.65 },
  doubt: 0.35,
} as const;

/** Resistivity above which nothing can be spark cut: about 100 ohm·cm. */
export const conductorLimit = remembered(
  'conductor.limit',
  say('physics.conductor-limit')`highest resistivity that can be spark cut`,
  1,
  'Ωm',
);

/** Diameters that the trade knows: 0.001 to 0.014 in. */
export const wireRange = { low: 0.025, high: 0.356, source: 'common-practice' } as const;

/** The rate law was never tried outside these heights, mm. */
export const heightRange = { low: 1, high: 1000 } as const;
