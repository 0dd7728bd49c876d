/** Asks of wire, height and machine whether the model may be asked at all: a wrong one is a finding, never a number. */
import { atField, type Finding } from '../../text/finding.ts';
import { mm, type Part, quantities } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import { find } from '../findings.ts';
import { heightRange, wireRange } from '../starting-model.ts';
import type { CutConditions } from './conditions.ts';

/** Empty when cutModel and ladderRows may be called; a refusal among them means that they must not. */
export const checkCut = ({
  wire,
  height,
  machine,
}: Pick<CutConditions, 'wire' | 'material' | 'height' | 'machine'>): readonly Finding[] => [
  ...checkWire(wire.diameter, machine.wire),
  ...checkHeight(height, machine.height),
];

const checkWire = (diameter: number, machine: { readonly low: number; readonly high: number }): readonly Finding[] => {
  const place = atField('wire');
  if (!(diameter >= wireRange.low && diameter <= wireRange.high)) {
    return [
      find(
        'wire-out-of-range',
        say`A wire of ${{ wire: given(diameter) }} is specified; wires are made from ${{ made: range(wireRange) }}.`,
        {
          place,
          remedy: say`Choose a wire from ${{ made: range(wireRange) }}.`,
        },
      ),
    ];
  }
  if (diameter < machine.low || diameter > machine.high) {
    return [
      find('wire-not-for-machine', say`The machine threads wires from ${{ threads: range(machine) }}, not ${{ wire: given(diameter) }}.`, {
        place,
        remedy: say`Choose a wire from ${{ threads: range(machine) }}, or another machine.`,
      }),
    ];
  }
  return [];
};

const words = phrases('height-out-of-range', {
  layers: (most: Part) => say`Cut it in layers of at most ${{ most }}, or on another machine.`,
  giveHeight: say`Give the height of the work.`,
});

/** As it was given, with every digit. */
const given = (millimetres: number): Part => mm(millimetres, { as: 'given' });
const range = ({ low, high }: { readonly low: number; readonly high: number }): Part =>
  quantities([low, high], 'to', 'mm', { as: 'given' });

const checkHeight = (height: number, most: number): readonly Finding[] => {
  const place = atField('height');
  if (!(height > 0 && height <= most)) {
    return [
      find(
        'height-out-of-range',
        say`The cut height is ${{ height: given(height) }}; the machine takes more than 0 and at most ${{ most: given(most) }}.`,
        {
          place,
          remedy: height > most ? words.layers(given(most)) : words.giveHeight,
        },
      ),
    ];
  }
  if (height < heightRange.low || height > heightRange.high) {
    return [
      find(
        'height-hardly-known',
        say`The cut height is ${{ height: given(height) }}; cutting rates are known for ${{ known: range(heightRange) }}, so the machine time is a guess.`,
        { place },
      ),
    ];
  }
  return [];
};
