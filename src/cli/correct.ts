/** `kerfwright correct`: new offset registers from what was measured, or what a change of the registers does. */

import { correctJson, correctText } from '../job/handout/correct-report.ts';
import { correctJob } from '../job/pipeline/correct-job.ts';
import { printPlain } from '../text/print/print.ts';
import { say } from '../text/say.ts';
import { BadInput, badInput } from './files.ts';
import { type AnswerOptions, jobRun } from './inputs.ts';
import type { Out } from './out.ts';
import { millimetres } from './typed-numbers.ts';

export interface CorrectCommand extends AnswerOptions {
  readonly measured?: readonly string[];
  readonly change?: string;
  readonly json?: boolean;
}

const nothing = say(
  'command-correct',
)`No measurement given: use --measured "L2: 24.006 of 24 at 22", or --change -0.003 to see what a change does.`;

/** Exit code: 0 registers that may be set, 1 not safe or no program to correct. */
export const correct = (file: string, options: CorrectCommand, out: Out): number => {
  const measured = options.measured ?? [];
  if (measured.length === 0 && options.change === undefined) throw badInput(nothing, 'measured');
  const run = { ...jobRun(file, options, out.today), progress: out.progress.tell };
  const change = options.change === undefined ? {} : { change: signedMillimetres(options.change) };
  const answer = correctJob(run, { measured, ...change });
  if (answer.kind === 'bad input') throw new BadInput(answer.findings);
  if (answer.kind === 'cannot') {
    const sentence = printPlain(answer.sentence);
    out.print(options.json === true ? JSON.stringify({ answer: 'no', sentence }, null, 2) : sentence);
    return 1;
  }
  out.print(options.json === true ? JSON.stringify(correctJson(answer), null, 2) : correctText(answer));
  return answer.correction?.safe === false ? 1 : 0;
};

/** '-0.003', '3 µm', '-0.1 thou'. */
const signedMillimetres = (text: string): number => {
  const negative = /^\s*[-−]/.test(text);
  const size = millimetres('change', text.replace(/^\s*[-−+]/, ''));
  return negative ? -size : size;
};
