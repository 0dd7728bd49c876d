/** Opens the job of an address and hands its sheet to a page; says so when there is none or the server is gone. */
import { type ReactNode, useEffect, useState } from 'react';
import { type Opened, type OpenSheet, openSheet } from '../state/open-sheet.ts';
import { sheetWords as words } from '../words/sheet.ts';
import { PutBackJob } from './put-back-job.tsx';

interface OpenPageProps {
  readonly id: string;
  readonly children: (sheet: OpenSheet) => ReactNode;
}

/** ms */
const AGAIN = 3000;

export const OpenPage = ({ id, children }: OpenPageProps): ReactNode => {
  const [opened, setOpened] = useState<Opened | undefined>();
  const [turn, setTurn] = useState(0);
  useEffect(() => {
    let wanted = true;
    let mine: OpenSheet | undefined;
    let timer: ReturnType<typeof setTimeout> | undefined;
    void turn;
    void openSheet(id).then((answer) => {
      if (answer.kind === 'open') mine = answer.sheet;
      if (!wanted) return mine?.close();
      setOpened(answer);
      if (answer.kind === 'gone') timer = setTimeout(() => setTurn((t) => t + 1), AGAIN);
    });
    return () => {
      wanted = false;
      clearTimeout(timer);
      mine?.close();
    };
  }, [id, turn]);
  if (opened === undefined)
    return (
      <main className="plain-page" id="content">
        <p role="status">{words.opening}</p>
      </main>
    );
  if (opened.kind === 'open') return children(opened.sheet);
  return (
    <main className="plain-page" id="content">
      <h1>{opened.kind === 'gone' ? words.serverGone : words.noSuchJob}</h1>
      <p role="alert">{opened.kind === 'gone' ? words.serverGoneHelp : opened.sentence}</p>
      {opened.kind === 'no such job' && <PutBackJob id={id} onBack={() => setTurn(turn + 1)} />}
      <p>
        {opened.kind === 'gone' ? (
          <button type="button" onClick={() => setTurn(turn + 1)}>
            {words.tryAgain}
          </button>
        ) : (
          <a href="/jobs">{words.toJobs}</a>
        )}
      </p>
    </main>
  );
};
