/** Files may be dropped on any page: drawings become jobs, programs go to the sheet that is open; how far each is stands in a corner. */

import { createContext, type ReactNode, useCallback, useContext, useEffect, useMemo, useState } from 'react';
import { localShare } from '../../text/print/local.ts';
import { goTo } from '../state/route.ts';
import { keepProgram } from '../state/server.ts';
import { useWords } from '../words/use-words.ts';
import type { Words } from '../words/words-for.ts';
import { sortedFiles } from './sorted-files.ts';
import { batchesOf, notToBeSent, send, type Upload } from './upload.ts';
import './jobs.css';

/** Told to whoever lists jobs, when new ones have come. */
export const JOBS_CAME = 'jobs-came';

/** An open sheet takes programs, to hold them against its drawing. */
export type TakesPrograms = (programs: readonly File[]) => void;

interface Door {
  readonly bring: (files: readonly File[]) => void;
  /** Until what it gives is called. */
  readonly takeOver: (taker: TakesPrograms) => () => void;
}

const DoorContext = createContext<Door>({ bring: () => undefined, takeOver: () => () => undefined });
export const useDoor = (): Door => useContext(DoorContext);

export const DropAnywhere = ({ children }: { readonly children: ReactNode }): ReactNode => {
  const words = useWords().jobs;
  const [uploads, setUploads] = useState<readonly Upload[]>([]);
  const [taker, setTaker] = useState<{ readonly take: TakesPrograms } | undefined>();
  const refuse = useRefuse(setUploads);
  const bringJobs = useBring(setUploads, refuse);
  const bring = useCallback(
    (files: readonly File[]) =>
      void sortedFiles(files).then(({ jobs, programs, others }) => {
        refuse(others, words.notADrawing);
        if (jobs.length > 0) bringJobs(jobs, programs);
        else if (taker !== undefined && programs.length > 0) taker.take(programs);
        else refuse(programs, words.programAlone);
      }),
    [bringJobs, refuse, taker, words],
  );
  const over = useDrop(bring);
  const takeOver = useCallback((take: TakesPrograms) => {
    const mine = { take };
    setTaker(mine);
    return () => setTaker((now) => (now === mine ? undefined : now));
  }, []);
  const door = useMemo(() => ({ bring, takeOver }), [bring, takeOver]);
  return (
    <DoorContext value={door}>
      {children}
      {over && <div className="drop-here">{taker === undefined ? words.drop : words.dropOnSheet}</div>}
      {uploads.length > 0 && <Uploads uploads={uploads} onClose={() => setUploads([])} />}
    </DoorContext>
  );
};

type SetUploads = (change: (uploads: readonly Upload[]) => readonly Upload[]) => void;

let last = 0;

type Refuse = (files: readonly File[], why: (name: string) => string) => void;

const useRefuse = (setUploads: SetUploads): Refuse =>
  useCallback(
    (files, why) => {
      const refused = files.map(({ name }): Upload => {
        last += 1;
        return { id: last, name, state: { kind: 'failed', sentence: why(name) } };
      });
      if (refused.length > 0) setUploads((all) => [...all, ...refused]);
    },
    [setUploads],
  );

/** Programs that come together with the drawing of one job are kept with that job. */
const useBring = (setUploads: SetUploads, refuse: Refuse): ((jobs: readonly File[], programs: readonly File[]) => void) => {
  const words = useWords().jobs;
  return useCallback(
    (files, programs) => {
      const put = (upload: Upload): void =>
        setUploads((all) => [...all.filter((u) => u.id !== upload.id), upload].toSorted((a, b) => a.id - b.id));
      const batches = batchesOf(files).map((batch) => {
        last += 1;
        return { batch, id: last };
      });
      const bringOne = async ({ batch, id }: (typeof batches)[number]): Promise<readonly string[]> => {
        const { name } = batch;
        const fault = notToBeSent(batch, words);
        const sent =
          fault === undefined
            ? await send(batch, (share) => put({ id, name, state: { kind: 'sending', share } }), words)
            : ({ kind: 'failed', sentence: fault } as const);
        if (sent.kind === 'failed') put({ id, name, state: sent });
        else put({ id, name, state: { kind: 'brought', job: sent.jobs[0]?.id ?? '', jobName: sent.jobs[0]?.name ?? name } });
        return sent.kind === 'brought' ? sent.jobs.map((j) => j.id) : [];
      };
      const bringProgram = async (job: string | undefined, file: File): Promise<void> => {
        const sentence = job === undefined ? words.programOfWhich(file.name) : await keptWith(job, file, words);
        if (sentence !== undefined) refuse([file], () => sentence);
      };
      for (const { batch, id } of batches) put({ id, name: batch.name, state: { kind: 'sending', share: 0 } });
      void (async () => {
        const came: string[] = [];
        // One after the other: the server reads each before the next is sent.
        for (const one of batches) came.push(...(await bringOne(one)));
        for (const program of programs) await bringProgram(came.length === 1 ? came[0] : undefined, program);
        dispatchEvent(new Event(JOBS_CAME));
        if (came.length === 0) return;
        goTo(batches.length === 1 && came.length === 1 ? `/job/${came[0]}` : '/jobs');
        if (came.length === batches.length) setUploads((all) => all.filter((u) => u.state.kind !== 'brought'));
      })();
    },
    [setUploads, refuse, words],
  );
};

/** Why a program could not be kept with a job; nothing when it is. */
const keptWith = async (job: string, file: File, words: Words['jobs']): Promise<string | undefined> => {
  const answer = await keepProgram(job, file);
  return answer.kind === 'ok' ? undefined : answer.kind === 'gone' ? words.gone : answer.error.sentence;
};

/** True while files hang over the page. */
const useDrop = (dropped: (files: readonly File[]) => void): boolean => {
  const [over, setOver] = useState(false);
  useEffect(() => {
    const stop = new AbortController();
    const { signal } = stop;
    const holdsFiles = (event: DragEvent): boolean => event.dataTransfer?.types.includes('Files') === true;
    const hanging = (event: DragEvent): void => {
      if (!holdsFiles(event)) return;
      event.preventDefault();
      setOver(true);
    };
    addEventListener('dragover', hanging, { signal });
    addEventListener('dragleave', (event) => event.relatedTarget === null && setOver(false), { signal });
    addEventListener(
      'drop',
      (event) => {
        if (!holdsFiles(event)) return;
        event.preventDefault();
        setOver(false);
        dropped([...(event.dataTransfer?.files ?? [])]);
      },
      { signal },
    );
    return () => stop.abort();
  }, [dropped]);
  return over;
};

const Uploads = ({ uploads, onClose }: { readonly uploads: readonly Upload[]; readonly onClose: () => void }): ReactNode => {
  const words = useWords().jobs;
  return (
    <aside className="uploads" aria-label={words.uploads}>
      <ul aria-live="polite">
        {uploads.map(({ id, name, state }) => (
          <li key={id} data-state={state.kind}>
            <strong>{name}</strong>{' '}
            {state.kind === 'sending' && (
              <>
                <progress max={1} value={state.share} aria-label={name} />{' '}
                {state.share < 1 ? words.sending(localShare(state.share)) : words.reading}
              </>
            )}
            {state.kind === 'brought' && <a href={`/job/${state.job}`}>{words.openJob(state.jobName)}</a>}
            {state.kind === 'failed' && <span className="fault">{state.sentence}</span>}
          </li>
        ))}
      </ul>
      <button type="button" className="plain" onClick={onClose}>
        {words.close}
      </button>
    </aside>
  );
};
