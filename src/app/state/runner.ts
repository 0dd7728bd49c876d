/** The worker that runs the job: the newest question wins, an answer that takes long can be cancelled, and a worker that died is replaced. */
import { proxy, type Remote } from 'comlink';
import type { DrawingFile, JobWorker, Question, Tell } from '../work/job-worker.ts';
import type { SheetInTexts } from '../work/views.ts';
import { giveBack, takeWorker, type WarmWorker } from './idle-workers.ts';

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
  readonly answered: (sheet: SheetInTexts, asked: number, question: Question) => void;
  readonly failed: (sentence: string) => void;
}

/** A run that is younger than this is waited for when a newer question comes: starting the worker anew would take as long, ms. */
const PATIENCE = 700;

/** @param warm a worker that may have been loaded while drawing and job were still on their way. */
export const startRunner = (drawing: DrawingFile, events: RunnerEvents, warm: WarmWorker): Runner => new OneRunner(drawing, events, warm);

class OneRunner implements Runner {
  private current: WarmWorker;
  private running: { readonly since: number } | undefined;
  private next: Question | undefined;
  private timer: ReturnType<typeof setTimeout> | undefined;
  private readonly drawing: DrawingFile;
  private readonly events: RunnerEvents;

  constructor(drawing: DrawingFile, events: RunnerEvents, warm: WarmWorker) {
    this.drawing = drawing;
    this.events = events;
    this.current = opened(warm, drawing);
  }

  get worker(): Remote<JobWorker> {
    return this.current.remote;
  }

  ask(question: Question): void {
    this.next = question;
    clearTimeout(this.timer);
    if (this.running === undefined) this.beginNext();
    else this.timer = setTimeout(() => this.lostPatience(), Math.max(0, PATIENCE - (performance.now() - this.running.since)));
  }

  cancel(): void {
    this.next = undefined;
    clearTimeout(this.timer);
    if (this.running !== undefined) this.restart();
  }

  close(): void {
    clearTimeout(this.timer);
    if (this.running === undefined) giveBack(this.current, this.drawing);
    else this.current.thread.terminate();
  }

  private lostPatience(): void {
    if (this.next === undefined) return;
    if (this.running !== undefined) this.restart();
    this.beginNext();
  }

  private restart(): void {
    this.current.thread.terminate();
    this.current = opened(takeWorker(), this.drawing);
    this.running = undefined;
  }

  private beginNext(): void {
    const question = this.next;
    this.next = undefined;
    clearTimeout(this.timer);
    if (question !== undefined) this.begin(question);
  }

  private begin(question: Question): void {
    const mine = { since: performance.now() };
    const { thread, remote } = this.current;
    this.running = mine;
    this.events.began();
    /** Of a run that was given up nothing is heard any more. */
    const done = (hear: () => void): void => {
      if (this.running !== mine) return;
      this.running = undefined;
      if (this.next === undefined) hear();
      else this.beginNext();
    };
    remote
      .run(
        question,
        proxy((stage, share) => this.running === mine && this.events.tell(stage, share)),
      )
      .then(
        (sheet) => done(() => this.events.answered(sheet, mine.since, question)),
        (error: unknown) => done(() => this.events.failed(String(error))),
      );
    thread.onerror = () => done(() => this.events.failed('The worker that runs the job broke off.'));
  }
}

const opened = (worker: WarmWorker, drawing: DrawingFile): WarmWorker => {
  void worker.remote.open(drawing);
  return worker;
};
