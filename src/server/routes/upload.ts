/** The route that files are brought in by: each drawing becomes a job; a job file takes its drawing from among the other files. */
import type { FastifyRequest } from 'fastify';
import { z } from 'zod';
import { jobFileOf, stemOf } from '../keep/job-file.ts';
import type { NewJob } from '../keep/jobs.ts';
import { kindOf } from '../keep/places.ts';
import { paths } from '../message/answers.ts';
import { recordSchema } from '../message/job-record.ts';
import { badField, Refusal } from '../refusal.ts';
import { errors, MB, type Room, type Server } from './room.ts';

export const MOST_FILES = 20;
export const LARGEST_FILE = 64 * MB;
const LARGEST_UPLOAD = 256 * MB;
const LARGEST_JOB_FILE = 2 * MB;
const LONGEST_NAME = 200;

interface Part {
  readonly name: string;
  readonly bytes: Uint8Array;
}

export const uploadRoutes = (server: Server, { jobs }: Room): void => {
  server.post(
    paths.jobs,
    {
      bodyLimit: LARGEST_UPLOAD,
      // The files are read as they come; the schema below only describes them.
      validatorCompiler: () => (value) => ({ value }),
      schema: {
        summary: 'Brings in drawings (DXF, SVG; each becomes a job) or a job file together with its drawing; all of them or none',
        consumes: ['multipart/form-data'],
        body: z.strictObject({ files: z.array(z.string().meta({ format: 'binary' })).max(MOST_FILES) }),
        response: { 201: z.array(recordSchema), ...errors(400, 413, 415) },
      },
    },
    async (request, reply) => {
      const wanted = jobsOf(await partsOf(request));
      const brought = [];
      for (const job of wanted) brought.push(await jobs.bringIn(job));
      return reply.code(201).send(brought);
    },
  );
};

/** What cannot be read as a form at all is the sender's fault, and so is a form that breaks off. */
const partsOf = async (request: FastifyRequest): Promise<readonly Part[]> => {
  try {
    return await readParts(request);
  } catch (error) {
    const known = error instanceof Refusal || (error as { code?: string }).code !== undefined;
    throw known ? error : new Refusal(400, 'broken-off', 'The files did not come whole, or not as the files of a form.');
  }
};

const readParts = async (request: FastifyRequest): Promise<readonly Part[]> => {
  const parts: Part[] = [];
  let total = 0;
  for await (const part of request.files()) {
    const bytes = await part.toBuffer();
    total += bytes.length;
    if (total > LARGEST_UPLOAD)
      throw new Refusal(413, 'too-large', `The files are larger than ${LARGEST_UPLOAD / MB} MB together; bring in fewer at once.`);
    parts.push({ name: harmless(part.filename), bytes });
  }
  return parts;
};

/** What would steer a terminal or turn the direction of writing around is taken out of a name. */
const harmless = (name: string | undefined): string =>
  (name ?? '')
    .replaceAll(/[\p{Cc}\u200e\u200f\u202a-\u202e\u2066-\u2069]/gu, '')
    .trim()
    .slice(-LONGEST_NAME);

const jobsOf = (parts: readonly Part[]): readonly NewJob[] => {
  if (parts.length === 0) throw badField('files', 'No file came.');
  for (const { name, bytes } of parts) {
    if (kindOf(name) === undefined && !isJobFile(name))
      throw badField(
        'files',
        `${name === '' ? 'A file without a name' : name} is neither a DXF nor an SVG drawing nor a job file. Save the drawing as DXF or SVG and bring that.`,
      );
    if (bytes.length === 0) throw badField('files', `${name} is empty.`);
  }
  const drawings = parts.filter((p) => !isJobFile(p.name));
  const asked = parts.filter((p) => isJobFile(p.name)).map((p) => fromJobFile(p, drawings));
  const taken = new Set(asked.map((a) => a.drawing));
  const alone = drawings.filter((d) => !taken.has(d.bytes)).map(fromDrawing);
  return [...asked, ...alone];
};

const isJobFile = (name: string): boolean => name.toLowerCase().endsWith('.json');

const fromDrawing = ({ name, bytes }: Part): NewJob => ({
  name: stemOf(name).slice(0, 120),
  drawingName: name,
  drawing: bytes,
  input: { drawing: name },
});

const fromJobFile = ({ name, bytes }: Part, drawings: readonly Part[]): NewJob => {
  if (bytes.length > LARGEST_JOB_FILE) throw new Refusal(413, 'too-large', `${name} is larger than a job file can be.`);
  const { job } = jobFileOf(new TextDecoder().decode(bytes), name);
  const wanted = job.drawingName.toLowerCase();
  const drawing = drawings.find((d) => d.name.toLowerCase() === wanted);
  if (drawing === undefined)
    throw badField(
      'drawing',
      `${name} asks for the drawing ${harmless(job.drawingName)}, which is not among the files. Bring both in together.`,
    );
  return { ...job, drawingName: drawing.name, drawing: drawing.bytes, input: { ...job.input, drawing: drawing.name } };
};
