/** What may be asked of a ratchet wheel. */
import { z } from 'zod';
import { phrases, say } from '../../text/say.ts';
import { commonKeys } from '../common-keys.ts';
import { shapeQuestion } from '../kind.ts';

const schema = z.strictObject({
  kind: z.literal('ratchet'),
  teeth: z.int().min(4).max(400).describe('How many teeth'),
  outerDiameter: z.number().positive().max(2000).meta({ description: 'Diameter over the tips, mm', unit: 'mm' }),
  depth: z
    .number()
    .positive()
    .max(200)
    .meta({ description: 'From the tip circle to the deepest place of a space, along a radius, mm', unit: 'mm' }),
  turns: z
    .enum(['counter-clockwise', 'clockwise'])
    .default('counter-clockwise')
    .describe('Which way the wheel turns freely, as it is drawn; the pawl locks it the other way'),
  undercut: z
    .number()
    .min(-30)
    .max(45)
    .default(0)
    .describe('How far the face leans over its space against a radius through its tip, °; 0 radial, below 0 it leans away'),
  back: z.enum(['straight', 'curved']).default('straight').describe('Back of the teeth'),
  backRadius: z
    .number()
    .positive()
    .max(5000)
    .optional()
    .meta({ description: 'Radius of a curved back, bulging outwards, mm; leaving the tip circle smoothly when left out', unit: 'mm' }),
  rootRadius: z
    .number()
    .min(0)
    .max(50)
    .default(0.5)
    .meta({ description: 'Radius between face and back at the bottom of a space, mm', unit: 'mm' }),
  land: z
    .number()
    .min(0)
    .max(100)
    .optional()
    .meta({ description: 'Flat of a tip, along the tip circle, mm; a twentieth of the pitch when left out', unit: 'mm' }),
  bore: z
    .number()
    .positive()
    .max(2000)
    .optional()
    .meta({ description: 'Diameter of a bore in the middle, mm; a keyway is not drawn with it', unit: 'mm' }),
  pawlPivot: z
    .number()
    .positive()
    .max(5000)
    .optional()
    .meta({ description: 'From the middle of the wheel to the pivot of the pawl, mm', unit: 'mm' }),
  pawlLength: z
    .number()
    .positive()
    .max(5000)
    .optional()
    .meta({ description: 'From the pivot of the pawl to its nose at the middle of a face, mm', unit: 'mm' }),
  ...commonKeys,
});

export type RatchetRequest = z.output<typeof schema>;

export const ratchetQuestion = shapeQuestion({
  ...phrases('ratchet', {
    title: say`Ratchet wheel`,
    what: say`Wheel for a pawl, with radial or undercut faces and straight or curved backs`,
  }),
  schema,
  example: { teeth: 24, outerDiameter: 60, depth: 4, undercut: 5, bore: 20 },
});
