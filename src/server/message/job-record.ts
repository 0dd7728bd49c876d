/** A job as the server keeps it and the page edits it: the inputs, every named step of undo, what was written down at the machine. */
import { z } from 'zod';
import { isKeptText } from '../../text/kept.ts';
import type { Text } from '../../text/text.ts';
import { answeredFromSchema } from './answered-from.ts';

/** The inputs of a job as its job file would hold them, kept as they were typed; `jobSchema` judges them when the job is run. */
const inputSchema = z.record(z.string(), z.unknown());

const stepSchema = z.strictObject({
  name: z.string().min(1).max(120).describe('What was done, as undo and redo name it'),
  input: inputSchema.describe('The inputs after this step'),
});

export const logEntrySchema = z.strictObject({
  at: z.string().max(40).describe('When, ISO 8601'),
  kind: z.enum(['tick', 'measured', 'time', 'break', 'note']),
  about: z.string().max(120).describe('Contour, stop or pass it concerns; empty for the whole run'),
  text: z.string().max(4000),
});

/** Data that is looked at and not copied, so that a line compares with the one it was. A record of 0.3 has it in words. */
const lineSchema = z
  .unknown()
  .refine((line) => (typeof line === 'string' ? line.length <= 500 : isKeptText(line)), 'A line is a text with all its holes filled.')
  .describe('The answer in one line: a template with its holes, or words of 0.3') as unknown as z.ZodType<Text | string>;

export const recordSchema = z.strictObject({
  id: z.string().regex(/^[a-z0-9]{8,40}$/),
  /** Counted up with every saving; whoever saves says which one they began from. What is written to the log is added to whatever is
   * in force and counts nothing up: a tick at the machine must not stand in the way of whoever edits the job. */
  revision: z.int().min(0),
  name: z.string().max(120),
  drawingName: z.string().max(200),
  changed: z.string().max(40).describe('ISO 8601'),
  /** The first step is the job as it came in; `cursor` is the one in force. */
  steps: z.array(stepSchema).min(1).max(400),
  cursor: z.int().min(0),
  log: z.array(logEntrySchema).max(5000),
  /** Programs from other sources that were checked against the drawing, by the number they are kept under, counted from 1. */
  programs: z
    .array(
      z.strictObject({
        name: z.string().max(200),
        at: z.string().max(40).describe('When it came, ISO 8601'),
        removed: z.string().max(40).optional().describe('When it was removed, ISO 8601; its file stays, and it can be restored'),
      }),
    )
    .max(1000)
    .optional(),
  /** The answer in one line as the page last saw it, for the list of jobs. */
  line: lineSchema.optional(),
  /** Missing beside a line of 0.3. */
  answeredFrom: answeredFromSchema.optional(),
});

export type JobRecord = z.infer<typeof recordSchema>;
export type JobStep = z.infer<typeof stepSchema>;
export type LogEntry = z.infer<typeof logEntrySchema>;

/** One row of the list of jobs; `fault` says why a job cannot be opened. */
export type JobSummary = Pick<JobRecord, 'id' | 'revision' | 'name' | 'drawingName' | 'changed' | 'line' | 'answeredFrom'> & {
  /** Mark of the inputs in force. */
  readonly inputs?: string | undefined;
  readonly fault?: string | undefined;
};
