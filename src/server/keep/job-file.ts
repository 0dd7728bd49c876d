/** The text of a job file -> what a job is brought in with, but for the drawing it asks for. */
import { basename, extname } from 'node:path';
import { jobSchema } from '../../job/job.ts';
import { parseFile } from '../../job/parse.ts';
import { mustBePlain } from '../plain.ts';
import { notValid } from '../refusal.ts';
import type { NewJob } from './jobs.ts';

export interface JobFile {
  readonly job: Omit<NewJob, 'drawing'>;
  /** The shop file it names. The server has one shop for all jobs, so the job itself keeps neither shop nor dialect. */
  readonly shop?: string;
}

/** Throws a refusal with the fields at fault. */
export const jobFileOf = (text: string, fileName: string): JobFile => {
  const parsed = parseFile(jobSchema, text, fileName);
  if (parsed.kind === 'bad') throw notValid(`${fileName} is not a job file that can be used.`, parsed.findings);
  const raw = JSON.parse(text.replace(/^\uFEFF/, '')) as Record<string, unknown>;
  mustBePlain(raw, fileName);
  const { shop, dialect: _, $schema: __, ...input } = raw;
  // Job files may come from a system that writes paths the other way round.
  const drawingName = basename(parsed.value.drawing.replaceAll('\\', '/'));
  const name = parsed.value.name ?? stemOf(drawingName);
  return { job: { name, drawingName, input: { ...input, drawing: drawingName } }, ...(typeof shop === 'string' ? { shop } : {}) };
};

/** 'plate' for 'plate.dxf'. */
export const stemOf = (name: string): string => basename(name, extname(name)) || name;
