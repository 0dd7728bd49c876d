/** The record of a job as a file, and the folder a job is brought in with. */

import { mkdir, readFile, rename } from 'node:fs/promises';
import { join } from 'node:path';
import { type Renamed, renamedIn } from '../../job/files/old-keys.ts';
import { parseFile } from '../../job/files/parse.ts';
import { jobSchema } from '../../job/job.ts';
import { count, name } from '../../text/part.ts';
import { NOTHING, phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { notFound, Refusal, said } from '../answer/refusal.ts';
import { type JobRecord, recordSchema } from '../message/job-record.ts';
import { jobFolder, jobsFolder, noSuchJob, RECORD } from './places.ts';
import { settleFolder, writeThrough, writeWhole } from './whole-file.ts';

export const recordAt = (folder: string, id: string): string => join(jobFolder(folder, id), RECORD);

export const readRecord = (folder: string, id: string): Promise<JobRecord> => readRecordIn(jobFolder(folder, id), id, `jobs/${id}`);

/** Throws a refusal where there is no such job, or where its record is damaged; a damaged one is left as it is. `called` is what its folder is called to people. */
export const readRecordIn = async (path: string, id: string, called: string): Promise<JobRecord> => {
  const text = await readFile(join(path, RECORD), 'utf8').catch((error: { code?: string }) => {
    if (error.code === 'ENOENT' || error.code === 'ENOTDIR') throw notFound(noSuchJob);
    throw error;
  });
  const parsed = parseFile(recordSchema, text, RECORD, RENAMED);
  const fault = parsed.kind === 'bad' ? (parsed.findings[0]?.text ?? NOTHING) : strangeness(parsed.value, id);
  if (fault === undefined && parsed.kind === 'parsed') return parsed.value;
  throw new Refusal(
    500,
    'damaged',
    words.damaged(`${called}/${RECORD}`, fault ?? NOTHING),
    parsed.kind === 'bad' ? said(parsed.findings) : {},
  );
};

/** What version 0.3 called otherwise: taken over without a word, since the record is the server's own. */
const RENAMED: readonly Renamed[] = [[['programs', '*', 'away'], 'removed'], ...renamedIn(jobSchema, ['steps', '*', 'input'])];

const words = phrases('server-record', {
  damaged: (path: string, fault: Text) =>
    say`The record of this job, ${{ path: name(path) }}, is damaged and was left as it is: ${{ fault }}`,
  otherName: (id: string) => say`it calls itself ${{ id: name(id) }}.`,
  noStep: (step: number, steps: number) =>
    say`step ${{ step: count(step) }} is marked as the current one, but there are only ${{ steps: count(steps) }}.`,
});

/** What a schema cannot see. */
const strangeness = ({ id, cursor, steps }: JobRecord, folderName: string): Text | undefined => {
  if (id !== folderName) return words.otherName(id);
  return cursor < steps.length ? undefined : words.noStep(cursor, steps.length);
};

export const writeRecord = async (folder: string, record: JobRecord): Promise<JobRecord> => {
  await writeWhole(recordAt(folder, record.id), textOf(record));
  return record;
};

/** The folder is filled under another name and then takes its own: a job is there whole or not at all. */
export const bringFolder = async (folder: string, record: JobRecord, files: Readonly<Record<string, Uint8Array>>): Promise<void> => {
  const coming = join(jobsFolder(folder), `.coming-${record.id}`);
  await mkdir(coming, { recursive: true, mode: 0o700 });
  for (const [file, content] of Object.entries({ ...files, [RECORD]: textOf(record) })) await writeThrough(join(coming, file), content);
  await settleFolder(coming);
  await rename(coming, jobFolder(folder, record.id));
  await settleFolder(jobsFolder(folder));
};

const textOf = (record: JobRecord): string => `${JSON.stringify(record, null, 1)}\n`;
