/** Programs from elsewhere that are kept with a job: each by the number it came under, which stays its own. */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { name as asName, count, term } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import { notFound, Refusal } from '../answer/refusal.ts';
import type { JobRecord } from '../message/job-record.ts';
import { jobFolder } from './places.ts';
import { readRecord, writeRecord } from './record-file.ts';
import type { Turns } from './turns.ts';
import { writeWhole } from './whole-file.ts';

export interface KeptProgram {
  readonly name: string;
  readonly content: Buffer;
}

export interface ProgramKeeper {
  /** Kept as it came under the next number, counted from 1. */
  keep(id: string, name: string, content: Uint8Array): Promise<JobRecord>;
  open(id: string, number: number): Promise<KeptProgram>;
  /** Out of the job, or into it again; the file stays where it is. */
  takeAway(id: string, number: number): Promise<JobRecord>;
  putBack(id: string, number: number): Promise<JobRecord>;
}

export const programsIn = (folder: string, inTurn: Turns, now: () => string): ProgramKeeper => {
  const change = (id: string, to: (programs: Programs) => Programs | Promise<Programs>): Promise<JobRecord> =>
    inTurn(id, async () => {
      const record = await readRecord(folder, id);
      return writeRecord(folder, { ...record, programs: [...(await to(record.programs ?? []))], changed: now() });
    });
  return {
    keep: (id, name, content) =>
      change(id, async (programs) => {
        mustHaveRoom(programs);
        await writeWhole(fileOf(folder, id, programs.length + 1), content);
        return [...programs, { name, at: now() }];
      }),
    open: async (id, number) => {
      const { name } = kept((await readRecord(folder, id)).programs, number);
      const content = await readFile(fileOf(folder, id, number)).catch(() => {
        throw new Refusal(500, 'damaged', words.missing(name, id));
      });
      return { name, content };
    },
    takeAway: (id, number) =>
      change(id, (programs) => {
        const { name, at } = kept(programs, number);
        return programs.with(number - 1, { name, at, removed: now() });
      }),
    putBack: (id, number) =>
      change(id, (programs) => {
        const there = programs[number - 1];
        if (there === undefined) throw notFound(words.none(number));
        if (there.removed !== undefined) mustHaveRoom(programs);
        return programs.with(number - 1, { name: there.name, at: there.at });
      }),
  };
};

type Programs = readonly NonNullable<JobRecord['programs']>[number][];

const fileOf = (folder: string, id: string, number: number): string => join(jobFolder(folder, id), `program-${number}.nc`);

const MOST_PROGRAMS = 100;
/** Those that were taken away keep their numbers, and the record has room for so many in all. */
const MOST_EVER = 1000;

const words = phrases('server-program', {
  missing: (program: string, id: string) =>
    say`The program ${{ program: asName(program) }} of this job is missing in the folder ${{ folder: term(`jobs/${id}`) }}.`,
  none: (number: number) => say`This job has no program ${{ number: count(number) }}.`,
  full: say`This job has ${{ most: count(MOST_PROGRAMS) }} programs from other sources already; remove some first.`,
  enough: say`This job has been given ${{ most: count(MOST_EVER) }} programs from other sources, the most it can keep.`,
  removed: (program: string) => say`The program ${{ program: asName(program) }} was removed from this job.`,
});

const mustHaveRoom = (programs: Programs): void => {
  if (programs.filter((p) => p.removed === undefined).length >= MOST_PROGRAMS) throw new Refusal(409, 'too-many', words.full);
  if (programs.length >= MOST_EVER) throw new Refusal(409, 'too-many', words.enough);
};

const kept = (programs: Programs = [], number: number): Programs[number] => {
  const there = programs[number - 1];
  if (there === undefined) throw notFound(words.none(number));
  if (there.removed !== undefined) throw notFound(words.removed(there.name));
  return there;
};
