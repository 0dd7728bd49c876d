/** What thermal cutting and abrasive jets are good for, in bare numbers: which metals, how square, how rough, how fast at their best. */

import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import type { Family } from '../material/material.ts';
import type { perpendicularity, thermalRoughness } from './thermal-and-jet-laws.ts';

export type ProcessName = 'oxyfuel' | 'plasma' | 'laser' | 'water jet';

/** All of it common practice without a source, except the scopes and ranges of ISO 9013, which other-process.ts holds. */
export interface ProcessRow {
  readonly name: ProcessName;
  /** Best ranges of ISO 9013 that a good machine can be expected to hold, perpendicularity and roughness; none for the jet. */
  readonly ranges?: { readonly perpendicularity: keyof typeof perpendicularity; readonly roughness: keyof typeof thermalRoughness };
  /** Of a size, either side, mm. */
  readonly sizes: number;
  readonly kerf: number;
  /** Feed at 10 mm of thickness, mm/min, and the power by which it falls with thickness. */
  readonly feed: { readonly atTen: number; readonly power: number; readonly most: number };
  /** Minutes to pierce 10 mm, in proportion to thickness. */
  readonly pierce: number;
  /** Metals it does not cut, with the reason. */
  readonly not: Readonly<Partial<Record<Family, Text>>>;
}

const { burns, cracks, noMelt, noBurn, tooHard } = phrases('process-cannot', {
  burns: say`its chips and vapour burn`,
  cracks: say`the heat cracks it`,
  noMelt: say`it does not melt and blow out`,
  noBurn: say`only unalloyed and low-alloy steel and titanium burn in oxygen`,
  tooHard: say`it is harder than the garnet in the jet`,
});

export const processRows: readonly ProcessRow[] = [
  {
    name: 'oxyfuel',
    ranges: { perpendicularity: 2, roughness: 2 },
    sizes: 0.8,
    kerf: 2,
    feed: { atTen: 600, power: 0.4, most: 700 },
    pierce: 0.15,
    not: {
      'tool steel': noBurn,
      stainless: noBurn,
      carbide: noBurn,
      aluminium: noBurn,
      'nickel alloy': noBurn,
      copper: noBurn,
      brass: noBurn,
      graphite: noBurn,
      refractory: noBurn,
      pcd: noBurn,
      magnesium: burns,
      zirconium: burns,
    },
  },
  {
    name: 'plasma',
    ranges: { perpendicularity: 2, roughness: 2 },
    sizes: 0.4,
    kerf: 2,
    feed: { atTen: 2500, power: 1.1, most: 8000 },
    pierce: 0.02,
    not: { carbide: cracks, graphite: noMelt, pcd: cracks, refractory: cracks, magnesium: burns, zirconium: burns },
  },
  {
    name: 'laser',
    ranges: { perpendicularity: 1, roughness: 2 },
    sizes: 0.1,
    kerf: 0.3,
    feed: { atTen: 2000, power: 1.1, most: 20000 },
    pierce: 0.05,
    not: { carbide: cracks, graphite: noMelt, pcd: cracks, refractory: cracks, magnesium: burns, zirconium: burns },
  },
  {
    name: 'water jet',
    sizes: 0.1,
    kerf: 1,
    feed: { atTen: 0, power: 0, most: 0 },
    pierce: 0.2,
    not: { carbide: tooHard, pcd: tooHard },
  },
];

/** Thickest plate that jets are used for, mm. */
export const thickestJet = 200;

/** The jet of most shops: MPa, mm, g/min, mm; and the best edge it is asked for. */
export const commonJet = { abrasive: 1, pressure: 345, orifice: 0.33, abrasiveFlow: 340, tube: 1.02, quality: 5 } as const;

/** Machinability numbers by family; the first four are published with the law, the others are remembered or taken from a like metal. */
export const jetNumbers: Readonly<Partial<Record<Family, { readonly value: number; readonly published: boolean }>>> = {
  steel: { value: 87.6, published: true },
  stainless: { value: 82, published: true },
  aluminium: { value: 213, published: true },
  titanium: { value: 115, published: true },
  'tool steel': { value: 80, published: false },
  'nickel alloy': { value: 80, published: false },
  copper: { value: 110, published: false },
  brass: { value: 110, published: false },
  graphite: { value: 300, published: false },
  refractory: { value: 60, published: false },
  magnesium: { value: 220, published: false },
  zirconium: { value: 110, published: false },
};
