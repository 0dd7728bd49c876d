/** A second worker for what takes long beside the sheet, so that an edit never waits for it; it gives up its work when the inputs change. */
import { proxy, type Remote } from 'comlink';
import type { DrawingFile, JobWorker, Question } from '../work/job-worker.ts';
import { giveBack, takeWorker, type WarmWorker } from './idle-workers.ts';

export interface Aside {
  /** Asks something of the job as it is asked for now. What was asked of an older job is never answered. */
  ask<T>(what: (worker: Remote<JobWorker>) => Promise<T>): Promise<T>;
  close(): void;
}

interface Running {
  readonly worker: WarmWorker;
  readonly question: Question;
  readonly ready: Promise<unknown>;
  busy: number;
}

export const startAside = (drawing: DrawingFile, question: () => Question): Aside => {
  let running: Running | undefined;
  const begin = (asked: Question): Running => {
    const idle = running?.busy === 0 ? running.worker : undefined;
    if (running !== undefined && idle === undefined) running.worker.thread.terminate();
    const worker = idle ?? opened(drawing);
    running = {
      worker,
      question: asked,
      busy: 0,
      ready: worker.remote.run(
        asked,
        proxy(() => undefined),
      ),
    };
    return running;
  };
  return {
    async ask(what) {
      const asked = question();
      const mine = running?.question === asked ? running : begin(asked);
      mine.busy += 1;
      try {
        await mine.ready;
        return await what(mine.worker.remote);
      } finally {
        mine.busy -= 1;
      }
    },
    close() {
      if (running?.busy === 0) giveBack(running.worker, drawing);
      else running?.worker.thread.terminate();
      running = undefined;
    },
  };
};

const opened = (drawing: DrawingFile): WarmWorker => {
  const worker = takeWorker();
  void worker.remote.open(drawing);
  return worker;
};
