/** One number of a part by numbers: its name, its field, what it means, and the way back to what is usual. */
import { type ReactNode, useId, useState } from 'react';
import type { ShapeKey } from '../../job/request/shape-keys.ts';
import type { Numbers } from '../../text/print/reader.ts';
import { ChoiceField, type Choosable } from '../fields/choice-field.tsx';
import { FieldEditor } from '../fields/field-editor.tsx';
import { refused, saidOf } from '../fields/field-value.ts';
import type { FieldKind, FieldSpec } from '../fields/fields.ts';
import { useInput, useTools } from '../fields/tools.ts';
import { shapeWords as words } from '../words/shape.ts';
import { sheetWords } from '../words/sheet.ts';

const KINDS: Readonly<Record<ShapeKey['takes'], FieldKind>> = {
  length: 'length',
  number: 'number',
  'whole number': 'count',
  choice: 'choice',
  'yes or no': 'choice',
  text: 'text',
  data: 'text',
};

export const ShapeRow = ({ form }: { readonly form: ShapeKey }): ReactNode => {
  const { numbers, sheet } = useTools();
  const input = useInput();
  const [open, setOpen] = useState(false);
  const [id, help] = [useId(), useId()];
  const label = words.key(form.key);
  const field = fieldOf(form, numbers);
  const said = saidOf(field, input) !== undefined;
  return (
    <div className="field-row" data-path={field.path} data-said={said}>
      <label htmlFor={id}>{label}</label>
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
          {form.about}
        </p>
      )}
    </div>
  );
};

/** What is usual stands in the empty field. */
const fieldOf = (form: ShapeKey, numbers: Numbers): FieldSpec => ({
  path: `shape.${form.key}`,
  kind: KINDS[form.takes],
  ...(form.usual === undefined ? {} : { none: usualOf(form, numbers) }),
});

const usualOf = ({ takes, usual }: ShapeKey, numbers: Numbers): string => {
  if (takes === 'length' && typeof usual === 'number') return numbers.length(usual);
  if (typeof usual === 'number') return numbers.plain(usual);
  if (typeof usual === 'boolean') return usual ? words.yes : words.no;
  return typeof usual === 'string' ? usual : JSON.stringify(usual);
};

interface ChoiceProps {
  readonly form: ShapeKey;
  readonly field: FieldSpec;
  readonly id: string;
}

const Choice = ({ form, field, id }: ChoiceProps): ReactNode => {
  const { sheet } = useTools();
  const input = useInput();
  const choices: readonly Choosable[] =
    form.takes === 'yes or no'
      ? [true, false].map((value) => ({ value, text: value ? words.yes : words.no }))
      : (form.choices ?? []).map((value) => ({ value, text: value }));
  const value = saidOf(field, input) ?? form.usual;
  const keep = (choice: Choosable | undefined): string | undefined => {
    if (choice === undefined) return undefined;
    const change = { [field.path]: choice.value };
    const why = refused(field, input, change);
    if (why === undefined) sheet.actions.edit(sheetWords.step(words.key(form.key), choice.text), change);
    return why;
  };
  const none = choices.some((c) => c.value === value) ? undefined : sheetWords.defaultSaid;
  return <ChoiceField id={id} choices={choices} value={value} none={none} keep={keep} />;
};
