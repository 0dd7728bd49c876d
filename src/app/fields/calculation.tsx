/** Why a number is what it is: a tree from the number down to the drawing, the shop and the handbooks, opened where it was asked. */
import { type ReactNode, useEffect, useRef, useState } from 'react';
import { useWords } from '../words/use-words.ts';
import { printedCalculation } from '../work/sheet-for-reader.ts';
import type { WhyTree } from '../work/views.ts';
import { useOnSheet, useTools } from './tools.ts';

export const WhyPlace = ({ place }: { readonly place: string }): ReactNode => {
  const { whyPlace } = useTools();
  const asking = useOnSheet((s) => s.asking);
  return asking === undefined || whyPlace !== place ? null : <Why key={asking} asked={asking} />;
};

const Why = ({ asked }: { readonly asked: string }): ReactNode => {
  const words = useWords().sheet;
  const { closeWhy } = useTools();
  const tree = useWhy(asked);
  const panel = useRef<HTMLElement>(null);
  const ready = tree.kind !== 'asking';
  useEffect(() => {
    if (ready) panel.current?.focus();
  }, [ready]);
  return (
    <section
      ref={panel}
      className="why"
      tabIndex={-1}
      aria-label={tree.kind === 'told' ? words.whyTitle(tree.tree.shown.name) : words.why}
      onKeyDown={(event) => {
        if (event.key !== 'Escape') return;
        event.stopPropagation();
        closeWhy();
      }}
    >
      <button type="button" className="plain close" onClick={closeWhy}>
        {words.closeWhy}
      </button>
      {tree.kind === 'told' && (
        <>
          <h3>{words.whyTitle(tree.tree.shown.name)}</h3>
          <ul className="why-tree">
            <Branch tree={tree.tree} depth={0} />
          </ul>
        </>
      )}
      {tree.kind === 'unknown' && <p>{words.noWhy}</p>}
    </section>
  );
};

type Told = { readonly kind: 'asking' } | { readonly kind: 'unknown' } | { readonly kind: 'told'; readonly tree: WhyTree };

/** Asked anew with every answer; the old tree stays until the new one is there. */
const useWhy = (key: string): Told => {
  const { sheet } = useTools();
  const answer = useOnSheet((s) => s.sheet);
  const [told, setTold] = useState<Told>({ kind: 'asking' });
  useEffect(() => {
    if (answer === undefined) return;
    let wanted = true;
    void Promise.resolve(sheet.worker().why(key)).then((tree) => {
      if (wanted) setTold(tree === undefined ? { kind: 'unknown' } : { kind: 'told', tree: printedCalculation(tree, sheet.tell) });
    });
    return () => {
      wanted = false;
    };
  }, [sheet, key, answer]);
  return told;
};

/** How deep it is open at first. */
const OPEN_DEPTH = 1;

const Branch = ({ tree, depth }: { readonly tree: WhyTree; readonly depth: number }): ReactNode => {
  const words = useWords().sheet;
  const { numbers } = useTools();
  const { shown, formula, basis, source, warnings, from } = tree;
  const range = numbers.range(shown);
  return (
    <li>
      <p className="why-line">
        <span className="why-name">{shown.name}</span> <span className="why-value">{numbers.value(shown)}</span>{' '}
        {range !== '' && <span className="why-range">{range}</span>} <span className="why-basis">{words.basis(basis)}</span>
      </p>
      {formula !== undefined && <p className="why-formula">{formula}</p>}
      {source !== '' && <p className="why-source">{source.replaceAll('-', ' ')}</p>}
      {warnings.map((w) => (
        <p key={w} className="why-warning">
          {w}
        </p>
      ))}
      {from.length > 0 && (
        <details open={depth < OPEN_DEPTH}>
          <summary>
            {words.madeOf} {from.map((f) => f.shown.name).join(', ')}
          </summary>
          <ul>
            {from.map((f, i) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: a figure may go in twice, and the order is that of the formula
              <Branch key={`${f.shown.key} ${i}`} tree={f} depth={depth + 1} />
            ))}
          </ul>
        </details>
      )}
    </li>
  );
};
