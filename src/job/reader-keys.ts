/** Keys of job file and shop file by which papers tell numbers. */
import { z } from 'zod';

export const tellingSchema = z.strictObject({
  lengths: z.enum(['mm', 'inch']).optional().describe('Unit of lengths; mm when left out'),
  finish: z.enum(['µm', 'µin']).optional().describe('Unit of finishes; µm when left out'),
  decimals: z.enum(['point', 'comma']).optional().describe('What stands before decimals; a point when left out'),
});
