/** What may be asked of a rack. Lengths in mm. */
import { z } from 'zod';
import { phrases, say } from '../../text/say.ts';
import { commonKeys } from '../common-keys.ts';
import { shapeQuestion } from '../kind.ts';
import { toothKeys } from '../teeth/tooth-keys.ts';

const { shift: _, tipDiameter: __, ...keys } = toothKeys;

export const rackSchema = z.strictObject({
  kind: z.literal('rack'),
  ...keys,
  teeth: z.int().min(1).max(2000).describe('How many teeth'),
  rootRadius: z
    .number()
    .min(0)
    .max(50)
    .optional()
    .meta({ description: 'Radius between flank and root line, mm; 0.38 modules, or as much as has room, when left out', unit: 'mm' }),
  back: z
    .number()
    .positive()
    .max(1000)
    .optional()
    .meta({ description: 'From the reference line down to the back, mm; four modules when left out', unit: 'mm' }),
  ...commonKeys,
});

export const rackQuestion = shapeQuestion({
  ...phrases('rack', {
    title: say`Rack`,
    what: say`Straight toothed bar by module or diametral pitch`,
  }),
  schema: rackSchema,
  example: { module: 2, teeth: 10 },
});

export type RackRequest = z.output<typeof rackSchema>;
