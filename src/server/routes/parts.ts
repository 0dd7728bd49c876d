/** The files of a form as they come in, each whole, within the limits of one upload. */
import type { FastifyRequest, FastifySchemaCompiler } from 'fastify';
import { validatorCompiler } from 'fastify-type-provider-zod';
import { z } from 'zod';
import { count } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import { Refusal } from '../answer/refusal.ts';
import { MB } from './room.ts';

export const MOST_FILES = 20;
export const LARGEST_FILE = 64 * MB;
export const LARGEST_UPLOAD = 256 * MB;
const LONGEST_NAME = 200;

export interface Part {
  /** As the sender calls it: text, never a path. */
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** For a route that takes files: they are read as they come, and the schema only describes them. */
export const filesBody = {
  validatorCompiler: ((part: Parameters<typeof validatorCompiler>[0]) =>
    part.httpPart === 'body' ? (value: unknown) => ({ value }) : validatorCompiler(part)) as FastifySchemaCompiler<unknown>,
  consumes: ['multipart/form-data'],
  body: z.strictObject({ files: z.array(z.string().meta({ format: 'binary' })).max(MOST_FILES) }),
};

export const noFile = say('server-upload.none')`No file was sent.`;

const words = phrases('server-upload', {
  brokenOff: say`The files did not arrive complete, or not as the files of a form.`,
  tooLarge: say`The files are larger than ${{ most: count(LARGEST_UPLOAD / MB) }} MB together; add fewer at once.`,
});

/** Throws a refusal. What cannot be read as a form at all is the sender's fault, and so is a form that breaks off. */
export const partsOf = async (request: FastifyRequest): Promise<readonly Part[]> => {
  try {
    return await readParts(request);
  } catch (error) {
    const known = error instanceof Refusal || (error as { code?: string }).code !== undefined;
    throw known ? error : new Refusal(400, 'broken-off', words.brokenOff);
  }
};

const readParts = async (request: FastifyRequest): Promise<readonly Part[]> => {
  const parts: Part[] = [];
  let total = 0;
  for await (const part of request.files()) {
    const bytes = await part.toBuffer();
    total += bytes.length;
    if (total > LARGEST_UPLOAD) throw new Refusal(413, 'too-large', words.tooLarge);
    parts.push({ name: harmless(part.filename), bytes });
  }
  return parts;
};

/** What would steer a terminal or turn the direction of writing around is taken out of a name; its ending stays. */
export const harmless = (name: string | undefined): string =>
  (name ?? '')
    .replaceAll(/[\p{Cc}\u200e\u200f\u202a-\u202e\u2066-\u2069]/gu, '')
    .trim()
    .slice(-LONGEST_NAME);
