/** Workers that are loaded and have nothing to do: the page begins one before there is a sheet, a sheet that is closed leaves its own to the next. */
import { type Remote, wrap } from 'comlink';
import type { DrawingFile, JobWorker } from '../work/job-worker.ts';

/** A worker that is being loaded, or is ready. */
export interface WarmWorker {
  readonly thread: Worker;
  readonly remote: Remote<JobWorker>;
}

/** As many as a sheet needs: one for its answer, one for what takes long. */
const KEPT_AT_MOST = 2;

/** A worker that had a larger drawing holds much memory, which ends with it, bytes. */
const LARGE = 1e6;

const NO_DRAWING: DrawingFile = { name: '', bytes: new Uint8Array() };

/** The one thing the page keeps outside a sheet. */
const idle: WarmWorker[] = [];

export const beginEarly = (): void => {
  if (idle.length === 0) idle.push(newWorker());
};

export const takeWorker = (): WarmWorker => idle.pop() ?? newWorker();

/** A worker that has answered, from whoever awaits nothing of it any more. What it remembers of its drawing is forgotten. */
export const giveBack = (worker: WarmWorker, { bytes }: DrawingFile): void => {
  if (idle.length >= KEPT_AT_MOST || bytes.length > LARGE) {
    worker.thread.terminate();
    return;
  }
  worker.thread.onerror = null;
  void worker.remote.open(NO_DRAWING);
  idle.push(worker);
};

const newWorker = (): WarmWorker => {
  const thread = new Worker(new URL('../work/worker.ts', import.meta.url), { type: 'module' });
  return { thread, remote: wrap<JobWorker>(thread) };
};
