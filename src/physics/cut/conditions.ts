/** What a cut is done with: everything the model asks before it gives a number. */
import type { Figure } from '../../quantity/figure.ts';
import type { Material } from '../material/material.ts';
import type { Wire } from '../wire/wire.ts';
import type { Machine } from './machine.ts';

/** `sealed`: both nozzles on the work; `one side`: one stands off; `lifted`: both stand off by more than about 1 mm. */
export type Flush = 'sealed' | 'one side' | 'lifted';

/** What the shop's own log says against the model, each a factor with its spread; a factor given here replaces the model's doubt. */
export interface ShopFactors {
  readonly rate?: Figure;
  readonly finish?: Figure;
  readonly gap?: Figure;
}

export interface CutConditions {
  readonly wire: Wire;
  readonly material: Material;
  /** Height of the work along the wire, mm. */
  readonly height: number;
  readonly flush: Flush;
  readonly machine: Machine;
  readonly factors?: ShopFactors | undefined;
}
