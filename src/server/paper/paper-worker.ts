/** The thread that papers are made in: takes questions one after the other, each with its number, and answers under it. */
import { parentPort } from 'node:worker_threads';
import { paperFonts } from '../../font-files/font-files.ts';
import { type Made, makeFiles, type PaperQuestion } from './make.ts';

export interface Asked {
  readonly number: number;
  readonly question: PaperQuestion;
}

export type Answered = { readonly number: number; readonly made: Made } | { readonly number: number; readonly failed: string };

const fonts = paperFonts();

parentPort?.on('message', async ({ number, question }: Asked) => {
  const answer: Answered = await makeFiles(question, fonts).then(
    (made) => ({ number, made }),
    (error: unknown) => ({ number, failed: error instanceof Error ? (error.stack ?? error.message) : String(error) }),
  );
  parentPort?.postMessage(answer);
});
