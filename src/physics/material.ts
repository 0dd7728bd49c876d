/** A work material and what the model needs to know of it. */
import type { Figure } from '../quantity/figure.ts';

export interface Material {
  /** Key in job files: 'd2', 'wc-6co'. */
  readonly id: string;
  readonly name: string;
  readonly family:
    | 'tool steel'
    | 'steel'
    | 'stainless'
    | 'carbide'
    | 'aluminium'
    | 'titanium'
    | 'nickel alloy'
    | 'copper'
    | 'brass'
    | 'graphite'
    | 'refractory'
    | 'pcd'
    | 'magnesium'
    | 'non-conductor';
  readonly density: Figure;
  readonly expansion: Figure;
  readonly solidus: Figure;
  readonly conductivity: Figure;
  readonly heat: Figure;
  readonly resistivity: Figure;
  /** Cutting rate against tool steel at the same wire and height. */
  readonly index: Figure;
  /** Fines that can burn, cobalt that leaches ... names of cautions in documents/. */
  readonly cautions: readonly string[];
}
