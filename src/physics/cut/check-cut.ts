/** Asks of wire, height and machine whether the model may be asked at all: a wrong one is a finding, never a number. */
import type { Finding } from '../../text/finding.ts';
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
  const place = { kind: 'field', path: 'wire' } as const;
  if (!(diameter >= wireRange.low && diameter <= wireRange.high)) {
    return [
      find('wire-out-of-range', `A wire of ${diameter} mm is asked for; wires are made from ${wireRange.low} to ${wireRange.high} mm.`, {
        place,
        remedy: `Choose a wire from ${wireRange.low} to ${wireRange.high} mm.`,
      }),
    ];
  }
  if (diameter < machine.low || diameter > machine.high) {
    return [
      find('wire-not-for-machine', `The machine threads wires from ${machine.low} to ${machine.high} mm, not ${diameter} mm.`, {
        place,
        remedy: `Choose a wire from ${machine.low} to ${machine.high} mm, or another machine.`,
      }),
    ];
  }
  return [];
};

const checkHeight = (height: number, most: number): readonly Finding[] => {
  const place = { kind: 'field', path: 'height' } as const;
  if (!(height > 0 && height <= most)) {
    return [
      find('height-out-of-range', `The work is ${height} mm high; the machine takes more than 0 and at most ${most} mm.`, {
        place,
        remedy: height > most ? `Cut it in layers of at most ${most} mm, or on another machine.` : 'Give the height of the work.',
      }),
    ];
  }
  if (height < heightRange.low || height > heightRange.high) {
    return [
      find(
        'height-hardly-known',
        `The work is ${height} mm high; cutting rates are known from ${heightRange.low} to ${heightRange.high} mm, so the hours are a guess.`,
        { place },
      ),
    ];
  }
  return [];
};
