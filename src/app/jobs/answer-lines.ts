/** One-line answers for jobs that were never opened: worked out one by one beside the page, and kept with the job. */
import { proxy } from 'comlink';
import type { JobSummary } from '../../server/message/job-record.ts';
import { answeredFromOf, type Line, lineOf } from '../state/answer-line.ts';
import { takeWorker } from '../state/idle-workers.ts';
import { inputOf } from '../state/input.ts';
import { today } from '../state/open-sheet.ts';
import { pageVersion } from '../state/page-version.ts';
import { fetchDrawing, fetchJob, fetchShop, saveJob } from '../state/server.ts';

export interface Lines {
  readonly stop: () => void;
}

/** `tell` is told of each line as soon as it is there, and of the job that is being worked out. */
export const answerLines = (jobs: readonly JobSummary[], tell: (id: string, line: Line | undefined) => void): Lines => {
  const { thread, remote: worker } = takeWorker();
  let stopped = false;
  const answerOne = async (id: string): Promise<void> => {
    const [record, drawing, shop] = await Promise.all([fetchJob(id), fetchDrawing(id), fetchShop()]);
    if (stopped || record.kind !== 'ok' || drawing.kind !== 'ok' || shop.kind !== 'ok') return;
    tell(id, undefined);
    await worker.open({ name: record.value.drawingName, bytes: drawing.value });
    const { dialect } = shop.value;
    const question = { input: inputOf(record.value), shop: shop.value.shop, day: today(), dialect };
    const { sentence } = await worker.run(
      question,
      proxy(() => undefined),
    );
    if (stopped) return;
    const line = lineOf(sentence.text);
    tell(id, line);
    const { revision, name, steps, cursor } = record.value;
    const answeredFrom = answeredFromOf(question.input, shop.value, { version: pageVersion(), day: question.day });
    await saveJob(id, { revision, name, steps, cursor, line, answeredFrom });
  };
  void (async () => {
    for (const { id } of jobs) if (!stopped) await answerOne(id).catch(() => undefined);
    thread.terminate();
  })();
  return {
    stop: () => {
      stopped = true;
      thread.terminate();
    },
  };
};
