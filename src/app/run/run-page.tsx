/** At the machine: which stop is next and at what time of day, tick-offs, what was measured and the new registers, times, breaks, notes. */

import { type ReactNode, useEffect, useMemo, useState } from 'react';
import type { LogEntry } from '../../server/message/job-record.ts';
import { localMoment } from '../../text/print/local.ts';
import { print } from '../../text/print/print.ts';
import { startLogKeeper } from '../state/log-keeper.ts';
import { type OpenSheet, useSheet } from '../state/open-sheet.ts';
import { useReader, useWords } from '../words/use-words.ts';
import type { Words } from '../words/words-for.ts';
import { LogForms } from './log-forms.tsx';
import { MeasureForm } from './measure-form.tsx';
import { type Stop, stopsOf } from './stops-of-run.ts';
import './run.css';
import type { WriteDown } from './write-down.ts';

export const RunPage = ({ sheet }: { readonly sheet: OpenSheet }): ReactNode => {
  const words = useWords().run;
  const record = useSheet(sheet, (s) => s.record);
  const answer = useSheet(sheet, (s) => s.sheet);
  const { log, waiting, writeDown } = useLog(sheet, record?.id ?? '');
  const stops = useMemo(() => (answer?.schedule === undefined ? [] : stopsOf(answer.schedule, log)), [answer?.schedule, log]);
  const reader = useReader();
  const running = useSheet(sheet, (s) => s.running);
  if (record === undefined) return null;
  return (
    <main className="run" id="content">
      <header>
        <a href={`/job/${record.id}`}>{words.back}</a>
        <h1>{words.title(record.name)}</h1>
        {answer === undefined ? <Working stage={running === undefined ? '' : print(running.stage, reader)} /> : null}
      </header>
      {answer === undefined ? null : answer.answer === 'yes' ? (
        <>
          <Next stops={stops} writeDown={writeDown} />
          <Stops stops={stops} writeDown={writeDown} />
          <MeasureForm contours={answer.picture?.contours ?? []} worker={sheet.worker} tell={sheet.tell} writeDown={writeDown} />
        </>
      ) : (
        <p className="warning">{words.notRunnable}</p>
      )}
      <LogForms log={log} waiting={waiting} writeDown={writeDown} />
      <ul className="cautions">
        {Object.values(words.cautions).map((c) => (
          <li key={c}>{c}</li>
        ))}
      </ul>
    </main>
  );
};

/** Until the stops of the run are there; in its first moment a run names no stage yet. */
const Working = ({ stage }: { readonly stage: string }): ReactNode => {
  const words = useWords().run;
  return <p role="status">{stage === '' ? words.working : `${words.working} ${stage}`}</p>;
};

const useLog = (sheet: OpenSheet, id: string) => {
  const record = useSheet(sheet, (s) => s.record);
  const [waiting, setWaiting] = useState<readonly LogEntry[]>([]);
  const [keeper, setKeeper] = useState<ReturnType<typeof startLogKeeper>>();
  useEffect(() => {
    const started = startLogKeeper(id, {
      kept: (log) => {
        const now = sheet.store.getState().record;
        if (now !== undefined) sheet.store.setState({ record: { ...now, log: [...log] } });
      },
      changed: () => setWaiting(started.waiting()),
    });
    setKeeper(started);
    setWaiting(started.waiting());
    return () => started.close();
  }, [sheet, id]);
  const log = useMemo(() => [...(record?.log ?? []), ...waiting], [record?.log, waiting]);
  return { log, waiting: waiting.length, writeDown: (entry: Omit<LogEntry, 'at'>) => keeper?.add(entry) };
};

interface StopsProps {
  readonly stops: readonly Stop[];
  readonly writeDown: WriteDown;
}

const tick = ({ id }: Stop): Omit<LogEntry, 'at'> => ({ kind: 'tick', about: id, text: '' });

const Next = ({ stops, writeDown }: StopsProps): ReactNode => {
  const words = useWords().run;
  const next = stops.find((s) => s.ticked === undefined);
  if (stops.length === 0) return <p className="next">{words.noStops}</p>;
  if (next === undefined) return <p className="next">{words.nothingNext}</p>;
  return (
    <section className="next" aria-labelledby="next-title">
      <h2 id="next-title">{words.next}</h2>
      <p className="oclock">
        {next.timeOfDay} {next.atNight ? <span className="night">{words.night}</span> : null}
      </p>
      <p className="what">{next.what}</p>
      {next.line === undefined ? null : <p className="line">{words.line(next.line)}</p>}
      <button type="button" className="big" onClick={() => writeDown(tick(next))} aria-label={words.tick(next.what)}>
        {words.done}
      </button>
    </section>
  );
};

const Stops = ({ stops, writeDown }: StopsProps): ReactNode => {
  const words = useWords().run;
  return stops.length === 0 ? null : (
    <section aria-labelledby="stops-title">
      <h2 id="stops-title">{words.stops}</h2>
      <ol className="stops">
        {stops.map((stop) => (
          <li key={stop.id} data-ticked={stop.ticked !== undefined}>
            <label>
              <input
                type="checkbox"
                checked={stop.ticked !== undefined}
                onChange={() => writeDown(tick(stop))}
                aria-label={stop.ticked === undefined ? words.tick(stop.what) : words.untick(stop.what)}
              />
              <span className="oclock">{stop.timeOfDay}</span>
              <span className="what">
                {stop.what}
                {words.aside(asidesOf(stop, words))}
              </span>
            </label>
          </li>
        ))}
      </ol>
    </section>
  );
};

const asidesOf = (stop: Stop, words: Words['run']): readonly string[] => [
  ...(stop.atNight ? [words.night] : []),
  ...(stop.line === undefined ? [] : [words.line(stop.line)]),
  ...(stop.ticked === undefined ? [] : [words.tickedAt(localMoment(stop.ticked))]),
];
