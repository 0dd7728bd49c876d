/** The constants that hours, sizes, finish and price hang on, each by where it stands in the source. */

export interface Constant {
  /** What it decides. */
  readonly law: 'rate' | 'gap' | 'finish' | 'recast' | 'skim time' | 'form error' | 'price';
  readonly name: string;
  readonly file: string;
  /** Text in front of it: the number is the first of this value behind it. */
  readonly after: string;
  readonly value: string;
  /** Told in the summary: no two rows, one of them printed by somebody, fall when it is a third off. */
  readonly unpinned?: true;
}

const MODEL = 'src/physics/starting-model.ts';
const MACHINE = 'src/physics/cut/machine.ts';
const RATES = 'src/estimate/invented-rates.ts';
const FORMULAS = 'src/estimate/formulas.ts';

const of = (law: Constant['law'], name: string, after: string, value: string, file = MODEL): Constant => ({
  law,
  name,
  file,
  after,
  value,
});

/** Held by rows from memory or by nothing at all. */
const loose = (law: Constant['law'], name: string, after: string, value: string, file = MODEL): Constant => ({
  ...of(law, name, after, value, file),
  unpinned: true,
});

export const CONSTANTS: readonly Constant[] = [
  of('rate', 'area rate of a very thick wire', "'rate.scale'", '266'),
  loose('rate', 'wire of half the rate', "'rate.wire'", '0.13'),
  loose('rate', 'fall with a finer wire', "'rate.wire-power'", '2.2'),
  loose('rate', 'height of end losses', "'rate.thin'", '12'),
  loose('rate', 'height of hard flushing', "'rate.tall'", '350'),
  loose('rate', 'one nozzle raised', "'flush.one-side'", '0.75'),
  loose('rate', 'both nozzles raised', "'flush.lifted'", '0.5'),
  loose('rate', 'servo limit of the invented machine', 'standardMachine: Machine', '12', MACHINE),
  loose('gap', 'gap at vanishing energy', "'gap.least'", '3'),
  loose('gap', 'wider for a rough cut by', "'gap.rise'", '34'),
  loose('finish', 'Ra of a rough cut', "'finish.rough'", '2.8'),
  loose('finish', 'wire from which Ra stays', "'finish.wire'", '0.25'),
  loose('finish', 'damage in Ra', "'damage.per-finish'", '5.5'),
  of('recast', 'layer at Ra 1 µm', "'recast.scale'", '1.7'),
  of('recast', 'power of Ra', "'recast.power'", '1.6'),
  loose('recast', 'least layer', "'recast.least'", '1'),
  loose('skim time', 'fall with energy', "'skim.power'", '2.25'),
  loose('skim time', 'form error taken as stock', "'skim.form'", '0.4'),
  loose('form error', 'left by a skim', "'form.left'", '0.35'),
  loose('form error', 'of the rough cut', "'form.rough'", '20'),
  loose('form error', 'height it belongs to', "'form.height'", '50'),
  loose('form error', 'wire it belongs to', "'form.wire'", '0.25'),
  loose('form error', 'tension it belongs to', "'form.tension'", '12'),
  loose('form error', 'face to guide', "'form.guides'", '10'),
  loose('form error', 'what the invented machine cannot get below', 'standardMachine: Machine', '1.5', MACHINE),
  loose('price', 'minutes of an hour, in time', 'compute: ({ minutes, rate }) => ', '60', FORMULAS),
  loose('price', 'minutes of an hour, in power', 'compute: ({ minutes, power, price }) => ', '60', FORMULAS),
  loose('price', 'markup on the whole', 'compute: ({ once, piece, quantity, markup })', '1', FORMULAS),
  loose('price', 'invented hour of the machine', 'machineHour: ', '4500', RATES),
  loose('price', 'invented hour of people', 'labourHour: ', '5000', RATES),
  loose('price', 'invented markup', 'markup: ', '0.2', RATES),
  loose('price', 'invented price of power', 'powerPrice: ', '30', RATES),
];
