/** What may be asked of a slot or rectangle. */
import { z } from 'zod';
import { phrases, say } from '../../text/say.ts';
import { commonKeys } from '../common-keys.ts';
import { shapeQuestion } from '../kind.ts';

const schema = z.strictObject({
  kind: z.literal('slot'),
  length: z.number().positive().max(2000).meta({ description: 'Over all, along X, mm', unit: 'mm' }),
  breadth: z.number().positive().max(2000).meta({ description: 'Across, along Y, mm', unit: 'mm' }),
  ends: z.enum(['round', 'corners']).default('round').describe('round: half circles at both ends; corners: a rectangle'),
  cornerRadius: z.number().min(0).max(500).default(0).meta({ description: 'Radius of the corners of a rectangle, mm', unit: 'mm' }),
  metal: z.enum(['inside', 'outside']).default('outside').describe('inside: a piece of this form; outside: an opening of this form'),
  ...commonKeys,
});

export const slotQuestion = shapeQuestion({
  ...phrases('slot', {
    title: say`Slot or rectangle`,
    what: say`Slot with round ends, or a rectangle with or without corner radii`,
  }),
  schema,
  example: { length: 30, breadth: 8 },
});
