/** Cuts that the check rows and invariants ask the model about: every wire and height that the trade knows. */
import { there } from '../../test/there.ts';
import type { CutConditions, Flush } from './cut/conditions.ts';
import { standardMachine } from './cut/machine.ts';
import { cutModel } from './cut/model.ts';
import { findMaterial } from './material/find-material.ts';
import type { Wire } from './wire/wire.ts';
import { wires } from './wire/wires.ts';

export const everyMachine = { ...standardMachine, height: 1000, wire: { low: 0.02, high: 0.4 } } as const;
export const brass = there(wires[1]);

export interface Case {
  readonly material?: string;
  readonly height?: number;
  readonly wire?: Wire | undefined;
  readonly flush?: Flush;
}

export const conditions = ({ material = 'd2', height = 50, wire = brass, flush = 'sealed' }: Case = {}): CutConditions => {
  const answer = findMaterial(material);
  if (answer.kind !== 'material') throw new Error(`${material} is ${answer.kind}`);
  return { wire, material: answer.material, height, flush, machine: everyMachine };
};
export const model = (c: Case = {}): ReturnType<typeof cutModel> => cutModel(conditions(c));
export const plain = (diameter: number): Wire => ({ ...brass, diameter });
export const yes = (fact: boolean): string => (fact ? 'yes' : 'no');

export const heights = [5, 10, 20, 32.7, 50, 80, 100, 150, 200, 300, 500, 1000] as const;
export const diameters = [0.025, 0.03, 0.05, 0.07, 0.1, 0.15, 0.2, 0.25, 0.3, 0.33, 0.356] as const;
