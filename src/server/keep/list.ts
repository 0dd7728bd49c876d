/** The list of jobs, one row each; records that did not change since the last time are not read again. */
import { readdir, stat } from 'node:fs/promises';
import type { JobRecord, JobSummary } from '../message/job-record.ts';
import { Refusal } from '../refusal.ts';
import { isId, jobsFolder, RECORD } from './places.ts';
import { readRecord, recordAt } from './record-file.ts';

/** The one that changed last comes first. */
export const listing = (folder: string): (() => Promise<JobSummary[]>) => {
  const known = new Map<string, { readonly mark: string; readonly summary: JobSummary }>();
  const rowOf = async (id: string): Promise<JobSummary> => {
    const at = await stat(recordAt(folder, id)).catch(() => undefined);
    const mark = at === undefined ? 'none' : `${at.mtimeMs} ${at.size} ${at.ino}`;
    const before = known.get(id);
    if (before?.mark === mark) return before.summary;
    const summary = await readRecord(folder, id).then(summaryOf, (error: unknown) => faulty(id, error, at?.mtime));
    known.set(id, { mark, summary });
    return summary;
  };
  return async () => {
    const there = await readdir(jobsFolder(folder), { withFileTypes: true });
    const rows: JobSummary[] = [];
    for (const { name } of there.filter((t) => t.isDirectory() && isId(t.name))) rows.push(await rowOf(name));
    return rows.sort((a, b) => (a.changed < b.changed ? 1 : a.changed > b.changed ? -1 : a.id < b.id ? -1 : 1));
  };
};

const summaryOf = ({ id, revision, name, drawingName, changed, line }: JobRecord): JobSummary => ({
  id,
  revision,
  name,
  drawingName,
  changed,
  ...(line === undefined ? {} : { line }),
});

const faulty = (id: string, error: unknown, changed = new Date(0)): JobSummary => ({
  id,
  revision: 0,
  name: id,
  drawingName: '',
  changed: changed.toISOString(),
  fault:
    error instanceof Refusal && error.status !== 404
      ? error.answer.sentence
      : `The record of this job, jobs/${id}/${RECORD}, cannot be read; the folder was left as it is.`,
});
