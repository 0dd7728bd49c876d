/** Keeps a replay going: frame by frame, or block by block for whoever asked for less motion. */
import { useEffect, useRef, useState } from 'react';
import { goneOn, STEP_SECONDS, steppedOn } from './playing.ts';
import type { Timeline } from './timeline.ts';

interface Playback {
  readonly timeline: Timeline | undefined;
  readonly moment: number | undefined;
  readonly playing: boolean;
  readonly speed: number;
  readonly onMoment: (moment: number) => void;
  readonly onEnded: () => void;
}

/** A frame that came late does not make the wire jump by more than so many seconds. */
const LONGEST = 0.1;

export const usePlayback = ({ timeline, moment, playing, speed, onMoment, onEnded }: Playback): void => {
  const still = useLessMotion();
  const newest = useRef({ moment, onMoment, onEnded });
  newest.current = { moment, onMoment, onEnded };
  useEffect(() => {
    if (!playing || timeline === undefined) return;
    const goOn = (next: number): boolean => {
      newest.current.moment = next;
      newest.current.onMoment(next);
      if (next >= timeline.length) newest.current.onEnded();
      return next < timeline.length;
    };
    if (still) {
      const timer = setInterval(() => goOn(steppedOn(timeline, newest.current.moment ?? 0)), STEP_SECONDS * 1000);
      return () => clearInterval(timer);
    }
    let before = performance.now();
    let frame = requestAnimationFrame(function tick(now) {
      const seconds = Math.min(LONGEST, Math.max(0, now - before) / 1000);
      before = now;
      if (goOn(goneOn(timeline, newest.current.moment ?? 0, seconds, speed))) frame = requestAnimationFrame(tick);
    });
    return () => cancelAnimationFrame(frame);
  }, [playing, timeline, speed, still]);
};

export const useLessMotion = (): boolean => {
  const [still, setStill] = useState(() => matchMedia('(prefers-reduced-motion: reduce)').matches);
  useEffect(() => {
    const asked = matchMedia('(prefers-reduced-motion: reduce)');
    const heard = (): void => setStill(asked.matches);
    asked.addEventListener('change', heard);
    return () => asked.removeEventListener('change', heard);
  }, []);
  return still;
};
