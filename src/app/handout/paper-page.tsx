/** A paper on the screen: the same headings, texts, tables and pictures that the printer gets. */
import { Fragment, type ReactNode } from 'react';
import type { Paper, PaperBlock } from '../../documents/paper.ts';
import { PaperPicture } from './paper-picture.tsx';
import './paper.css';

export const PaperPage = ({ paper }: { readonly paper: Paper }): ReactNode => (
  <article className="paper" aria-labelledby="paper-title">
    <header>
      <h3 id="paper-title">{paper.title}</h3>
      <p>{paper.subtitle}</p>
    </header>
    {keyed(paper.blocks).map(({ key, item }) => (
      <Fragment key={key}>
        <Block block={item} />
      </Fragment>
    ))}
    <footer>{paper.foot}</footer>
  </article>
);

/** Blocks, rows and cells of a paper never move: their place names them. */
const keyed = <T,>(items: readonly T[]): readonly { readonly key: number; readonly item: T }[] => items.map((item, key) => ({ key, item }));

const Block = ({ block }: { readonly block: PaperBlock }): ReactNode => {
  if (block.kind === 'heading') return <h4>{block.text}</h4>;
  if (block.kind === 'text') return <p className={block.large === true ? 'large' : ''}>{block.text}</p>;
  if (block.kind === 'pairs') return <Pairs rows={block.rows} />;
  if (block.kind === 'table') return <Table table={block} />;
  if (block.kind === 'picture') return <PaperPicture picture={block.picture} caption={block.caption} />;
  return (
    <ul className={block.marker}>
      {keyed(block.items).map(({ key, item }) => (
        <li key={key}>{item}</li>
      ))}
    </ul>
  );
};

const Pairs = ({ rows }: { readonly rows: readonly (readonly [string, string])[] }): ReactNode => (
  <dl>
    {keyed(rows).map(({ key, item: [label, value] }) => (
      <div key={key}>
        <dt>{label}</dt>
        <dd>{value}</dd>
      </div>
    ))}
  </dl>
);

type TableBlock = Extract<PaperBlock, { kind: 'table' }>;

const Table = ({ table: { columns, rows, note } }: { readonly table: TableBlock }): ReactNode => (
  <>
    {/* Wide tables scroll by themselves, and whoever has only a keyboard must be able to scroll them too. */}
    {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reached by keyboard */}
    <section className="scrolls" tabIndex={0} aria-label={columns.map((c) => c.title).join(', ')}>
      <table>
        <thead>
          <tr>
            {keyed(columns).map(({ key, item }) => (
              <th key={key} scope="col" data-align={item.align}>
                {item.title}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {keyed(rows).map(({ key, item: row }) => (
            <tr key={key}>
              {keyed(row).map(({ key: column, item: text }) => (
                <td key={column} data-align={columns[column]?.align}>
                  {text}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
    {note === undefined ? null : <p className="note">{note}</p>}
  </>
);
