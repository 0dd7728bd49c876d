/** The chapter of the papers: each on screen, and as a file of the same data from the server. */
import { type ReactNode, useEffect, useState } from 'react';
import type { Paper } from '../../documents/paper.ts';
import type { PaperName } from '../../job/papers-of.ts';
import { PAPERS } from '../../job/papers-of.ts';
import { paths } from '../../server/message/answers.ts';
import { type OpenSheet, useSheet } from '../state/open-sheet.ts';
import { tellingFor } from '../words/numbers.ts';
import { paperWords as words } from '../words/papers.ts';
import { PaperPage } from './paper-page.tsx';

export const PapersChapter = ({ sheet }: { readonly sheet: OpenSheet }): ReactNode => {
  const [name, setName] = useState<PaperName>('set-up-sheet');
  const { paper, working } = usePaper(sheet, name);
  return (
    <div className="papers">
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
      <div aria-busy={working}>
        {paper === undefined ? <p role="status">{working ? words.working : words.none}</p> : <PaperPage paper={paper} />}
      </div>
    </div>
  );
};

/** Asked anew with every answer; the old paper stays until the new one is there. */
const usePaper = (sheet: OpenSheet, name: PaperName): { readonly paper: Paper | undefined; readonly working: boolean } => {
  const answer = useSheet(sheet, (s) => s.sheet);
  const lengthUnit = useSheet(sheet, (s) => s.lengthUnit);
  const finishUnit = useSheet(sheet, (s) => s.finishUnit);
  const [paper, setPaper] = useState<Paper>();
  const [working, setWorking] = useState(false);
  useEffect(() => {
    if (answer === undefined) return;
    let wanted = true;
    setWorking(true);
    void Promise.resolve(sheet.worker().paper(name, tellingFor({ lengthUnit, finishUnit }))).then((given) => {
      if (!wanted) return;
      setPaper(given);
      setWorking(false);
    });
    return () => {
      wanted = false;
    };
  }, [sheet, answer, name, lengthUnit, finishUnit]);
  return { paper, working };
};

const Files = ({ sheet }: { readonly sheet: OpenSheet }): ReactNode => {
  const record = useSheet(sheet, (s) => s.record);
  const yes = useSheet(sheet, (s) => s.sheet?.answer === 'yes');
  const [trouble, setTrouble] = useState(false);
  if (record === undefined) return null;
  const take = async (file: string): Promise<void> => {
    const saved = await sheet.flush();
    setTrouble(!saved);
    if (saved) window.location.assign(paths.file(record.id, file));
  };
  const button = (file: string, label: string): ReactNode => (
    <button key={file} type="button" onClick={() => void take(file)}>
      {label}
    </button>
  );
  return (
    <>
      <p className="files">
        {yes ? [button('program', words.program), button('setup', words.setup)] : null}
        {PAPERS.map((p) => button(p, words.download(p)))}
      </p>
      {trouble ? <p role="alert">{words.notSaved}</p> : null}
    </>
  );
};
