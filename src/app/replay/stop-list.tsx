/** All moments that need a person as a table: what the strip shows, for reading and by keyboard. */
import { memo, type ReactNode, useMemo, useState } from 'react';
import { useWords } from '../words/use-words.ts';
import type { ScheduleView } from '../work/views.ts';
import { headOf } from './strip-picture.tsx';
import { dayOf, marksOf, type StripMark, timeOfDayOf } from './strip-scale.ts';

interface StopListProps {
  readonly schedule: ScheduleView;
  readonly locale: string | undefined;
  readonly onMoment: (moment: number) => void;
}

/** More rows than this are shown only when they are asked for. */
const FIRST = 60;

export const StopList = memo(({ schedule, locale, onMoment }: StopListProps): ReactNode => {
  const words = useWords().strip;
  const marks = useMemo(() => marksOf(schedule), [schedule]);
  const [all, setAll] = useState(false);
  if (marks.length === 0) return <p className="fact">{words.noStops}</p>;
  const shown = all ? marks : marks.slice(0, FIRST);
  return (
    <details className="stop-list">
      <summary>{words.stops(marks.length)}</summary>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reached by keyboard */}
      <section className="table-scroll stop-scroll" tabIndex={0} aria-label={words.stops(marks.length)}>
        <table>
          <thead>
            <tr>
              <th scope="col">{words.columns.timeOfDay}</th>
              <th scope="col">{words.columns.kind}</th>
              <th scope="col">{words.columns.what}</th>
            </tr>
          </thead>
          <tbody>
            {shown.map((mark, i) => (
              <Row
                key={`${mark.from} ${mark.what}`}
                mark={mark}
                day={i === 0 || dayOf(mark.from) !== dayOf((shown[i - 1] as StripMark).from) ? dayOf(mark.from, locale) : ''}
                onShow={() => onMoment(mark.from - schedule.start)}
              />
            ))}
          </tbody>
        </table>
      </section>
      {marks.length > shown.length && (
        <button type="button" className="plain" onClick={() => setAll(true)}>
          {words.more(marks.length - shown.length)}
        </button>
      )}
    </details>
  );
});

const Row = ({ mark, day, onShow }: { readonly mark: StripMark; readonly day: string; readonly onShow: () => void }): ReactNode => {
  const words = useWords().strip;
  return (
    <tr data-night={mark.atNight}>
      <th scope="row">
        <button type="button" className="plain" aria-label={words.show(`${day} ${timeOfDayOf(mark.from)}`.trim())} onClick={onShow}>
          {timeOfDayOf(mark.from)}
        </button>{' '}
        <small>{day}</small>
      </th>
      <td className="stop-kind">
        <svg width={14} height={14} viewBox="0 0 14 14" aria-hidden="true">
          <path className="strip-head" d={headOf(mark.kind, 7, 7)} />
        </svg>{' '}
        {words.mark(mark.kind)}
        {mark.atNight && `, ${words.atNight}`}
      </td>
      <td>{mark.what}</td>
    </tr>
  );
};
