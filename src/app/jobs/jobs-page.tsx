/** The list of jobs, each with its answer in one line; the first visit goes on to the example. */
import { type ReactNode, useCallback, useEffect, useRef, useState } from 'react';
import type { JobSummary } from '../../server/message/job-record.ts';
import type { InForce } from '../state/answer-line.ts';
import { today } from '../state/open-sheet.ts';
import { pageVersion } from '../state/page-version.ts';
import { goTo } from '../state/route.ts';
import { type Answered, fetchJobs, fetchShop } from '../state/server.ts';
import { useWords } from '../words/use-words.ts';
import { answerLines } from './answer-lines.ts';
import { Bin } from './bin.tsx';
import { ByNumbers } from './by-numbers.tsx';
import { JOBS_CAME, useDoor } from './drop-anywhere.tsx';
import { JobList, type LinesById } from './job-list.tsx';
import { PageMasthead } from './page-masthead.tsx';
import { usePutAway } from './put-away.ts';

const VISITED = 'visited';

const JobsPage = ({ first }: { readonly first: boolean }): ReactNode => {
  const { jobs: words, sheet: sheetWords } = useWords();
  const { jobs, lines, load } = useJobs(first);
  const inForce = useInForce();
  const away = usePutAway(jobs, load);
  useEffect(() => {
    document.title = `${words.title} · Kerfwright`;
  }, [words]);
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
            <button type="button" onClick={() => void load()}>
              {sheetWords.tryAgain}
            </button>
          </div>
        )}
        {jobs?.kind === 'ok' && <JobList jobs={jobs.value} lines={lines} inForce={inForce} away={away} />}
        {jobs?.kind === 'ok' && <Bin away={away} />}
      </main>
    </>
  );
};
export default JobsPage;

type Jobs = Answered<readonly JobSummary[]>;

const useJobs = (first: boolean): { readonly jobs: Jobs | undefined; readonly lines: LinesById; readonly load: () => Promise<void> } => {
  const words = useWords().jobs;
  const [jobs, setJobs] = useState<Jobs | undefined>();
  const [lines, setLines] = useState<LinesById>({});
  const load = useCallback(async () => {
    const answer = await fetchJobs();
    if (!(first && answer.kind === 'ok' && opensFirst(answer.value))) setJobs(answer);
  }, [first]);
  useEffect(() => {
    const came = (): void => void load();
    came();
    addEventListener(JOBS_CAME, came);
    return () => removeEventListener(JOBS_CAME, came);
  }, [load]);
  const unanswered = jobs?.kind === 'ok' ? jobs.value.filter((j) => j.line === undefined && j.fault === undefined) : [];
  const which = unanswered.map((j) => j.id).join(' ');
  const wanted = useRef(unanswered);
  wanted.current = unanswered;
  useEffect(() => {
    if (which === '') return;
    const { stop } = answerLines(wanted.current, (id, line) => setLines((all) => ({ ...all, [id]: line ?? words.workingLine })));
    return stop;
  }, [which, words]);
  return { jobs, lines, load };
};

/** The shop and the program that answers would be worked out with now. */
const useInForce = (): InForce | undefined => {
  const [inForce, setInForce] = useState<InForce>();
  useEffect(() => {
    void fetchShop().then((shop) => {
      if (shop.kind === 'ok') setInForce({ shop: shop.value.revision, version: pageVersion(), day: today() });
    });
  }, []);
  return inForce;
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
  const words = useWords().jobs;
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
