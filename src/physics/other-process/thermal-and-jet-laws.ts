/** What thermal cutting and water jets hold, so that the shop can say which work is not for wire; wire cutting itself is outside these standards. */

import type { Formula } from '../../quantity/formula.ts';
import { count } from '../../text/part.ts';
import { say, symbols } from '../../text/say.ts';

const thickness = { unit: 'mm', name: 'thickness' } as const;

type Law = Formula<'thickness'>;

const perpendicularityOf = (range: number, base: number, slope: number): Law => ({
  name: say('other-process.thermal-perpendicularity')`perpendicularity of a thermal cut, range ${{ range: count(range) }}`,
  text: symbols`u = ${base} + ${slope} a`,
  source: 'iso-9013',
  unit: 'mm',
  inputs: { thickness },
  compute: (v) => base + slope * v.thickness,
});

/** Perpendicularity tolerance u = base + slope · a, mm, by range. */
export const perpendicularity = {
  1: perpendicularityOf(1, 0.05, 0.003),
  2: perpendicularityOf(2, 0.15, 0.007),
  3: perpendicularityOf(3, 0.4, 0.01),
  4: perpendicularityOf(4, 0.8, 0.02),
  5: perpendicularityOf(5, 1.2, 0.035),
} as const;

const roughnessOf = (range: number, base: number, slope: number): Law => ({
  name: say('other-process.thermal-roughness')`Rz5 of a thermal cut, range ${{ range: count(range) }}`,
  text: symbols`Rz5 = ${base} + ${slope} a`,
  source: 'iso-9013',
  unit: 'µm',
  inputs: { thickness },
  compute: (v) => base + slope * v.thickness,
});

/** Mean height of the profile Rz5 = base + slope · a, µm, by range. */
export const thermalRoughness = {
  1: roughnessOf(1, 10, 0.6),
  2: roughnessOf(2, 40, 0.8),
  3: roughnessOf(3, 70, 1.2),
  4: roughnessOf(4, 110, 1.8),
} as const;

/** Thicknesses that ISO 9013 covers, mm. */
const scopes = { oxyfuel: [3, 300], plasma: [0.5, 150], laser: [0.5, 32] } as const;

export type ScopeAnswer = { readonly kind: 'covered' } | { readonly kind: 'outside'; readonly low: number; readonly high: number };

export const thermalScope = (process: keyof typeof scopes, thickness: number): ScopeAnswer => {
  const [low, high] = scopes[process];
  return thickness >= low && thickness <= high ? { kind: 'covered' } : { kind: 'outside', low, high };
};

type JetInput = 'abrasive' | 'machinability' | 'pressure' | 'orifice' | 'abrasiveFlow' | 'quality' | 'thickness' | 'tube';

const jetInputs = {
  abrasive: { unit: '1', name: 'abrasive factor, garnet 1' },
  machinability: { unit: '1', name: 'machinability number' },
  quality: { unit: '1', name: 'quality level', low: 1, high: 5 },
} as const;

const jetSpeed = (v: Readonly<Record<JetInput, number>>, constant: number): number =>
  ((v.abrasive * v.machinability * v.pressure ** 1.594 * v.orifice ** 1.374 * v.abrasiveFlow ** 0.343) /
    (constant * v.quality * v.thickness * v.tube ** 0.618)) **
  1.15;

/** Traverse speed; quality 1 parts the metal, 5 is the best edge. */
export const waterJetFeed: Formula<JetInput> = {
  name: say('other-process.water-jet-feed')`traverse speed of an abrasive water jet`,
  text: symbols`V = (f N P^${1.594} d^${1.374} M^${0.343} / (788 q H D^${0.618}))^${1.15}`,
  source: 'zeng-kim',
  unit: 'mm/min',
  inputs: {
    ...jetInputs,
    pressure: { unit: 'MPa', name: 'water pressure' },
    orifice: { unit: 'mm', name: 'orifice' },
    abrasiveFlow: { unit: '1', name: 'abrasive, g/min' },
    thickness,
    tube: { unit: 'mm', name: 'mixing tube' },
  },
  compute: (v) => jetSpeed(v, 788),
};
