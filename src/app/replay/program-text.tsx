/** The program as text: numbered lines of which only those in view are drawn, the current block marked, what a line means in plain words. */
import { type KeyboardEvent, type ReactNode, type RefObject, useEffect, useId, useMemo, useRef, useState } from 'react';
import { programWords as words } from '../words/replay.ts';
import type { ProgramView } from '../work/views.ts';
import { ProgramTools } from './program-tools.tsx';
import { heightOf, linesInView, scrollTo } from './windowing.ts';
import './replay.css';

export interface ProgramTextProps {
  readonly program: ProgramView;
  /** Line counted from 0, as blocks are. */
  readonly block: number | undefined;
  readonly locale?: string | undefined;
  /** Address of the program as a file; no link when left out. */
  readonly download?: string | undefined;
  readonly onBlock: (block: number) => void;
}

/** px; as replay.css has it. */
const LINE = 22;

export const ProgramText = ({ program, block, locale, download, onBlock }: ProgramTextProps): ReactNode => {
  const lines = useMemo(() => program.text.replace(/\r?\n$/, '').split(/\r?\n/), [program]);
  const count = (n: number): string => new Intl.NumberFormat(locale).format(n);
  const [looked, setLooked] = useState<number | undefined>();
  const said = looked ?? block;
  const meaning = said === undefined ? undefined : program.meaning[said] || words.nothing;
  return (
    <section className="program" aria-label={words.title}>
      <p className="fact">{words.about(count(lines.length), program.dialect, program.units)}</p>
      <ProgramTools lines={lines} text={program.text} download={download} block={block} count={count} onBlock={onBlock} />
      <Text lines={lines} block={block} onBlock={onBlock} onLook={setLooked} looked={looked} />
      <p className="program-meaning" aria-live="polite">
        {said === undefined ? words.help : words.meaning(count(said + 1), meaning ?? '')}
      </p>
    </section>
  );
};

interface TextProps {
  readonly lines: readonly string[];
  readonly block: number | undefined;
  readonly looked: number | undefined;
  readonly onBlock: (block: number) => void;
  readonly onLook: (line: number | undefined) => void;
}

const Text = ({ lines, block, looked, onBlock, onLook }: TextProps): ReactNode => {
  const box = useRef<HTMLDivElement>(null);
  const [view, setView] = useState({ top: 0, height: 396 });
  const id = useId();
  const { first, end, offset } = linesInView({ ...view, line: LINE }, lines.length);
  const show = useScrolling(box, lines, block);
  const go = (line: number): void => {
    const to = Math.min(Math.max(line, 0), lines.length - 1);
    onLook(to);
    show(to);
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    const at = looked ?? block ?? first;
    const step = stepOf(event.key, Math.floor(view.height / LINE) - 2, lines.length);
    if (event.key === 'Enter' || event.key === ' ') onBlock(at);
    else if (step !== undefined) go(at + step);
    else return;
    event.preventDefault();
  };
  return (
    <div
      className="program-text"
      ref={box}
      role="listbox"
      aria-label={words.text}
      aria-activedescendant={looked === undefined ? undefined : `${id}-${looked}`}
      tabIndex={0}
      onKeyDown={onKeyDown}
      onBlur={() => onLook(undefined)}
      onPointerLeave={() => onLook(undefined)}
      onScroll={(event) => setView({ top: event.currentTarget.scrollTop, height: event.currentTarget.clientHeight })}
    >
      <div className="program-whole" style={{ height: heightOf(lines.length, LINE) }} role="presentation">
        <div className="program-lines" style={{ transform: `translateY(${offset}px)` }} role="presentation">
          {inView(first, end).map((line) => (
            <Line
              key={line}
              id={`${id}-${line}`}
              line={line}
              count={lines.length}
              text={lines[line] ?? ''}
              current={line === block}
              looked={line === looked}
              onLook={onLook}
              onBlock={onBlock}
            />
          ))}
        </div>
      </div>
    </div>
  );
};

/** Brings a line into view, and by itself the current block whenever it is another one. */
const useScrolling = (box: RefObject<HTMLDivElement | null>, lines: readonly string[], block: number | undefined) => {
  const show = (line: number): void => {
    const { current } = box;
    if (current === null) return;
    const top = scrollTo(line, { top: current.scrollTop, height: current.clientHeight, line: LINE }, lines.length);
    if (top !== current.scrollTop) current.scrollTop = top;
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: only another block, or another program, moves the text
  useEffect(() => {
    if (block !== undefined) show(block);
  }, [block, lines]);
  return show;
};

const inView = (first: number, end: number): readonly number[] => Array.from({ length: end - first }, (_, i) => first + i);

/** Lines that a key goes on by; to the very ends by more than there are. */
const stepOf = (key: string, page: number, count: number): number | undefined => {
  const steps: Readonly<Record<string, number>> = { ArrowDown: 1, ArrowUp: -1, PageDown: page, PageUp: -page, Home: -count, End: count };
  return steps[key];
};

interface LineProps extends Pick<TextProps, 'onLook' | 'onBlock'> {
  readonly id: string;
  readonly line: number;
  readonly count: number;
  readonly text: string;
  readonly current: boolean;
  readonly looked: boolean;
}

const Line = ({ id, line, count, text, current, looked, onLook, onBlock }: LineProps): ReactNode => (
  // biome-ignore lint/a11y/useKeyWithClickEvents: the keys are those of the list box
  <div
    id={id}
    role="option"
    tabIndex={-1}
    className="program-line"
    aria-selected={current}
    data-looked={looked}
    aria-posinset={line + 1}
    aria-setsize={count}
    onPointerEnter={() => onLook(line)}
    onClick={() => onBlock(line)}
  >
    <span className="program-number" aria-hidden="true">
      {line + 1}
    </span>
    <code>{text}</code>
  </div>
);
