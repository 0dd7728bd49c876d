/** Asks the thread for papers; a thread that breaks or takes too long is given up, and the next question gets a new one. */
import { Worker } from 'node:worker_threads';
import { name } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import { Refusal } from '../answer/refusal.ts';
import type { Made, PaperQuestion } from './make.ts';
import type { Answered } from './paper-worker.ts';

export interface Papers {
  make(question: PaperQuestion): Promise<Made>;
  close(): Promise<void>;
}

interface Waiting {
  readonly done: (made: Made) => void;
  readonly failed: (error: Error) => void;
  readonly tooLong: NodeJS.Timeout;
}

const MOST_WAITING = 30;
/** ms. Jobs of thousands of openings take minutes. */
const LONGEST = 10 * 60_000;
/** MB. A drawing that needs more than this ends the thread, not the server. */
const MEMORY = 3000;

/** `worker` is the built file of `paper-worker.ts`. */
export const papersInThread = (worker: string | URL): Papers => {
  const waiting = new Map<number, Waiting>();
  let thread: Worker | undefined;
  let last = 0;

  const giveUp = (why: string): void => {
    const [left, broken] = [[...waiting.values()], thread];
    waiting.clear();
    thread = undefined;
    for (const w of left) {
      clearTimeout(w.tooLong);
      w.failed(failure(why));
    }
    void broken?.terminate();
  };
  const start = (): Worker => {
    const started = new Worker(worker, { resourceLimits: { maxOldGenerationSizeMb: MEMORY } });
    const ifStill = (work: () => void) => (): void => {
      if (thread === started) work();
    };
    started.on('message', (answer: Answered) => {
      const asked = waiting.get(answer.number);
      if (asked === undefined) return;
      waiting.delete(answer.number);
      clearTimeout(asked.tooLong);
      if ('made' in answer) asked.done(answer.made);
      else asked.failed(failure(answer.failed));
    });
    started.on('error', (error) => ifStill(() => giveUp(error.message))());
    started.on(
      'exit',
      ifStill(() => giveUp('the thread ended')),
    );
    started.unref();
    return started;
  };

  return {
    make: (question) =>
      new Promise<Made>((done, failed) => {
        if (waiting.size >= MOST_WAITING) return failed(new Refusal(503, 'busy', words.busy));
        thread ??= start();
        last += 1;
        waiting.set(last, { done, failed, tooLong: setTimeout(() => giveUp(`nothing came within ${LONGEST / 60_000} minutes`), LONGEST) });
        thread.postMessage({ number: last, question });
      }),
    async close() {
      const open = thread;
      giveUp('the server stops');
      await open?.terminate();
    },
  };
};

const words = phrases('server-papers', {
  busy: say`Too many papers are being made at once; try again in a moment.`,
  failed: (why: string) => say`The papers could not be made; this is a fault in the program, not in your job. (${{ why: name(why) }})`,
});

const failure = (why: string): Refusal => new Refusal(500, 'papers-failed', words.failed(why.split('\n', 1)[0] ?? ''));
