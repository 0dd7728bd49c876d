/** Which parallel key belongs to a shaft, with the limits of its keyway in the hub. mm. */

import type { Figure } from '../../quantity/figure.ts';
import { apply } from '../../quantity/formula.ts';
import { zoneLimits } from '../../quantity/limits-and-fits.ts';
import type { Finding } from '../../text/finding.ts';
import { millimetres, refusedWith } from '../refused.ts';
import type { MadeShape } from '../shape.ts';
import { asmeB17, hubSize, keywayWider, SQUARE_TO, suggestedFillet } from './asme-b17.ts';
import { din6885 } from './din-6885.ts';
import { find } from './findings.ts';

export interface KeyAsked {
  readonly shaft: number;
  /** Key of the request that says the shaft. */
  readonly field: string;
  readonly standard: KeyStandard;
  readonly flatKey: boolean | undefined;
  readonly keyClass: '1' | '2';
  readonly widthZone: string;
}

export const KEY_STANDARDS = ['DIN 6885-1', 'ASME B17.1'] as const;
export type KeyStandard = (typeof KEY_STANDARDS)[number];

export interface Limits {
  readonly low: number;
  readonly high: number;
}

export const middle = ({ low, high }: Limits): number => (low + high) / 2;

export interface Key {
  readonly kind: 'key';
  readonly words: string;
  readonly width: Limits;
  /** Across the bore, from the top of the keyway to the opposite side, and what it may be larger by. */
  readonly across: Figure;
  readonly larger: number;
  readonly corner: readonly [least: number, most: number];
  readonly findings: readonly Finding[];
}

export type Keyed = Key | Extract<MadeShape, { kind: 'refused' }>;

export const keyOf = (asked: KeyAsked): Keyed => (asked.standard === 'DIN 6885-1' ? dinKey(asked) : asmeKey(asked));

const dinKey = ({ shaft, field, widthZone }: KeyAsked): Keyed => {
  const row = din6885(shaft);
  if (row === undefined) return outsideTable(shaft, field, 'DIN 6885-1 has keys for shafts over 6 mm, up to 500 mm');
  return {
    kind: 'key',
    words: `key ${row.width} × ${row.height}`,
    width: limitsOf(widthZone, row.width),
    across: { ...millimetres('across', 'bore across its keyway', shaft + row.hub, 'din-6885-1'), formula: 'd + t2' },
    larger: row.deeper,
    corner: row.corner,
    findings: atStep(`${shaft} mm`, shaft === row.to, `${row.width} mm`, din6885(row.to + 1e-6)?.width, 'DIN 6885-1', 'mm', field),
  };
};

/** An end of a step belongs to the smaller key; a shaft turned a hair larger has the next one. */
const atStep = (
  shaft: string,
  isEnd: boolean,
  width: string,
  next: number | undefined,
  standard: string,
  unit: string,
  field: string,
): readonly Finding[] =>
  !isEnd || next === undefined
    ? []
    : [
        find(
          'shaft-at-step',
          `${shaft} is the last shaft with a key ${width} wide by ${standard}; anything above it has one of ${next} ${unit}.`,
          { place: { kind: 'field', path: field } },
        ),
      ];

/** Above the key in the hub, from the standard. */
const ASME_CLEARANCE = 0.005 * 25.4;
const ASME_DEEPER = 0.01 * 25.4;

const asmeKey = ({ shaft, field, flatKey, keyClass }: KeyAsked): Keyed => {
  const row = asmeB17(shaft / 25.4);
  if (row === undefined)
    return outsideTable(shaft, field, 'ASME B17.1 has keys for shafts over 5/16 in, here up to 22 in (7.94 to 558.8 mm)');
  if (flatKey === false && !row.square)
    return refusedWith(
      find('shaft-not-in-table', `ASME B17.1 has no square key for a shaft of ${shaft} mm, only a flat one.`, {
        place: { kind: 'field', path: 'flatKey' },
      }),
    );
  const flat = flatKey ?? shaft / 25.4 > SQUARE_TO + 1e-9;
  const [width, height] = [row.width * 25.4, (flat ? row.flat : row.width) * 25.4];
  const across = apply(
    hubSize,
    {
      diameter: millimetres('shaft', 'shaft', shaft),
      width: millimetres('key-width', 'width of the key', width, 'asme-b17-1'),
      height: millimetres('key-height', 'height of the key', height, 'asme-b17-1'),
      clearance: millimetres('key-clearance', 'clearance above the key', ASME_CLEARANCE, 'asme-b17-1'),
    },
    { key: 'across' },
  );
  const isEnd = Math.abs(shaft / 25.4 - row.to) < 1e-9;
  return {
    kind: 'key',
    words: `key ${inches(width)} × ${inches(height)} in, class ${keyClass}`,
    width: { low: width, high: width + keywayWider(keyClass, row.width) * 25.4 },
    across,
    larger: ASME_DEEPER,
    corner: [0, suggestedFillet(height / 25.4) * 25.4],
    findings: atStep(`${inches(shaft)} in`, isEnd, `${inches(width)} in`, asmeB17(row.to + 1e-6)?.width, 'ASME B17.1', 'in', field),
  };
};

const inches = (millimetre: number): string => String(Number((millimetre / 25.4).toFixed(5)));

const outsideTable = (shaft: number, field: string, range: string): Keyed =>
  refusedWith(
    find('shaft-not-in-table', `There is no key for a shaft of ${shaft} mm: ${range}.`, { place: { kind: 'field', path: field } }),
  );

/** Limits of a size; both its own where there is no zone. */
export const limitsOf = (zone: string, size: number): Limits => {
  const answer = zone === 'none' ? undefined : zoneLimits(zone, size);
  return answer?.kind === 'limits' ? { low: size + answer.low / 1000, high: size + answer.high / 1000 } : { low: size, high: size };
};
