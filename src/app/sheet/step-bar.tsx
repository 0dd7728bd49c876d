/** The line that stays on top: chapters with the one in view, undo and redo by name, and whether all is saved. */
import type { ReactNode } from 'react';
import { useOnSheet, useTools } from '../fields/tools.ts';
import { redoName, undoName } from '../state/input.ts';
import type { OpenSheet } from '../state/open-sheet.ts';
import { useWords } from '../words/use-words.ts';
import { CHAPTERS } from '../work/views.ts';
import { PutBackJob } from './put-back-job.tsx';

export const StepBar = (): ReactNode => (
  <div className="step-bar">
    <Contents />
    <Steps />
  </div>
);

const Contents = (): ReactNode => {
  const words = useWords().sheet;
  const inView = useOnSheet((s) => s.chapter);
  return (
    <nav className="contents" aria-label={words.contents}>
      <ol>
        {CHAPTERS.map((chapter) => (
          <li key={chapter}>
            <a href={`#${chapter}`} aria-current={chapter === inView ? 'location' : undefined}>
              {words.chapter(chapter)}
            </a>
          </li>
        ))}
      </ol>
    </nav>
  );
};

const Steps = (): ReactNode => {
  const words = useWords().sheet;
  const { sheet } = useTools();
  const undo = useOnSheet((s) => (s.record === undefined ? undefined : undoName(s.record)));
  const redo = useOnSheet((s) => (s.record === undefined ? undefined : redoName(s.record)));
  const saving = useOnSheet((s) => s.saving);
  return (
    <div className="steps-now">
      <button
        type="button"
        className="plain"
        disabled={undo === undefined}
        title={words.undo(undo)}
        aria-label={words.undo(undo)}
        onClick={() => sheet.actions.undo()}
      >
        {words.undoShort}
      </button>
      <button
        type="button"
        className="plain"
        disabled={redo === undefined}
        title={words.redo(redo)}
        aria-label={words.redo(redo)}
        onClick={() => sheet.actions.redo()}
      >
        {words.redoShort}
      </button>
      <span className="saving" role="status">
        {saving === 'saved' || saving === 'saving' ? words.saving(saving) : words.notSaved}
      </span>
    </div>
  );
};

/** What stands between the user and a safe job: the server is gone, or another tab has saved. */
export const Notices = (): ReactNode => {
  const words = useWords().sheet;
  const { sheet } = useTools();
  const saving = useOnSheet((s) => s.saving);
  if (saving === 'waiting for the server')
    return (
      <p className="notice" role="alert">
        {words.saving(saving)}
      </p>
    );
  if (saving === 'put away')
    return (
      <div className="notice" role="alert">
        <p>{words.saving(saving)}</p>
        <PutBackJob id={sheet.store.getState().record?.id ?? ''} onBack={() => backOn(sheet)} />
      </div>
    );
  if (saving !== 'changed elsewhere') return null;
  return (
    <div className="notice" role="alert">
      <p>
        <strong>{words.saving(saving)}</strong> {words.elsewhereHelp}
      </p>
      <button type="button" onClick={() => sheet.actions.takeTheirs()}>
        {words.takeTheirs}
      </button>{' '}
      <button type="button" onClick={() => sheet.actions.keepMine()}>
        {words.keepMine}
      </button>
    </div>
  );
};

/** The notice goes with the button that had the focus. */
const backOn = (sheet: OpenSheet): void => {
  void sheet.flush();
  document.getElementById('content')?.focus({ preventScroll: true });
};
