/** What may be asked of an external gear. */
import { z } from 'zod';
import { phrases, say } from '../../text/say.ts';
import { commonKeys } from '../common-keys.ts';
import { wheelBoreKeys } from '../keyway/bore-keys.ts';
import { shapeQuestion } from '../kind.ts';
import { spanTeethKey, toothKeys } from '../teeth/tooth-keys.ts';

export const gearSchema = z.strictObject({
  kind: z.literal('gear'),
  ...toothKeys,
  root: z
    .enum(['rack', 'full', 'radius'])
    .default('rack')
    .describe('rack: as a rack with rounded tips generates it; full: one round from flank to flank; radius: arcs of rootRadius'),
  rackTip: z
    .number()
    .min(0)
    .max(1)
    .default(0.38)
    .describe('Tip radius of the generating rack as a multiple of the module, for root rack; the mate is taken to come from it too'),
  rootRadius: z
    .number()
    .positive()
    .max(50)
    .optional()
    .meta({ description: 'Radius between flank and root circle, mm, for root radius', unit: 'mm' }),
  spanTeeth: spanTeethKey,
  ...wheelBoreKeys,
  ...commonKeys,
});

export const gearQuestion = shapeQuestion({
  ...phrases('gear', {
    title: say`Spur gear`,
    what: say`External involute gear by module or diametral pitch, with bore and keyway if wanted`,
  }),
  schema: gearSchema,
  example: { module: 2, teeth: 20, bore: 12 },
});

export type GearRequest = z.output<typeof gearSchema>;
