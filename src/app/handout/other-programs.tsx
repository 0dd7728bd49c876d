/** Programs from elsewhere, kept with the job: each held anew against the drawing with every answer, opened, taken away, put back. */

import { type ReactNode, type RefObject, useCallback, useEffect, useRef, useState } from 'react';
import { localMoment } from '../../text/print/local.ts';
import type { Answered } from '../state/server.ts';
import { useWords } from '../words/use-words.ts';
import { OtherProgramRow, type Proving } from './other-program.tsx';
import '../look/replay.css';
import type { OtherProgram } from '../state/kept-program.ts';

type Change = (program: OtherProgram) => Promise<Answered<unknown>>;

export interface OtherProgramsProps extends Proving {
  readonly programs: readonly OtherProgram[];
  /** Key of the one that was just brought, empty for none of them; it is told when it was shown. */
  readonly shown: string | undefined;
  readonly onShown: () => void;
  /** Why files were not taken. */
  readonly troubles: readonly string[];
  readonly onFiles: (files: readonly File[]) => void;
  readonly takeAway: Change;
  readonly putBack: Change;
}

export const OtherPrograms = (props: OtherProgramsProps): ReactNode => {
  const words = useWords().program;
  const { programs, shown, onShown, troubles, onFiles, takeAway, putBack, ...proving } = props;
  const section = useRef<HTMLElement>(null);
  const [open, setOpen] = useState<string | undefined>();
  const focus = useFocus(section);
  const { fault, gone, change } = useChanges(focus);
  useEffect(() => {
    if (shown === undefined) return;
    if (shown !== '') setOpen(shown);
    focus(shown, true);
    onShown();
  }, [shown, focus, onShown]);
  const isThere = (p: OtherProgram): boolean => p.removed === undefined;
  const inList = programs.filter((p) => isThere(p) || gone.has(p.key));
  return (
    <section ref={section} className="prove-other" aria-label={words.other}>
      <h3 tabIndex={-1} data-program="">
        {words.other}
      </h3>
      <p className="fact">{words.otherLead}</p>
      <Choose onFiles={onFiles} />
      <div role="alert">
        {[...troubles, ...(fault === undefined ? [] : [fault])].map((sentence) => (
          <p key={sentence} className="other-trouble">
            {sentence}
          </p>
        ))}
      </div>
      {inList.length > 0 && (
        <ul className="other-programs">
          {inList.map((program) =>
            isThere(program) ? (
              <OtherProgramRow
                key={program.key}
                {...proving}
                program={program}
                open={open === program.key}
                onOpen={(opens) => setOpen(opens ? program.key : undefined)}
                onAway={() => change(takeAway, program, true)}
              />
            ) : (
              <li key={program.key} className="other-program" data-program={program.key}>
                <span role="status">{words.wasTaken(program.name)}</span>{' '}
                <PutBack program={program} onBack={() => change(putBack, program, false)} />
              </li>
            ),
          )}
        </ul>
      )}
      <TakenAway
        programs={programs.filter((p) => !isThere(p) && !gone.has(p.key))}
        locale={proving.locale}
        onBack={(program) => change(putBack, program, false)}
      />
    </section>
  );
};

/** Takes programs away and puts them back; what was just taken away leaves its row behind, with the way back. */
const useChanges = (focus: Focus) => {
  const words = useWords().program;
  const [fault, setFault] = useState<string | undefined>();
  const [gone, setGone] = useState<ReadonlySet<string>>(new Set());
  const change = (by: Change, program: OtherProgram, away: boolean): void =>
    void by(program).then((answer) => {
      setFault(answer.kind === 'ok' ? undefined : answer.kind === 'gone' ? words.serverGone : answer.error.sentence);
      if (answer.kind !== 'ok') return;
      const { key, number } = program;
      setGone((before) => new Set([...before].filter((k) => k !== key).concat(away && number !== undefined ? [key] : [])));
      focus(number === undefined ? '' : key);
    });
  return { fault, gone, change };
};

const rowIn = (section: HTMLElement | null, key: string): HTMLElement | null =>
  section?.querySelector<HTMLElement>(`[data-program="${CSS.escape(key)}"]`) ?? null;

type Focus = (key: string, scrolling?: boolean) => void;

/** Moves the focus to a row once it is drawn, and what was open above it is closed; to the heading where there is no such row. */
const useFocus = (section: RefObject<HTMLElement | null>): Focus => {
  const [wanted, setWanted] = useState<{ readonly key: string; readonly scrolling: boolean } | undefined>();
  useEffect(() => {
    if (wanted === undefined) return;
    const row = rowIn(section.current, wanted.key) ?? rowIn(section.current, '');
    if (wanted.scrolling) row?.scrollIntoView({ block: 'start' });
    (row?.querySelector<HTMLElement>('[data-focus]') ?? row)?.focus({ preventScroll: true });
  }, [section, wanted]);
  return useCallback((key, scrolling = false) => setWanted({ key, scrolling }), []);
};

const Choose = ({ onFiles }: Pick<OtherProgramsProps, 'onFiles'>): ReactNode => {
  const words = useWords().program;
  const field = useRef<HTMLInputElement>(null);
  return (
    <p className="prove-ways">
      <button type="button" onClick={() => field.current?.click()}>
        {words.choose}
      </button>
      <input
        ref={field}
        className="unseen"
        type="file"
        multiple
        tabIndex={-1}
        aria-label={words.choose}
        onChange={(event) => {
          onFiles([...(event.currentTarget.files ?? [])]);
          event.currentTarget.value = '';
        }}
      />
    </p>
  );
};

const PutBack = ({ program, onBack }: { readonly program: OtherProgram; readonly onBack: () => void }): ReactNode => {
  const words = useWords().program;
  return (
    <button type="button" data-focus aria-label={words.putBackOf(program.name)} onClick={onBack}>
      {words.putBack}
    </button>
  );
};

interface TakenAwayProps {
  readonly programs: readonly OtherProgram[];
  readonly locale: string | undefined;
  readonly onBack: (program: OtherProgram) => void;
}

const TakenAway = ({ programs, locale, onBack }: TakenAwayProps): ReactNode => {
  const words = useWords().program;
  return programs.length === 0 ? null : (
    <details className="other-taken">
      <summary>{words.taken(programs.length)}</summary>
      <ul className="other-programs">
        {programs.map((program) => (
          <li key={program.key} className="other-head">
            <span>{program.name}</span>
            <span className="other-came">{words.removedAt(localMoment(program.removed ?? 0, locale))}</span>
            <PutBack program={program} onBack={() => onBack(program)} />
          </li>
        ))}
      </ul>
    </details>
  );
};
