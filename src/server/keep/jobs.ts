/** Jobs in plain files: each a folder with its record, its drawing, and the programs from elsewhere that were held against it; and the bin. */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { name as asName, count, term } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import { badField, Refusal } from '../answer/refusal.ts';
import type { LogAddition, Saving } from '../message/answers.ts';
import type { JobRecord, JobSummary, LogEntry } from '../message/job-record.ts';
import { type BinKeeper, binIn } from './bin.ts';
import { listing } from './list.ts';
import { jobFolder, kindOf } from './places.ts';
import { type ProgramKeeper, programsIn } from './programs.ts';
import { bringFolder, readRecord, writeRecord } from './record-file.ts';
import { turns } from './turns.ts';

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
  readonly programs: ProgramKeeper;
  readonly bin: BinKeeper;
}

export interface Tools {
  readonly now: () => string;
  readonly newId: () => string;
}

/** All that changes a job waits for its turn and begins from what is in force then. */
export const jobsIn = (folder: string, tools: Tools): Jobs => {
  const inTurn = turns();
  const open = (id: string): Promise<JobRecord> => readRecord(folder, id);
  const change = (id: string, to: (record: JobRecord) => JobRecord): Promise<JobRecord> =>
    inTurn(id, async () => writeRecord(folder, { ...to(await open(id)), changed: tools.now() }));
  return {
    list: listing(folder),
    open,
    drawing: async (id) => {
      const { drawingName } = await open(id);
      return readFile(join(jobFolder(folder, id), drawingFile(drawingName))).catch(() => {
        throw new Refusal(500, 'damaged', words.drawingMissing(drawingName, id));
      });
    },
    bringIn: async ({ name, drawingName, drawing, input }) => {
      const steps = [{ name: 'came in', input: { ...input } }];
      const record = { id: tools.newId(), revision: 0, name, drawingName, changed: tools.now(), steps, cursor: 0, log: [] };
      await bringFolder(folder, record, { [drawingFile(drawingName)]: drawing });
      return record;
    },
    save: (id, saving) => change(id, (record) => saved(record, saving)),
    write: (id, entry) =>
      change(id, (record) => {
        mustBePossible(entry, tools.now());
        return written(record, { ...entry, at: entry.at ?? tools.now() });
      }),
    programs: programsIn(folder, inTurn, tools.now),
    bin: binIn(folder, inTurn, tools.now),
  };
};

const MOST_ENTRIES = 5000;

/** Longer than any job runs, min. */
const LONGEST = 100_000;

const words = phrases('server-job', {
  drawingMissing: (drawing: string, id: string) =>
    say`The drawing ${{ drawing: asName(drawing) }} of this job is missing in the folder ${{ folder: term(`jobs/${id}`) }}.`,
  changed: (from: number, now: number) =>
    say`This job was changed elsewhere in the meantime: this page started from revision ${{ from: count(from) }}, the current one is ${{ now: count(now) }}.`,
  noStep: (step: number, steps: number) =>
    say`Step ${{ step: count(step) }} cannot be the current one: there are only ${{ steps: count(steps) }}.`,
  ahead: (at: string) => say`The time of the entry, ${{ at: asName(at) }}, is yet to come.`,
  noMinutes: say`An actual time is a number of minutes, from 0 to ${{ most: count(LONGEST) }}.`,
  logFull: say`The log of this job is full: it holds ${{ most: count(MOST_ENTRIES) }} entries.`,
});

const drawingFile = (drawingName: string): string => `drawing.${kindOf(drawingName) ?? 'dxf'}`;

const saved = (record: JobRecord, { revision, name, steps, cursor, line, answeredFrom }: Saving): JobRecord => {
  if (record.revision !== revision) {
    throw new Refusal(409, 'changed-elsewhere', words.changed(revision, record.revision), { record });
  }
  if (cursor >= steps.length) throw badField('cursor', words.noStep(cursor, steps.length));
  const { line: _, answeredFrom: __, ...rest } = record;
  return { ...rest, revision: revision + 1, name, steps, cursor, line, answeredFrom };
};

/** ms. A clock of another device may go ahead of that of the server; a day ahead it says nothing of when. */
const AHEAD = 24 * 60 * 60_000;

/** Throws a refusal where no work can have been done then, or have taken so long. */
const mustBePossible = ({ at, kind, text }: LogAddition, now: string): void => {
  if (at !== undefined && Date.parse(at) > Date.parse(now) + AHEAD) throw badField('at', words.ahead(at));
  const minutes = Number(text.trim().replace(',', '.'));
  if (kind === 'time' && !(text.trim() !== '' && minutes >= 0 && minutes <= LONGEST)) throw badField('text', words.noMinutes);
};

const written = (record: JobRecord, entry: LogEntry): JobRecord => {
  if (record.log.length >= MOST_ENTRIES) throw new Refusal(409, 'log-full', words.logFull);
  return { ...record, log: [...record.log, entry] };
};
