/** The list of jobs, each with its answer in one line; the first visit goes on to the example. */
import { type ReactNode, useCallback, useEffect, useRef, useState } from 'react';
import type { JobSummary } from '../../server/message/job-record.ts';
import { PageMasthead } from '../look/page-masthead.tsx';
import { goTo } from '../route.ts';
import { ByNumbers } from '../shape/by-numbers.tsx';
import { type Answered, fetchJobs, removeJob } from '../state/server.ts';
import { jobsWords as words } from '../words/page.ts';
import { sheetWords } from '../words/sheet.ts';
import { answerLines } from './answer-lines.ts';
import { JOBS_CAME, useDoor } from './drop-anywhere.tsx';

const VISITED = 'visited';

const JobsPage = ({ first }: { readonly first: boolean }): ReactNode => {
  const { jobs, lines, load } = useJobs(first);
  useEffect(() => {
    document.title = `${words.title} · Kerfwright`;
  }, []);
  return (
    <>
      <PageMasthead />
      <main className="plain-page jobs" id="content" tabIndex={-1}>
        <h1>{words.title}</h1>
        <p className="lead">{words.lead}</p>
        <BringIn />
        <ByNumbers />
        {jobs === undefined && <p role="status">{words.loading}</p>}
        {jobs !== undefined && jobs.kind !== 'ok' && (
          <div role="alert">
            <p>{jobs.kind === 'gone' ? sheetWords.serverGoneHelp : jobs.error.sentence}</p>
            <button type="button" onClick={load}>
              {sheetWords.tryAgain}
            </button>
          </div>
        )}
        {jobs?.kind === 'ok' && <JobList jobs={jobs.value} lines={lines} load={load} />}
      </main>
    </>
  );
};
export default JobsPage;

type Jobs = Answered<readonly JobSummary[]>;
type LinesById = Readonly<Record<string, string | undefined>>;

const useJobs = (first: boolean): { readonly jobs: Jobs | undefined; readonly lines: LinesById; readonly load: () => void } => {
  const [jobs, setJobs] = useState<Jobs | undefined>();
  const [lines, setLines] = useState<LinesById>({});
  const load = useCallback(() => {
    void fetchJobs().then((answer) => {
      if (first && answer.kind === 'ok' && opensFirst(answer.value)) return;
      setJobs(answer);
    });
  }, [first]);
  useEffect(() => {
    load();
    addEventListener(JOBS_CAME, load);
    return () => removeEventListener(JOBS_CAME, load);
  }, [load]);
  const unanswered = jobs?.kind === 'ok' ? jobs.value.filter((j) => j.line === undefined && j.fault === undefined) : [];
  const which = unanswered.map((j) => j.id).join(' ');
  const wanted = useRef(unanswered);
  wanted.current = unanswered;
  useEffect(() => {
    if (which === '') return;
    const { stop } = answerLines(wanted.current, (id, line) => setLines((all) => ({ ...all, [id]: line ?? words.workingLine })));
    return stop;
  }, [which]);
  return { jobs, lines, load };
};

/** Whoever comes for the first time sees a whole job at work, not a list of one. */
const opensFirst = (jobs: readonly JobSummary[]): boolean => {
  const [only] = jobs;
  const known = localStorage.getItem(VISITED) !== null;
  localStorage.setItem(VISITED, 'yes');
  if (known || only === undefined || jobs.length > 1) return false;
  goTo(`/job/${only.id}`, true);
  return true;
};

const BringIn = (): ReactNode => {
  const { bring } = useDoor();
  const input = useRef<HTMLInputElement>(null);
  return (
    <p>
      <button type="button" className="bring" onClick={() => input.current?.click()}>
        {words.bring}
      </button>
      <input
        ref={input}
        className="unseen"
        type="file"
        multiple
        accept=".dxf,.svg,.json"
        tabIndex={-1}
        aria-label={words.bring}
        onChange={(event) => {
          bring([...(event.target.files ?? [])]);
          event.target.value = '';
        }}
      />
    </p>
  );
};

interface JobListProps {
  readonly jobs: readonly JobSummary[];
  readonly lines: LinesById;
  readonly load: () => void;
}

const JobList = ({ jobs, lines, load }: JobListProps): ReactNode =>
  jobs.length === 0 ? (
    <section className="empty">
      <h2>{words.empty}</h2>
      <p>{words.emptyHelp}</p>
    </section>
  ) : (
    <ul className="job-list">
      {jobs.map((job) => (
        <JobRow key={job.id} job={job} line={job.line ?? lines[job.id]} load={load} />
      ))}
    </ul>
  );

const when = new Intl.DateTimeFormat(undefined, { dateStyle: 'medium', timeStyle: 'short' });

const JobRow = ({
  job,
  line,
  load,
}: {
  readonly job: JobSummary;
  readonly line: string | undefined;
  readonly load: () => void;
}): ReactNode => {
  const [asking, setAsking] = useState(false);
  const { id, name, drawingName, changed, fault } = job;
  return (
    <li className="job-row">
      <h2>
        <a href={`/job/${id}`}>{name}</a>
      </h2>
      {fault === undefined ? <p className="job-line">{line ?? words.noLine}</p> : <p className="job-line fault">{fault}</p>}
      <p className="job-about">
        {drawingName}, {words.changed(when.format(new Date(changed)))}{' '}
        {asking ? (
          <span role="alert">
            {words.sure(name)}{' '}
            <button type="button" onClick={() => void removeJob(id).then(load)}>
              {words.yesRemove}
            </button>{' '}
            <button type="button" onClick={() => setAsking(false)}>
              {words.no}
            </button>
          </span>
        ) : (
          <button type="button" className="plain quiet" aria-label={words.removeOf(name)} onClick={() => setAsking(true)}>
            {words.remove}
          </button>
        )}
      </p>
    </li>
  );
};
