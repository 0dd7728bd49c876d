/** A work material and what the model needs to know of it. */
import type { Figure } from '../../quantity/figure.ts';

export type Family =
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
  | 'zirconium';

/** What a set-up sheet must say of a material; the sentences are in documents/. */
export type Caution =
  | 'combustible fines'
  | 'hydrogen'
  | 'cobalt leaching'
  | 'cobalt in sludge'
  | 'nickel in sludge'
  | 'chromium in sludge'
  | 'recast layer'
  | 'conductive dust'
  | 'water-reactive when burning';

export interface Material {
  /** Key in job files: 'd2', 'wc-6co'. */
  readonly id: string;
  /** Its key in files of 0.3, where it was another. */
  readonly formerly?: string | undefined;
  readonly name: string;
  readonly family: Family;
  /** g/cm³ */
  readonly density: Figure;
  /** 1e-6/K, mean from 20 to 100 °C. */
  readonly expansion: Figure;
  /** °C where melting begins (decomposes or sublimes, where it does not melt). */
  readonly solidus: Figure;
  /** W/mK */
  readonly conductivity: Figure;
  /** J/kgK */
  readonly heat: Figure;
  /** kJ/kg to melt it once it is hot enough. */
  readonly fusion: Figure;
  /** µΩm */
  readonly resistivity: Figure;
  /** Cutting rate against tool steel at the same wire and height. */
  readonly index: Figure;
  /** Ra against tool steel from the same pulse: carbide comes out finer. */
  readonly fineness: Figure;
  readonly cautions: readonly Caution[];
}

/** Something asked for that no spark can cut. */
export interface NonConductor {
  readonly id: string;
  readonly name: string;
  /** Ωm */
  readonly resistivity: Figure;
}
