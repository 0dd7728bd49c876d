/** Saves a record as one works: a moment after each edit, again when the server comes back, and never over somebody else's work. */
import type { JobRecord } from '../../server/message/job-record.ts';
import { draftOf, dropDraft, keepDraft } from './draft.ts';
import { fetchJob, saveJob } from './server.ts';
import type { Saving } from './sheet-state.ts';

export interface Keeper {
  /** The record was changed. */
  keep(record: JobRecord): void;
  /** Takes what another tab saved, or puts ours over it. */
  takeTheirs(): Promise<void>;
  keepMine(): Promise<void>;
  /** Saves at once what waits; true when all is saved. */
  flush(): Promise<boolean>;
  /** Asks whether another tab saved in the meantime. */
  look(): Promise<void>;
  close(): void;
}

export interface KeeperEvents {
  readonly saving: (saving: Saving) => void;
  /** Another record is in force: theirs, or ours under a new revision. */
  readonly record: (record: JobRecord) => void;
}

/** ms */
const MOMENT = 300;
const AGAIN = 2000;

/** `mine` is given where unsaved work of an earlier visit is taken up again. */
export const startKeeper = (base: JobRecord, events: KeeperEvents, mine?: JobRecord): Keeper => {
  let revision = base.revision;
  let waiting: JobRecord | undefined = mine;
  let theirs: JobRecord | undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let busy: Promise<boolean> | undefined;

  const save = async (): Promise<boolean> => {
    clearTimeout(timer);
    const record = waiting;
    if (record === undefined) return true;
    if (theirs !== undefined) return false;
    events.saving('saving');
    const { name, steps, cursor, line } = record;
    const answer = await saveJob(record.id, { revision, name, steps, cursor, ...(line === undefined ? {} : { line }) });
    if (answer.kind === 'ok') return saved(record, answer.value.revision);
    if (answer.kind === 'refused' && answer.status === 409) return elsewhere(record);
    events.saving('waiting for the server');
    timer = setTimeout(() => void begin(), AGAIN);
    return false;
  };
  const saved = (record: JobRecord, now: number): boolean | Promise<boolean> => {
    revision = now;
    if (waiting !== record) return save();
    waiting = undefined;
    dropDraft(record.id);
    events.saving('saved');
    return true;
  };
  const elsewhere = async (record: JobRecord): Promise<boolean> => {
    const answer = await fetchJob(record.id);
    if (answer.kind !== 'ok') return false;
    theirs = answer.value;
    events.saving('changed elsewhere');
    return false;
  };
  /** One at a time: the revision that an answer brings is the one the next saving begins from. */
  const begin = (): Promise<boolean> => {
    busy ??= save().finally(() => {
      busy = undefined;
    });
    return busy;
  };
  if (mine !== undefined) timer = setTimeout(() => void begin(), 0);

  return {
    keep(record) {
      waiting = record;
      keepDraft({ ...record, revision });
      clearTimeout(timer);
      timer = setTimeout(() => void begin(), MOMENT);
    },
    async takeTheirs() {
      if (theirs === undefined) return;
      ({ revision } = theirs);
      const record = theirs;
      [waiting, theirs] = [undefined, undefined];
      dropDraft(record.id);
      events.record(record);
      events.saving('saved');
    },
    async keepMine() {
      if (theirs === undefined) return;
      ({ revision } = theirs);
      theirs = undefined;
      await begin();
    },
    flush: async () => (await begin()) && (waiting === undefined || begin()),
    async look() {
      if (waiting !== undefined || theirs !== undefined) return;
      const answer = await fetchJob(base.id);
      if (answer.kind !== 'ok' || answer.value.revision <= revision || waiting !== undefined) return;
      ({ revision } = answer.value);
      events.record(answer.value);
    },
    close: () => clearTimeout(timer),
  };
};

/** Unsaved work of an earlier visit, where there is some that the server does not have. */
export const unsaved = (record: JobRecord): JobRecord | undefined => {
  const draft = draftOf(record.id);
  return draft === undefined || JSON.stringify([draft.steps, draft.cursor]) === JSON.stringify([record.steps, record.cursor])
    ? undefined
    : draft;
};
