/** The cut replayed: play and pause, speed, block by block, and in words what happens at the moment. */

import { type ReactNode, useId } from 'react';
import { localCount } from '../../text/print/local.ts';
import { useWords } from '../words/use-words.ts';
import type { Words } from '../words/words-for.ts';
import type { ProgramView, ScheduleView } from '../work/views.ts';
import { SPEEDS } from './playing.ts';
import { whenOf } from './strip-scale.ts';
import { nextStep, type Standing, stepBefore, type Timeline } from './timeline.ts';
import { useLessMotion } from './use-playback.ts';
import { useReplayed } from './use-replayed.ts';
import '../look/replay.css';

export interface ReplayProps {
  readonly timeline: Timeline;
  readonly schedule: ScheduleView;
  readonly program: ProgramView;
  /** Minutes from the start of the run; nothing is replayed when left out. */
  readonly moment: number | undefined;
  readonly playing: boolean;
  /** Minutes of the run in a second. */
  readonly speed: number;
  readonly locale?: string | undefined;
  readonly onMoment: (moment: number | undefined) => void;
  readonly onPlaying: (playing: boolean) => void;
  readonly onSpeed: (speed: number) => void;
}

export const Replay = (props: ReplayProps): ReactNode => {
  const words = useWords().replay;
  const { timeline, schedule, program, moment, playing, speed, locale, onMoment, onPlaying, onSpeed } = props;
  const still = useLessMotion();
  const now = useReplayed(timeline, program, moment);
  const ended = moment !== undefined && moment >= timeline.length;
  const id = useId();
  const go = (to: number | undefined): void => {
    onPlaying(false);
    onMoment(to);
  };
  const play = (): void => {
    if (ended && !playing) onMoment(0);
    onPlaying(!playing);
  };
  return (
    <section className="replay" aria-label={words.title}>
      <div className="replay-row">
        <button type="button" className="replay-play" onClick={play}>
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
          <select id={id} value={speed} onChange={(event) => onSpeed(Number(event.currentTarget.value))}>
            {SPEEDS.map((s) => (
              <option key={s} value={s}>
                {localCount(s, locale)}
              </option>
            ))}
          </select>
        </span>
        <button type="button" className="plain" aria-label={words.leaveIt} disabled={moment === undefined} onClick={() => go(undefined)}>
          {words.leave}
        </button>
      </div>
      <p className="replay-says" aria-live={playing ? 'off' : 'polite'}>
        {moment !== undefined && now !== undefined
          ? words.says(
              whenOf(schedule.start + moment, schedule, locale),
              ended ? words.ended : saidOf(now.standing, schedule, locale, words),
            )
          : still
            ? words.stepped
            : words.shortened}
      </p>
    </section>
  );
};

/** What happens, in words: from the event of the clock, and how far the move is. */
const saidOf = (
  { stretch, move, share, block, piece, moving }: Standing,
  schedule: ScheduleView,
  locale: string | undefined,
  words: Words['replay'],
): string => {
  const { event } = stretch;
  const pieces = schedule.events.at(-1)?.piece ?? 1;
  const tail = pieces > 1 ? words.piece(piece) : '';
  if (!moving) return `${event.kind === 'waiting for a person' ? words.waits : words.stands(event.what)}${tail}`;
  const line = localCount((block ?? move) + 1, locale);
  if (event.kind === 'travel') return words.travel(line) + tail;
  return words.cutting(event.pass ?? 1, line, `${Math.floor(share * 100)} %`) + tail;
};
