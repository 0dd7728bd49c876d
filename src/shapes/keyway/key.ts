/** Which parallel key belongs to a shaft, with the limits of its keyway in the hub. mm. */

import type { Figure } from '../../quantity/figure.ts';
import { apply } from '../../quantity/formula.ts';
import { zoneLimits } from '../../quantity/limits-and-fits.ts';
import { atField, type Finding } from '../../text/finding.ts';
import { mm, number, type Part, quantities, term, upTo } from '../../text/part.ts';
import { phrases, say, symbols } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { millimetres, refusedWith } from '../refused.ts';
import type { MadeShape } from '../shape.ts';
import { type AsmeRow, asmeB17, hubSize, keywayWider, SQUARE_TO, suggestedFillet } from './asme-b17.ts';
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
  /** 'key 12 × 8', 'key 0.375 × 0.375 in, class 1'. */
  readonly words: Text;
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
  if (row === undefined)
    return outsideTable(
      field,
      say(
        'shaft-not-in-table/din',
      )`There is no key for a shaft of ${{ shaft: mm(shaft) }}: ${{ standard: term('DIN 6885-1') }} has keys for shafts over ${{ over: mm(6) }}, up to ${{ most: mm(500) }}.`,
    );
  return {
    kind: 'key',
    words: words.din(row.width, row.height),
    width: limitsOf(widthZone, row.width),
    across: {
      ...millimetres('across', say('keyway.across')`bore across its keyway`, shaft + row.hub, { file: 'din-6885-1' }),
      formula: symbols`d + t2`,
    },
    larger: row.deeper,
    corner: row.corner,
    findings: shaft === row.to ? atStep(shaft, row.width, din6885(row.to + 1e-6)?.width, { standard: 'DIN 6885-1', told: mm, field }) : [],
  };
};

/** An end of a step belongs to the smaller key; a shaft turned a hair larger has the next one. */
const atStep = (
  shaft: number,
  width: number,
  next: number | undefined,
  { standard, told, field }: { readonly standard: KeyStandard; readonly told: (mm: number) => Part | Text; readonly field: string },
): readonly Finding[] =>
  next === undefined
    ? []
    : [
        find(
          'shaft-at-step',
          say`${{ shaft: told(shaft) }} is the last shaft with a key ${{ width: told(width) }} wide by ${{ standard: term(standard) }}; anything above it has one of ${{ next: told(next) }}.`,
          { place: { kind: 'field', path: field } },
        ),
      ];

/** Above the key in the hub, from the standard. */
const ASME_CLEARANCE = 0.005 * 25.4;
const ASME_DEEPER = 0.01 * 25.4;

const asmeKey = ({ shaft, field, flatKey, keyClass }: KeyAsked): Keyed => {
  const row = asmeB17(shaft / 25.4);
  if (row === undefined)
    return outsideTable(
      field,
      say(
        'shaft-not-in-table/asme',
      )`There is no key for a shaft of ${{ shaft: mm(shaft) }}: ${{ standard: term('ASME B17.1') }} has keys for shafts over ${{ over: term('5/16 in') }}, here up to ${{ most: term('22 in') }} (${{ shafts: quantities([7.94, 558.8], 'to', 'mm') }}).`,
    );
  if (flatKey === false && !row.square)
    return refusedWith(
      find(
        'shaft-not-in-table/square',
        say`${{ standard: term('ASME B17.1') }} has no square key for a shaft of ${{ shaft: mm(shaft) }}, only a flat one.`,
        { place: atField('flatKey') },
      ),
    );
  const flat = flatKey ?? shaft / 25.4 > SQUARE_TO + 1e-9;
  const [width, height] = [row.width * 25.4, (flat ? row.flat : row.width) * 25.4];
  const across = apply(
    hubSize,
    {
      diameter: millimetres('shaft', say('keyway.shaft')`shaft`, shaft),
      width: millimetres('key-width', say('keyway.key-width')`width of the key`, width, { file: 'asme-b17-1' }),
      height: millimetres('key-height', say('keyway.key-height')`height of the key`, height, { file: 'asme-b17-1' }),
      clearance: millimetres('key-clearance', say('keyway.key-clearance')`clearance above the key`, ASME_CLEARANCE, { file: 'asme-b17-1' }),
    },
    { key: 'across' },
  );
  const isEnd = Math.abs(shaft / 25.4 - row.to) < 1e-9;
  return {
    kind: 'key',
    words: words.asme(width, height, keyClass),
    width: { low: width, high: width + keywayWider(keyClass, row.width) * 25.4 },
    across,
    larger: ASME_DEEPER,
    corner: [0, suggestedFillet(height / 25.4) * 25.4],
    findings: isEnd ? atStep(shaft, width, nextWidth(row), { standard: 'ASME B17.1', told: words.inches, field }) : [],
  };
};

/** Of the key of the row after it, mm. */
const nextWidth = ({ to }: AsmeRow): number | undefined => {
  const next = asmeB17(to + 1e-6);
  return next === undefined ? undefined : next.width * 25.4;
};

const inInches = (millimetre: number): Part => number(millimetre / 25.4, upTo(5));

/** A standard in inches is told in inches to every reader. */
const words = phrases('key', {
  din: (width: number, height: number) => say`key ${{ width: number(width) }} × ${{ height: number(height) }}`,
  asme: (width: number, height: number, keyClass: string) =>
    say`key ${{ width: inInches(width) }} × ${{ height: inInches(height) }} in, class ${{ class: term(keyClass) }}`,
  inches: (millimetre: number) => say`${{ inches: inInches(millimetre) }} in`,
});

const outsideTable = (field: string, text: Text): Keyed =>
  refusedWith(find('shaft-not-in-table', text, { place: { kind: 'field', path: field } }));

/** Limits of a size; both its own where there is no zone. */
export const limitsOf = (zone: string, size: number): Limits => {
  const answer = zone === 'none' ? undefined : zoneLimits(zone, size);
  return answer?.kind === 'limits' ? { low: size + answer.low / 1000, high: size + answer.high / 1000 } : { low: size, high: size };
};
