/** What the picture is told of a replay; nothing where none is shown. */
import { useMemo } from 'react';
import type { ProgramView, ScheduleView } from '../work/views.ts';
import { type AtMoment, atMoment } from './at-moment.ts';
import { type Timeline, timelineOf } from './timeline.ts';

export const useTimeline = (schedule: ScheduleView | undefined, program: ProgramView | undefined): Timeline | undefined =>
  useMemo(() => (schedule === undefined || program === undefined ? undefined : timelineOf(schedule, program)), [schedule, program]);

export const useReplayed = (
  timeline: Timeline | undefined,
  program: ProgramView | undefined,
  moment: number | undefined,
): AtMoment | undefined =>
  useMemo(
    () => (timeline === undefined || program === undefined || moment === undefined ? undefined : atMoment(timeline, program, moment)),
    [timeline, program, moment],
  );
