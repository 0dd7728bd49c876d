/** The start of the run: a handle on the strip that is dragged or moved by arrow keys, and a field to type it in. */
import { type KeyboardEvent, type PointerEvent, type ReactNode, useEffect, useId, useRef, useState } from 'react';
import { useWords } from '../words/use-words.ts';
import { isoOf, momentOfIso } from './strip-scale.ts';

/** Dragged and by keys in quarters of an hour. */
const QUARTER = 15;

interface StartHandleProps {
  readonly left: number;
  readonly start: number;
  readonly shift: number;
  readonly perMinute: number;
  readonly text: string;
  readonly onShift: (minutes: number) => void;
  readonly onStart: (at: number) => void;
}

const KEYS: Readonly<Record<string, number>> = { ArrowLeft: -1, ArrowDown: -1, ArrowRight: 1, ArrowUp: 1, PageDown: -4, PageUp: 4 };

/** Keys are let go of when none has been pressed for so long, ms. */
const PAUSE = 700;

export const StartHandle = ({ left, start, shift, perMinute, text, onShift, onStart }: StartHandleProps): ReactNode => {
  const words = useWords().strip;
  const grabbed = useRef<number | undefined>(undefined);
  const timer = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  useEffect(() => () => clearTimeout(timer.current), []);
  const toQuarter = (at: number): number => Math.round(at / QUARTER) * QUARTER;
  const moved = (event: PointerEvent): number =>
    toQuarter(start + (event.clientX - (grabbed.current ?? event.clientX)) / perMinute) - start;
  const letGo = (minutes: number): void => {
    clearTimeout(timer.current);
    grabbed.current = undefined;
    if (minutes !== 0) onStart(start + minutes);
  };
  const giveUp = (): void => {
    clearTimeout(timer.current);
    grabbed.current = undefined;
    onShift(0);
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key === 'Enter') letGo(shift);
    if (event.key === 'Escape') giveUp();
    const by = KEYS[event.key];
    if (by === undefined) return;
    event.preventDefault();
    const next = toQuarter(start + shift + by * QUARTER * (event.shiftKey ? 4 : 1)) - start;
    onShift(next);
    clearTimeout(timer.current);
    timer.current = setTimeout(() => letGo(next), PAUSE);
  };
  return (
    <div
      className="strip-handle"
      role="slider"
      tabIndex={0}
      aria-label={words.start}
      aria-valuenow={start + shift}
      aria-valuemin={start - 20160}
      aria-valuemax={start + 20160}
      aria-valuetext={text}
      style={{ left }}
      onPointerDown={(event) => {
        event.preventDefault();
        event.currentTarget.focus();
        event.currentTarget.setPointerCapture(event.pointerId);
        grabbed.current = event.clientX;
      }}
      onPointerMove={(event) => grabbed.current !== undefined && onShift(moved(event))}
      onPointerUp={(event) => grabbed.current !== undefined && letGo(moved(event))}
      onPointerCancel={giveUp}
      onKeyDown={onKeyDown}
    />
  );
};

export const StartField = ({ start, onStart }: { readonly start: number; readonly onStart: (at: number) => void }): ReactNode => {
  const words = useWords().strip;
  const id = useId();
  const [typed, setTyped] = useState<string | undefined>();
  const done = (): void => {
    const at = typed === undefined ? undefined : momentOfIso(typed.slice(0, 16));
    setTyped(undefined);
    if (at !== undefined && at !== start) onStart(at);
  };
  return (
    <span className="strip-field">
      <label htmlFor={id}>{words.start}</label>
      <input
        id={id}
        type="datetime-local"
        value={typed ?? isoOf(start)}
        onChange={(event) => setTyped(event.currentTarget.value)}
        onBlur={done}
        onKeyDown={(event) => {
          if (event.key === 'Enter') done();
          if (event.key === 'Escape') setTyped(undefined);
        }}
      />
    </span>
  );
};
