/** How much room a class of splines leaves: total tolerance and variation of ISO 4156 and ANSI B92.1, as formulas. Lengths in mm. */

import type { Formula } from '../../quantity/formula.ts';
import { grouped, list, mm, number, term } from '../../text/part.ts';
import { say, symbols } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { inMm, plain } from '../inputs.ts';

/** The tolerance unit of a size, µm, as ISO 286 has it. */
const unitOf = (size: number): number => (size <= 500 ? 0.45 * Math.cbrt(size) + 0.001 * size : 0.004 * size + 2.1);

/** By the pitch diameter and by the tooth; the second counts four times as much. */
export const isoTotal: Formula<'reference' | 'thickness' | 'factor'> = {
  name: say('spline.iso-total')`total tolerance of space width and tooth thickness`,
  text: say(
    'spline.iso-total.by',
  )`T + λ = a i(D) + 4 a i(S), i = ${{ cube: number(0.45) }} ∛D + ${{ share: number(0.001) }} D in µm, above ${{ from: mm(500) }} ${{ large: number(0.004) }} D + ${{ added: number(2.1) }}`,
  source: 'iso-4156-classes',
  unit: 'mm',
  inputs: { reference: inMm('pitch diameter'), thickness: inMm('basic tooth thickness'), factor: plain('factor of the class') },
  compute: ({ reference, thickness, factor }) => (factor * unitOf(reference) + 4 * factor * unitOf(thickness)) / 1000,
};

export interface Variation {
  /** F = by √L + at µm, of half the pitch circle and of the length of engagement. */
  readonly pitch: readonly [by: number, at: number];
  readonly lead: readonly [by: number, at: number];
  /** F = by m (1 + 0.0125 z) + at µm. */
  readonly profile: readonly [by: number, at: number];
}

export interface IsoClass extends Variation {
  readonly factor: number;
}

export const ISO_CLASSES: Readonly<Record<SplineClass, IsoClass>> = {
  4: { factor: 10, pitch: [2.5, 6.3], profile: [1.6, 10], lead: [0.8, 4] },
  5: { factor: 16, pitch: [3.55, 9], profile: [2.5, 16], lead: [1, 5] },
  6: { factor: 25, pitch: [5, 12.5], profile: [4, 25], lead: [1.25, 6.3] },
  7: { factor: 40, pitch: [7.1, 18], profile: [6.3, 40], lead: [2, 10] },
};

export type SplineClass = '4' | '5' | '6' | '7';

const line = (name: Text, text: Text): Formula<'of' | 'by' | 'at'> => ({
  name,
  text,
  source: 'iso-4156-classes',
  unit: 'mm',
  inputs: { of: inMm('what it goes by'), by: plain('factor of the class'), at: plain('least of the class, µm') },
  compute: ({ of, by, at }) => (by * of + at) / 1000,
});

const root = (name: Text, text: Text): Formula<'of' | 'by' | 'at'> => ({
  ...line(name, text),
  compute: ({ of, by, at }) => (by * Math.sqrt(of) + at) / 1000,
});

export const pitchVariation = root(say('spline.pitch-variation')`total index variation`, symbols`F_p = (a √(π m z / 2) + b) µm`);
export const leadVariation = root(say('spline.lead-variation')`total lead variation`, symbols`F_β = (a √g + b) µm`);
export const profileVariation = line(
  say('spline.profile-variation')`total profile variation`,
  symbols`F_f = (a m (1 + ${0.0125} z) + b) µm`,
);

/** What index, profile and lead together take of the fit, as a gauge feels it. */
export const effectiveVariation: Formula<'pitch' | 'profile' | 'lead'> = {
  name: say('spline.effective-variation')`effective variation`,
  text: symbols`λ = ${0.6} √(F_p² + F_f² + F_β²)`,
  source: 'iso-4156-classes',
  unit: 'mm',
  inputs: { pitch: inMm('total index variation'), profile: inMm('total profile variation'), lead: inMm('total lead variation') },
  compute: ({ pitch, profile, lead }) => 0.6 * Math.hypot(pitch, profile, lead),
};

/** Parts of class 5 in ten thousandths of an inch: by N + at, for pitches up to `to`. */
interface AnsiRow {
  readonly to: number;
  readonly machining: readonly [by: number, at: number];
  readonly variation: readonly [by: number, at: number];
}

const ANSI: readonly AnsiRow[] = [
  { to: 3, machining: [0.18, 14], variation: [0.35, 20] },
  { to: 5, machining: [0.15, 13], variation: [0.23, 18] },
  { to: 8, machining: [0.15, 11], variation: [0.2, 15] },
  { to: 12, machining: [0.1, 11], variation: [0.17, 14] },
  { to: 20, machining: [0.07, 11], variation: [0.12, 13] },
  { to: 48, machining: [0.07, 11], variation: [0.12, 11] },
  { to: 80, machining: [0.06, 9], variation: [0.1, 10] },
  { to: 128, machining: [0.05, 9], variation: [0.08, 9] },
];

export const ANSI_SHARES: Readonly<Record<SplineClass, number>> = { 4: 0.71, 5: 1, 6: 1.4, 7: 2 };

const TEN_THOUSANDTH = 25.4e-4;

const ansi = (part: 'machining' | 'variation', name: Text, letter: string): Formula<'pitch' | 'teeth' | 'share'> => ({
  name,
  text: say(
    'spline.ansi.by',
  )`${{ letter: term(letter) }} = (a N + b) / ${{ parts: grouped(10_000) }} in of class 5, times ${{ shares: list([number(0.71), number(1), number(1.4), number(2)], 'or') }}`,
  source: 'ansi-b92-1',
  unit: 'mm',
  inputs: { pitch: plain('diametral pitch'), teeth: plain('teeth'), share: plain('share of class 5') },
  compute: ({ pitch, teeth, share }) => {
    const [by, at] = (ANSI.find((row) => pitch <= row.to) ?? (ANSI[ANSI.length - 1] as AnsiRow))[part];
    return share * (by * teeth + at) * TEN_THOUSANDTH;
  },
});

export const ansiMachining = ansi('machining', say('spline.machining')`machining tolerance`, 'm');
export const ansiVariation = ansi('variation', say('spline.variation')`variation allowance`, 'λ');
