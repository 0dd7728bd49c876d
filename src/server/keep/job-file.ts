/** The text of a job file -> what a job is brought in with, but for the drawing it asks for; a part by numbers is drawn here. */
import { basename, extname } from 'node:path';
import { houseLetters } from '../../font-files/letters-on-disk.ts';
import { parseFile } from '../../job/files/parse.ts';
import { jobSchema } from '../../job/job.ts';
import { drawShape, type ShapeRequest, shapeDxf, shapeFile } from '../../job/request/shape-drawing.ts';
import { name } from '../../text/part.ts';
import { only, phrases, say } from '../../text/say.ts';
import { mustBePlain } from '../answer/plain.ts';
import { notValid } from '../answer/refusal.ts';
import type { NewJob } from './jobs.ts';

export interface JobFile {
  readonly job: Omit<NewJob, 'drawing'>;
  /** Made of the numbers, where the job has a shape and needs no drawing. */
  readonly drawing?: Uint8Array | undefined;
  /** The shop file it names. The server has one shop for all jobs, so the job itself keeps neither shop nor dialect. */
  readonly shop?: string | undefined;
}

const words = phrases('server-job-file', {
  unusable: (file: string) => say`${{ file: name(file) }} is not a job file that can be used.`,
  noShape: (file: string) => say`The shape in ${{ file: name(file) }} cannot be made.`,
});

/** Throws a refusal with the fields at fault. */
export const jobFileOf = (text: string, fileName: string): JobFile => {
  const parsed = parseFile(jobSchema, text, fileName);
  if (parsed.kind === 'bad') throw notValid(words.unusable(fileName), parsed.findings);
  const raw = parsed.given as Record<string, unknown>;
  mustBePlain(raw, only(name(fileName)));
  const { shop, dialect: _, $schema: __, ...input } = raw;
  // Job files may come from a system that writes paths the other way round.
  const made = parsed.value.shape === undefined ? undefined : drawnOf(parsed.value.shape, fileName);
  const drawingName = made?.drawingName ?? basename((parsed.value.drawing as string).replaceAll('\\', '/'));
  const called = parsed.value.name ?? stemOf(drawingName);
  return {
    job: { name: called, drawingName, input: { ...input, drawing: drawingName } },
    drawing: made?.drawing,
    shop: typeof shop === 'string' ? shop : undefined,
  };
};

const drawnOf = (request: ShapeRequest, fileName: string): Pick<NewJob, 'drawing' | 'drawingName'> => {
  const made = drawShape(request, { letters: houseLetters });
  if (made.kind === 'refused') throw notValid(words.noShape(fileName), made.findings);
  return { drawingName: shapeFile(request), drawing: new TextEncoder().encode(shapeDxf(made.shape, 'mm')) };
};

/** 'plate' for 'plate.dxf'. */
export const stemOf = (name: string): string => basename(name, extname(name)) || name;
