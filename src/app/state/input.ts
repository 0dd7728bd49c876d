/** The inputs of a job as they are edited: named steps, the one in force, and values by dotted path. */
import type { JobRecord, JobStep } from '../../server/message/job-record.ts';

export type Input = Readonly<Record<string, unknown>>;

/** Longer names of steps are cut: the server takes none. */
const LONGEST_NAME = 120;

/** Older steps than these are let go, but for the first, which is the job as it came in. */
const MOST_STEPS = 200;

export const inputOf = (record: JobRecord): Input => stepOf(record).input;

/** The step in force. */
export const stepOf = (record: JobRecord): JobStep => record.steps[Math.min(record.cursor, record.steps.length - 1)] as JobStep;

/** Adds a step after the one in force; what was undone before is gone then. A change that changes nothing adds none. */
export const withStep = (record: JobRecord, name: string, change: Input): JobRecord => {
  const before = inputOf(record);
  const input = changed(before, change);
  if (JSON.stringify(input) === JSON.stringify(before)) return record;
  const kept = record.steps.slice(0, record.cursor + 1);
  const steps = [
    ...(kept.length < MOST_STEPS ? kept : [kept[0] as JobStep, ...kept.slice(kept.length - MOST_STEPS + 2)]),
    { name: name.trim().slice(0, LONGEST_NAME), input },
  ];
  return { ...record, steps, cursor: steps.length - 1 };
};

/** What undo and redo would do, by name; none where there is nothing to undo or redo. */
export const undoName = ({ steps, cursor }: JobRecord): string | undefined => (cursor > 0 ? steps[cursor]?.name : undefined);
export const redoName = ({ steps, cursor }: JobRecord): string | undefined => steps[cursor + 1]?.name;

export const undone = (record: JobRecord): JobRecord => ({ ...record, cursor: Math.max(0, record.cursor - 1) });
export const redone = (record: JobRecord): JobRecord => ({ ...record, cursor: Math.min(record.steps.length - 1, record.cursor + 1) });

/** Every value of `change` set at its dotted path; undefined takes it out, and a group that is empty then goes with it. */
export const changed = (input: Input, change: Input): Input =>
  Object.entries(change).reduce((whole, [path, value]) => setAt(whole, path.split('.'), value), input);

const setAt = (whole: Input, [key, ...rest]: readonly string[], value: unknown): Input => {
  if (key === undefined) return whole;
  const inner = whole[key];
  const next = rest.length === 0 ? value : setAt(isGroup(inner) ? inner : {}, rest, value);
  const { [key]: _, ...others } = whole;
  const empty = rest.length > 0 && isGroup(next) && Object.keys(next).length === 0;
  return next === undefined || empty ? others : Object.hasOwn(whole, key) ? replaced(whole, key, next) : { ...whole, [key]: next };
};

/** Keeps the order of the keys, so that files and comparisons stay calm. */
const replaced = (whole: Input, key: string, value: unknown): Input =>
  Object.fromEntries(Object.entries(whole).map(([k, v]) => [k, k === key ? value : v]));

export const valueAt = (input: Input, path: string): unknown =>
  path.split('.').reduce<unknown>((inner, key) => (isGroup(inner) && Object.hasOwn(inner, key) ? inner[key] : undefined), input);

const isGroup = (value: unknown): value is Input => typeof value === 'object' && value !== null && !Array.isArray(value);
