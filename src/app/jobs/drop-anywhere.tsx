/** Files may be dropped on any page: drawings become jobs; how far each is stands in a corner. */
import { createContext, type ReactNode, useCallback, useContext, useEffect, useMemo, useRef, useState } from 'react';
import { goTo } from '../route.ts';
import { jobsWords as words } from '../words/page.ts';
import { batchesOf, notToBeSent, send, type Upload } from './upload.ts';
import './jobs.css';

/** Told to whoever lists jobs, when new ones have come. */
export const JOBS_CAME = 'jobs-came';

/** A page may take files that are no drawings: a program to be proven. It gives true when it did. */
export type TakesFiles = (files: readonly File[]) => boolean;

interface Door {
  readonly bring: (files: readonly File[]) => void;
  readonly takeOver: (taker: TakesFiles) => () => void;
}

const DoorContext = createContext<Door>({ bring: () => undefined, takeOver: () => () => undefined });
export const useDoor = (): Door => useContext(DoorContext);

export const DropAnywhere = ({ children }: { readonly children: ReactNode }): ReactNode => {
  const [uploads, setUploads] = useState<readonly Upload[]>([]);
  const takers = useRef(new Set<TakesFiles>());
  const bring = useBring(setUploads);
  const dropped = useCallback(
    (files: readonly File[]) => {
      for (const taker of takers.current) if (taker(files)) return;
      bring(files);
    },
    [bring],
  );
  const over = useDrop(dropped);
  const door = useMemo(
    () => ({
      bring,
      takeOver: (taker: TakesFiles) => {
        takers.current.add(taker);
        return () => void takers.current.delete(taker);
      },
    }),
    [bring],
  );
  return (
    <DoorContext value={door}>
      {children}
      {over && <div className="drop-here">{words.drop}</div>}
      {uploads.length > 0 && <Uploads uploads={uploads} onClose={() => setUploads([])} />}
    </DoorContext>
  );
};

let last = 0;

const useBring = (setUploads: (change: (uploads: readonly Upload[]) => readonly Upload[]) => void): Door['bring'] =>
  useCallback(
    (files) => {
      const put = (upload: Upload): void =>
        setUploads((all) => [...all.filter((u) => u.id !== upload.id), upload].toSorted((a, b) => a.id - b.id));
      const batches = batchesOf(files).map((batch) => {
        last += 1;
        return { batch, id: last };
      });
      const bringOne = async ({ batch, id }: (typeof batches)[number]): Promise<readonly string[]> => {
        const { name } = batch;
        const fault = notToBeSent(batch);
        const sent =
          fault === undefined
            ? await send(batch, (share) => put({ id, name, state: { kind: 'sending', share } }))
            : ({ kind: 'failed', sentence: fault } as const);
        if (sent.kind === 'failed') put({ id, name, state: sent });
        else put({ id, name, state: { kind: 'brought', job: sent.jobs[0]?.id ?? '', jobName: sent.jobs[0]?.name ?? name } });
        return sent.kind === 'brought' ? sent.jobs.map((j) => j.id) : [];
      };
      for (const { batch, id } of batches) put({ id, name: batch.name, state: { kind: 'sending', share: 0 } });
      void (async () => {
        const came: string[] = [];
        // One after the other: the server reads each before the next is sent.
        for (const one of batches) came.push(...(await bringOne(one)));
        dispatchEvent(new Event(JOBS_CAME));
        if (came.length === 0) return;
        goTo(batches.length === 1 && came.length === 1 ? `/job/${came[0]}` : '/jobs');
        if (came.length === batches.length) setUploads((all) => all.filter((u) => u.state.kind !== 'brought'));
      })();
    },
    [setUploads],
  );

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

const percent = new Intl.NumberFormat(undefined, { style: 'percent' });

const Uploads = ({ uploads, onClose }: { readonly uploads: readonly Upload[]; readonly onClose: () => void }): ReactNode => (
  <aside className="uploads" aria-label={words.uploads}>
    <ul aria-live="polite">
      {uploads.map(({ id, name, state }) => (
        <li key={id} data-state={state.kind}>
          <strong>{name}</strong>{' '}
          {state.kind === 'sending' && (
            <>
              <progress max={1} value={state.share} aria-label={name} />{' '}
              {state.share < 1 ? words.sending(percent.format(state.share)) : words.reading}
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
