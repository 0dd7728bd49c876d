/** What may be asked of a form tool. Lengths in mm. */
import { z } from 'zod';
import { phrases, say } from '../../text/say.ts';
import { commonKeys } from '../common-keys.ts';
import { shapeQuestion } from '../kind.ts';
import { FORM_NAMES } from './thread-forms.ts';

export const toolSchema = z.strictObject({
  kind: z.literal('form-tool'),
  form: z
    .enum(FORM_NAMES)
    .default('acme')
    .describe('Thread: Acme 29°, stub Acme, trapezoidal 30°, square, two buttress forms, or any v by its included angle'),
  pitch: z.number().positive().max(200).optional().meta({ description: 'Pitch, mm; or threads per inch', unit: 'mm' }),
  threadsPerInch: z.number().positive().max(200).optional().describe('Threads per inch, in place of the pitch'),
  starts: z.int().min(1).max(24).default(1).describe('Starts of the thread: its lead is so many pitches'),
  includedAngle: z.number().min(0).max(170).optional().describe('Form v only: angle between the flanks, °'),
  depth: z
    .number()
    .positive()
    .max(200)
    .optional()
    .meta({ description: 'Depth of the groove, mm; by the standard when left out, a v needs it', unit: 'mm' }),
  pointWidth: z.number().min(0).max(200).optional().meta({
    description: 'Width of the point between its sharp corners, mm; by the standard when left out, for a v what its nose takes',
    unit: 'mm',
  }),
  noseRadius: z
    .number()
    .min(0)
    .max(100)
    .optional()
    .meta({ description: 'Radius at the corners of the point, mm; by the standard for a buttress, else sharp, when left out', unit: 'mm' }),
  crestClearance: z
    .number()
    .min(0)
    .max(10)
    .optional()
    .meta({ description: 'How much deeper than the basic height the groove is, mm; by the standard when left out', unit: 'mm' }),
  loadFlank: z.enum(['left', 'right']).default('right').describe('Buttress only: the side of the steep flank, the tip upwards'),
  sideRelief: z.number().min(0).max(15).default(1).describe('Square only: how much each side leans inwards behind the tip, °'),
  clearanceAngle: z
    .number()
    .min(0)
    .max(30)
    .default(0)
    .describe('Front clearance that the blank gets by being tilted in its holder, °; the profile is corrected for it. 0: it is ground'),
  rakeAngle: z
    .number()
    .min(-20)
    .max(30)
    .default(0)
    .describe('Rake that the top is ground to, °; the profile is corrected for it, for work turned on its outside'),
  minorDiameter: z.number().positive().max(5000).optional().meta({
    description: 'Of the work at the root of the groove, mm; needed where there is rake, and for the clearance beside the flanks',
    unit: 'mm',
  }),
  reach: z
    .number()
    .positive()
    .max(500)
    .optional()
    .meta({ description: 'From the tip to the shoulders, mm; a quarter more than the depth when left out', unit: 'mm' }),
  shankWidth: z.number().positive().max(500).default(12).meta({ description: 'Width of the shank, mm', unit: 'mm' }),
  length: z.number().positive().max(1000).default(60).meta({ description: 'From the tip to the end of the shank, mm', unit: 'mm' }),
  shoulderRadius: z
    .number()
    .min(0)
    .max(100)
    .optional()
    .meta({ description: 'Radius between point and shoulders, mm; 1 mm, or as much as has room, when left out', unit: 'mm' }),
  ...commonKeys,
});

export const formToolQuestion = shapeQuestion({
  ...phrases('form-tool', {
    title: say`Form tool`,
    what: say`Blank of a tool for Acme, trapezoidal, square, buttress or v-shaped grooves`,
  }),
  schema: toolSchema,
  example: { form: 'acme', threadsPerInch: 5 },
});

export type ToolRequest = z.output<typeof toolSchema>;
