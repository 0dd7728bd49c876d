/** What may be asked of a polygon. */
import { z } from 'zod';
import { phrases, say } from '../../text/say.ts';
import { commonKeys } from '../common-keys.ts';
import { shapeQuestion } from '../kind.ts';

const schema = z.strictObject({
  kind: z.literal('polygon'),
  sides: z.int().min(3).max(64).default(6).describe('How many sides'),
  acrossFlats: z
    .number()
    .positive()
    .max(1000)
    .meta({ description: 'Between two opposite sides, or twice the distance from the middle to a side, mm', unit: 'mm' }),
  cornerRadius: z.number().min(0).max(500).default(0).meta({ description: 'Radius of the corners, mm; 0 for sharp ones', unit: 'mm' }),
  metal: z.enum(['inside', 'outside']).default('inside').describe('inside: a piece of this form; outside: an opening of this form'),
  ...commonKeys,
});

export const polygonQuestion = shapeQuestion({
  ...phrases('polygon', {
    title: say`Polygon`,
    what: say`Square, hexagon or another regular form by its size across flats`,
  }),
  schema,
  example: { sides: 6, acrossFlats: 24 },
});
