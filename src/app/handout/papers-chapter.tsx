/** The chapter of the papers: each on screen, and as a file of the same data from the server. */
import type { Remote } from 'comlink';
import { type ReactNode, type RefObject, useMemo, useRef, useState } from 'react';
import type { Paper } from '../../documents/paper.ts';
import { PAPERS, type PaperName } from '../../result/paper-names.ts';
import { tellingFor } from '../../text/print/reader.ts';
import { AskedState } from '../look/asked-state.tsx';
import { handOver } from '../look/hand-over.ts';
import { type Asked, useAsked } from '../look/use-asked.ts';
import { type OpenSheet, useSheet } from '../state/open-sheet.ts';
import { fetchFile } from '../state/server.ts';
import { useWords } from '../words/use-words.ts';
import type { JobWorker } from '../work/job-worker.ts';
import { PaperPage } from './paper-page.tsx';

export const PapersChapter = ({ sheet }: { readonly sheet: OpenSheet }): ReactNode => {
  const words = useWords().papers;
  const [name, setName] = useState<PaperName>('set-up-sheet');
  const place = useRef<HTMLDivElement>(null);
  const asked = usePaper(sheet, name, place);
  const { answer } = asked;
  return (
    <div ref={place} className="papers">
      <Files sheet={sheet} />
      <label>
        {words.choose}{' '}
        <select value={name} onChange={(e) => setName(e.target.value as PaperName)}>
          {PAPERS.map((p) => (
            <option key={p} value={p}>
              {words.name(p)}
            </option>
          ))}
        </select>
      </label>
      <AskedState asked={asked} working={words.working} />
      <div aria-busy={asked.working} data-paper={answer?.name}>
        {answer?.paper === undefined ? answer && <p>{words.none}</p> : <PaperPage paper={answer.paper} />}
      </div>
    </div>
  );
};

interface Made {
  readonly name: PaperName;
  readonly paper: Paper | undefined;
}

/** The quotation runs the job in other ways to say what would be cheaper: it is made beside the worker of the answer. */
const usePaper = (sheet: OpenSheet, name: PaperName, place: RefObject<HTMLElement | null>): Asked<Made> => {
  const answer = useSheet(sheet, (s) => s.sheet);
  const lengthUnit = useSheet(sheet, (s) => s.lengthUnit);
  const finishUnit = useSheet(sheet, (s) => s.finishUnit);
  const about = useMemo(() => answer && { answer, name, lengthUnit, finishUnit }, [answer, name, lengthUnit, finishUnit]);
  return useAsked(place, about, async () => {
    const make = async (worker: Remote<JobWorker>) => worker.paper(name, tellingFor({ lengthUnit, finishUnit }));
    return { name, paper: name === 'quotation' ? await sheet.aside.ask(make) : await make(sheet.worker()) };
  });
};

/** `making` while the server makes the file that was asked for, then nothing or why there is none. */
type Taking = { readonly kind: 'making'; readonly file: string } | { readonly kind: 'none'; readonly why: string };

const Files = ({ sheet }: { readonly sheet: OpenSheet }): ReactNode => {
  const words = useWords().papers;
  const record = useSheet(sheet, (s) => s.record);
  const yes = useSheet(sheet, (s) => s.sheet?.answer === 'yes');
  const [taking, setTaking] = useState<Taking>();
  if (record === undefined) return null;
  const making = taking?.kind === 'making' ? taking.file : undefined;
  const take = async (file: string): Promise<void> => {
    if (making !== undefined) return;
    setTaking({ kind: 'making', file });
    if (!(await sheet.flush())) return setTaking({ kind: 'none', why: words.notSaved });
    const answer = await fetchFile(record.id, file);
    if (answer.kind !== 'ok') return setTaking({ kind: 'none', why: answer.kind === 'gone' ? words.gone : answer.error.sentence });
    handOver(answer.value.name, answer.value.content);
    setTaking(undefined);
  };
  const button = (file: string, label: string): ReactNode => (
    <button key={file} type="button" aria-disabled={making !== undefined} aria-busy={making === file} onClick={() => void take(file)}>
      {label}
    </button>
  );
  return (
    <>
      <p className="files">
        {yes ? [button('program', words.program), button('setup', words.setup)] : null}
        {PAPERS.map((p) => button(p, words.download(p)))}
      </p>
      {making !== undefined ? <p role="status">{words.making}</p> : null}
      {taking?.kind === 'none' ? <p role="alert">{taking.why}</p> : null}
    </>
  );
};
