/** What may be asked of the bore of a hub. */
import { z } from 'zod';
import { phrases, say } from '../../text/say.ts';
import { commonKeys } from '../common-keys.ts';
import { shapeQuestion } from '../kind.ts';
import { hubKeys } from './bore-keys.ts';

const schema = z.strictObject({
  kind: z.literal('keyway-hub'),
  ...hubKeys,
  keyways: z.int().min(1).max(2).default(1).describe('How many keyways'),
  between: z.number().min(60).max(180).default(180).describe('Angle between two keyways, °'),
  outside: z
    .number()
    .positive()
    .max(2000)
    .optional()
    .meta({ description: 'Outside diameter, mm, where the hub itself is cut as well', unit: 'mm' }),
  ...commonKeys,
});

export type HubRequest = z.output<typeof schema>;

export const keywayHubQuestion = shapeQuestion({
  ...phrases('keyway-hub', {
    title: say`Hub with keyway`,
    what: say`Bore with keyways for parallel keys by DIN 6885-1 (ISO 773) or ASME B17.1`,
  }),
  schema,
  example: { shaft: 40 },
});
