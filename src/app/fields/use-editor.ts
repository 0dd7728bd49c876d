/** What a field does while it is typed in: what the text means, what it offers, and when it is kept, refused or left. */
import { type KeyboardEvent, useState } from 'react';
import { labelOf } from '../words/fields.ts';
import { useWords } from '../words/use-words.ts';
import { changeOf, read, refused, saidOf, typedOf } from './field-value.ts';
import type { FieldSpec } from './fields.ts';
import { type Suggestion, suggestionsFor } from './suggestions.ts';
import { useInput, useTools } from './tools.ts';
import type { Typed } from './typed.ts';

/** `next` says which field the Tab key leads to, when it is one of the sentence. */
export type Done = (next?: 1 | -1) => void;

export interface Editor {
  readonly text: string;
  readonly typed: Typed;
  readonly fault: string | undefined;
  /** Being typed in: choices and echoes are shown. */
  readonly open: boolean;
  readonly suggestions: readonly Suggestion[];
  /** Which suggestion Enter would take; -1 for none. */
  readonly active: number;
  begin(): void;
  type(text: string): void;
  key(event: KeyboardEvent<HTMLInputElement>): void;
  /** Gives true when the job allowed it. */
  take(value: unknown, said: string): boolean;
  left(): void;
}

interface Draft {
  readonly text?: string;
  readonly open: boolean;
  readonly active: number;
  readonly fault?: string;
}

const CALM: Draft = { open: false, active: -1 };

export const useEditor = (field: FieldSpec, inSentence: boolean, onDone: Done): Editor => {
  const words = useWords();
  const { numbers, lists } = useTools();
  const inForce = typedOf(field, useInput(), numbers, lists, words);
  const [draft, setDraft] = useState(CALM);
  const set = (part: Partial<Draft>): void => setDraft((before) => ({ ...before, ...part }));
  const edit = useEdit(field, (fault) => set({ fault }));
  const text = draft.text ?? inForce;
  const typed = read(field, text, numbers, lists, words);
  const suggestions = suggestionsFor(field, draft.text ?? '', lists, words);
  const settle = (next?: 1 | -1): true => {
    setDraft(CALM);
    onDone(next);
    return true;
  };
  const take = (value: unknown, said: string, next?: 1 | -1): boolean => edit(value, said) && settle(next);
  const keep = (next?: 1 | -1): boolean => {
    const chosen = suggestions[draft.active];
    if (draft.open && chosen !== undefined) return take(chosen.value, chosen.text, next);
    if (draft.text === undefined || draft.text.trim() === inForce.trim()) return settle(next);
    if (typed.kind === 'value') return take(typed.value, typed.said, next);
    set({ fault: typed.kind === 'wrong' ? typed.reason : words.sheet.whichOne, open: true });
    return false;
  };
  return {
    text,
    typed,
    fault: draft.fault,
    open: draft.open,
    active: draft.active,
    suggestions,
    begin: () => set({ open: true }),
    type: (value) => setDraft({ text: value, open: true, active: -1 }),
    take,
    left: () => {
      if (keep()) return;
      set({ open: false });
      // In the sentence a text that cannot be read is dropped; a field of a chapter keeps it and says what is wrong.
      if (inSentence) onDone();
    },
    key: (event) => {
      const move = moveOf(event, draft, suggestions.length, inSentence);
      if (move.kind === 'none') return;
      event.preventDefault();
      if (move.kind === 'active') set({ open: true, active: move.at });
      else if (move.kind === 'keep') keep(move.next);
      else {
        event.stopPropagation();
        settle();
      }
    },
  };
};

/** Edits the job when it allows the value; tells why when it does not. */
const useEdit = (field: FieldSpec, tell: (fault: string) => void): ((value: unknown, said: string) => boolean) => {
  const words = useWords();
  const { sheet } = useTools();
  const input = useInput();
  return (value, said) => {
    const change = changeOf(field, value);
    const why = refused(field, input, change, words);
    if (why !== undefined) tell(why);
    else if (JSON.stringify(value) !== JSON.stringify(saidOf(field, input)))
      sheet.actions.edit(words.sheet.step(labelOf(field.path), said), change);
    return why === undefined;
  };
};

type Move =
  | { readonly kind: 'none' | 'leave' }
  | { readonly kind: 'keep'; readonly next?: 1 | -1 }
  | { readonly kind: 'active'; readonly at: number };

/** What a key means: arrows go through the suggestions, Enter keeps, Esc leaves, Tab keeps and goes on within the sentence. */
const moveOf = (event: KeyboardEvent, { open, text, active }: Draft, count: number, inSentence: boolean): Move => {
  const step = event.key === 'ArrowDown' ? 1 : event.key === 'ArrowUp' ? -1 : 0;
  if (step !== 0 && count > 0) return { kind: 'active', at: active < 0 && step < 0 ? count - 1 : (active + step + count) % count };
  if (event.key === 'Enter') return { kind: 'keep' };
  if (event.key === 'Escape' && (open || text !== undefined || inSentence)) return { kind: 'leave' };
  if (event.key === 'Tab' && inSentence) return { kind: 'keep', next: event.shiftKey ? -1 : 1 };
  return { kind: 'none' };
};
