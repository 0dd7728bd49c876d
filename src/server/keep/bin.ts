/** The bin: jobs that were binned, each whole in a folder named by its id and the moment. Nothing is ever deleted here. */
import { lstat, mkdir, rename } from 'node:fs/promises';
import { join } from 'node:path';
import { phrases, say } from '../../text/say.ts';
import { notFound, Refusal } from '../answer/refusal.ts';
import { type BinnedJob, binnedSchema } from '../message/answers.ts';
import type { JobSummary } from '../message/job-record.ts';
import { foldersIn, rowsIn } from './list.ts';
import { binFolder, jobFolder, jobsFolder, noSuchJob } from './places.ts';
import type { Turns } from './turns.ts';
import { settleFolder } from './whole-file.ts';

export interface BinKeeper {
  /** The one that was binned last comes first. */
  list(): Promise<BinnedJob[]>;
  throwAway(id: string): Promise<BinnedJob>;
  /** Back among the jobs, byte for byte as it was. `bin` is the name of its folder in the bin. */
  putBack(bin: string): Promise<JobSummary>;
}

/** Shares its turns with whatever else changes a job: what is being saved is saved before it goes. */
const words = phrases('server-bin', {
  none: say`No such job in the bin.`,
  noMore: say`This job is no longer in the bin.`,
  thereAlready: say`A job of this number is in the list already; the one in the bin was left there.`,
});

export const binIn = (folder: string, inTurn: Turns, now: () => string): BinKeeper => {
  const place = binFolder(folder);
  const [rowIn, rowOut] = [rowsIn(place), rowsIn(jobsFolder(folder))];
  const binned = async ({ bin, id, binnedAt }: Named): Promise<BinnedJob> => ({ ...(await rowIn(bin, id)), bin, binnedAt });
  return {
    list: async () => {
      const rows: BinnedJob[] = [];
      for (const name of (await isThere(place)) ? await foldersIn(place) : []) {
        const named = namedBy(name);
        if (named !== undefined) rows.push(await binned(named));
      }
      return rows.sort((a, b) => (a.binnedAt < b.binnedAt ? 1 : a.binnedAt > b.binnedAt ? -1 : a.id < b.id ? -1 : 1));
    },
    throwAway: (id) =>
      inTurn(id, async () => {
        const from = jobFolder(folder, id);
        if (!(await isThere(from))) throw notFound(noSuchJob);
        await mkdir(place, { recursive: true, mode: 0o700 });
        const binnedAt = new Date(now()).toISOString();
        const bin = `${id}.${binnedAt.replaceAll(/[^0-9]/g, '')}`;
        await moved(from, join(place, bin));
        return binned({ bin, id, binnedAt });
      }),
    putBack: (bin) => {
      const named = namedBy(bin);
      if (named === undefined) throw notFound(words.none);
      return inTurn(named.id, async () => {
        const [from, to] = [join(place, bin), jobFolder(folder, named.id)];
        if (!(await isThere(from))) throw notFound(words.noMore);
        if (await isThere(to)) throw new Refusal(409, 'there-already', words.thereAlready);
        await moved(from, to);
        return rowOut(named.id, named.id);
      });
    },
  };
};

interface Named {
  readonly bin: string;
  readonly id: string;
  readonly binnedAt: string;
}

/** What the name of a folder in the bin says; none where it is not one of ours. */
const namedBy = (bin: string): Named | undefined => {
  const [id = '', digits = ''] = bin.split('.');
  const binnedAt = digits.replace(/^(\d{4})(\d\d)(\d\d)(\d\d)(\d\d)(\d\d)(\d{3})$/, '$1-$2-$3T$4:$5:$6.$7Z');
  const ours = binnedSchema.pick({ bin: true, binnedAt: true }).safeParse({ bin, binnedAt }).success;
  return ours ? { bin, id, binnedAt } : undefined;
};

const isThere = async (path: string): Promise<boolean> => (await lstat(path).catch(() => undefined))?.isDirectory() === true;

const moved = async (from: string, to: string): Promise<void> => {
  await rename(from, to);
  for (const parent of [join(from, '..'), join(to, '..')]) await settleFolder(parent);
};
