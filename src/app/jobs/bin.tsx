/** The bin under the list: what was put away and when, the way back, and where it lies. */
import type { ReactNode } from 'react';
import type { BinnedJob } from '../../server/message/answers.ts';
import { printedLine } from '../state/answer-line.ts';
import { useWords } from '../words/use-words.ts';

import { Fault } from './job-list.tsx';
import { type PutAway, whenOf } from './put-away.ts';

export const Bin = ({ away }: { readonly away: PutAway }): ReactNode => {
  const { jobs: words, sheet: sheetWords } = useWords();
  const { bin, gone, back } = away;
  if (bin === undefined) return null;
  if (bin.kind !== 'ok')
    return (
      <p className="bin" role="alert">
        {words.binFault}{' '}
        <button type="button" onClick={away.load}>
          {sheetWords.tryAgain}
        </button>
      </p>
    );
  const { folder, jobs } = bin.value;
  // What was just put away has its way back in its own row.
  const older = jobs.filter((j) => gone.get(j.id)?.bin !== j.bin);
  return (
    <>
      <p className="unseen" role="status">
        {back === undefined ? '' : words.isBack(back.name)}
      </p>
      {older.length > 0 && (
        <details className="bin">
          <summary>{words.bin(older.length)}</summary>
          <p>{words.binLead}</p>
          <ul>
            {older.map((job) => (
              <BinRow key={job.bin} job={job} away={away} />
            ))}
          </ul>
          <p className="bin-place">
            {words.binPlace} <code>{folder}</code>
          </p>
        </details>
      )}
    </>
  );
};

const BinRow = ({ job, away }: { readonly job: BinnedJob; readonly away: PutAway }): ReactNode => {
  const words = useWords().jobs;
  return (
    <li>
      <div className="bin-head">
        <strong>{job.name}</strong>
        <span className="job-about">
          {job.drawingName === '' ? '' : `${job.drawingName}, `}
          {words.putAway(whenOf(job.binnedAt))}
        </span>
        <button type="button" aria-label={words.putBackOf(job.name)} onClick={() => away.putBack(job)}>
          {words.putBack}
        </button>
      </div>
      {job.line !== undefined && <p className="job-line">{printedLine(job.line)}</p>}
      {job.fault !== undefined && <p className="job-line fault">{job.fault}</p>}
      <Fault sentence={away.faults.get(job.id)} />
    </li>
  );
};
