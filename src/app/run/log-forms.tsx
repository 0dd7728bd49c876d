/** Real times, wire breaks and notes, and everything that was written down so far. */

import { type FormEvent, type ReactNode, useId } from 'react';
import type { LogEntry } from '../../server/message/job-record.ts';
import { localMoment } from '../../text/print/local.ts';
import { useWords } from '../words/use-words.ts';
import type { WriteDown } from './write-down.ts';

export interface LogProps {
  readonly log: readonly LogEntry[];
  readonly waiting: number;
  readonly writeDown: WriteDown;
}

export const LogForms = ({ log, waiting, writeDown }: LogProps): ReactNode => {
  const words = useWords().run.log;
  return (
    <section aria-labelledby="log-title">
      <h2 id="log-title">{words.title}</h2>
      <button type="button" className="big" onClick={() => writeDown({ kind: 'break', about: '', text: words.broken })}>
        {words.broke}
      </button>
      <OneLine label={words.time} button={words.keepTime} numeric onKeep={(text) => writeDown({ kind: 'time', about: '', text })} />
      <OneLine label={words.note} button={words.keepNote} onKeep={(text) => writeDown({ kind: 'note', about: '', text })} />
      {waiting > 0 ? <p role="status">{words.waiting(waiting)}</p> : null}
      <Entries log={log} />
    </section>
  );
};

/** '312' and '312,5': the server takes nothing else for minutes. */
const MINUTES = '\\s*\\d{1,5}([.,]\\d+)?\\s*';

interface OneLineProps {
  readonly label: string;
  readonly button: string;
  readonly numeric?: boolean;
  readonly onKeep: (text: string) => void;
}

const OneLine = ({ label, button, numeric = false, onKeep }: OneLineProps): ReactNode => {
  const id = useId();
  const keep = (event: FormEvent<HTMLFormElement>): void => {
    event.preventDefault();
    const text = String(new FormData(event.currentTarget).get('text') ?? '').trim();
    if (text === '') return;
    onKeep(text);
    event.currentTarget.reset();
  };
  return (
    <form className="one-line" onSubmit={keep}>
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        name="text"
        required
        maxLength={4000}
        autoComplete="off"
        inputMode={numeric ? 'decimal' : 'text'}
        pattern={numeric ? MINUTES : undefined}
        title={numeric ? label : undefined}
      />
      <button type="submit">{button}</button>
    </form>
  );
};

/** What was measured names its contour itself. */
const saidOf = ({ about, text }: LogEntry): string =>
  about === '' || text.startsWith(`${about}:`) ? text : [about, text].filter((t) => t !== '').join(': ');

const Entries = ({ log }: Pick<LogProps, 'log'>): ReactNode => {
  const words = useWords().run.log;
  return log.length === 0 ? (
    <p>{words.nothing}</p>
  ) : (
    <ul className="entries">
      {numbered(log)
        .toReversed()
        .map(({ number, entry }) => (
          <li key={number}>
            <time dateTime={entry.at}>{localMoment(entry.at)}</time> {entry.kind === 'tick' ? '✓ ' : ''}
            {saidOf(entry)}
          </li>
        ))}
    </ul>
  );
};

/** Entries are only ever added, so that the place of one names it. */
const numbered = (log: readonly LogEntry[]) => log.map((entry, number) => ({ number, entry }));
