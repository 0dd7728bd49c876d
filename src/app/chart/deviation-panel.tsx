/** How far the cut is from the drawing: a table by contour, and along the chosen one a chart with its tolerance. */
import { type ReactNode, useEffect, useState } from 'react';
import type { Numbers } from '../../text/print/reader.ts';
import { useWords } from '../words/use-words.ts';
import type { ContourView, DeviationView } from '../work/views.ts';
import { DeviationChart } from './deviation-chart.tsx';
import { type Small, small } from './small-length.ts';
import '../look/replay.css';

export interface DeviationPanelProps {
  readonly contours: readonly ContourView[];
  /** Allowed either side, mm. */
  readonly tolerance: number;
  readonly chosen: string | undefined;
  readonly numbers: Pick<Numbers, 'value' | 'within' | 'length' | 'plain' | 'finishUnit'>;
  readonly deviation: (loop: string) => Promise<DeviationView | undefined>;
  readonly onChoose: (loop: string) => void;
}

export const DeviationPanel = ({ contours, tolerance, chosen, numbers, deviation, onChoose }: DeviationPanelProps): ReactNode => {
  const words = useWords().deviation;
  const proven = contours.filter((c) => c.state !== undefined);
  const shown = proven.find((c) => c.id === chosen) ?? worst(proven);
  const profile = useDeviation(shown?.id, contours, deviation);
  if (shown === undefined) return null;
  return (
    <section className="deviation" aria-label={words.title}>
      <Table proven={proven} shown={shown} tolerance={tolerance} numbers={numbers} onChoose={onChoose} />
      {profile === 'working' ? (
        <p role="status">{words.working}</p>
      ) : profile === undefined || profile.share.length < 2 ? (
        <p>{words.none}</p>
      ) : (
        <DeviationChart profile={profile} contour={shown} tolerance={tolerance} numbers={numbers} />
      )}
    </section>
  );
};

interface TableProps extends Pick<DeviationPanelProps, 'tolerance' | 'numbers' | 'onChoose'> {
  readonly proven: readonly ContourView[];
  readonly shown: ContourView;
}

const Table = ({ proven, shown, tolerance, numbers, onChoose }: TableProps): ReactNode => {
  const words = useWords().deviation;
  return (
    <div className="table-place">
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reached by keyboard */}
      <section className="table-scroll deviation-scroll" tabIndex={0} aria-label={words.title}>
        <table>
          <caption>{words.title}</caption>
          <thead>
            <tr>
              <th scope="col">{words.columns.contour}</th>
              <th scope="col">{words.columns.state}</th>
              <th scope="col" data-align="right">
                {words.columns.left}
              </th>
              <th scope="col" data-align="right">
                {words.columns.deep}
              </th>
              <th scope="col" data-align="right">
                {words.columns.tolerance}
              </th>
            </tr>
          </thead>
          <tbody>
            {proven.map((c) => (
              <tr key={c.id} data-marked={c.id === shown.id}>
                <th scope="row">
                  <button
                    type="button"
                    className="plain"
                    aria-label={words.choose(c.id)}
                    aria-pressed={c.id === shown.id}
                    onClick={() => onChoose(c.id)}
                  >
                    {c.id}
                  </button>
                </th>
                <td>{c.state}</td>
                <td data-align="right">{amount(numbers, c.leftMost)}</td>
                <td data-align="right">{amount(numbers, c.gougeMost)}</td>
                <td data-align="right">{numbers.within(tolerance)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </div>
  );
};

const amount = (numbers: Small, mm: number | undefined): string => (mm === undefined ? '' : small(numbers, Math.abs(mm)));

const worst = (proven: readonly ContourView[]): ContourView | undefined =>
  proven.reduce<ContourView | undefined>((w, c) => (w === undefined || mostOf(c) > mostOf(w) ? c : w), undefined);

const mostOf = ({ leftMost = 0, gougeMost = 0 }: ContourView): number => Math.max(Math.abs(leftMost), Math.abs(gougeMost));

/** Asked for again with every answer, of which `contours` are a part. */
const useDeviation = (
  loop: string | undefined,
  contours: readonly ContourView[],
  deviation: DeviationPanelProps['deviation'],
): DeviationView | 'working' | undefined => {
  const [found, setFound] = useState<DeviationView | 'working' | undefined>('working');
  // biome-ignore lint/correctness/useExhaustiveDependencies: how it is asked does not change what is answered
  useEffect(() => {
    if (loop === undefined) return;
    let newest = true;
    setFound((before) => (typeof before === 'object' && before.loop === loop ? before : 'working'));
    deviation(loop).then(
      (profile) => newest && setFound(profile),
      () => newest && setFound(undefined),
    );
    return () => {
      newest = false;
    };
  }, [loop, contours]);
  return found;
};
