/** Opens the job of an address and hands its sheet to a page; says so when there is none or the server is gone. */
import { type ReactNode, useEffect, useMemo, useState } from 'react';
import { type Opened, type OpenSheet, openSheet, useSheet } from '../state/open-sheet.ts';
import { readerOf } from '../state/preferences.ts';
import { ReaderContext, useWords } from '../words/use-words.ts';
import { PutBackJob } from './put-back-job.tsx';

interface OpenPageProps {
  readonly id: string;
  readonly children: (sheet: OpenSheet) => ReactNode;
}

/** ms */
const AGAIN = 3000;

export const OpenPage = ({ id, children }: OpenPageProps): ReactNode => {
  const words = useWords().sheet;
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
  if (opened.kind === 'open') return <ReadBy sheet={opened.sheet}>{children(opened.sheet)}</ReadBy>;
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

/** Whoever has the sheet open reads it in the units that he chose on it. */
const ReadBy = ({ sheet, children }: { readonly sheet: OpenSheet; readonly children: ReactNode }): ReactNode => {
  const lengthUnit = useSheet(sheet, (s) => s.lengthUnit);
  const finishUnit = useSheet(sheet, (s) => s.finishUnit);
  const reader = useMemo(() => readerOf({ lengthUnit, finishUnit }), [lengthUnit, finishUnit]);
  return <ReaderContext value={reader}>{children}</ReaderContext>;
};
