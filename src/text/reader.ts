/** How somebody reads numbers and words. */
import type { Language } from './language.ts';

export interface Reader {
  readonly length: 'mm' | 'inch';
  readonly finish: 'µm' | 'µin';
  /** '.' or ','. */
  readonly decimalMark: string;
  /** Between groups of three digits, as in 1,234: '' where the language has none. */
  readonly groupMark: string;
  /** mm in one unit of the drawing, in which places are written; they stay as drawn when it is left out. */
  readonly drawn?: number | undefined;
  /** Places in another unit than lengths: that of the control, on papers for the machine. */
  readonly places?: 'mm' | 'inch' | undefined;
  /** English when left out. */
  readonly language?: Language | undefined;
}

/** English, mm, µm and a point: as the house works things out. */
export const HOUSE: Reader = { length: 'mm', finish: 'µm', decimalMark: '.', groupMark: ',' };
