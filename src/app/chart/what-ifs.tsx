/** What would it cost if: the whole job under small changes, what saves most first, each to be tried with one press. */
import { type ReactNode, useRef } from 'react';
import type { Compared, ComparedOutcome, Comparison } from '../../result/comparison.ts';
import type { Numbers } from '../../text/print/reader.ts';
import { AskedState } from '../look/asked-state.tsx';
import { useAsked } from '../look/use-asked.ts';
import { useWords } from '../words/use-words.ts';
import type { Words } from '../words/words-for.ts';
import '../look/replay.css';

export interface WhatIfsProps {
  /** What the answer speaks of: another object with every answer; nothing is asked while undefined. */
  readonly about: unknown;
  readonly ask: () => Promise<Comparison<string>>;
  readonly numbers: Pick<Numbers, 'money' | 'finish' | 'within' | 'duration'>;
  /** Job keys that make the job so; `name` is that of the step of undo. */
  readonly onTry: (name: string, change: Readonly<Record<string, unknown>>) => void;
}

type Able = Extract<Compared<string>, { kind: 'can' }>;

export const WhatIfs = ({ about, ask, numbers, onTry }: WhatIfsProps): ReactNode => {
  const words = useWords().price;
  const place = useRef<HTMLElement>(null);
  const asked = useAsked(place, about, ask);
  const { answer } = asked;
  return (
    <section ref={place} className="what-ifs" aria-label={words.whatIf} aria-busy={asked.working}>
      <h3>{words.whatIf}</h3>
      <AskedState asked={asked} working={words.whatIfWorking} />
      {answer?.kind === 'cannot' && <p className="fact">{words.cannot(answer.reason)}</p>}
      {answer?.kind === 'compared' && (
        <div data-older={asked.older}>
          <Ranked now={answer.now} rows={answer.rows.filter((r) => r.kind === 'can')} numbers={numbers} onTry={onTry} />
          <Impossible rows={answer.rows.filter((r) => r.kind === 'cannot')} />
        </div>
      )}
    </section>
  );
};

interface RankedProps extends Pick<WhatIfsProps, 'numbers' | 'onTry'> {
  readonly now: ComparedOutcome;
  readonly rows: readonly Able[];
}

const Ranked = ({ now, rows, numbers, onTry }: RankedProps): ReactNode => {
  const words = useWords().price;
  const most = Math.max(1, ...rows.map((r) => Math.abs(r.saves)));
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reached by keyboard
    <section className="table-scroll" tabIndex={0} aria-label={words.whatIf}>
      <table>
        <thead>
          <tr>
            <th scope="col">{words.rows.change}</th>
            <th scope="col" data-align="right">
              {words.rows.saves}
            </th>
            <th scope="col" data-align="right">
              {words.rows.each}
            </th>
            <th scope="col" data-align="right">
              {words.rows.machine}
            </th>
            <th scope="col" data-align="right">
              {words.rows.passes}
            </th>
            <th scope="col">{words.rows.tryIt}</th>
          </tr>
        </thead>
        <tbody>
          <tr data-marked="true">
            <th scope="row">{words.asAsked}</th>
            <td />
            <Cells outcome={now} numbers={numbers} />
            <td />
          </tr>
          {rows.map((row) => (
            <tr key={row.sentence}>
              <th scope="row">{row.sentence}</th>
              <td data-align="right" className="saves" data-saves={row.saves > 0.5 ? 'less' : row.saves < -0.5 ? 'more' : 'same'}>
                {savesText(row.saves, numbers, words)}
                <span className="saves-bar" aria-hidden="true">
                  <span style={{ width: `${(Math.abs(row.saves) / most) * 100}%` }} />
                </span>
              </td>
              <Cells outcome={row.outcome} numbers={numbers} />
              <td>
                <Try row={row} onTry={onTry} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
};

const savesText = (saves: number, numbers: WhatIfsProps['numbers'], words: Words['price']): string => {
  if (Math.abs(saves) <= 0.5) return words.same;
  return saves > 0 ? words.saves(numbers.money(saves)) : words.costsMore(numbers.money(-saves));
};

const Cells = ({ outcome, numbers }: { readonly outcome: ComparedOutcome; readonly numbers: WhatIfsProps['numbers'] }): ReactNode => (
  <>
    <td data-align="right">{numbers.money(outcome.each)}</td>
    <td data-align="right">{numbers.duration(outcome.minutes)}</td>
    <td data-align="right">{outcome.passes}</td>
  </>
);

/** What no value of the job says, the customer and the shop agree upon. */
const Try = ({ row, onTry }: { readonly row: Able; readonly onTry: WhatIfsProps['onTry'] }): ReactNode => {
  const words = useWords().price;
  const { change, sentence } = row;
  if (change === undefined) return <small>{words.byAgreement}</small>;
  return (
    <button type="button" aria-label={words.tryItOf(sentence)} onClick={() => onTry(sentence, change)}>
      {words.tryIt}
    </button>
  );
};

const Impossible = ({ rows }: { readonly rows: readonly Extract<Compared<string>, { kind: 'cannot' }>[] }): ReactNode => {
  const words = useWords().price;
  return rows.length === 0 ? null : (
    <details>
      <summary>{words.notPossible}</summary>
      <ul className="other-reasons">
        {rows.map((row) => (
          <li key={row.sentence}>
            {row.sentence}: {row.reason}
          </li>
        ))}
      </ul>
    </details>
  );
};
