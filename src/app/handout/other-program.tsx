/** One program from elsewhere: its row with name, verdict and day, and when it is opened, its reasons and its text. */

import { type ReactNode, useId, useMemo, useRef, useState } from 'react';
import { localCount, localMoment } from '../../text/print/local.ts';
import { type Asked, useAsked } from '../look/use-asked.ts';
import { useWords } from '../words/use-words.ts';
import type { Judged } from '../work/job-worker.ts';
import { ProgramLines } from './program-lines.tsx';
import { Verdict } from './verdict.tsx';
import '../look/replay.css';
import type { OtherProgram } from '../state/kept-program.ts';

export interface Proving {
  /** What the verdict speaks of: another object with every answer; nothing is proven while undefined. */
  readonly about: unknown;
  readonly read: (program: OtherProgram) => Promise<string>;
  readonly prove: (text: string) => Promise<Judged>;
  /** Address of the program as a file. */
  readonly download: (number: number) => string;
  readonly locale?: string | undefined;
}

interface OtherProgramProps extends Proving {
  readonly program: OtherProgram;
  readonly open: boolean;
  readonly onOpen: (open: boolean) => void;
  readonly onAway: () => void;
}

interface Proof {
  readonly text: string;
  readonly judged: Judged;
}

export const OtherProgramRow = (props: OtherProgramProps): ReactNode => {
  const words = useWords().program;
  const { program, open, about, read, prove, download, locale, onOpen, onAway } = props;
  const { key, name, number, trouble } = program;
  const place = useRef<HTMLLIElement>(null);
  const id = useId();
  const asked = useAsked<Proof>(place, about, async () => {
    const text = await read(program);
    return { text, judged: await prove(text) };
  });
  return (
    <li ref={place} className="other-program" data-program={key} aria-busy={asked.working}>
      <div className="other-head">
        <button type="button" className="plain other-name" data-focus aria-expanded={open} aria-controls={id} onClick={() => onOpen(!open)}>
          {name}
        </button>
        <ShortVerdict asked={asked} />
        <span className="other-came">{words.came(localMoment(program.at, locale))}</span>
        <span className="other-ways">
          {number !== undefined && (
            <a href={download(number)} download={name} aria-label={words.downloadOf(name)}>
              {words.download}
            </a>
          )}
          <button
            type="button"
            className="plain"
            disabled={trouble?.kind === 'on its way'}
            aria-label={words.removeOf(name)}
            onClick={onAway}
          >
            {words.remove}
          </button>
        </span>
      </div>
      {trouble !== undefined && trouble.kind !== 'on its way' && (
        <p className="other-trouble" role="alert">
          {trouble.kind === 'refused' ? words.refused(trouble.sentence) : words.notKeptYet}
        </p>
      )}
      <div id={id} hidden={!open}>
        {open &&
          (asked.answer === undefined ? (
            <Waiting asked={asked} />
          ) : (
            <Opened {...asked.answer} older={asked.older} name={name} locale={locale} />
          ))}
      </div>
    </li>
  );
};

const ShortVerdict = ({ asked: { answer, older, working, failed, again } }: { readonly asked: Asked<Proof> }): ReactNode => {
  const words = useWords().program;
  if (failed)
    return (
      <span className="other-verdict">
        {words.unread}{' '}
        <button type="button" className="plain" onClick={again}>
          {words.again}
        </button>
      </span>
    );
  if (answer === undefined) return <span className="other-verdict">{working ? words.reading : ''}</span>;
  const { judged } = answer;
  const verdict = judged.kind === 'cannot' ? 'cannot' : judged.verdict;
  return (
    <span className="other-verdict" data-verdict={verdict} data-older={older}>
      <span>
        <span aria-hidden="true">{verdict === 'proven' ? '✓' : verdict === 'cannot' ? '–' : '✕'}</span> {words.verdicts[verdict]}
      </span>
    </span>
  );
};

const Waiting = ({ asked }: { readonly asked: Asked<Proof> }): ReactNode => {
  const words = useWords().program;
  return <p className="fact">{asked.failed ? words.unreadHelp : words.reading}</p>;
};

interface OpenedProps extends Proof {
  readonly name: string;
  readonly older: boolean;
  readonly locale: string | undefined;
}

const Opened = ({ text, judged, name, older, locale }: OpenedProps): ReactNode => {
  const words = useWords().program;
  const lines = useMemo(() => text.replace(/\r?\n$/, '').split(/\r?\n/), [text]);
  const [marked, setMarked] = useState<number | undefined>();
  const [looked, setLooked] = useState<number | undefined>();
  const count = (n: number): string => localCount(n, locale);
  return (
    <div className="other-opened" data-older={older}>
      <Verdict name={name} lines={lines} judged={judged} count={count} onLine={setMarked} />
      <p className="fact">{words.itsText(lines.length, count(lines.length))}</p>
      <ProgramLines label={words.textOf(name)} lines={lines} block={marked} looked={looked} onBlock={setMarked} onLook={setLooked} />
    </div>
  );
};
