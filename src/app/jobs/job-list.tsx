/** The rows of the list: each job with its answer in one line; one that was just put away leaves its row, with the way back. */
import { type ReactNode, useEffect, useRef } from 'react';
import type { BinnedJob } from '../../server/message/answers.ts';
import type { JobSummary } from '../../server/message/job-record.ts';
import { type InForce, type Line, type Older, olderThan, printedLine } from '../state/answer-line.ts';
import { useWords } from '../words/use-words.ts';
import { changedWhen, type PutAway } from './put-away.ts';

export type LinesById = Readonly<Record<string, Line | undefined>>;

interface JobListProps {
  readonly jobs: readonly JobSummary[];
  readonly lines: LinesById;
  /** What answers would be worked out from now; nothing while that is not known. */
  readonly inForce: InForce | undefined;
  readonly away: PutAway;
}

export const JobList = ({ jobs, lines, inForce, away }: JobListProps): ReactNode => {
  const words = useWords().jobs;
  const rows = [...jobs, ...[...away.gone.values()].filter((g) => jobs.every((j) => j.id !== g.id))];
  if (rows.length === 0)
    return (
      <section className="empty">
        <h2>{words.empty}</h2>
        <p>{words.emptyHelp}</p>
      </section>
    );
  return (
    <ul className="job-list">
      {rows
        .toSorted((a, b) => b.changed.localeCompare(a.changed))
        .map((job) => {
          const gone = away.gone.get(job.id);
          return gone === undefined ? (
            <JobRow key={job.id} job={job} line={job.line ?? lines[job.id]} older={inForce && olderThan(job, inForce)} away={away} />
          ) : (
            <GoneRow key={job.id} job={gone} away={away} />
          );
        })}
    </ul>
  );
};

interface JobRowProps {
  readonly job: JobSummary;
  readonly line: Line | undefined;
  readonly older: Older | undefined;
  readonly away: PutAway;
}

const JobRow = ({ job, line, older, away }: JobRowProps): ReactNode => {
  const words = useWords().jobs;
  const { id, name, drawingName, fault } = job;
  const link = useRef<HTMLAnchorElement>(null);
  const isBack = away.back?.id === id;
  useEffect(() => {
    if (isBack) link.current?.focus();
  }, [isBack]);
  return (
    <li className="job-row">
      <h2>
        <a ref={link} href={`/job/${id}`}>
          {name}
        </a>
      </h2>
      {fault === undefined ? (
        <p className="job-line" data-older={older !== undefined}>
          {older !== undefined && (
            <>
              <strong className="older-mark">{words.older(older)}</strong>{' '}
            </>
          )}
          {line === undefined ? words.noLine : printedLine(line)}
        </p>
      ) : (
        <p className="job-line fault">{fault}</p>
      )}
      <p className="job-about">
        {drawingName}, {changedWhen(job, words)}{' '}
        <button type="button" className="plain quiet" aria-label={words.removeOf(name)} onClick={() => away.putAway(id)}>
          {words.remove}
        </button>
      </p>
      <Fault sentence={away.faults.get(id)} />
    </li>
  );
};

/** What had the focus is gone with the row: the way back gets it. */
const GoneRow = ({ job, away }: { readonly job: BinnedJob; readonly away: PutAway }): ReactNode => {
  const words = useWords().jobs;
  const button = useRef<HTMLButtonElement>(null);
  useEffect(() => button.current?.focus(), []);
  return (
    <li className="job-row gone">
      <p role="status">{words.wasPutAway(job.name)}</p>{' '}
      <button ref={button} type="button" aria-label={words.putBackOf(job.name)} onClick={() => away.putBack(job)}>
        {words.putBack}
      </button>
      <Fault sentence={away.faults.get(job.id)} />
    </li>
  );
};

export const Fault = ({ sentence }: { readonly sentence: string | undefined }): ReactNode =>
  sentence === undefined ? null : (
    <p className="fault" role="alert">
      {sentence}
    </p>
  );
