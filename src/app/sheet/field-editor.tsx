/** One typed value: read while it is typed, its readings offered where there are several, kept by Enter, left by Esc. */
import { type KeyboardEvent, type ReactNode, useId, useLayoutEffect, useRef, useState } from 'react';
import { sheetWords as words } from '../words/sheet.ts';
import type { Typed } from '../words/typed.ts';
import { changeOf, echoOf, read, refused, saidOf, typedOf } from './field-value.ts';
import { type FieldSpec, labelOf } from './fields.ts';
import { type Suggestion, suggestionsFor } from './suggestions.ts';
import { useInput, useTools } from './tools.ts';

/** `next` says which field the Tab key leads to, when it is one of the sentence. */
export type Done = (next?: 1 | -1) => void;

interface EditorProps {
  readonly field: FieldSpec;
  readonly id?: string;
  readonly describedBy?: string | undefined;
  /** In the sentence: as wide as its text, in focus at once. */
  readonly inSentence?: boolean;
  readonly onDone: Done;
}

export const FieldEditor = ({ field, id, describedBy, inSentence = false, onDone }: EditorProps): ReactNode => {
  const editor = useEditor(field, inSentence, onDone);
  const { text, fault, typed, suggestions, active, open } = editor;
  const [own, list] = [useId(), useId()];
  const input = useRef<HTMLInputElement>(null);
  useLayoutEffect(() => {
    if (!inSentence) return;
    input.current?.focus();
    input.current?.select();
  }, [inSentence]);
  const listed = open && suggestions.length > 0;
  const said = typed.kind === 'choices' ? undefined : (fault ?? (open ? echoOf(field, text, typed) : undefined));
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: only watches whether the focus has left field and choices alike
    <span
      className={inSentence ? 'editor in-sentence' : 'editor'}
      onBlur={(event) => !event.currentTarget.contains(event.relatedTarget) && editor.left()}
    >
      <input
        ref={input}
        id={id}
        type="text"
        autoComplete="off"
        spellCheck={false}
        value={text}
        size={inSentence ? Math.max(4, text.length + 1) : undefined}
        placeholder={field.none}
        aria-label={inSentence ? labelOf(field.path) : undefined}
        aria-invalid={fault !== undefined}
        aria-describedby={[said === undefined ? '' : own, describedBy ?? ''].join(' ').trim() || undefined}
        {...(suggestions.length > 0
          ? {
              role: 'combobox',
              'aria-expanded': listed,
              'aria-controls': list,
              'aria-autocomplete': 'list' as const,
              'aria-activedescendant': listed && active >= 0 ? `${list}-${active}` : undefined,
            }
          : {})}
        onFocus={editor.begin}
        onClick={editor.begin}
        onChange={(event) => editor.type(event.target.value)}
        onKeyDown={(event) => editor.key(event)}
      />
      {(listed || (open && said !== undefined) || (open && typed.kind === 'choices') || fault !== undefined) && (
        <span className="below">
          {listed && <SuggestionList id={list} field={field} editor={editor} />}
          {typed.kind === 'choices' && (open || fault !== undefined) && (
            <span className="readings" role="alert">
              {words.whichOne}{' '}
              {typed.readings.map((reading) => (
                <button key={reading.said} type="button" onClick={() => editor.take(reading.value, reading.said)}>
                  {reading.said}
                </button>
              ))}
            </span>
          )}
          {said !== undefined && (
            <span id={own} className={fault === undefined ? 'echo' : 'fault'} role={fault === undefined ? undefined : 'alert'}>
              {said}
            </span>
          )}
        </span>
      )}
    </span>
  );
};

interface Editor {
  readonly text: string;
  readonly typed: Typed;
  readonly fault: string | undefined;
  /** Being typed in: choices and echoes are shown. */
  readonly open: boolean;
  readonly suggestions: readonly Suggestion[];
  readonly active: number;
  begin(): void;
  type(text: string): void;
  key(event: KeyboardEvent<HTMLInputElement>): void;
  take(value: unknown, said: string): boolean;
  left(): void;
}

const useEditor = (field: FieldSpec, inSentence: boolean, onDone: Done): Editor => {
  const { sheet, numbers, lists } = useTools();
  const input = useInput();
  const inForce = typedOf(field, input, numbers, lists);
  const [draft, setDraft] = useState<string | undefined>();
  const [open, setOpen] = useState(false);
  const [active, setActive] = useState(-1);
  const [fault, setFault] = useState<string | undefined>();
  const text = draft ?? inForce;
  const typed = read(field, text, numbers, lists);
  const suggestions = suggestionsFor(field, draft ?? '', lists);
  const settle = (): void => {
    setDraft(undefined);
    setOpen(false);
    setActive(-1);
    setFault(undefined);
  };
  const take = (value: unknown, said: string, next?: 1 | -1): boolean => {
    const change = changeOf(field, value);
    const why = refused(field, input, change);
    if (why !== undefined) {
      setFault(why);
      return false;
    }
    const same = JSON.stringify(value) === JSON.stringify(saidOf(field, input));
    if (!same) sheet.actions.edit(words.step(labelOf(field.path), said), change);
    settle();
    onDone(next);
    return true;
  };
  const keep = (next?: 1 | -1): boolean => {
    const chosen = suggestions[active];
    if (open && chosen !== undefined) return take(chosen.value, chosen.text, next);
    if (draft === undefined || draft.trim() === inForce.trim()) {
      settle();
      onDone(next);
      return true;
    }
    if (typed.kind === 'value') return take(typed.value, typed.said, next);
    setFault(typed.kind === 'wrong' ? typed.reason : words.whichOne);
    setOpen(true);
    return false;
  };
  return {
    text,
    typed,
    fault,
    open,
    suggestions,
    active,
    begin: () => setOpen(true),
    type: (value) => {
      setDraft(value);
      setOpen(true);
      setActive(-1);
      setFault(undefined);
    },
    take,
    left: () => {
      if (keep()) return;
      setOpen(false);
      // In the sentence a text that cannot be read is dropped; a field of a chapter keeps it and says what is wrong.
      if (inSentence) onDone();
    },
    key: (event) => {
      const step = event.key === 'ArrowDown' ? 1 : event.key === 'ArrowUp' ? -1 : 0;
      if (step !== 0 && suggestions.length > 0) {
        event.preventDefault();
        setOpen(true);
        setActive((active + step + suggestions.length + (active < 0 && step < 0 ? 1 : 0)) % suggestions.length);
      } else if (event.key === 'Enter') {
        event.preventDefault();
        keep();
      } else if (event.key === 'Escape' && (open || draft !== undefined || inSentence)) {
        event.stopPropagation();
        settle();
        onDone();
      } else if (event.key === 'Tab' && inSentence) {
        event.preventDefault();
        keep(event.shiftKey ? -1 : 1);
      }
    },
  };
};

const SuggestionList = ({ id, field, editor }: { readonly id: string; readonly field: FieldSpec; readonly editor: Editor }): ReactNode => {
  const chosen = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => chosen.current?.scrollIntoView({ block: 'nearest' }));
  return (
    <div id={id} role="listbox" className="suggestions" aria-label={words.suggestions(labelOf(field.path))}>
      {editor.suggestions.map((s, i) => (
        // biome-ignore lint/a11y/useKeyWithClickEvents: the keys are those of the field
        // biome-ignore lint/a11y/useFocusableInteractive: the field keeps the focus
        <div
          key={s.text}
          ref={i === editor.active ? chosen : undefined}
          id={`${id}-${i}`}
          role="option"
          aria-selected={i === editor.active}
          onPointerDown={(event) => event.preventDefault()}
          onClick={() => editor.take(s.value, s.text)}
        >
          <span>{s.text}</span>
          {s.about !== '' && <small>{s.about}</small>}
        </div>
      ))}
    </div>
  );
};
