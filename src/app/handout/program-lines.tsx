/** Numbered lines of a program, of which only those in view are drawn, one of them marked. */
import { type KeyboardEvent, type ReactNode, type RefObject, useEffect, useId, useRef, useState } from 'react';
import { useWords } from '../words/use-words.ts';
import { heightOf, linesInView, scrollTo } from './windowing.ts';
import '../look/replay.css';

/** px; as replay.css has it. */
const LINE = 22;

export interface ProgramLinesProps {
  readonly label: string;
  readonly lines: readonly string[];
  /** The line that is marked, counted from 0. */
  readonly block: number | undefined;
  readonly looked: number | undefined;
  readonly onBlock: (block: number) => void;
  readonly onLook: (line: number | undefined) => void;
}

export const ProgramLines = ({ label, lines, block, looked, onBlock, onLook }: ProgramLinesProps): ReactNode => {
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
      aria-label={label}
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

interface LineProps extends Pick<ProgramLinesProps, 'onLook' | 'onBlock'> {
  readonly id: string;
  readonly line: number;
  readonly count: number;
  readonly text: string;
  readonly current: boolean;
  readonly looked: boolean;
}

const Line = ({ id, line, count, text, current, looked, onLook, onBlock }: LineProps): ReactNode => {
  const words = useWords().program;
  return (
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
      <code>{text.trim() === '' ? <span className="unseen">{words.emptyLine}</span> : text}</code>
    </div>
  );
};
