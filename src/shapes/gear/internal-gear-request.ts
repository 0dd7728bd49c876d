/** What may be asked of an internal gear. */
import { z } from 'zod';
import { phrases, say } from '../../text/say.ts';
import { commonKeys } from '../common-keys.ts';
import { shapeQuestion } from '../kind.ts';
import { toothKeys } from '../teeth/tooth-keys.ts';

const schema = z.strictObject({
  kind: z.literal('internal-gear'),
  ...toothKeys,
  root: z
    .enum(['radius', 'full'])
    .default('radius')
    .describe('radius: arcs of rootRadius between flanks and root circle; full: one round from flank to flank'),
  rootRadius: z.number().min(0).max(50).optional().meta({
    description: 'Radius between flank and root circle, mm, for root radius; as a shaper of 0.25 modules leaves it when left out',
    unit: 'mm',
  }),
  outside: z
    .number()
    .positive()
    .max(4000)
    .optional()
    .meta({ description: 'Outside diameter of the ring, mm, where it is cut as well', unit: 'mm' }),
  ...commonKeys,
});

export type InternalGearRequest = z.output<typeof schema>;

export const internalGearQuestion = shapeQuestion({
  ...phrases('internal-gear', {
    title: say`Internal gear`,
    what: say`Ring with involute teeth inside, by module or diametral pitch`,
  }),
  schema,
  example: { module: 2, teeth: 40 },
});
