/** The list of jobs, one row each; records that did not change since the last time are not read again. */
import { readdir, stat } from 'node:fs/promises';
import { basename, join } from 'node:path';
import { name as asName } from '../../text/part.ts';
import { printPlain } from '../../text/print/print.ts';
import { say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { Refusal } from '../answer/refusal.ts';
import { inputsMark } from '../message/answered-from.ts';
import type { JobRecord, JobSummary } from '../message/job-record.ts';
import { isId, jobsFolder, RECORD } from './places.ts';
import { readRecordIn } from './record-file.ts';

/** The one that changed last comes first. */
export const listing = (folder: string): (() => Promise<JobSummary[]>) => {
  const rowOf = rowsIn(jobsFolder(folder));
  return async () => {
    const rows: JobSummary[] = [];
    for (const name of await foldersIn(jobsFolder(folder))) if (isId(name)) rows.push(await rowOf(name, name));
    return rows.sort((a, b) => (a.changed < b.changed ? 1 : a.changed > b.changed ? -1 : a.id < b.id ? -1 : 1));
  };
};

/** Folders only: what a link leads to is not ours. */
export const foldersIn = async (place: string): Promise<readonly string[]> =>
  (await readdir(place, { withFileTypes: true })).filter((t) => t.isDirectory()).map((t) => t.name);

/** The row of the job `id` that lies in a folder of `place`; a damaged one is told with its fault. */
export const rowsIn = (place: string): ((name: string, id: string) => Promise<JobSummary>) => {
  const known = new Map<string, { readonly mark: string; readonly summary: JobSummary }>();
  return async (name, id) => {
    const path = join(place, name);
    const at = await stat(join(path, RECORD)).catch(() => undefined);
    const mark = at === undefined ? 'none' : `${at.mtimeMs} ${at.size} ${at.ino}`;
    const before = known.get(name);
    if (before?.mark === mark) return before.summary;
    const called = `${basename(place)}/${name}`;
    const summary = await readRecordIn(path, id, called).then(summaryOf, (error: unknown) => faulty(id, called, error, at?.mtime));
    known.set(name, { mark, summary });
    return summary;
  };
};

const summaryOf = ({ id, revision, name, drawingName, changed, line, answeredFrom, steps, cursor }: JobRecord): JobSummary => ({
  id,
  revision,
  name,
  drawingName,
  changed,
  line,
  answeredFrom,
  inputs: inputsMark(steps[Math.min(cursor, steps.length - 1)]?.input ?? {}),
});

const unreadable = (path: string): Text =>
  say('server-record.unreadable')`The record of this job, ${{ path: asName(path) }}, cannot be read; the folder was left as it is.`;

const faulty = (id: string, called: string, error: unknown, changed = new Date(0)): JobSummary => ({
  id,
  revision: 0,
  name: id,
  drawingName: '',
  changed: changed.toISOString(),
  fault: error instanceof Refusal && error.status !== 404 ? error.answer.sentence : printPlain(unreadable(`${called}/${RECORD}`)),
});
