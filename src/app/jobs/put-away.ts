/** Jobs on their way into the bin and back: what is in it, what was just put away, and where the focus goes then. */

import { useCallback, useEffect, useState } from 'react';
import type { Bin, BinnedJob } from '../../server/message/answers.ts';
import type { JobSummary } from '../../server/message/job-record.ts';
import { localMoment } from '../../text/print/local.ts';
import { type Answered, fetchBin, removeJob, returnJob } from '../state/server.ts';
import { useWords } from '../words/use-words.ts';
import type { Words } from '../words/words-for.ts';

export interface PutAway {
  readonly bin: Answered<Bin> | undefined;
  /** Jobs that were put away on this visit and are not back yet, by id: their rows stay, with the way back. */
  readonly gone: ReadonlyMap<string, BinnedJob>;
  /** Why something could not be done, by the id of the job. */
  readonly faults: ReadonlyMap<string, string>;
  /** The job that came back last. */
  readonly back: JobSummary | undefined;
  readonly putAway: (id: string) => void;
  readonly putBack: (job: BinnedJob) => void;
  readonly load: () => void;
}

/** `jobs` is the list that is shown, and `load` asks for it anew. */
export const usePutAway = (jobs: unknown, load: () => Promise<void>): PutAway => {
  const words = useWords().jobs;
  const { bin, loadBin } = useBin(jobs);
  const [gone, setGone] = useState<PutAway['gone']>(new Map());
  const [faults, setFaults] = useState<PutAway['faults']>(new Map());
  const [back, setBack] = useState<JobSummary | undefined>();
  const heard = (id: string, answer: Answered<unknown>): void => {
    const sentence = answer.kind === 'ok' ? undefined : answer.kind === 'gone' ? words.gone : answer.error.sentence;
    setFaults((all) => (sentence === undefined ? without(all, id) : new Map(all).set(id, sentence)));
  };
  const putAway = async (id: string): Promise<void> => {
    const answer = await removeJob(id);
    heard(id, answer);
    if (answer.kind === 'ok') setGone((all) => new Map(all).set(id, answer.value));
    await load();
  };
  /** The list is there anew before the row changes, so that the row is never missing and the focus finds its place. */
  const putBack = async ({ id, bin: name }: BinnedJob): Promise<void> => {
    const answer = await returnJob(name);
    await load();
    heard(id, answer);
    if (answer.kind !== 'ok') return;
    setGone((all) => without(all, id));
    setBack(answer.value);
  };
  return { bin, gone, faults, back, putAway: (id) => void putAway(id), putBack: (job) => void putBack(job), load: loadBin };
};

/** Read anew with every list of jobs. */
const useBin = (jobs: unknown): { readonly bin: PutAway['bin']; readonly loadBin: () => void } => {
  const [bin, setBin] = useState<PutAway['bin']>();
  const loadBin = useCallback(() => void fetchBin().then(setBin), []);
  useEffect(() => {
    if (jobs !== undefined) loadBin();
  }, [jobs, loadBin]);
  return { bin, loadBin };
};

const without = <T>(all: ReadonlyMap<string, T>, id: string): ReadonlyMap<string, T> => new Map([...all].filter(([key]) => key !== id));

/** When something happened, as the user writes it. */
export const whenOf = (iso: string): string => localMoment(iso);
export const changedWhen = (job: JobSummary, words: Words['jobs']): string => words.changed(whenOf(job.changed));
