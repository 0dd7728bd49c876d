/** What may be asked of a bore with a keyway, in a hub or in a wheel. */
import { z } from 'zod';
import { KEY_STANDARDS } from './key.ts';

/** Tolerance and key of any bore. */
export const keyKeys = {
  flatKey: z
    .boolean()
    .optional()
    .describe('ASME only: the flat key of the row in place of the square one; when left out, the flat one for shafts over 6 1/2 in'),
  keyClass: z.enum(['1', '2']).default('1').describe('ASME only, fit of the key: 1 with clearance, for bar stock; 2 closer, for key stock'),
  widthZone: z.enum(['JS9', 'P9', 'D10']).default('JS9').describe('DIN only, tolerance of the width: JS9 normal, P9 tight, D10 sliding'),
};

const radius = z
  .number()
  .min(0)
  .max(10)
  .optional()
  .meta({ description: 'Radius in the corners of the keyway, mm; the largest the standard allows when left out', unit: 'mm' });

export const hubKeys = {
  shaft: z.number().positive().max(500).meta({ description: 'Diameter of shaft and bore, mm', unit: 'mm' }),
  standard: z.enum(KEY_STANDARDS).default('DIN 6885-1').describe('Whose table says which key it is'),
  ...keyKeys,
  boreZone: z.enum(['H6', 'H7', 'H8', 'H9', 'none']).default('H7').describe('Tolerance of the bore; none: the bore as it is said'),
  cornerRadius: radius,
};

/** Of gears and sprockets, where the bore is one thing more. */
export const wheelBoreKeys = {
  bore: z.number().positive().max(2000).optional().meta({ description: 'Diameter of a bore in the middle, mm', unit: 'mm' }),
  boreZone: z
    .enum(['H6', 'H7', 'H8', 'H9', 'none'])
    .default('none')
    .describe('Tolerance of the bore: it is cut at the middle of its limits; none: as it is said'),
  keyway: z
    .enum(['none', ...KEY_STANDARDS])
    .default('none')
    .describe('Keyway in the bore by this standard, for a shaft of the diameter of the bore; none: a plain bore'),
  ...keyKeys,
  keywayRadius: radius,
};
