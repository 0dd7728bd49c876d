/** Price against finish, with the number of passes at its steps: a chart whose points can be asked for, and the same as a table. */
import { type ReactNode, useRef } from 'react';
import type { PricePoint } from '../../result/comparison.ts';
import type { Numbers } from '../../text/print/reader.ts';
import { AskedState } from '../look/asked-state.tsx';
import { useAsked } from '../look/use-asked.ts';
import { useWidth } from '../look/use-width.ts';
import { useWords } from '../words/use-words.ts';
import { roundSteps } from './axis.ts';
import '../look/replay.css';

export interface PriceCurveProps {
  /** What the answer speaks of: another object with every answer; nothing is asked while undefined. */
  readonly about: unknown;
  readonly ask: () => Promise<readonly PricePoint[]>;
  /** Ra asked for, µm. */
  readonly finish: number;
  /** Nobody asked for it: it was taken for granted. */
  readonly assumed: boolean;
  readonly numbers: Pick<Numbers, 'money' | 'finish' | 'plain'>;
  /** `name` is that of the step of undo. */
  readonly onFinish: (ra: number, name: string) => void;
}

export const PriceCurve = ({ about, ask, finish, assumed, numbers, onFinish }: PriceCurveProps): ReactNode => {
  const words = useWords().price;
  const place = useRef<HTMLElement>(null);
  const asked = useAsked(place, about, ask);
  const points = asked.answer ?? [];
  const choose = (ra: number): void => onFinish(ra, words.step(numbers.finish(ra)));
  return (
    <section ref={place} className="price-curve" aria-label={words.curve} aria-busy={asked.working}>
      <h3>{words.curve}</h3>
      <AskedState asked={asked} working={words.working} />
      {asked.answer !== undefined && points.length < 2 && !asked.working && <p className="fact">{words.noCurve}</p>}
      {points.length >= 2 && (
        <div data-older={asked.older}>
          <Chart points={points} finish={finish} assumed={assumed} numbers={numbers} onChoose={choose} />
          <Table points={points} finish={finish} assumed={assumed} numbers={numbers} onChoose={choose} />
        </div>
      )}
    </section>
  );
};

interface CurveProps extends Pick<PriceCurveProps, 'finish' | 'assumed' | 'numbers'> {
  readonly points: readonly PricePoint[];
  readonly onChoose: (ra: number) => void;
}

/** px */
const LEFT = 92;
const RIGHT = 18;
const TOP = 30;
const HIGH = 190;
const BOTTOM = 46;

const Chart = ({ points, finish, assumed, numbers, onChoose }: CurveProps): ReactNode => {
  const words = useWords().price;
  const frame = useRef<HTMLDivElement>(null);
  const width = useWidth(frame, 700);
  const wide = width - LEFT - RIGHT;
  const [coarse, fine] = [Math.log(points[0]?.finish ?? 1), Math.log(points.at(-1)?.finish ?? 0.1)];
  const highest = Math.max(...points.map((p) => p.each)) * 1.06;
  const x = (ra: number): number => LEFT + ((coarse - Math.log(ra)) / (coarse - fine)) * wide;
  const y = (each: number): number => TOP + HIGH - (each / highest) * HIGH;
  const chosen = chosenOf(points, finish);
  return (
    <div ref={frame} className="price-frame">
      <svg
        className="price-chart"
        width={width}
        height={TOP + HIGH + BOTTOM}
        viewBox={`0 0 ${width} ${TOP + HIGH + BOTTOM}`}
        role="img"
        aria-label={words.curvePicture(numbers.finish(points[0]?.finish ?? 0), numbers.finish(points.at(-1)?.finish ?? 0))}
      >
        <Prices highest={highest} y={y} wide={wide} numbers={numbers} />
        <Steps points={points} x={x} right={LEFT + wide} />
        <path className="chart-line" d={`M${points.map((p) => `${x(p.finish)} ${y(p.each)}`).join('L')}`} />
        <Labels points={points} x={x} numbers={numbers} />
        <Chosen points={points} finish={finish} assumed={assumed} x={x} right={width - 90} />
        {points.map((p) => (
          <circle
            key={p.finish}
            className={p === chosen ? 'chart-dot chosen' : 'chart-dot'}
            cx={x(p.finish)}
            cy={y(p.each)}
            r={p === chosen ? 6 : 4}
          />
        ))}
        <text className="chart-quiet" x={LEFT + wide / 2} y={TOP + HIGH + 40} textAnchor="middle">
          {words.finish}
        </text>
      </svg>
      {points.map((p) => (
        <button
          key={p.finish}
          type="button"
          className="chart-point"
          style={{ left: x(p.finish), top: y(p.each) }}
          title={words.point(numbers.finish(p.finish), numbers.money(p.each), p.passes)}
          aria-label={`${words.choose(numbers.finish(p.finish))}. ${words.point(numbers.finish(p.finish), numbers.money(p.each), p.passes)}`}
          aria-pressed={p === chosen}
          onClick={() => onChoose(p.finish)}
        />
      ))}
    </div>
  );
};

const chosenOf = (points: readonly PricePoint[], finish: number): PricePoint | undefined =>
  points.find((p) => Math.abs(p.finish - finish) < 1e-6 * finish);

type Across = (ra: number) => number;

interface PricesProps extends Pick<PriceCurveProps, 'numbers'> {
  readonly highest: number;
  readonly y: (each: number) => number;
  readonly wide: number;
}

const Prices = ({ highest, y, wide, numbers }: PricesProps): ReactNode =>
  roundSteps(0, highest, 5).map((each) => (
    <g key={each}>
      <path className={each === 0 ? 'chart-zero' : 'chart-grid'} d={`M${LEFT} ${y(each)}h${wide}`} />
      <text x={LEFT - 8} y={y(each) + 4} textAnchor="end">
        {numbers.money(each)}
      </text>
    </g>
  ));

interface ChosenProps extends Pick<CurveProps, 'points' | 'finish' | 'assumed'> {
  readonly x: Across;
  /** px from which its word stands left of the line. */
  readonly right: number;
}

/** The finish asked for, where the curve reaches it. */
const Chosen = ({ points, finish, assumed, x, right }: ChosenProps): ReactNode => {
  const words = useWords().price;
  if (finish > (points[0]?.finish ?? 0) || finish < (points.at(-1)?.finish ?? 0)) return null;
  const late = x(finish) > right;
  return (
    <>
      <path className="chart-chosen" d={`M${x(finish)} ${TOP - 8}V${TOP + HIGH}`} />
      <text className="chart-chosen-text" x={x(finish) + (late ? -5 : 5)} y={TOP - 10} textAnchor={late ? 'end' : 'start'}>
        {assumed ? words.chosenAssumed : words.chosen}
      </text>
    </>
  );
};

/** Where one more pass is needed: a broken line, and between two of them how many there are. */
const Steps = ({ points, x, right }: { readonly points: readonly PricePoint[]; readonly x: Across; readonly right: number }): ReactNode => {
  const words = useWords().price;
  const starts = points.flatMap((p, i) => {
    const before = points[i - 1];
    if (before !== undefined && before.passes === p.passes) return [];
    return [
      { passes: p.passes, at: before === undefined ? x(p.finish) : (x(before.finish) + x(p.finish)) / 2, first: before === undefined },
    ];
  });
  return starts.map(({ passes, at, first }, i) => {
    const end = starts[i + 1]?.at ?? right;
    return (
      <g key={passes}>
        {!first && <path className="chart-step" d={`M${at} ${TOP}V${TOP + HIGH}`} />}
        <text className="chart-quiet" x={(at + end) / 2} y={TOP + HIGH - 6} textAnchor="middle">
          {end - at > 56 ? words.passes(passes) : passes}
        </text>
      </g>
    );
  });
};

/** Finishes that have room. */
const Labels = ({
  points,
  x,
  numbers,
}: {
  readonly points: readonly PricePoint[];
  readonly x: Across;
  readonly numbers: PriceCurveProps['numbers'];
}): ReactNode => {
  let last = Number.NEGATIVE_INFINITY;
  return points.map((p) => {
    if (p.lastOfStep === true || x(p.finish) - last < 58) return null;
    last = x(p.finish);
    return (
      <g key={p.finish}>
        <path className="chart-tick" d={`M${last} ${TOP + HIGH}v5`} />
        <text x={last} y={TOP + HIGH + 20} textAnchor="middle">
          {numbers.finish(p.finish).replace(/^Ra /, '')}
        </text>
      </g>
    );
  });
};

const Table = ({ points, finish, assumed, numbers, onChoose }: CurveProps): ReactNode => {
  const words = useWords().price;
  return (
    <details>
      <summary>{words.table}</summary>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reached by keyboard */}
      <section className="table-scroll" tabIndex={0} aria-label={words.table}>
        <table>
          <thead>
            <tr>
              <th scope="col">{words.columns.finish}</th>
              <th scope="col" data-align="right">
                {words.columns.each}
              </th>
              <th scope="col" data-align="right">
                {words.columns.passes}
              </th>
              <th scope="col" data-align="right">
                {words.columns.reached}
              </th>
              <th scope="col">{words.columns.choose}</th>
            </tr>
          </thead>
          <tbody>
            {points.map((p) => (
              <tr key={p.finish} data-marked={Math.abs(p.finish - finish) < 1e-6}>
                <th scope="row">{numbers.finish(p.finish)}</th>
                <td data-align="right">{numbers.money(p.each)}</td>
                <td data-align="right">{p.passes}</td>
                <td data-align="right">{numbers.finish(Number(p.reached.toPrecision(2)))}</td>
                <td>
                  {Math.abs(p.finish - finish) < 1e-6 ? (
                    assumed ? (
                      words.chosenAssumed
                    ) : (
                      words.chosen
                    )
                  ) : (
                    <button
                      type="button"
                      className="plain"
                      aria-label={words.choose(numbers.finish(p.finish))}
                      onClick={() => onChoose(p.finish)}
                    >
                      {words.columns.choose}
                    </button>
                  )}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </details>
  );
};
