/** The route that files are brought in by: each drawing becomes a job; a job file takes its drawing from among the other files. */
import { z } from 'zod';
import { name as asName } from '../../text/part.ts';
import { only, phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { badField, Refusal } from '../answer/refusal.ts';
import { jobFileOf, stemOf } from '../keep/job-file.ts';
import type { NewJob } from '../keep/jobs.ts';
import { kindOf } from '../keep/places.ts';
import { paths } from '../message/answers.ts';
import { recordSchema } from '../message/job-record.ts';
import { filesBody, harmless, LARGEST_UPLOAD, noFile, type Part, partsOf } from './parts.ts';
import { errors, MB, type Room, type Server } from './room.ts';

const LARGEST_JOB_FILE = 2 * MB;

export const uploadRoutes = (server: Server, { jobs }: Room): void => {
  server.post(
    paths.jobs,
    {
      bodyLimit: LARGEST_UPLOAD,
      validatorCompiler: filesBody.validatorCompiler,
      schema: {
        summary: 'Adds drawings (DXF, SVG; each becomes a job) or a job file together with its drawing; all of them or none',
        consumes: filesBody.consumes,
        body: filesBody.body,
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

const jobsOf = (parts: readonly Part[]): readonly NewJob[] => {
  if (parts.length === 0) throw badField('files', noFile);
  for (const { name, bytes } of parts) {
    if (kindOf(name) === undefined && !isJobFile(name))
      throw badField('files', words.neither(name === '' ? words.unnamed : only(asName(name))));
    if (bytes.length === 0) throw badField('files', words.empty(name));
  }
  const drawings = parts.filter((p) => !isJobFile(p.name));
  const asked = parts.filter((p) => isJobFile(p.name)).map((p) => fromJobFile(p, drawings));
  const taken = new Set(asked.map((a) => a.drawing));
  const alone = drawings.filter((d) => !taken.has(d.bytes)).map(fromDrawing);
  return [...asked, ...alone];
};

const words = phrases('server-upload', {
  neither: (file: Text) => say`${{ file }} is not a DXF or SVG drawing or a job file. Save the drawing as DXF or SVG and add that.`,
  unnamed: say`A file without a name`,
  empty: (file: string) => say`${{ file: asName(file) }} is empty.`,
  tooLargeJob: (file: string) => say`${{ file: asName(file) }} is too large for a job file.`,
  drawingMissing: (file: string, drawing: string) =>
    say`${{ file: asName(file) }} names the drawing ${{ drawing: asName(drawing) }}, which is not among the files. Add both together.`,
});

const isJobFile = (name: string): boolean => name.toLowerCase().endsWith('.json');

const fromDrawing = ({ name, bytes }: Part): NewJob => ({
  name: stemOf(name).slice(0, 120),
  drawingName: name,
  drawing: bytes,
  input: { drawing: name },
});

const fromJobFile = ({ name, bytes }: Part, drawings: readonly Part[]): NewJob => {
  if (bytes.length > LARGEST_JOB_FILE) throw new Refusal(413, 'too-large', words.tooLargeJob(name));
  const { job, drawing: made } = jobFileOf(new TextDecoder().decode(bytes), name);
  if (made !== undefined) return { ...job, drawing: made };
  const wanted = job.drawingName.toLowerCase();
  const drawing = drawings.find((d) => d.name.toLowerCase() === wanted);
  if (drawing === undefined) throw badField('drawing', words.drawingMissing(name, harmless(job.drawingName)));
  return { ...job, drawingName: drawing.name, drawing: drawing.bytes, input: { ...job.input, drawing: drawing.name } };
};
