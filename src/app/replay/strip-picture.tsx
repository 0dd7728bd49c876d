/** The drawing of the shift strip: nights shaded, cuts as bars, waits as broken lines, a pin for each moment that needs a person. */
import { memo, type PointerEvent, type ReactNode, useState } from 'react';
import { useWords } from '../words/use-words.ts';
import type { ScheduleView } from '../work/views.ts';
import { clustered, DAY, dayOf, joined, nightsWithin, type Span, type StripMark, ticksOf, timeOfDayOf, whenOf } from './strip-scale.ts';

/** px: pins, the band with its bars, the axis. */
const PIN = 16;
const BAND = 44;
const DEEP = 46;
export const STRIP_HIGH = BAND + DEEP + 40;
const PER_TICK = 62;
const PER_PIN = 17;
const PER_LABEL = 40;
/** Half of the room that a day's name takes. */
const DAY_WORD = 40;

export interface StripPictureProps {
  readonly schedule: ScheduleView;
  readonly marks: readonly StripMark[];
  readonly shift: number;
  readonly span: Span;
  readonly width: number;
  readonly moment: number | undefined;
  readonly locale: string | undefined;
  readonly label: string;
  readonly onMoment: (moment: number) => void;
}

export const StripPicture = (props: StripPictureProps): ReactNode => {
  const words = useWords().strip;
  const { schedule, marks, shift, span, width, moment, locale, label, onMoment } = props;
  const [pointed, setPointed] = useState<readonly StripMark[] | undefined>();
  const perMinute = width / (span.to - span.from);
  const x = (at: number): number => (at - span.from) * perMinute;
  const momentAt = (event: PointerEvent<SVGSVGElement>): number => {
    const { left } = event.currentTarget.getBoundingClientRect();
    const at = span.from + (event.clientX - left) / perMinute - schedule.start;
    return Math.min(Math.max(at, 0), schedule.finish - schedule.start);
  };
  const first = pointed?.[0];
  return (
    <>
      <svg
        className="strip-picture"
        width={width}
        height={STRIP_HIGH}
        viewBox={`0 0 ${width} ${STRIP_HIGH}`}
        role="img"
        aria-label={label}
        data-preview={shift !== 0}
        onPointerDown={(event) => {
          event.currentTarget.setPointerCapture(event.pointerId);
          onMoment(momentAt(event));
        }}
        onPointerMove={(event) => event.buttons === 1 && onMoment(momentAt(event))}
      >
        <Ground schedule={schedule} shift={shift} from={span.from} to={span.to} width={width} locale={locale} />
        <Pins marks={marks} from={span.from} perMinute={perMinute} onPoint={setPointed} />
        {moment !== undefined && shift === 0 && (
          <path className="strip-now" d={`M${x(schedule.start + moment)} ${BAND - 6}V${BAND + DEEP + 6}`} />
        )}
      </svg>
      {first !== undefined && (
        <p
          className="strip-tip"
          aria-hidden="true"
          data-side={x(first.from) > width / 2 ? 'left' : 'right'}
          style={tipAt(x(first.from), width)}
        >
          <strong>{whenOf(first.from, schedule, locale)}</strong> {words.mark(first.kind)}
          {first.atNight && `, ${words.atNight}`}. {first.what}
          {(pointed?.length ?? 0) > 1 && ` ${words.near((pointed?.length ?? 1) - 1)}`}
        </p>
      )}
    </>
  );
};

const tipAt = (x: number, width: number) => (x > width / 2 ? { right: width - x + 12 } : { left: x + 12 });

interface GroundProps {
  readonly schedule: ScheduleView;
  readonly shift: number;
  readonly from: number;
  readonly to: number;
  readonly width: number;
  readonly locale: string | undefined;
}

/** All that stays as it is while the replay goes on. */
const Ground = memo(({ schedule, shift, from, to, width, locale }: GroundProps): ReactNode => {
  const words = useWords().strip;
  const perMinute = width / (to - from);
  const x = (at: number): number => Math.round((Math.min(Math.max(at, from), to) - from) * perMinute * 100) / 100;
  const span = { from, to };
  const bottom = BAND + DEEP;
  const least = 0.6 / perMinute;
  return (
    <>
      <rect className="strip-day" x={0} y={BAND} width={width} height={DEEP} />
      {nightsWithin(schedule.week, span).map((n) => (
        <g key={n.from}>
          <rect className="strip-night" x={x(n.from)} y={BAND} width={x(n.to) - x(n.from)} height={DEEP} />
          {(n.to - n.from) * perMinute > 84 && (
            <text className="strip-quiet" x={(x(n.from) + x(n.to)) / 2} y={bottom - 5} textAnchor="middle">
              {words.night}
            </text>
          )}
        </g>
      ))}
      {joined(schedule.events, ['cutting'], least).map((b) => (
        <rect
          key={b.from}
          className="strip-cut"
          x={x(b.from + shift)}
          y={BAND + 9}
          width={Math.max(0.8, x(b.to + shift) - x(b.from + shift))}
          height={18}
        />
      ))}
      {joined(schedule.events, ['waiting for a person'], least).map((b) => (
        <path key={b.from} className="strip-wait" d={`M${x(b.from + shift)} ${BAND + 18}H${x(b.to + shift)}`} />
      ))}
      <path className="strip-axis" d={`M0 ${bottom}H${width}`} />
      <Ticks from={from} to={to} width={width} locale={locale} />
    </>
  );
});

const Ticks = ({ from, to, width, locale }: Pick<GroundProps, 'from' | 'to' | 'width' | 'locale'>): ReactNode => {
  const perMinute = width / (to - from);
  const bottom = BAND + DEEP;
  const ticks = ticksOf({ from, to }, Math.max(2, Math.floor(width / PER_TICK)));
  return ticks.map((at, i) => {
    const x = (at - from) * perMinute;
    const anchor = x < 18 ? 'start' : x > width - 18 ? 'end' : 'middle';
    const midnight = at % DAY === 0;
    return (
      <g key={at}>
        <path className="strip-axis" d={`M${x} ${bottom}v${midnight ? 8 : 5}`} />
        <text x={x} y={bottom + 19} textAnchor={anchor}>
          {timeOfDayOf(at)}
        </text>
        {(i === 0 || midnight) && (
          <text
            className="strip-quiet"
            x={Math.max(x, 2)}
            y={bottom + 35}
            textAnchor={x < DAY_WORD ? 'start' : x > width - DAY_WORD ? 'end' : 'middle'}
          >
            {dayOf(at, locale)}
          </text>
        )}
      </g>
    );
  });
};

interface PinsProps {
  readonly marks: readonly StripMark[];
  readonly from: number;
  readonly perMinute: number;
  readonly onPoint: (marks: readonly StripMark[] | undefined) => void;
}

/** Pins that would lie on each other are one, with their number. */
const Pins = memo(({ marks, from, perMinute, onPoint }: PinsProps): ReactNode => {
  let labelled = Number.NEGATIVE_INFINITY;
  return clustered(marks, PER_PIN / perMinute).map((cluster) => {
    const mark = cluster[0] as StripMark;
    const x = (mark.from - from) * perMinute;
    if (x < -PIN) return null;
    const told = x - labelled >= PER_LABEL;
    if (told) labelled = x;
    return (
      <g
        key={`${mark.from} ${mark.what}`}
        className="strip-pin"
        data-night={cluster.some((m) => m.atNight)}
        onPointerEnter={() => onPoint(cluster)}
        onPointerLeave={() => onPoint(undefined)}
      >
        <rect className="strip-catch" x={x - 9} y={0} width={18} height={BAND + 8} />
        <path className="strip-stem" d={`M${x} ${PIN + 12}V${BAND + 8}`} />
        {cluster.length === 1 ? <path className="strip-head" d={headOf(mark.kind, x, PIN + 12)} /> : <Count n={cluster.length} x={x} />}
        {told && (
          <text className="strip-pin-time" x={x} y={12} textAnchor="middle">
            {timeOfDayOf(mark.from)}
          </text>
        )}
      </g>
    );
  });
});

const Count = ({ n, x }: { readonly n: number; readonly x: number }): ReactNode => (
  <>
    <rect className="strip-head" x={x - 8} y={PIN + 4} width={16} height={16} rx={8} />
    <text className="strip-count" x={x} y={PIN + 16} textAnchor="middle">
      {n}
    </text>
  </>
);

const R = 5.5;

/** Each kind of stop has a shape of its own: round for a slug, pointed down for a tab, square for a spool, upright for a thread. */
export const headOf = (kind: StripMark['kind'], x: number, y: number): string => {
  if (kind === 'slug') return `M${x - R} ${y}a${R} ${R} 0 1 0 ${2 * R} 0a${R} ${R} 0 1 0 ${-2 * R} 0Z`;
  if (kind === 'tab') return `M${x - R} ${y - R}h${2 * R}L${x} ${y + R}Z`;
  if (kind === 'spool') return `M${x - R} ${y - R}h${2 * R}v${2 * R}h${-2 * R}Z`;
  if (kind === 'thread') return `M${x} ${y - R - 1}L${x + R} ${y}L${x} ${y + R + 1}L${x - R} ${y}Z`;
  if (kind === 'load') return `M${x - R} ${y + R}L${x} ${y - R}L${x + R} ${y + R}Z`;
  return `M${x - 2} ${y - R}h4v${2 * R}h-4Z`;
};
