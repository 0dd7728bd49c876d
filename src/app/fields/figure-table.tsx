/** A table of the sheet: words, and numbers in the user's units that can be asked why. */
import { type ReactNode, useId } from 'react';
import { useWords } from '../words/use-words.ts';
import type { Shown, TableView } from '../work/views.ts';
import { WhyPlace } from './calculation.tsx';
import { useOnSheet, useTools } from './tools.ts';

interface FigureTableProps {
  readonly title: string;
  readonly table: TableView | undefined;
  /** Where its whys open: unlike that of every other table. */
  readonly place: string;
  /** Ranges stand behind the numbers where there is room. */
  readonly ranges?: boolean;
}

/** Rows and cells of a table never move: their place names them. */
const keyed = <T,>(items: readonly T[]): readonly { readonly key: number; readonly item: T }[] => items.map((item, key) => ({ key, item }));

export const FigureTable = ({ title, table, place, ranges = false }: FigureTableProps): ReactNode => {
  const id = useId();
  if (table === undefined || table.rows.length === 0) return null;
  return (
    <div className="table-place">
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reached by keyboard */}
      <section className="table-scroll" tabIndex={0} aria-labelledby={id}>
        <table>
          <caption id={id}>{title}</caption>
          <thead>
            <tr>
              {keyed(table.columns).map(({ key, item }) =>
                item.title === '' ? (
                  <td key={key} />
                ) : (
                  <th key={key} scope="col" data-align={item.align}>
                    {item.title}
                  </th>
                ),
              )}
            </tr>
          </thead>
          <tbody>
            {keyed(table.rows).map(({ key, item: row }) => (
              <tr key={key} data-marked={key === table.marked}>
                {keyed(row).map(({ key: column, item: cell }) => (
                  <Cell
                    key={column}
                    cell={cell}
                    first={column === 0}
                    align={table.columns[column]?.align ?? 'left'}
                    place={place}
                    ranges={ranges}
                  />
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
      <WhyPlace place={place} />
      {table.note !== undefined && <p className="table-note">{table.note}</p>}
    </div>
  );
};

interface CellProps {
  readonly cell: string | Shown;
  readonly first: boolean;
  readonly align: 'left' | 'right';
  readonly place: string;
  readonly ranges: boolean;
}

const Cell = ({ cell, first, align, place, ranges }: CellProps): ReactNode => {
  const inner = typeof cell === 'string' ? cell : <FigureButton shown={cell} place={place} ranges={ranges} />;
  return first ? (
    <th scope="row" data-align={align}>
      {inner}
    </th>
  ) : (
    <td data-align={align}>{inner}</td>
  );
};

export const FigureButton = ({
  shown,
  place,
  ranges = false,
  said,
}: Pick<CellProps, 'place'> & { readonly shown: Shown; readonly ranges?: boolean; readonly said?: string }): ReactNode => {
  const words = useWords().sheet;
  const { numbers, ask } = useTools();
  const asking = useOnSheet((s) => s.asking === shown.key);
  const text = said ?? numbers.value(shown);
  const range = numbers.range(shown);
  return (
    <button
      type="button"
      className="figure"
      title={range === '' ? shown.name : `${shown.name} ${range}`}
      aria-label={words.whyOf(`${text} ${ranges ? range : ''}`.trim())}
      aria-expanded={asking}
      onClick={(event) => ask(shown.key, place, event.currentTarget)}
    >
      {text}
      {ranges && range !== '' && <small> {range}</small>}
    </button>
  );
};
