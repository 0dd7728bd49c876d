/** What would lower each share of an error budget, as one would say it in the shop. */

import { formLeft } from '../physics/starting-model.ts';
import { lastOf } from '../sequence/sequence.ts';
import { asGiven, fixed, name, type Part, quantity, um } from '../text/part.ts';
import { phrases, say } from '../text/say.ts';
import type { Text } from '../text/text.ts';
import type { BudgetQuestion, Cause } from './budget-question.ts';

/** `value` is the share in µm. */
export const remedyFor = (cause: Cause, value: number, question: BudgetQuestion): Text => REMEDIES[cause](value, question);

const µm = (value: number): Part => um(value, fixed(1));

const words = phrases('budget-remedy', {
  register: (share: Part) => say`Leave the offsets out, or set the expected register: either removes all ${{ share }}.`,
  ownForm: (floor: Part) =>
    say`No further skim gets below the machine's own ${{ floor }}: more tension, less flushing in the last pass or a better guide would.`,
  oneSkim: (left: Part) => say`One more skim would leave ${{ left }} of it.`,
  corner: (lag: Part) =>
    say`A slower last pass round tight arcs, or less lag than today's ${{ lag }}, reduces it with the square of the lag.`,
  cutAtReference: say`Nothing to do: the block is cut at 20 °C.`,
  water: (share: Part, material: Part) =>
    say`Water at 20 °C removes these ${{ share }}; so does a better known expansion of ${{ material }}, from the batch certificate.`,
  chill: (from: Part, material: Part, share: Part) =>
    say`Chill the water from ${{ from }} to 20 °C, or scale the program for ${{ material }} (temperature.scale): either removes nearly all ${{ share }}.`,
  measuredAtReference: say`Nothing to do: it is measured at 20 °C.`,
  let: (from: Part, share: Part) =>
    say`Let it come from ${{ from }} to 20 °C before measuring, or correct the reading: either removes all ${{ share }}.`,
  swing: (swing: Part, left: Part) =>
    say`Water and room held to half of ±${{ swing }} would leave ${{ left }}; soak the block in the tank before the skims.`,
  gap: (share: Part) =>
    say`A trial cut, or the first piece measured to 1 µm and the registers corrected, would leave about 1 of these ${{ share }}.`,
  skimAfter: (left: Part) => say`Add a skim after the rough: one skim would leave ${{ left }}.`,
  relieve: (left: Part) =>
    say`Rough every opening before skimming any, and have the block stress-relieved: one more skim would leave ${{ left }}.`,
  positioning: (share: Part) =>
    say`Only the machine itself: have its axes measured and compensated, and cut near the middle of the table; ${{ share }} is its own.`,
  repeatability: say`Keep spool, tension, flushing and clamping the same, let the machine warm up, and measure every piece that matters.`,
});

/** Form errors within this factor of the machine's own are not worth another skim. */
const NEARLY_OWN = 1.2;

const skimMore = (value: number, { passes, machine, of }: BudgetQuestion): Text => {
  const sides = of.kind === 'size' ? of.sides : 1;
  const floor = machine.bestFormError * sides;
  const { value: form } = lastOf(passes).formError;
  if (form <= machine.bestFormError * NEARLY_OWN) return words.ownForm(µm(floor));
  return words.oneSkim(µm(Math.max(value * formLeft.value, floor)));
};

const thermal = (value: number, { temperatures, material }: BudgetQuestion): Text => {
  if (value === 0) return words.cutAtReference;
  if (temperatures?.scale === true) return words.water(µm(value), name(material.name));
  return words.chill(asGiven(temperatures?.cutting ?? 20), name(material.name), µm(value));
};

const REMEDIES: Readonly<Record<Cause, (value: number, question: BudgetQuestion) => Text>> = {
  register: (value) => words.register(µm(value)),
  barrel: skimMore,
  corner: (_, { passes }) => words.corner(µm(lastOf(passes).formError.value)),
  thermal,
  measuring: (value, { temperatures }) =>
    value === 0 ? words.measuredAtReference : words.let(asGiven(temperatures?.measuring ?? 20), µm(value)),
  temperature: (value, { temperatures }) => words.swing(quantity(temperatures?.swing ?? 1, '°C', { as: 'given' }), µm(value / 2)),
  gap: (value) => words.gap(µm(value)),
  stress: (value, { passes }) => (passes.length === 1 ? words.skimAfter(µm(value * 0.3)) : words.relieve(µm(value * 0.3))),
  positioning: (value) => words.positioning(µm(value)),
  repeatability: () => words.repeatability,
};
