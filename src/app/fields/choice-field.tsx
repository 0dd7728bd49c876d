/** A field whose value is one of a few: what is chosen is kept at once, and what was wrong with it stands below. */
import { type ReactNode, useState } from 'react';

export interface Choosable {
  readonly value: unknown;
  readonly text: string;
}

interface ChoiceFieldProps {
  readonly id: string;
  readonly describedBy?: string | undefined;
  readonly choices: readonly Choosable[];
  readonly value: unknown;
  /** Stands for none of them, where that can be. */
  readonly none?: string | undefined;
  /** Keeps what was chosen, or says why not. */
  readonly keep: (choice: Choosable | undefined) => string | undefined;
}

export const ChoiceField = ({ id, describedBy, choices, value, none, keep }: ChoiceFieldProps): ReactNode => {
  const [fault, setFault] = useState<string | undefined>();
  return (
    <span className="editor">
      <select
        id={id}
        aria-describedby={describedBy}
        aria-invalid={fault !== undefined}
        value={choices.findIndex((c) => c.value === value)}
        onChange={(event) => setFault(keep(choices[Number(event.target.value)]))}
      >
        {none !== undefined && <option value={-1}>{none}</option>}
        {choices.map((c, i) => (
          <option key={c.text} value={i}>
            {c.text}
          </option>
        ))}
      </select>
      {fault !== undefined && (
        <span className="below">
          <span className="fault" role="alert">
            {fault}
          </span>
        </span>
      )}
    </span>
  );
};
