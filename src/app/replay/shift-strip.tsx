/** The shift strip: the run on the schedule with its nights, cuts, waits, and every moment that needs a person; its start can be dragged. */
import { type ReactNode, useMemo, useRef, useState } from 'react';
import { useWidth } from '../look/use-width.ts';
import { useWords } from '../words/use-words.ts';
import type { ScheduleView } from '../work/views.ts';
import { StartField, StartHandle } from './start-handle.tsx';
import { StopList } from './stop-list.tsx';
import { StripPicture } from './strip-picture.tsx';
import { dayOf, marksOf, type Span, stripSpan, timeOfDayOf, whenOf } from './strip-scale.ts';
import '../look/replay.css';

export interface ShiftStripProps {
  readonly schedule: ScheduleView;
  /** Minutes from the start of the run; nothing is replayed when left out. */
  readonly moment?: number | undefined;
  /** Length of the run that can be replayed, min. */
  readonly locale?: string | undefined;
  /** Asks for another start, '2026-11-26T07:00'; `name` is that of the step of undo. */
  readonly onStart: (startAt: string, name: string) => void;
  readonly onMoment: (moment: number) => void;
}

export const ShiftStrip = ({ schedule, moment, locale, onStart, onMoment }: ShiftStripProps): ReactNode => {
  const words = useWords().strip;
  const frame = useRef<HTMLDivElement>(null);
  const width = useWidth(frame, 700);
  const [shift, setShift] = useState(0);
  const rest = useMemo(() => roomyAround(schedule), [schedule]);
  const span = panned(rest, schedule.start + shift, schedule.finish + shift);
  const perMinute = width / (span.to - span.from);
  const marks = useMemo(() => marksOf(schedule, shift), [schedule, shift]);
  const night = marks.filter((m) => m.atNight).length;
  const said = (at: number): string => words.startAt(dayOf(at, locale), timeOfDayOf(at));
  const ask = (at: number): void => {
    setShift(0);
    const whole = Math.round(at);
    if (whole !== schedule.start) onStart(isoText(whole), `${words.step} ${said(whole)}`);
  };
  const left = (schedule.start + shift - span.from) * perMinute;
  return (
    <section className="shift-strip" aria-label={words.title}>
      <div className="strip-frame" ref={frame}>
        <StripPicture
          schedule={schedule}
          marks={marks}
          shift={shift}
          span={span}
          width={width}
          moment={moment}
          locale={locale}
          label={words.picture(schedule.startText, schedule.finishText, marks.length, night)}
          onMoment={onMoment}
        />
        <StartHandle
          left={left}
          start={schedule.start}
          shift={shift}
          perMinute={perMinute}
          text={said(schedule.start + shift)}
          onShift={setShift}
          onStart={ask}
        />
      </div>
      <MomentSlider schedule={schedule} moment={moment} span={span} perMinute={perMinute} hidden={shift !== 0} onMoment={onMoment} />
      <div className="strip-start">
        <StartField start={schedule.start} onStart={ask} />
        <p className="strip-said" aria-live="polite">
          {shift !== 0 ? words.preview(said(schedule.start + shift), night) : words.startHelp}
        </p>
      </div>
      {schedule.finish > span.to && shift === 0 && <p className="table-note">{words.first}</p>}
      <StopList schedule={schedule} locale={locale} onMoment={onMoment} />
    </section>
  );
};

const isoText = (at: number): string => new Date(at * 60_000).toISOString().slice(0, 16);

/** Room on either side, so that the start can be moved and the night before and after is seen. */
const roomyAround = (schedule: ScheduleView): Span => {
  const span = stripSpan(schedule);
  const room = Math.max(90, (span.to - span.from) * 0.15);
  const from = Math.floor((schedule.start - room) / 30) * 30;
  return { from, to: Math.ceil((span.to + room) / 30) * 30 };
};

/** The span moved along when the start is dragged, so that the whole run stays in sight and the nights pass beneath it. */
const panned = ({ from, to }: Span, start: number, finish: number): Span => {
  const edge = (to - from) * 0.04;
  const late = Math.max(0, Math.min(finish, start + to - from - 2 * edge) - (to - edge));
  const early = Math.min(0, start - (from + edge));
  return { from: from + late + early, to: to + late + early };
};

interface MomentSliderProps {
  readonly schedule: ScheduleView;
  readonly moment: number | undefined;
  readonly span: Span;
  readonly perMinute: number;
  readonly hidden: boolean;
  readonly onMoment: (moment: number) => void;
}

/** As long as the run is on the strip; half a thumb longer on either side, so that its middle stands at the moment. */
const THUMB = 16;

const MomentSlider = ({ schedule, moment, span, perMinute, hidden, onMoment }: MomentSliderProps): ReactNode => {
  const words = useWords().strip;
  const length = Math.min(schedule.finish, span.to) - schedule.start;
  const at = schedule.start + (moment ?? 0);
  return (
    <input
      type="range"
      className="strip-moment"
      aria-label={words.moment}
      aria-valuetext={whenOf(at, schedule)}
      min={0}
      max={length}
      step={length / 1000}
      value={Math.min(moment ?? 0, length)}
      disabled={hidden}
      style={{
        visibility: hidden ? 'hidden' : 'visible',
        marginLeft: (schedule.start - span.from) * perMinute - THUMB / 2,
        width: length * perMinute + THUMB,
      }}
      onChange={(event) => onMoment(Number(event.currentTarget.value))}
    />
  );
};
