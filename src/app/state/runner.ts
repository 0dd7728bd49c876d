/** The worker that runs the job: the newest question wins, an answer that takes long can be cancelled, and a worker that died is replaced. */
import { proxy, type Remote, wrap } from 'comlink';
import type { DrawingFile, JobWorker, Question, Tell } from '../work/job-worker.ts';
import type { Sheet } from '../work/views.ts';

export interface Runner {
  /** Asks; an older question that is not answered yet never will be. */
  ask(question: Question): void;
  /** Stops what runs. The last answer stays good. */
  cancel(): void;
  /** The worker of the last answer, for whys, what-ifs and papers. */
  readonly worker: Remote<JobWorker>;
  close(): void;
}

export interface RunnerEvents {
  readonly began: () => void;
  readonly tell: Tell;
  /** `asked` is when the question was asked, by the page's own clock, ms. */
  readonly answered: (sheet: Sheet, asked: number) => void;
  readonly failed: (sentence: string) => void;
}

/** A run that is younger than this is waited for when a newer question comes: starting the worker anew would take as long, ms. */
const PATIENCE = 700;

/** A worker that is being loaded, or is ready. */
export interface WarmWorker {
  readonly thread: Worker;
  readonly remote: Remote<JobWorker>;
}

/** Begins to load the worker: it may do so while drawing and job are still on their way. */
export const warmWorker = (): WarmWorker => {
  const thread = new Worker(new URL('../work/worker.ts', import.meta.url), { type: 'module' });
  return { thread, remote: wrap<JobWorker>(thread) };
};

export const startRunner = (drawing: DrawingFile, events: RunnerEvents, warm = warmWorker()): Runner => {
  let { thread, remote } = opened(warm, drawing);
  let running: { readonly since: number } | undefined;
  let next: Question | undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;

  const restart = (): void => {
    thread.terminate();
    ({ thread, remote } = opened(warmWorker(), drawing));
    running = undefined;
  };
  const begin = (question: Question): void => {
    const mine = { since: performance.now() };
    const of = remote;
    running = mine;
    events.began();
    const done = (say: () => void): void => {
      if (running !== mine) return;
      running = undefined;
      if (next === undefined) say();
      else beginNext();
    };
    of.run(
      question,
      proxy((stage, share) => running === mine && events.tell(stage, share)),
    ).then(
      (sheet) => done(() => events.answered(sheet, mine.since)),
      (error: unknown) => done(() => events.failed(String(error))),
    );
    thread.onerror = () => done(() => events.failed('The worker that runs the job broke off.'));
  };
  const beginNext = (): void => {
    const question = next;
    next = undefined;
    clearTimeout(timer);
    if (question !== undefined) begin(question);
  };

  return {
    ask(question) {
      next = question;
      if (running === undefined) return beginNext();
      clearTimeout(timer);
      timer = setTimeout(
        () => {
          if (next === undefined) return;
          if (running !== undefined) restart();
          beginNext();
        },
        Math.max(0, PATIENCE - (performance.now() - running.since)),
      );
    },
    cancel() {
      next = undefined;
      clearTimeout(timer);
      if (running !== undefined) restart();
    },
    get worker() {
      return remote;
    },
    close() {
      clearTimeout(timer);
      thread.terminate();
    },
  };
};

const opened = (worker: WarmWorker, drawing: DrawingFile): WarmWorker => {
  void worker.remote.open(drawing);
  return worker;
};
