/** What the server answers beside job records: the shop with its revision, dialects, errors. */
import { z } from 'zod';
import { logEntrySchema, recordSchema } from './job-record.ts';

export const summarySchema = recordSchema
  .pick({ id: true, revision: true, name: true, drawingName: true, changed: true, line: true, answeredFrom: true })
  .extend({
    inputs: z.string().max(16).optional().describe('Mark of the inputs in force'),
    fault: z.string().optional().describe('Why the job cannot be opened; its files are left as they are'),
  });

/** A job that was binned: whole, in a folder of its own in the bin. */
export const binnedSchema = summarySchema.extend({
  bin: z
    .string()
    .regex(/^[a-z0-9]{8,40}\.\d{17}$/)
    .describe('Name of its folder in the bin'),
  binnedAt: z.iso.datetime().describe('When it was moved to the bin'),
});

export const binSchema = z.strictObject({
  folder: z.string().describe('Where the bin lies on the disk of the server'),
  jobs: z.array(binnedSchema),
});

/** The server says when, unless the entry was written down while the server was gone. */
export const entrySchema = logEntrySchema.extend({ at: z.iso.datetime({ offset: true }).optional().describe('When, ISO 8601') });

export const savedSchema = recordSchema.pick({ revision: true, changed: true });

export const healthSchema = z.strictObject({ answer: z.literal('well'), version: z.string(), folder: z.string() });

/** Whoever saves sends the revision they began from; another one in force is answered with 409 and what is in force. */
export const savingSchema = recordSchema.pick({ revision: true, name: true, steps: true, cursor: true, line: true, answeredFrom: true });

export const shopRecordSchema = z.strictObject({
  revision: z.int().min(0),
  /** The shop file as data; the server has held it against the schema of shop files. */
  shop: z.record(z.string(), z.unknown()),
  /** Text of the dialect file the shop uses; none where it uses the standard words. */
  dialect: z.string().max(200_000).optional(),
  /** Since when a value holds and where it comes from, by 'wires/brass-0.25/price'. */
  sources: z.record(z.string().max(200), z.strictObject({ on: z.iso.date(), basis: z.string().max(200) })).optional(),
});

const placeSchema = z.record(z.string(), z.unknown());

/** Every error of the server: a code for programs, a sentence for people, findings where a file is at fault. */
export const errorSchema = z.strictObject({
  error: z.string().describe("'not-found', 'changed-elsewhere', 'not-valid', 'too-large' ..."),
  sentence: z.string(),
  findings: z
    .array(z.looseObject({ code: z.string(), severity: z.string(), sentence: z.string(), place: placeSchema.optional() }))
    .optional(),
  /** With 'changed-elsewhere': what is in force. */
  record: recordSchema.optional(),
  shop: shopRecordSchema.optional(),
});

export type ShopRecord = z.infer<typeof shopRecordSchema>;
export type BinnedJob = z.infer<typeof binnedSchema>;
export type Bin = z.infer<typeof binSchema>;
export type LogAddition = z.infer<typeof entrySchema>;
export type ServerError = z.infer<typeof errorSchema>;
export type Saving = z.infer<typeof savingSchema>;

/** Paths of the server, so that page and server spell them alike. */
export const paths = {
  jobs: '/api/jobs',
  job: (id: string): string => `/api/jobs/${id}`,
  drawing: (id: string): string => `/api/jobs/${id}/drawing`,
  log: (id: string): string => `/api/jobs/${id}/log`,
  /** Programs from elsewhere that are kept with the job; the first one is number 1. */
  programs: (id: string): string => `/api/jobs/${id}/programs`,
  program: (id: string, number: number | string): string => `/api/jobs/${id}/programs/${number}`,
  programBack: (id: string, number: number | string): string => `/api/jobs/${id}/programs/${number}/put-back`,
  /** Jobs that were binned, by the name of their folder in the bin. */
  bin: '/api/bin',
  jobBack: (bin: string): string => `/api/bin/${bin}/put-back`,
  /** A file of the handout: 'program', 'set-up-sheet', 'quotation' ... of the revision that is saved. */
  file: (id: string, name: string): string => `/api/jobs/${id}/files/${name}`,
  shop: '/api/shop',
  openapi: '/api/openapi.json',
  page: '/api',
  health: '/api/health',
} as const;
