/** What an answer was worked out from, so that one older than its inputs, the shop or the program can be told. */
import { z } from 'zod';

export const answeredFromSchema = z.strictObject({
  inputs: z.string().max(16).describe('Mark of the inputs'),
  shop: z.int().min(0).describe('Revision of the shop'),
  version: z.string().max(40).describe('Version of the program'),
  until: z.iso.date().optional().describe('Day from which other rates of the same shop hold, where the job names no day'),
});

export type AnsweredFrom = z.infer<typeof answeredFromSchema>;

/** Other inputs have another mark, but for one chance in four thousand million; the same ones the same on any computer. */
export const inputsMark = (input: Readonly<Record<string, unknown>>): string => {
  let hash = START;
  for (const letter of JSON.stringify(input)) hash = Math.imul(hash ^ (letter.codePointAt(0) ?? 0), PRIME) >>> 0;
  return hash.toString(16);
};

/** FNV-1a, 32 bits. */
const START = 0x811c9dc5;
const PRIME = 0x01000193;
