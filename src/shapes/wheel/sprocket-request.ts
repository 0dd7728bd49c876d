/** What may be asked of a sprocket. */
import { z } from 'zod';
import { phrases, say } from '../../text/say.ts';
import { commonKeys } from '../common-keys.ts';
import { wheelBoreKeys } from '../keyway/bore-keys.ts';
import { shapeQuestion } from '../kind.ts';
import { ROLLER_CHAINS } from './roller-chains.ts';

const schema = z.strictObject({
  kind: z.literal('sprocket'),
  chain: z
    .enum([...ROLLER_CHAINS.keys()] as [string, ...string[]])
    .default('08B')
    .describe('Number of the chain in ISO 606'),
  teeth: z.int().min(6).max(300).describe('How many teeth'),
  gap: z.enum(['smallest', 'middle', 'largest']).default('middle').describe('Tooth gap between the two limits that the standard gives'),
  tipDiameter: z
    .number()
    .positive()
    .max(5000)
    .optional()
    .meta({ description: 'Tip diameter, mm; midway between the limits of the standard when left out', unit: 'mm' }),
  ...wheelBoreKeys,
  ...commonKeys,
});

export type SprocketRequest = z.output<typeof schema>;

export const sprocketQuestion = shapeQuestion({
  ...phrases('sprocket', {
    title: say`Sprocket`,
    what: say`Chain wheel for a roller chain of ISO 606, with bore and keyway if wanted`,
  }),
  schema,
  example: { chain: '08B', teeth: 17, bore: 20 },
});
