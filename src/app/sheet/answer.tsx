/** The answer in a sentence: inputs that are edited in place, results that open their why, and what else may stand there. */
import { Fragment, type ReactNode, useEffect, useState } from 'react';
import { print } from '../../text/print/print.ts';
import { WhyPlace } from '../fields/calculation.tsx';
import { FieldEditor } from '../fields/field-editor.tsx';
import { saidOf, textOf } from '../fields/field-value.ts';
import { defaultOf, fieldOf } from '../fields/fields.ts';
import { Note } from '../fields/margin.tsx';
import { useInput, useOnSheet, useTools } from '../fields/tools.ts';
import type { OpenSheet } from '../state/open-sheet.ts';
import { labelOf } from '../words/fields.ts';
import { useReader, useWords } from '../words/use-words.ts';
import type { Words } from '../words/words-for.ts';
import type { SentencePart, Sheet, Shown } from '../work/views.ts';

export const Answer = (): ReactNode => {
  const words = useWords().sheet;
  const answer = useOnSheet((s) => s.sheet);
  const running = useOnSheet((s) => s.running !== undefined);
  const fault = useOnSheet((s) => s.fault);
  return (
    <section className="answer" aria-labelledby="answer-title" data-older={running && answer !== undefined}>
      <h2 id="answer-title" className="unseen">
        {words.answer}
      </h2>
      {answer === undefined ? (
        fault === undefined && running && <p className="first-answer">{words.firstAnswer}</p>
      ) : (
        <div aria-live="polite" aria-busy={running}>
          {answer.answer === 'yes' ? <Sentence parts={answer.sentence} /> : <No answer={answer} />}
        </div>
      )}
      <Progress />
      {fault !== undefined && <Fault fault={fault} />}
      <WhyPlace place="answer" />
    </section>
  );
};

/** Which field is being edited; the Tab key goes to the next one of the sentence. */
const useEditing = (fields: readonly string[]) => {
  const [editing, setEditing] = useState<string | undefined>();
  const [back, setBack] = useState<string | undefined>();
  useEffect(() => {
    if (back === undefined) return;
    document.querySelector<HTMLElement>(`.answer [data-field="${back}"]`)?.focus();
    setBack(undefined);
  }, [back]);
  const done = (field: string, next?: 1 | -1): void => {
    const other = next === undefined ? undefined : fields[fields.indexOf(field) + next];
    setEditing(other);
    if (other === undefined && (next !== undefined || document.activeElement?.closest('.editor') != null)) setBack(field);
  };
  return { editing, setEditing, done };
};

const Sentence = ({ parts }: { readonly parts: readonly SentencePart[] }): ReactNode => {
  const fields = parts.flatMap((p) => (p.kind === 'input' ? [p.field] : []));
  const { editing, setEditing, done } = useEditing(fields);
  return (
    <p className="sentence">
      {parts.map((part, i) => {
        const key = `${i} ${part.kind}`;
        if (part.kind === 'words' || part.kind === 'verdict') return <Fragment key={key}>{part.text}</Fragment>;
        if (part.kind === 'result') return <Result key={key} text={part.text} shown={part.shown} />;
        return (
          <InputWord
            key={key}
            path={part.field}
            text={part.text}
            editing={editing === part.field}
            onEdit={() => setEditing(part.field)}
            onDone={(next) => done(part.field, next)}
          />
        );
      })}
    </p>
  );
};

interface InputWordProps {
  readonly path: string;
  readonly text?: string;
  readonly editing: boolean;
  readonly onEdit: () => void;
  readonly onDone: (next?: 1 | -1) => void;
}

const InputWord = ({ path, text, editing, onEdit, onDone }: InputWordProps): ReactNode => {
  const words = useWords();
  const { numbers, lists } = useTools();
  const input = useInput();
  const field = fieldOf(path);
  if (field === undefined) return text ?? path;
  if (editing) return <FieldEditor field={field} inSentence onDone={onDone} />;
  const shown = wordFor(path, textOf(field, input, numbers, lists, words), text, words.sheet);
  const assumed = saidOf(field, input) === undefined && defaultOf(path) !== undefined;
  return (
    <>
      <button
        type="button"
        className="input-word"
        data-field={path}
        data-assumed={assumed}
        aria-label={words.sheet.change(labelOf(path), shown)}
        onClick={onEdit}
      >
        {shown}
      </button>
      {assumed && text === undefined && ` (${words.sheet.assumedMark})`}
    </>
  );
};

/** What was chosen by the planner is said by the answer; what the user said, by the field in force, even before the answer is there. */
const wordFor = (path: string, inForce: string, answered: string | undefined, words: Words['sheet']): string => {
  if (path === 'wire' || path === 'passes') return answered ?? inForce;
  if (path === 'quantity') return words.pieces(inForce);
  return path === 'tolerance' ? `±${inForce}` : inForce;
};

const Result = ({ text, shown }: { readonly text: string; readonly shown: Shown }): ReactNode => {
  const words = useWords().sheet;
  const { ask } = useTools();
  const asking = useOnSheet((s) => s.asking);
  return (
    <button
      type="button"
      className="result-word"
      aria-label={words.whyOf(text)}
      aria-expanded={asking === shown.key}
      onClick={(event) => ask(shown.key, 'answer', event.currentTarget)}
    >
      {text}
    </button>
  );
};

/** A no: the reason, what would help, and the inputs all the same, so that they can be changed here. */
const No = ({ answer }: { readonly answer: Sheet }): ReactNode => {
  const words = useWords().sheet;
  const refusals = answer.findings.filter((f) => f.severity === 'refusal');
  const verdict = answer.sentence.find((p) => p.kind === 'verdict')?.text;
  // The first reason stands in the sentence; what would help, and the others, in the list.
  const reason = refusals[0]?.sentence ?? answer.sentence.flatMap((p) => (p.kind === 'words' ? [p.text] : [])).join('');
  return (
    <>
      <p className="sentence no">
        {verdict !== undefined && <strong>{verdict}</strong>} {reason}
      </p>
      <Asked />
      {refusals.length > 0 && (
        <ul className="reasons" aria-label={words.reasons}>
          {refusals.map((f, i) => (
            <li key={f.id}>
              <Note finding={f} told={i === 0} />
            </li>
          ))}
        </ul>
      )}
    </>
  );
};

const ASKED = ['material', 'height', 'wire', 'passes', 'tolerance', 'finish', 'quantity'] as const;

const Asked = (): ReactNode => {
  const words = useWords();
  const { editing, setEditing, done } = useEditing(ASKED);
  return (
    <p className="asked-line">
      {words.sheet.asked}{' '}
      {ASKED.map((path, i) => (
        <Fragment key={path}>
          {i > 0 && ', '}
          {(path === 'wire' || path === 'passes') && `${words.fields.within(path)} `}
          <InputWord path={path} editing={editing === path} onEdit={() => setEditing(path)} onDone={(next) => done(path, next)} />
          {path === 'height' && words.sheet.high}
        </Fragment>
      ))}
      .
    </p>
  );
};

/** Shown when an answer takes longer than a blink, ms. */
const PATIENCE = 300;

const Progress = (): ReactNode => {
  const words = useWords().sheet;
  const { sheet, numbers } = useTools();
  const running = useOnSheet((s) => s.running);
  const reader = useReader();
  const [late, setLate] = useState(false);
  const [cancelled, setCancelled] = useState(false);
  const runs = running !== undefined;
  useEffect(() => {
    setLate(false);
    if (!runs) return;
    setCancelled(false);
    const timer = setTimeout(() => setLate(true), PATIENCE);
    return () => clearTimeout(timer);
  }, [runs]);
  if (cancelled && !runs)
    return (
      <div className="progress">
        <span role="status">{words.cancelled}</span>
        <button type="button" onClick={() => workAgain(sheet)}>
          {words.workAgain}
        </button>
      </div>
    );
  if (running === undefined || !late) return <div className="progress" aria-hidden="true" />;
  return (
    <div className="progress">
      <progress max={1} value={running.share} aria-label={words.workingTitle} />
      <span role="status">{words.working(print(running.stage, reader), numbers.share(running.share))}</span>
      <button
        type="button"
        onClick={() => {
          setCancelled(true);
          sheet.actions.cancel();
        }}
      >
        {words.cancel}
      </button>
    </div>
  );
};

/** Asks the inputs in force once more: a step back and forth where there is one, else from the beginning. */
const workAgain = ({ actions, store }: OpenSheet): void => {
  if ((store.getState().record?.cursor ?? 0) === 0) location.reload();
  actions.undo();
  actions.redo();
};

const Fault = ({ fault }: { readonly fault: string }): ReactNode => {
  const words = useWords().sheet;
  return (
    <div className="fault-box" role="alert">
      <p>
        <strong>{words.fault}</strong> {words.faultHelp}
      </p>
      <p>
        <code>{fault}</code>
      </p>
    </div>
  );
};
