/** One typed value: read while it is typed, its readings offered where there are several, kept by Enter, left by Esc. */
import { type ReactNode, type Ref, useId, useLayoutEffect, useRef } from 'react';
import { labelOf } from '../words/fields.ts';
import { useWords } from '../words/use-words.ts';
import { echoOf } from './field-value.ts';
import { type FieldSpec, noneOf } from './fields.ts';
import { type Done, type Editor, useEditor } from './use-editor.ts';

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
  const { text, fault, typed, open } = editor;
  const [own, list] = [useId(), useId()];
  const input = useRef<HTMLInputElement>(null);
  useLayoutEffect(() => {
    if (!inSentence) return;
    input.current?.focus();
    input.current?.select();
  }, [inSentence]);
  const several = typed.kind === 'choices';
  const said = several ? undefined : (fault ?? (open ? echoOf(field, text, typed) : undefined));
  const described = [said === undefined ? '' : own, describedBy ?? ''].join(' ').trim();
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: only watches whether the focus has left field and choices alike
    <span
      className={inSentence ? 'editor in-sentence' : 'editor'}
      onBlur={(event) => !event.currentTarget.contains(event.relatedTarget) && editor.left()}
    >
      <TextInput ref={input} field={field} editor={editor} id={id} list={list} inSentence={inSentence} describedBy={described} />
      <Below field={field} editor={editor} list={list} own={own} said={said} />
    </span>
  );
};

interface TextInputProps {
  readonly ref: Ref<HTMLInputElement>;
  readonly field: FieldSpec;
  readonly editor: Editor;
  readonly id: string | undefined;
  readonly list: string;
  readonly inSentence: boolean;
  readonly describedBy: string;
}

const TextInput = ({ ref, field, editor, id, list, inSentence, describedBy }: TextInputProps): ReactNode => {
  const words = useWords();
  return (
    <input
      ref={ref}
      id={id}
      type="text"
      autoComplete="off"
      spellCheck={false}
      value={editor.text}
      size={inSentence ? Math.max(4, editor.text.length + 1) : undefined}
      placeholder={noneOf(field, words)}
      aria-label={inSentence ? words.fields.label(field.path) : undefined}
      aria-invalid={editor.fault !== undefined}
      aria-describedby={describedBy === '' ? undefined : describedBy}
      {...comboOf(editor, list)}
      onFocus={editor.begin}
      onClick={editor.begin}
      onChange={(event) => editor.type(event.target.value)}
      onKeyDown={editor.key}
    />
  );
};

/** A field with choices says so, and which of them is active. */
const comboOf = ({ open, suggestions, active }: Editor, list: string) =>
  suggestions.length === 0
    ? {}
    : ({
        role: 'combobox',
        'aria-expanded': open,
        'aria-controls': list,
        'aria-autocomplete': 'list',
        'aria-activedescendant': open && active >= 0 ? `${list}-${active}` : undefined,
      } as const);

interface BelowProps {
  readonly field: FieldSpec;
  readonly editor: Editor;
  readonly list: string;
  readonly own: string;
  readonly said: string | undefined;
}

/** Choices, readings, what the text means or why it is refused. */
const Below = ({ field, editor, list, own, said }: BelowProps): ReactNode => {
  const words = useWords().sheet;
  const { open, suggestions, typed, fault } = editor;
  const listed = open && suggestions.length > 0;
  const several = typed.kind === 'choices' && (open || fault !== undefined);
  if (!listed && !several && said === undefined) return null;
  return (
    <span className="below">
      {listed && <SuggestionList id={list} field={field} editor={editor} />}
      {several && (
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
  );
};

const SuggestionList = ({ id, field, editor }: { readonly id: string; readonly field: FieldSpec; readonly editor: Editor }): ReactNode => {
  const words = useWords().sheet;
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
