/** The deviation along one contour: zero where the drawing is, metal left above it, cut too deep below, with the band that is allowed. */

import { type PointerEvent, type ReactNode, useId, useMemo, useRef, useState } from 'react';
import { roundBelow } from '../../picture/round-length.ts';
import { indexOfLeast } from '../../sequence/sequence.ts';
import type { Numbers } from '../../text/print/reader.ts';
import { useWidth } from '../look/use-width.ts';
import { useWords } from '../words/use-words.ts';
import type { ContourView, DeviationView } from '../work/views.ts';
import { deviationSpan, roundSteps, thinned } from './axis.ts';
import { small } from './small-length.ts';

interface DeviationChartProps {
  /** mm, either side. */
  readonly tolerance: number;
  readonly numbers: Pick<Numbers, 'value' | 'length' | 'plain' | 'finishUnit'>;
  readonly profile: DeviationView;
  readonly contour: ContourView;
}

const NO_CORNERS: NonNullable<DeviationView['rounded']> = [];

/** px */
const LEFT = 76;
const RIGHT = 14;
const TOP = 16;
const HIGH = 190;
const BOTTOM = 40;

export const DeviationChart = ({ profile, contour, tolerance, numbers }: DeviationChartProps): ReactNode => {
  const words = useWords().deviation;
  const frame = useRef<HTMLDivElement>(null);
  const width = useWidth(frame, 700);
  const [place, setPlace] = useState<number | undefined>();
  const id = useId();
  const { rounded: corners = NO_CORNERS } = profile;
  const counted = corners.length === 0 ? undefined : Math.max(0, contour.leftMost ?? 0);
  const span = useMemo(() => deviationSpan(profile.deviation, tolerance, counted), [profile, tolerance, counted]);
  const wide = width - LEFT - RIGHT;
  const x = (share: number): number => LEFT + share * wide;
  const y = (mm: number): number => TOP + ((span.high - mm) / (span.high - span.low)) * HIGH;
  const factor = roundBelow(HIGH / (span.high - span.low) / (wide / contour.perimeter));
  const at = place === undefined ? undefined : nearestTo(profile, place);
  const rounded = Math.max(0, ...corners.map((r) => r.left));
  const pointed = (event: PointerEvent<SVGSVGElement>): void => {
    const { left } = event.currentTarget.getBoundingClientRect();
    setPlace(Math.min(1, Math.max(0, (event.clientX - left - LEFT) / wide)));
  };
  return (
    <div ref={frame} className="deviation-chart">
      <svg
        width={width}
        height={TOP + HIGH + BOTTOM}
        viewBox={`0 0 ${width} ${TOP + HIGH + BOTTOM}`}
        role="img"
        aria-label={words.chart(
          contour.id,
          small(numbers, Math.abs(contour.leftMost ?? 0)),
          small(numbers, Math.abs(contour.gougeMost ?? 0)),
        )}
        onPointerMove={pointed}
        onPointerLeave={() => setPlace(undefined)}
      >
        {span.withTolerance && <Band y={y} tolerance={tolerance} width={wide} text={words.allowed} />}
        <Across span={span} y={y} wide={wide} numbers={numbers} />
        <clipPath id={`${id}-plot`}>
          <rect x={LEFT} y={TOP} width={wide} height={HIGH} />
        </clipPath>
        <g clipPath={`url(#${id}-plot)`}>
          <Curve profile={profile} x={x} y={y} columns={Math.round(wide)} />
        </g>
        <Along length={contour.perimeter} x={x} wide={wide} numbers={numbers} />
        {at !== undefined && (
          <>
            <path className="chart-at" d={`M${x(at.share)} ${TOP}v${HIGH}`} />
            <circle className="chart-dot" cx={x(at.share)} cy={Math.max(TOP, y(at.deviation))} r={4} />
          </>
        )}
      </svg>
      <Readout contour={contour} at={at} place={place} numbers={numbers} onPlace={setPlace} />
      <p className="table-note">
        {words.magnified(numbers.plain(factor))} {rounded > 0 && `${words.rounded(corners.length, small(numbers, rounded))} `}
        {!span.withTolerance && tolerance > 0 && words.outOfView(numbers.length(tolerance))}
      </p>
    </div>
  );
};

interface AcrossProps extends Pick<DeviationChartProps, 'numbers'> {
  readonly span: { readonly low: number; readonly high: number };
  readonly y: (mm: number) => number;
  readonly wide: number;
}

/** The lines of the amounts; their steps are round in the unit in which they are read. */
const Across = ({ span, y, wide, numbers }: AcrossProps): ReactNode => {
  const words = useWords().deviation;
  const unit = numbers.finishUnit === 'µin' ? 2.54e-5 : 1e-3;
  return (
    <>
      {roundSteps(span.low / unit, span.high / unit, 6).map((step) => (
        <g key={step}>
          <path className={step === 0 ? 'chart-zero' : 'chart-grid'} d={`M${LEFT} ${y(step * unit)}h${wide}`} />
          <text x={LEFT - 8} y={y(step * unit) + 4} textAnchor="end">
            {tick(numbers, step * unit)}
          </text>
        </g>
      ))}
      <text className="chart-quiet" x={LEFT + 4} y={TOP - 4}>
        {`↑ ${words.above}`}
      </text>
      <text className="chart-quiet" x={LEFT + 4} y={TOP + HIGH + 14}>
        {`↓ ${words.below}`}
      </text>
    </>
  );
};

interface AlongProps extends Pick<DeviationChartProps, 'numbers'> {
  readonly length: number;
  readonly x: (share: number) => number;
  readonly wide: number;
}

/** px that a length takes beneath the chart. */
const PER_LENGTH = 110;

const Along = ({ length, x, wide, numbers }: AlongProps): ReactNode =>
  roundSteps(0, length, Math.max(2, Math.floor(wide / PER_LENGTH))).map((mm, i) => (
    <text key={mm} x={x(mm / length)} y={TOP + HIGH + 32} textAnchor={i === 0 ? 'start' : 'middle'}>
      {numbers.length(mm)}
    </text>
  ));

interface ReadoutProps extends Pick<DeviationChartProps, 'contour' | 'numbers'> {
  readonly at: Measured | undefined;
  readonly place: number | undefined;
  readonly onPlace: (share: number) => void;
}

/** The amount at a place in words; by keyboard the place is moved here. */
const Readout = ({ contour, at, place, numbers, onPlace }: ReadoutProps): ReactNode => {
  const words = useWords().deviation;
  const id = useId();
  const length = (share: number): string => numbers.length(round(share * contour.perimeter));
  const told = at === undefined ? '' : words.at(length(at.share), `${at.deviation > 0 ? '+' : ''}${small(numbers, at.deviation)}`);
  return (
    <p className="chart-says">
      <label htmlFor={id}>{words.place}</label>
      <input
        id={id}
        type="range"
        min={0}
        max={1}
        step={0.005}
        value={place ?? 0}
        aria-valuetext={told}
        onChange={(event) => onPlace(Number(event.currentTarget.value))}
      />
      <output htmlFor={id}>{at === undefined ? words.along(contour.id, length(1)) : told}</output>
    </p>
  );
};

/** Exactly so, and with its sign. */
const tick = (numbers: DeviationChartProps['numbers'], mm: number): string => {
  const value = Number((mm * 1000).toPrecision(6));
  return `${value > 0 ? '+' : ''}${numbers.value({ value, unit: 'µm', low: value, high: value })}`;
};

const round = (mm: number): number => Number(mm.toFixed(2));

interface CurveProps {
  readonly profile: DeviationView;
  readonly x: (share: number) => number;
  readonly y: (mm: number) => number;
  readonly columns: number;
}

const Curve = ({ profile, x, y, columns }: CurveProps): ReactNode => {
  const kept = useMemo(() => thinned(profile.deviation, columns).flatMap((i) => measuredAt(profile, i)), [profile, columns]);
  const points = kept.map((m) => `${x(m.share).toFixed(1)} ${y(m.deviation).toFixed(1)}`).join('L');
  const [first, last] = [kept.at(0)?.share ?? 0, kept.at(-1)?.share ?? 0];
  const side = (keep: (d: number) => number): string => {
    const edge = kept.map((m) => `${x(m.share).toFixed(1)} ${y(keep(m.deviation)).toFixed(1)}`).join('L');
    return `M${x(first).toFixed(1)} ${y(0)}L${edge}L${x(last).toFixed(1)} ${y(0)}Z`;
  };
  return (
    <>
      <path className="chart-over" d={side((d) => Math.max(d, 0))} />
      <path className="chart-under" d={side((d) => Math.min(d, 0))} />
      <path className="chart-line" d={`M${points}`} />
    </>
  );
};

interface BandProps {
  readonly y: (mm: number) => number;
  readonly tolerance: number;
  readonly width: number;
  readonly text: string;
}

const Band = ({ y, tolerance, width, text }: BandProps): ReactNode => (
  <>
    <rect className="chart-band" x={LEFT} y={y(tolerance)} width={width} height={y(-tolerance) - y(tolerance)} />
    <path className="chart-edge" d={`M${LEFT} ${y(tolerance)}h${width}M${LEFT} ${y(-tolerance)}h${width}`} />
    <text className="chart-quiet" x={LEFT + width - 4} y={y(tolerance) + 14} textAnchor="end">
      {text}
    </text>
  </>
);

interface Measured {
  readonly share: number;
  readonly deviation: number;
}

/** One place of a profile; none beyond its end. */
const measuredAt = (profile: DeviationView, i: number): readonly Measured[] => {
  const [share, deviation] = [profile.share[i], profile.deviation[i]];
  return share === undefined || deviation === undefined ? [] : [{ share, deviation }];
};

const nearestTo = (profile: DeviationView, wanted: number): Measured | undefined =>
  measuredAt(
    profile,
    indexOfLeast(profile.share, (share) => Math.abs(share - wanted)),
  )[0];
