/** Runs a job as it is saved and gives every file it is handed out as, by the name the address has for it. */

import { houseLetters } from '../../font-files/letters-on-disk.ts';
import { jobFiles } from '../../job/handout/papers.ts';
import type { Answer } from '../../job/pipeline/answer.ts';
import { runUpTo } from '../../job/pipeline/pipeline.ts';
import { type AskedJob, askedRun } from '../../job/request/run-from-data.ts';
import type { Finding } from '../../text/finding.ts';
import { sentences } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { nameOf } from './names.ts';

export type PaperFonts = Parameters<typeof jobFiles>[1]['fonts'];

/** All that a job's files are made of; plain data, since it goes to another thread. */
export interface PaperQuestion extends AskedJob {
  readonly shop: unknown;
  /** Name of every file without its ending. */
  readonly stem: string;
}

export interface MadeFile {
  readonly fileName: string;
  readonly content: string | Uint8Array;
}

export type Made =
  /** `sentence` says what the answer is, also where it is why a file is missing. */
  | { readonly kind: 'made'; readonly files: Readonly<Record<string, MadeFile>>; readonly sentence: Text }
  | { readonly kind: 'bad'; readonly findings: readonly Finding[] };

export const makeFiles = async (question: PaperQuestion, fonts: PaperFonts): Promise<Made> => {
  const asked = askedRun(question, {}, () => ({ letters: houseLetters }));
  if (asked.kind === 'bad') return asked;
  const answer = runUpTo(asked.run, 'answer');
  const files = await jobFiles(answer, { ...asked.run, stem: question.stem, fonts });
  const named = Object.entries(files).map(([fileName, content]) => [nameOf(fileName, question.stem), { fileName, content }] as const);
  return { kind: 'made', files: Object.fromEntries(named), sentence: sentenceOf(answer) };
};

const sentenceOf = (answer: Answer): Text =>
  answer.kind === 'answered'
    ? answer.facts.sentence
    : answer.kind === 'cannot'
      ? answer.sentence
      : sentences(answer.findings.map((f) => f.text));
