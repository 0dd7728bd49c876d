/** One number of a part by numbers: its name, its field, what it means, and the way back to what is usual. */
import { type ReactNode, useId, useState } from 'react';
import type { ShapeKey } from '../../job/request/shape-keys.ts';
import { ChoiceField, type Choosable } from '../fields/choice-field.tsx';
import { FieldEditor } from '../fields/field-editor.tsx';
import { refused, saidOf } from '../fields/field-value.ts';
import type { FieldSpec } from '../fields/fields.ts';
import { shapeField } from '../fields/shape-field.ts';
import { useInput, useTools } from '../fields/tools.ts';
import { shapeWords } from '../words/shape.ts';
import { useSaid, useWords } from '../words/use-words.ts';

export const ShapeRow = ({ form }: { readonly form: ShapeKey }): ReactNode => {
  const { shape: words, sheet: sheetWords } = useWords();
  const { numbers, sheet } = useTools();
  const input = useInput();
  const [open, setOpen] = useState(false);
  const [id, help] = [useId(), useId()];
  const printed = useSaid();
  const label = shapeWords.key(form.key);
  const field = shapeField(form, numbers, words);
  const said = saidOf(field, input) !== undefined;
  return (
    <div className="field-row" data-path={field.path} data-said={said}>
      <label htmlFor={id}>{words.key(form.key)}</label>
      <span className="field-body">
        {field.kind === 'choice' ? (
          <Choice form={form} field={field} id={id} />
        ) : (
          <FieldEditor field={field} id={id} describedBy={open ? help : undefined} onDone={() => undefined} />
        )}
        <span className="field-state">
          {said && !form.needed && (
            <button
              type="button"
              className="plain quiet"
              aria-label={sheetWords.backToDefaultOf(label)}
              title={sheetWords.backToDefaultOf(label)}
              onClick={() => sheet.actions.edit(sheetWords.stepBack(label), { [field.path]: undefined })}
            >
              {sheetWords.backToDefault}
            </button>
          )}
          <button
            type="button"
            className="help-mark"
            aria-expanded={open}
            aria-label={sheetWords.help(label)}
            onClick={() => setOpen(!open)}
          >
            ?
          </button>
        </span>
      </span>
      {open && (
        <p id={help} className="field-help">
          {printed(form.about)}
        </p>
      )}
    </div>
  );
};

interface ChoiceProps {
  readonly form: ShapeKey;
  readonly field: FieldSpec;
  readonly id: string;
}

const Choice = ({ form, field, id }: ChoiceProps): ReactNode => {
  const words = useWords();
  const { sheet } = useTools();
  const input = useInput();
  const choices: readonly Choosable[] =
    form.takes === 'yes or no'
      ? [true, false].map((value) => ({ value, text: value ? words.shape.yes : words.shape.no }))
      : (form.choices ?? []).map((value) => ({ value, text: value }));
  const value = saidOf(field, input) ?? form.usual;
  const keep = (choice: Choosable | undefined): string | undefined => {
    if (choice === undefined) return undefined;
    const change = { [field.path]: choice.value };
    const why = refused(field, input, change, words);
    if (why === undefined) sheet.actions.edit(words.sheet.step(shapeWords.key(form.key), choice.text), change);
    return why;
  };
  const none = choices.some((c) => c.value === value) ? undefined : words.sheet.defaultSaid;
  return <ChoiceField id={id} choices={choices} value={value} none={none} keep={keep} />;
};
