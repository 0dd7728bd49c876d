/** Parallel keys by ASME B17.1, sizes in inches: which key belongs to a shaft, and how deep its keyways are. */

import type { Formula, Input } from '../../quantity/formula.ts';
import { say, symbols } from '../../text/say.ts';
import { inMm } from '../inputs.ts';

export interface AsmeRow {
  /** Shafts over this, up to and including `to`, inch. */
  readonly over: number;
  readonly to: number;
  /** Width of the key, and height of the flat one; the square one is as high as it is wide. Inch. */
  readonly width: number;
  readonly flat: number;
  /** False where the standard has the flat key only. */
  readonly square: boolean;
}

type Short = readonly [over: number, to: number, width: number, flat: number, only?: 'flat only'];

const ROWS: readonly Short[] = [
  [5 / 16, 7 / 16, 3 / 32, 3 / 32],
  [7 / 16, 9 / 16, 1 / 8, 3 / 32],
  [9 / 16, 7 / 8, 3 / 16, 1 / 8],
  [7 / 8, 1.25, 1 / 4, 3 / 16],
  [1.25, 1.375, 5 / 16, 1 / 4],
  [1.375, 1.75, 3 / 8, 1 / 4],
  [1.75, 2.25, 1 / 2, 3 / 8],
  [2.25, 2.75, 5 / 8, 7 / 16],
  [2.75, 3.25, 3 / 4, 1 / 2],
  [3.25, 3.75, 7 / 8, 5 / 8],
  [3.75, 4.5, 1, 3 / 4],
  [4.5, 5.5, 1.25, 7 / 8],
  [5.5, 6.5, 1.5, 1],
  [6.5, 7.5, 1.75, 1.5],
  [7.5, 9, 2, 1.5],
  [9, 11, 2.5, 1.75],
  [11, 13, 3, 2],
  [13, 15, 3.5, 2.5],
  [15, 18, 4, 3, 'flat only'],
  [18, 22, 5, 3.5, 'flat only'],
];

/** Shafts up to this have square keys for preference, larger ones flat keys. Inch. */
export const SQUARE_TO = 6.5;

export const ASME_B17: readonly AsmeRow[] = ROWS.map(([over, to, width, flat, only]) => ({
  over,
  to,
  width,
  flat,
  square: only === undefined,
}));

/** None outside of the table; `shaft` in inches. */
export const asmeB17 = (shaft: number): AsmeRow | undefined => ASME_B17.find((r) => shaft > r.over + 1e-9 && shaft <= r.to + 1e-9);

/** What a keyway of class 1 may be wider than its key, by the width of the key: up to, inch. In class 2 it is the first for all. */
const WIDER: readonly (readonly [upTo: number, by: number])[] = [
  [0.5, 0.002],
  [1, 0.003],
  [Number.POSITIVE_INFINITY, 0.004],
];

/** Inch. */
export const keywayWider = (keyClass: '1' | '2', width: number): number =>
  (keyClass === '2' ? WIDER[0] : WIDER.find(([upTo]) => width <= upTo + 1e-9))?.[1] ?? 0;

/** Radius in the corners that the standard suggests, by half the height of the key: up to, inch. */
const FILLETS: readonly (readonly [upTo: number, radius: number])[] = [
  [1 / 8, 1 / 64],
  [1 / 4, 1 / 32],
  [1 / 2, 1 / 16],
  [7 / 8, 1 / 8],
  [1.25, 3 / 16],
  [1.75, 1 / 4],
  [2.5, 3 / 8],
];

/** Inch; the smallest keys are left half of the first radius, by common practice. */
export const suggestedFillet = (height: number): number => FILLETS.find(([upTo]) => height / 2 <= upTo + 1e-9)?.[1] ?? 3 / 8;

const inputs = (more: Readonly<Record<string, Input>> = {}) => ({
  diameter: inMm('shaft'),
  width: inMm('width of the key'),
  height: inMm('height of the key'),
  ...more,
});

/** From the top of the hub's keyway to the opposite side of the bore. */
export const hubSize: Formula<'diameter' | 'width' | 'height' | 'clearance'> = {
  name: say('keyway.hub-size')`bore across its keyway`,
  text: symbols`T = (D + H + √(D² - W²)) / 2 + C`,
  source: 'asme-b17-1',
  unit: 'mm',
  inputs: inputs({ clearance: inMm('clearance above the key') }) as Formula<'diameter' | 'width' | 'height' | 'clearance'>['inputs'],
  compute: ({ diameter: d, width: w, height: h, clearance: c }) => (d + h + Math.sqrt(d * d - w * w)) / 2 + c,
};
