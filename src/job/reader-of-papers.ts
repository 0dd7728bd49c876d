/** How the papers of a job and its answer in the terminal tell numbers: by the job, else by the shop, else in mm, µm and with a point. */
import { HOUSE, type Reader } from '../text/reader.ts';
import type { JobRun } from './job-run.ts';

/** Of a nest the shop alone says it. */
interface ReaderRequested {
  readonly shop: Pick<JobRun['shop'], 'papers'>;
  readonly job?: Pick<JobRun['job'], 'papers'> | undefined;
}

/** Key by key: what the job leaves out is the shop's. What is typed into the control keeps the unit of the program. */
export const readerOfPapers = (run: ReaderRequested): Reader => {
  const { lengths = 'mm', finish = 'µm', decimals = 'point' } = { ...run.shop.papers, ...run.job?.papers };
  const marks = decimals === 'comma' ? { decimalMark: ',', groupMark: '.' } : {};
  return { ...HOUSE, ...marks, length: lengths, finish };
};
