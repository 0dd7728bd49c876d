/** `kerfwright compare`: what the job would cost if something gave way. */

import { memoryOf } from '../job/memory.ts';
import { compareJob, comparisonText, priceCurve, timeComparison } from '../job/what-if/comparing.ts';
import { printPlain } from '../text/print/print.ts';
import { isText } from '../text/within.ts';
import { BadInput } from './files.ts';
import { type AnswerOptions, jobRun } from './inputs.ts';
import { type Out, stages } from './out.ts';

export interface CompareCommand extends AnswerOptions {
  readonly json?: boolean;
}

/** Exit code: 0 compared, 1 the job cannot be cut as asked, so that there is nothing to compare with. */
export const compare = (file: string, options: CompareCommand, out: Out): number => {
  const run = { ...jobRun(file, options, out.today), memory: memoryOf(), progress: out.progress.tell };
  out.progress.tell(stages.changes, 0.1);
  const compared = compareJob(run);
  if (compared.kind === 'bad input') throw new BadInput(compared.findings);
  const time = compared.kind === 'compared' ? timeComparison(run) : undefined;
  const comparison = time === undefined ? compared : { ...compared, time };
  out.progress.tell(stages.finish, 0.7);
  const curve = comparison.kind === 'compared' ? priceCurve(run) : [];
  out.print(options.json === true ? JSON.stringify({ ...comparison, curve }, plain, 2) : comparisonText(comparison, curve));
  return comparison.kind === 'compared' ? 0 : 1;
};

/** Texts are printed; a figure is told by its value and range, its tree is for `why`. */
const plain = (key: string, value: unknown): unknown => {
  if (isText(value)) return printPlain(value);
  return key === 'shares' || key === 'from' ? undefined : value;
};
