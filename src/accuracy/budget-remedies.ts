/** What would lower each share of an error budget, as one would say it in the shop. */
import { formLeft } from '../physics/starting-model.ts';
import type { BudgetQuestion, Cause } from './budget-question.ts';

/** `value` is the share in µm. */
export const remedyFor = (cause: Cause, value: number, question: BudgetQuestion): string => REMEDIES[cause](value, question);

const µm = (value: number): string => `${value.toFixed(1)} µm`;

/** Form errors within this factor of the machine's own are not worth another skim. */
const NEARLY_OWN = 1.2;

const skimMore = (value: number, { passes, machine, of }: BudgetQuestion): string => {
  const sides = of.kind === 'size' ? of.sides : 1;
  const floor = machine.formFloor * sides;
  const { value: form } = passes.at(-1)!.formError;
  if (form <= machine.formFloor * NEARLY_OWN)
    return `No further skim gets below the machine's own ${µm(floor)}: more tension, less flushing in the last pass or a better guide would.`;
  return `One skim more would leave ${µm(Math.max(value * formLeft.value, floor))} of it.`;
};

const REMEDIES: Readonly<Record<Cause, (value: number, question: BudgetQuestion) => string>> = {
  register: (value) => `Leave offsets out, or set the register that is expected: either takes all ${µm(value)} away.`,
  barrel: skimMore,
  corner: (_, { passes }) =>
    `A slower last pass round tight arcs, or a lag below today's ${µm(passes.at(-1)!.formError.value)}, takes it away with its square.`,
  thermal: (value, { temperatures, material }) =>
    value === 0
      ? 'Nothing to do: the block is cut at 20 °C.'
      : temperatures?.scale === true
        ? `Water of 20 °C takes these ${µm(value)} away; so does an expansion of ${material.name} known better, from the certificate of its batch.`
        : `Chill the water from ${temperatures?.cutting ?? 20} to 20 °C, or scale the program for ${material.name} (temperature.scale): either takes nearly all ${µm(value)} away.`,
  measuring: (value, { temperatures }) =>
    value === 0
      ? 'Nothing to do: it is measured at 20 °C.'
      : `Let it come from ${temperatures?.measuring ?? 20} to 20 °C before measuring, or correct the reading: either takes all ${µm(value)} away.`,
  temperature: (value, { temperatures }) =>
    `Water and room held to half of ±${temperatures?.swing ?? 1} °C would leave ${µm(value / 2)}; soak the block in the tank before the skims.`,
  gap: (value) =>
    `A trial cut or the first piece measured to 1 µm, and the registers corrected by it, would leave about 1 of these ${µm(value)}.`,
  stress: (value, { passes }) =>
    passes.length === 1
      ? `Rough first and skim after: one skim would leave ${µm(value * 0.3)}.`
      : `Rough every opening before skimming any, and have the block stress-relieved: one skim more would leave ${µm(value * 0.3)}.`,
  positioning: (value) =>
    `Only the machine itself: have its axes measured and compensated, and cut near the middle of the table; ${µm(value)} is what it has.`,
  repeatability: () =>
    'Keep spool, tension, flushing and clamping the same, let the machine run warm, and measure every piece that matters.',
};
