/** What can be done with the text of a program: searched, copied, taken away as a file. */
import { type ReactNode, useId, useMemo, useState } from 'react';
import { useWords } from '../words/use-words.ts';
import { linesWith } from './windowing.ts';

interface ProgramToolsProps {
  readonly lines: readonly string[];
  readonly text: string;
  readonly download: string | undefined;
  readonly block: number | undefined;
  readonly count: (n: number) => string;
  readonly onBlock: (block: number) => void;
}

export const ProgramTools = ({ lines, text, download, block, count, onBlock }: ProgramToolsProps): ReactNode => {
  const words = useWords().program;
  const [wanted, setWanted] = useState('');
  const [copied, setCopied] = useState('');
  const id = useId();
  const hits = useMemo(() => linesWith(lines, wanted), [lines, wanted]);
  const at = block === undefined ? -1 : hits.indexOf(block);
  const go = (forwards: boolean): void => {
    const here = block ?? -1;
    const next = forwards ? (hits.find((l) => l > here) ?? hits[0]) : (hits.findLast((l) => l < here) ?? hits.at(-1));
    if (next !== undefined) onBlock(next);
  };
  const copy = (): void => {
    navigator.clipboard.writeText(text).then(
      () => setCopied(words.copied),
      () => setCopied(words.notCopied),
    );
  };
  return (
    <div className="program-tools">
      <label htmlFor={id}>{words.find}</label>
      <input
        id={id}
        type="search"
        value={wanted}
        onChange={(event) => setWanted(event.currentTarget.value)}
        onKeyDown={(event) => {
          if (event.key !== 'Enter') return;
          event.preventDefault();
          go(!event.shiftKey);
        }}
      />
      <button type="button" disabled={hits.length === 0} onClick={() => go(false)}>
        {words.before}
      </button>
      <button type="button" disabled={hits.length === 0} onClick={() => go(true)}>
        {words.next}
      </button>
      <output className="program-found">
        {wanted.trim() === '' ? '' : hits.length === 0 ? words.notFound : words.found(at < 0 ? '–' : count(at + 1), count(hits.length))}
      </output>
      <span className="program-away">
        <button type="button" className="plain" onClick={copy}>
          {words.copy}
        </button>
        {download !== undefined && (
          <a href={download} download>
            {words.download}
          </a>
        )}
        <span role="status">{copied}</span>
      </span>
    </div>
  );
};
