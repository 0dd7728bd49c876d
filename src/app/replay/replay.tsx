/** The cut replayed: play and pause, speed, block by block, and in words what happens at the moment. */
import { type ReactNode, useEffect, useId, useRef, useState } from 'react';
import { replayWords as words } from '../words/replay.ts';
import type { ClockView, ProgramView } from '../work/views.ts';
import { goneOn, SPEEDS, STEP_SECONDS, steppedOn, usualSpeed } from './playing.ts';
import { calm, oclockOf } from './strip-scale.ts';
import { nextStep, type Standing, stepBefore, type Timeline } from './timeline.ts';
import { useReplayed } from './use-replayed.ts';
import './replay.css';

export interface ReplayProps {
  readonly timeline: Timeline;
  readonly clock: ClockView;
  readonly program: ProgramView;
  /** Minutes from the start of the run; nothing is replayed when left out. */
  readonly moment: number | undefined;
  readonly locale?: string | undefined;
  readonly onMoment: (moment: number | undefined) => void;
}

export const Replay = ({ timeline, clock, program, moment, locale, onMoment }: ReplayProps): ReactNode => {
  const [speed, setSpeed] = useState(() => usualSpeed(timeline));
  const still = useLessMotion();
  const [playing, setPlaying] = usePlaying(timeline, moment, speed, still, onMoment);
  const now = useReplayed(timeline, program, moment);
  const ended = moment !== undefined && moment >= timeline.length;
  const id = useId();
  const go = (to: number): void => {
    setPlaying(false);
    onMoment(to);
  };
  return (
    <section className="replay" aria-label={words.title}>
      <div className="replay-row">
        <button type="button" className="replay-play" onClick={() => (ended && !playing ? (onMoment(0), setPlaying(true)) : setPlaying(!playing))}>
          {playing ? words.pause : ended ? words.again : words.play}
        </button>
        <button type="button" disabled={(moment ?? 0) <= 0} onClick={() => go(stepBefore(timeline, moment ?? 0))}>
          {words.back}
        </button>
        <button type="button" disabled={ended} onClick={() => go(moment === undefined ? 0 : nextStep(timeline, moment))}>
          {words.forward}
        </button>
        <span className="replay-speed">
          <label htmlFor={id}>{words.speed}</label>
          <select id={id} value={speed} onChange={(event) => setSpeed(Number(event.currentTarget.value))}>
            {SPEEDS.map((s) => (
              <option key={s} value={s}>
                {new Intl.NumberFormat(locale).format(s)}
              </option>
            ))}
          </select>
        </span>
        <button type="button" className="plain" disabled={moment === undefined} onClick={() => (setPlaying(false), onMoment(undefined))}>
          {words.leave}
        </button>
      </div>
      <p className="replay-says" aria-live={playing ? 'off' : 'polite'}>
        {moment !== undefined && now !== undefined
          ? words.says(oclockOf(clock.start + moment), ended ? words.ended : saidOf(now.standing, clock, locale))
          : still
            ? words.stepped
            : words.shortened}
      </p>
    </section>
  );
};

/** What happens, in words: from the event of the clock, and how far the move is. */
const saidOf = ({ stretch, move, share, block, piece, moving }: Standing, clock: ClockView, locale: string | undefined): string => {
  const event = clock.events[stretch];
  if (event === undefined) return '';
  const pieces = clock.events.at(-1)?.piece ?? 1;
  const tail = pieces > 1 ? words.piece(piece) : '';
  if (!moving) return `${event.kind === 'waiting for a person' ? words.waits : words.stands(calm(event.what))}${tail}`;
  const line = new Intl.NumberFormat(locale).format((block ?? move) + 1);
  if (event.kind === 'travel') return words.travel(line) + tail;
  return words.cutting(Number(/\d+/.exec(event.what)?.[0] ?? 1), line, `${Math.floor(share * 100)} %`) + tail;
};

type Setter = (playing: boolean) => void;

/** Goes on frame by frame; for whoever asked for less motion, block by block. */
const usePlaying = (
  timeline: Timeline,
  moment: number | undefined,
  speed: number,
  still: boolean,
  onMoment: (moment: number) => void,
): readonly [boolean, Setter] => {
  const [playing, setPlaying] = useState(false);
  const newest = useRef({ moment, onMoment });
  newest.current = { moment, onMoment };
  useEffect(() => {
    if (!playing) return;
    const goOn = (next: number): boolean => {
      newest.current.moment = next;
      newest.current.onMoment(next);
      if (next >= timeline.length) setPlaying(false);
      return next < timeline.length;
    };
    if (still) {
      const timer = setInterval(() => goOn(steppedOn(timeline, newest.current.moment ?? 0)), STEP_SECONDS * 1000);
      return () => clearInterval(timer);
    }
    let before = performance.now();
    let frame = requestAnimationFrame(function tick(now) {
      const seconds = Math.min(0.1, Math.max(0, now - before) / 1000);
      before = now;
      if (goOn(goneOn(timeline, newest.current.moment ?? 0, seconds, speed))) frame = requestAnimationFrame(tick);
    });
    return () => cancelAnimationFrame(frame);
  }, [playing, timeline, speed, still]);
  return [playing, setPlaying];
};

const useLessMotion = (): boolean => {
  const [still, setStill] = useState(() => matchMedia('(prefers-reduced-motion: reduce)').matches);
  useEffect(() => {
    const asked = matchMedia('(prefers-reduced-motion: reduce)');
    const heard = (): void => setStill(asked.matches);
    asked.addEventListener('change', heard);
    return () => asked.removeEventListener('change', heard);
  }, []);
  return still;
};
