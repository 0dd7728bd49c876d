/** How the papers show the numbers that come up everywhere, as parts. */

import type { Asked } from '../../result/facts.ts';
import { confidenceTold } from '../../result/shown.ts';
import type { ControlUnit } from '../../text/control-unit.ts';
import { MILLIMETRES } from '../../text/control-unit.ts';
import {
  bare,
  deviating,
  duration,
  fixed,
  mm,
  money,
  number,
  type Part,
  promised,
  quantity,
  significant,
  um,
  upTo,
} from '../../text/part.ts';
import { only, phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import type { Unit } from '../../text/unit.ts';

/** A figure as papers lay it out. */
interface Ranged {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly unit: Unit;
}

/** '0.1420' : lengths a machine is set to, in its own unit whoever reads: four digits behind the point, five of an inch. */
export const setting = (millimetres: number, unit: ControlUnit = MILLIMETRES): Part =>
  number(millimetres / unit.millimetres, fixed(unit.name === 'inch' ? 5 : 4));

/** '12.35' : places on the block, as the program counts them. */
export const onBlock = (millimetres: number, unit: ControlUnit = MILLIMETRES): Part =>
  number(millimetres / unit.millimetres, upTo(unit.name === 'inch' ? 4 : 3));

/** '±0.0059 mm (k = 2, about 95 %)': an accuracy promised, and how sure it is. */
export const surely = (millimetres: number, { confidence }: Pick<Asked, 'confidence'>): Text =>
  promises.sure(promised(millimetres), confidence);

const promises = phrases('promise', { sure: (within: Part, k: number) => say`${{ within }} (${{ sure: confidenceTold(k) }})` });

/** '0.39 µm' : a finish, in two digits. */
export const finish = ({ value }: Ranged): Part => um(value, significant(2));

/** A length of the job, to a thousandth. */
export const length = (millimetres: number): Part => mm(millimetres, upTo(3));

/** A figure's number alone, with as many digits as it deserves; its unit stands in the heading. */
export const amountOf = ({ value, low, high, unit }: Ranged): Part => bare(value, unit, deviating((high - low) / 2));

/** '2.36 kg': with as many digits as it deserves. */
export const figureOf = ({ value, low, high, unit }: Ranged): Part => quantity(value, unit, deviating((high - low) / 2));

/** '1,234 m': whole. */
export const whole = (value: number, unit: Unit): Part => ({
  kind: 'quantity',
  amounts: [{ value: Math.round(value), digits: fixed(0), grouped: true }],
  unit,
});

export const moneyRange = ({ low, high }: Ranged, currency: string): Text => words.range(money(low, currency), money(high, currency));

/**
 * '9 h 43 min ± 1 h 10 min', in whole minutes from a minute on: the same hours wherever they stand; without the deviation where it is less than
 * half a minute.
 */
export const timeOf = ({ value, low, high }: Ranged): Text => {
  const deviation = (high - low) / 2;
  const told = duration(value < 1 ? value : Math.round(value));
  if (deviation < 0.5) return only(told);
  const step = deviation > 30 ? 5 : 1;
  return words.sure(told, duration(deviation < 1 ? deviation : Math.round(deviation / step) * step));
};

const words = phrases('paper-number', {
  range: (low: Part, high: Part) => say`${{ low }} to ${{ high }}`,
  sure: (time: Part, deviation: Part) => say`${{ time }} ± ${{ deviation }}`,
});
