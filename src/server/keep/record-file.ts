/** The record of a job as a file, and the folder a job is brought in with. */

import { mkdir, readFile, rename } from 'node:fs/promises';
import { join } from 'node:path';
import { parseFile } from '../../job/files/parse.ts';
import type { Finding } from '../../text/finding.ts';
import { printPlain } from '../../text/print/print.ts';
import { notFound, Refusal, said } from '../answer/refusal.ts';
import { type JobRecord, recordSchema } from '../message/job-record.ts';
import { jobFolder, jobsFolder, RECORD } from './places.ts';
import { settleFolder, writeThrough, writeWhole } from './whole-file.ts';

export const recordAt = (folder: string, id: string): string => join(jobFolder(folder, id), RECORD);

export const readRecord = (folder: string, id: string): Promise<JobRecord> => readRecordIn(jobFolder(folder, id), id, `jobs/${id}`);

/** Throws a refusal where there is no such job, or where its record is damaged; a damaged one is left as it is. `called` is what its folder is called to people. */
export const readRecordIn = async (path: string, id: string, called: string): Promise<JobRecord> => {
  const text = await readFile(join(path, RECORD), 'utf8').catch((error: { code?: string }) => {
    if (error.code === 'ENOENT' || error.code === 'ENOTDIR') throw notFound('There is no such job.');
    throw error;
  });
  const parsed = parseFile(recordSchema, text, RECORD);
  const fault = parsed.kind === 'bad' ? firstOf(parsed.findings) : strangeness(parsed.value, id);
  if (fault === undefined && parsed.kind === 'parsed') return parsed.value;
  const sentence = `The record of this job, ${called}/${RECORD}, is damaged and was left as it is: ${fault}`;
  throw new Refusal(500, 'damaged', sentence, parsed.kind === 'bad' ? said(parsed.findings) : {});
};

/** What a schema cannot see. */
const strangeness = ({ id, cursor, steps }: JobRecord, folderName: string): string | undefined => {
  if (id !== folderName) return `it calls itself ${id}.`;
  return cursor < steps.length ? undefined : `step ${cursor} is said to be in force, but there are only ${steps.length}.`;
};

export const writeRecord = async (folder: string, record: JobRecord): Promise<JobRecord> => {
  await writeWhole(recordAt(folder, record.id), textOf(record));
  return record;
};

/** The folder is filled under another name and then takes its own: a job is there whole or not at all. */
export const bringFolder = async (folder: string, record: JobRecord, files: Readonly<Record<string, Uint8Array>>): Promise<void> => {
  const coming = join(jobsFolder(folder), `.coming-${record.id}`);
  await mkdir(coming, { recursive: true, mode: 0o700 });
  for (const [name, content] of Object.entries({ ...files, [RECORD]: textOf(record) })) await writeThrough(join(coming, name), content);
  await settleFolder(coming);
  await rename(coming, jobFolder(folder, record.id));
  await settleFolder(jobsFolder(folder));
};

const textOf = (record: JobRecord): string => `${JSON.stringify(record, null, 1)}\n`;

const firstOf = (findings: readonly Finding[]): string => findings.map((f) => printPlain(f.text))[0] ?? '';
