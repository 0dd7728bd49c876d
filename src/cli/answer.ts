/** `kerfwright answer`: the whole job, from drawing to papers. */

import { basename, extname } from 'node:path';
import { paperFonts } from '../font-files/font-files.ts';
import { answerJson } from '../job/handout/answer-json.ts';
import { answerText, jobFiles } from '../job/handout/papers.ts';
import type { JobRun } from '../job/job-run.ts';
import type { Answer } from '../job/pipeline/answer.ts';
import { runUpTo } from '../job/pipeline/pipeline.ts';
import { printPlain } from '../text/print/print.ts';
import { BadInput, writeFiles } from './files.ts';
import { type AnswerOptions, jobRun } from './inputs.ts';
import { type Out, stages, writtenLines } from './out.ts';

export interface AnswerCommand extends AnswerOptions {
  readonly out?: string;
  readonly json?: boolean;
}

/** Exit code: 0 yes, 1 no. Bad input is thrown. */
export const answer = async (file: string, options: AnswerCommand, out: Out): Promise<number> => {
  const stem = basename(file)
    .replace(/\.job\.json$/i, '')
    .replace(extname(file), '');
  return answerRun(jobRun(file, options, out.today), stem, options, out);
};

/** The same of a run; `also` are files that are written with those of the answer. */
export const answerRun = async (
  run: Omit<JobRun, 'progress'>,
  stem: string,
  options: AnswerCommand,
  out: Out,
  also: Readonly<Record<string, string>> = {},
): Promise<number> => {
  const given = runUpTo({ ...run, progress: out.progress.tell }, 'answer');
  if (options.out !== undefined) out.progress.tell(stages.papers, 0.95);
  const written =
    options.out === undefined
      ? []
      : writeFiles(options.out, { ...also, ...(await jobFiles(given, { ...run, stem, fonts: paperFonts() })) });
  return tell(given, run, options, written, out);
};

const tell = (given: Answer, run: ReturnType<typeof jobRun>, options: AnswerCommand, written: readonly string[], out: Out): number => {
  if (given.kind === 'bad input') throw new BadInput(given.findings);
  if (options.json === true) out.print(JSON.stringify(answerJson(given, written), null, 2));
  else if (given.kind === 'cannot') out.print(printPlain(given.sentence));
  else out.print([answerText(given.facts, run), ...writtenLines(written)].join('\n\n'));
  return given.kind === 'answered' && given.facts.outcome.answer === 'yes' ? 0 : 1;
};
