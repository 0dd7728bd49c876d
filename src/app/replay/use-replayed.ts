/** What the picture is told of a replay; nothing where none is shown. */
import { useMemo } from 'react';
import type { ClockView, ProgramView } from '../work/views.ts';
import { type AtMoment, atMoment } from './at-moment.ts';
import { type Timeline, timelineOf } from './timeline.ts';

export const useTimeline = (clock: ClockView | undefined, program: ProgramView | undefined): Timeline | undefined =>
  useMemo(() => (clock === undefined || program === undefined ? undefined : timelineOf(clock, program)), [clock, program]);

export const useReplayed = (
  timeline: Timeline | undefined,
  program: ProgramView | undefined,
  moment: number | undefined,
): AtMoment | undefined =>
  useMemo(
    () => (timeline === undefined || program === undefined || moment === undefined ? undefined : atMoment(timeline, program, moment)),
    [timeline, program, moment],
  );
