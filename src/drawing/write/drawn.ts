/** What is written into a drawing file: chains on layers, in mm, and the unit of the file. */
import type { Chain } from '../../geometry/contour.ts';

export interface Drawn {
  /** mm */
  readonly chain: Chain;
  /** Name of its layer; letters, digits, blank, - and _ are kept, all other signs become _. '0' when left out. */
  readonly layer?: string;
}

export type WriteUnit = 'mm' | 'inch';

/** mm in one unit of the file. */
export const MILLIMETRES: Readonly<Record<WriteUnit, number>> = { mm: 1, inch: 25.4 };

/** Names are letters, digits, blank, - and _ in every release of the format. */
export const layerName = ({ layer = '0' }: Drawn): string => layer.replace(/[^\p{L}\p{N} _-]/gu, '_').slice(0, 255) || '0';

/**
 * The shortest text that is read back as the same number. Never with an exponent, which some readers do not know: below a
 * millionth it keeps eighteen digits behind the point.
 */
export const numberText = (value: number): string => {
  if (!Number.isFinite(value)) throw new RangeError(`a drawing holds numbers, not ${value}`);
  if (value === 0) return '0';
  return Math.abs(value) < 1e-6
    ? value
        .toFixed(18)
        .replace(/\.?0+$/, '')
        .replace(/^-?0?$/, '0')
    : String(value);
};
