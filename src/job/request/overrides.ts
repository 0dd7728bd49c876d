/** What of a job was set by hand in place of what the planner would choose: by loop or line, and for the job as a whole. */
import type { OverridesMade } from '../../result/facts.ts';
import type { Job } from '../job.ts';

/** None where everything is left to the planner. */
export const overridesOf = (job: Job): OverridesMade | undefined => {
  const contours: Record<string, string[]> = {};
  const add = (ids: readonly string[], what: string): void => {
    for (const id of ids) contours[id] = [...(Object.hasOwn(contours, id) ? (contours[id] ?? []) : []), what];
  };
  const hands = Object.entries(job.overrides);
  const having = (what: 'entry' | 'hole' | 'tab'): readonly string[] => hands.filter(([, h]) => h[what] !== undefined).map(([id]) => id);
  add(having('entry'), 'entry');
  add(having('hole'), 'hole');
  add(having('tab'), 'tab');
  add([...new Set([...Object.keys(job.kept), ...Object.keys(job.open)])], 'kept');
  add(Object.keys(job.start), 'start');
  add(Object.keys(job.core), 'core');
  add([...new Set(job.order)], 'order');
  const whole = [
    ...(job.wire === undefined ? [] : ['wire']),
    ...(job.passes === undefined ? [] : ['passes']),
    ...((job.offsets ?? []).length === 0 ? [] : ['offsets']),
    ...(job.order.length === 0 ? [] : ['order']),
    ...(job.datum === undefined ? [] : ['datum']),
    ...(job.clamps.length === 0 ? [] : ['clamps']),
    ...(job.holes.length === 0 ? [] : ['holes']),
  ];
  return Object.keys(contours).length + whole.length === 0 ? undefined : { contours, whole };
};
