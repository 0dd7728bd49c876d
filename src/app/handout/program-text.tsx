/** The program as text, with what can be done with it and what a line means in plain words. */

import { type ReactNode, useMemo, useState } from 'react';
import { blockMeaning } from '../../job/handout/block-meaning.ts';
import { localCount } from '../../text/print/local.ts';
import { useWords } from '../words/use-words.ts';
import type { ProgramView } from '../work/views.ts';
import { ProgramLines } from './program-lines.tsx';
import { ProgramTools } from './program-tools.tsx';
import '../look/replay.css';

export interface ProgramTextProps {
  readonly program: ProgramView;
  /** Line counted from 0, as blocks are. */
  readonly block: number | undefined;
  readonly locale?: string | undefined;
  /** Address of the program as a file; no link when left out. */
  readonly download?: string | undefined;
  readonly onBlock: (block: number) => void;
}

export const ProgramText = ({ program, block, locale, download, onBlock }: ProgramTextProps): ReactNode => {
  const words = useWords().program;
  const lines = useMemo(() => program.text.replace(/\r?\n$/, '').split(/\r?\n/), [program]);
  const count = (n: number): string => localCount(n, locale);
  const [looked, setLooked] = useState<number | undefined>();
  const said = looked ?? block;
  const line = said === undefined ? undefined : lines[said];
  const meaning = useMemo(() => (line === undefined ? undefined : blockMeaning(line, program.words)), [line, program.words]);
  return (
    <section className="program" aria-label={words.title}>
      <p className="fact">{words.about(count(lines.length), program.dialect, program.units)}</p>
      <ProgramTools lines={lines} text={program.text} download={download} block={block} count={count} onBlock={onBlock} />
      <ProgramLines label={words.text} lines={lines} block={block} onBlock={onBlock} onLook={setLooked} looked={looked} />
      <p className="program-meaning" aria-live="polite">
        {said === undefined
          ? words.help
          : meaning === undefined
            ? words.saysNothing(count(said + 1))
            : words.meaning(count(said + 1), meaning)}
      </p>
    </section>
  );
};
