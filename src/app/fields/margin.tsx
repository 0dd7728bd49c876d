/** Findings as a checker's notes in the margin: what was found, how grave, what helps, and the way to its place. */
import { type ReactNode, useState } from 'react';
import { byGravity } from '../../text/severity.ts';
import { findingNumbers } from '../picture/marks.ts';
import { labelOf } from '../words/fields.ts';
import { useWords } from '../words/use-words.ts';
import type { Chapter, FindingView } from '../work/views.ts';
import { ManualPage } from './manual-page.tsx';
import { fillingOf, helpingFields } from './remedies.ts';
import { useInput, useOnSheet, useTools } from './tools.ts';

/** More than these are shown on demand. */
const FIRST = 3;

/** The notes of a chapter that belong to none of its fields. */
export const Notes = ({ chapter, findings }: { readonly chapter: Chapter; readonly findings: readonly FindingView[] }): ReactNode => {
  const words = useWords().sheet;
  const [all, setAll] = useState(false);
  const sorted = byGravity(findings);
  const pointedAt = useOnSheet((s) => s.pointed);
  const open = all || sorted.slice(FIRST).some((f) => f.id === pointedAt);
  const shown = open ? sorted : sorted.slice(0, FIRST);
  if (findings.length === 0) return null;
  return (
    <aside className="notes" aria-label={words.notes(chapter)}>
      {shown.map((f) => (
        <Note key={f.id} finding={f} />
      ))}
      {findings.length > FIRST && (
        <button type="button" className="plain" aria-expanded={open} onClick={() => setAll(!open)}>
          {open ? words.less : words.more(findings.length - FIRST)}
        </button>
      )}
    </aside>
  );
};

interface NoteProps {
  readonly finding: FindingView;
  /** Its sentence stands just above already. */
  readonly told?: boolean;
}

export const Note = ({ finding, told = false }: NoteProps): ReactNode => {
  const words = useWords().sheet;
  const { sheet } = useTools();
  const pointed = useOnSheet((s) => s.pointed === finding.id);
  const number = useOnSheet((s) => findingNumbers(s.sheet?.findings ?? []).get(finding.id));
  const { severity, sentence, stands = 1 } = finding;
  const [open, setOpen] = useState(false);
  /** What is only good to know is told in short first. */
  const quiet = severity === 'note';
  const point = (id: string | undefined): void => sheet.actions.show(id === undefined ? {} : { pointed: id });
  return (
    <div className="note" data-severity={severity} data-pointed={pointed} id={`note-${finding.id}`}>
      <p>
        <span className="severity">
          <span aria-hidden="true">{words.mark(severity)}</span> {words.severity(severity)}
        </span>{' '}
        {number !== undefined && (
          <button
            type="button"
            className="mark-number"
            title={words.showInPicture}
            aria-label={`${words.showInPicture}, ${words.numbered(number)}`}
            onClick={() => point(finding.id)}
          >
            {number}
          </button>
        )}{' '}
        {!told && sentence} {stands > 1 && words.stands(stands)}
      </p>
      {!quiet && <DoneAndRemedy finding={finding} />}
      <p className="note-ways">
        <Ways finding={finding} />
        <button type="button" className="plain" aria-expanded={open} onClick={() => setOpen(!open)}>
          {words.whatItMeans}
        </button>
      </p>
      {open && (
        <>
          {quiet && <DoneAndRemedy finding={finding} />}
          <ManualPage code={finding.code} />
        </>
      )}
    </div>
  );
};

/** Fills in what the remedy names, or leads to the fields that can help. */
const Ways = ({ finding }: { readonly finding: FindingView }): ReactNode => {
  const words = useWords();
  const { sheet, numbers, lists } = useTools();
  const filling = fillingOf(finding, { input: useInput(), numbers, lists, words });
  return (
    <>
      {filling !== undefined && (
        <button type="button" className="plain" onClick={() => sheet.actions.edit(filling.step, filling.change)}>
          {filling.said}
        </button>
      )}
      {helpingFields(finding)
        .filter((path) => path !== filling?.path)
        .map((path) => (
          <button key={path} type="button" className="plain" onClick={() => goToField(path)}>
            {words.sheet.changeField(labelOf(path))}
          </button>
        ))}
    </>
  );
};

const DoneAndRemedy = ({ finding: { done, remedy } }: { readonly finding: FindingView }): ReactNode => {
  const words = useWords().sheet;
  return (
    <>
      {done !== undefined && (
        <p>
          <em>{words.done}</em>
          {done}
        </p>
      )}
      {remedy !== undefined && (
        <p>
          <em>{words.remedy}</em>
          {remedy}
        </p>
      )}
    </>
  );
};

/** To the field in its chapter, ready to be typed over. */
export const goToField = (path: string): void => {
  const field = document.querySelector<HTMLElement>(`.chapter [data-path="${CSS.escape(path)}"] :is(input, select)`);
  field?.scrollIntoView({ block: 'center' });
  field?.focus({ preventScroll: true });
};
