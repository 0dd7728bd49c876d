/** Fields for typed lengths that are set together: a width, a place by X and Y, two corners; wrong ones say what is wrong. */

import { type ReactNode, type SubmitEvent, useId, useState } from 'react';
import { sideBySide } from '../../../sequence/sequence.ts';
import { useWords } from '../../words/use-words.ts';
import type { Lengths } from '../lengths.ts';
import { type Sign, typedLength } from './override-keys.ts';

export interface Field {
  readonly label: string;
  /** mm; empty when left out. */
  readonly mm?: number | undefined;
  readonly sign?: Sign;
}

/** As many lengths as there are fields, mm. */
type Typed<F extends readonly Field[]> = { readonly [K in keyof F]: number };

interface TypedFieldsProps<F extends readonly Field[]> {
  /** What is set, as a screen reader hears it. */
  readonly what: string;
  readonly fields: F;
  readonly lengths: Lengths;
  readonly button?: string;
  /** Gives a sentence when the lengths do not go together, else nothing. */
  readonly judge?: (mm: Typed<F>) => string;
  readonly onSet: (mm: Typed<F>) => void;
  readonly children?: ReactNode;
}

/** Texts start again from the values whenever those change from outside. */
export const TypedFields = <const F extends readonly Field[]>(props: TypedFieldsProps<F>): ReactNode => (
  <Fields key={[props.lengths.unit, ...props.fields.map((f) => f.mm ?? '')].join(' ')} {...props} />
);

const Fields = <F extends readonly Field[]>(props: TypedFieldsProps<F>): ReactNode => {
  const words = useWords().picture;
  const { what, fields, lengths, button = words.set, judge, onSet, children } = props;
  const [texts, setTexts] = useState(fields.map((f) => (f.mm === undefined ? '' : lengths.typed(f.mm))));
  const [fault, setFault] = useState('');
  const id = useId();
  const submit = (event: SubmitEvent<HTMLFormElement>): void => {
    event.preventDefault();
    const read = sideBySide(texts, fields).map(([text, field]) => typedLength(text, lengths, words.typed, field.sign));
    const wrong = read.find((r) => r.kind === 'wrong');
    const mm = read.map((r) => (r.kind === 'length' ? r.mm : 0)) as unknown as Typed<F>;
    const said = wrong?.kind === 'wrong' ? wrong.sentence : (judge?.(mm) ?? '');
    setFault(said);
    if (said === '') onSet(mm);
  };
  return (
    <form className="typed-fields" onSubmit={submit}>
      {fields.map((field, i) => (
        <label key={field.label}>
          {field.label}
          <input
            type="text"
            inputMode="text"
            autoComplete="off"
            value={texts[i]}
            aria-label={`${what}, ${field.label}`}
            aria-invalid={fault !== ''}
            aria-describedby={fault === '' ? undefined : id}
            onChange={(event) => setTexts(texts.map((t, k) => (k === i ? event.target.value : t)))}
          />
        </label>
      ))}
      <span className="typed-unit">{lengths.unit === 'mm' ? 'mm' : 'in'}</span>
      <button type="submit" aria-label={`${button}: ${what}`}>
        {button}
      </button>
      {children}
      {fault !== '' && (
        <p id={id} className="typed-fault" role="alert">
          {fault}
        </p>
      )}
    </form>
  );
};
