/** One input in its chapter: name, field, whether it was said or assumed, what it means, and the notes that concern it. */
import { type ReactNode, useId, useState } from 'react';
import { labelOf } from '../words/fields.ts';
import { useSaid, useWords } from '../words/use-words.ts';
import type { FindingView } from '../work/views.ts';
import { ChoiceField, type Choosable } from './choice-field.tsx';
import { FieldEditor } from './field-editor.tsx';
import { changeOf, refused, saidOf } from './field-value.ts';
import { choicesOf, defaultOf, type FieldSpec, helpOf, noneOf } from './fields.ts';
import { Note } from './margin.tsx';
import { useInput, useTools } from './tools.ts';

interface FieldRowProps {
  readonly field: FieldSpec;
  readonly findings: readonly FindingView[];
}

export const FieldRow = ({ field, findings }: FieldRowProps): ReactNode => {
  const input = useInput();
  const [open, setOpen] = useState(false);
  const [id, help] = [useId(), useId()];
  const label = useWords().fields.label(field.path);
  const printed = useSaid();
  const meaning = helpOf(field.path);
  const said = saidOf(field, input) !== undefined;
  return (
    <>
      {findings.map((f) => (
        <aside key={f.id} className="notes" aria-label={label}>
          <Note finding={f} />
        </aside>
      ))}
      <div className="field-row" data-path={field.path} data-said={said}>
        <label htmlFor={id}>{label}</label>
        <span className="field-body">
          {field.kind === 'choice' ? (
            <Choice field={field} id={id} describedBy={open ? help : undefined} />
          ) : (
            <FieldEditor field={field} id={id} describedBy={open ? help : undefined} onDone={() => undefined} />
          )}
          <State field={field} open={open} onHelp={() => setOpen(!open)} />
        </span>
        {open && meaning !== undefined && (
          <p id={help} className="field-help">
            {printed(meaning)}
          </p>
        )}
      </div>
    </>
  );
};

interface StateProps {
  readonly field: FieldSpec;
  readonly open: boolean;
  readonly onHelp: () => void;
}

/** Whether it was said or assumed, the way back to the default, and what it means. */
const State = ({ field, open, onHelp }: StateProps): ReactNode => {
  const words = useWords().sheet;
  const { sheet } = useTools();
  const said = saidOf(field, useInput()) !== undefined;
  const assumed = !said && defaultOf(field.path) !== undefined;
  const label = labelOf(field.path);
  return (
    <span className="field-state">
      {assumed && (
        <em className="assumed-mark" title={words.assumedHelp}>
          {words.assumedMark}
        </em>
      )}
      {said && (
        <button
          type="button"
          className="plain quiet"
          aria-label={words.backToDefaultOf(label)}
          title={words.backToDefaultOf(label)}
          onClick={() => sheet.actions.edit(words.stepBack(label), changeOf(field, undefined))}
        >
          {words.backToDefault}
        </button>
      )}
      {helpOf(field.path) !== undefined && (
        <button type="button" className="help-mark" aria-expanded={open} aria-label={words.help(label)} onClick={onHelp}>
          ?
        </button>
      )}
    </span>
  );
};

interface ChoiceProps {
  readonly field: FieldSpec;
  readonly id: string;
  readonly describedBy: string | undefined;
}

const Choice = ({ field, id, describedBy }: ChoiceProps): ReactNode => {
  const words = useWords();
  const none = noneOf(field, words);
  const { sheet } = useTools();
  const input = useInput();
  const keep = (choice: Choosable | undefined): string | undefined => {
    const change = changeOf(field, choice?.value);
    const why = refused(field, input, change, words);
    if (why === undefined)
      sheet.actions.edit(words.sheet.step(labelOf(field.path), choice?.text ?? none ?? words.sheet.defaultSaid), change);
    return why;
  };
  const value = saidOf(field, input) ?? defaultOf(field.path);
  return <ChoiceField id={id} describedBy={describedBy} choices={choicesOf(field, words)} value={value} none={none} keep={keep} />;
};
