/** Jobs in plain files: each a folder with its record and its drawing. */
import { mkdir, readdir, readFile, rename, stat } from 'node:fs/promises';
import { join } from 'node:path';
import { parseFile } from '../../job/parse.ts';
import type { LogAddition, Saving } from '../message/answers.ts';
import type { JobSummary, LogEntry } from '../message/job-record.ts';
import { type JobRecord, recordSchema } from '../message/job-record.ts';
import { badField, notFound, Refusal, said } from '../refusal.ts';
import { binFolder, isId, jobFolder, jobsFolder, kindOf, RECORD } from './places.ts';
import { turns } from './turns.ts';
import { settleFolder, writeThrough, writeWhole } from './whole-file.ts';

/** What a job is brought in with. */
export interface NewJob {
  readonly name: string;
  readonly drawingName: string;
  readonly drawing: Uint8Array;
  readonly input: Readonly<Record<string, unknown>>;
}

export interface Jobs {
  /** The one that changed last comes first; a damaged one is told with its fault. */
  list(): Promise<JobSummary[]>;
  open(id: string): Promise<JobRecord>;
  drawing(id: string): Promise<Buffer>;
  bringIn(job: NewJob): Promise<JobRecord>;
  save(id: string, saving: Saving): Promise<JobRecord>;
  write(id: string, entry: LogAddition): Promise<JobRecord>;
  /** Into the bin; nothing is deleted. */
  throwAway(id: string): Promise<void>;
}

export interface Tools {
  readonly now: () => string;
  readonly newId: () => string;
}

const MOST_ENTRIES = 5000;

export const jobsIn = (folder: string, { now, newId }: Tools): Jobs => {
  const inTurn = turns();
  const summaries = new Map<string, { readonly mark: string; readonly summary: JobSummary }>();
  const recordAt = (id: string): string => join(jobFolder(folder, id), RECORD);
  const open = (id: string): Promise<JobRecord> => readRecord(recordAt(id), id);
  const keep = async (record: JobRecord): Promise<JobRecord> => {
    await writeWhole(recordAt(record.id), textOf(record));
    return record;
  };

  const summaryOf = async (id: string): Promise<JobSummary | undefined> => {
    const at = await stat(recordAt(id)).catch(() => undefined);
    const mark = at === undefined ? 'none' : `${at.mtimeMs} ${at.size}`;
    const known = summaries.get(id);
    if (known?.mark === mark) return known.summary;
    const summary = await open(id).then(summaryOfRecord, (error: unknown) => faulty(id, error, at?.mtime));
    summaries.set(id, { mark, summary });
    return summary;
  };

  return {
    async list() {
      const names = await readdir(jobsFolder(folder), { withFileTypes: true });
      const ids = names.filter((n) => n.isDirectory() && isId(n.name)).map((n) => n.name);
      const rows: JobSummary[] = [];
      for (const id of ids) rows.push((await summaryOf(id)) as JobSummary);
      return rows.sort((a, b) => (a.changed < b.changed ? 1 : a.changed > b.changed ? -1 : a.id < b.id ? -1 : 1));
    },
    open,
    async drawing(id) {
      const record = await open(id);
      return readFile(join(jobFolder(folder, id), drawingFile(record.drawingName))).catch(() => {
        throw new Refusal(500, 'damaged', `The drawing ${record.drawingName} of this job is missing in the folder jobs/${id}.`);
      });
    },
    async bringIn({ name, drawingName, drawing, input }) {
      const id = newId();
      const record = {
        id,
        revision: 0,
        name,
        drawingName,
        changed: now(),
        steps: [{ name: 'came in', input: { ...input } }],
        cursor: 0,
        log: [],
      };
      await bringFolder(folder, id, { [drawingFile(drawingName)]: drawing, [RECORD]: textOf(record) });
      return record;
    },
    save: (id, { revision, name, steps, cursor, line }) =>
      inTurn(id, async () => {
        const record = await open(id);
        if (record.revision !== revision) throw changedElsewhere(record, revision);
        if (cursor >= steps.length) throw badField('cursor', `Step ${cursor} cannot be in force: there are only ${steps.length}.`);
        const { line: _, ...rest } = record;
        return keep({ ...rest, revision: revision + 1, changed: now(), name, steps, cursor, ...(line === undefined ? {} : { line }) });
      }),
    write: (id, entry) =>
      inTurn(id, async () => {
        const record = await open(id);
        if (record.log.length >= MOST_ENTRIES)
          throw new Refusal(409, 'log-full', `The log of this job is full: it holds ${MOST_ENTRIES} entries.`);
        const added: LogEntry = { ...entry, at: entry.at ?? now() };
        return keep({ ...record, changed: now(), log: [...record.log, added] });
      }),
    throwAway: (id) =>
      inTurn(id, async () => {
        const from = jobFolder(folder, id);
        if ((await stat(from).catch(() => undefined)) === undefined) throw notFound('There is no such job.');
        await mkdir(binFolder(folder), { recursive: true });
        await rename(from, join(binFolder(folder), `${id}.${now().replaceAll(/[^0-9]/g, '')}`));
      }),
  };
};

/** The folder is filled under another name and then takes its own: a job is there whole or not at all. */
const bringFolder = async (folder: string, id: string, files: Readonly<Record<string, string | Uint8Array>>): Promise<void> => {
  const coming = join(jobsFolder(folder), `.coming-${id}`);
  await mkdir(coming, { recursive: true, mode: 0o700 });
  for (const [name, content] of Object.entries(files)) await writeThrough(join(coming, name), content);
  await settleFolder(coming);
  await rename(coming, jobFolder(folder, id));
  await settleFolder(jobsFolder(folder));
};

const drawingFile = (drawingName: string): string => `drawing.${kindOf(drawingName) ?? 'dxf'}`;

const textOf = (record: JobRecord): string => `${JSON.stringify(record, null, 1)}\n`;

const readRecord = async (path: string, id: string): Promise<JobRecord> => {
  const text = await readFile(path, 'utf8').catch((error: { code?: string }) => {
    if (error.code === 'ENOENT' || error.code === 'ENOTDIR') throw notFound('There is no such job.');
    throw error;
  });
  const parsed = parseFile(recordSchema, text, RECORD);
  const fault =
    parsed.kind === 'bad'
      ? parsed.findings[0]?.sentence
      : parsed.value.id !== id
        ? `it calls itself ${parsed.value.id}.`
        : parsed.value.cursor >= parsed.value.steps.length
          ? `step ${parsed.value.cursor} is said to be in force, but there are only ${parsed.value.steps.length}.`
          : undefined;
  if (fault === undefined && parsed.kind === 'parsed') return parsed.value;
  throw new Refusal(
    500,
    'damaged',
    `The record of this job, jobs/${id}/${RECORD}, is damaged and was left as it is: ${fault}`,
    parsed.kind === 'bad' ? said(parsed.findings) : {},
  );
};

const changedElsewhere = (record: JobRecord, revision: number): Refusal =>
  new Refusal(
    409,
    'changed-elsewhere',
    `This job was changed elsewhere in the meantime: this page began from revision ${revision}, and ${record.revision} is in force.`,
    { record },
  );

const summaryOfRecord = ({ id, revision, name, drawingName, changed, line }: JobRecord): JobSummary => ({
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
