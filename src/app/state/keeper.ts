/** Saves a record as one works: a moment after each edit, again when the server comes back, and never over somebody else's work. */
import type { Saving as JobSaving } from '../../server/message/answers.ts';
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
  /** The page is about to go: what waits is sent, without waiting for what is still under way. */
  leave(): void;
  /** Saves what waits, and hears no more. */
  close(): void;
}

export interface KeeperEvents {
  readonly saving: (saving: Saving) => void;
  /** Another record is in force: theirs, or ours under a new revision. */
  readonly record: (record: JobRecord) => void;
  /** What the server has beside the steps, which counts no revision up: programs that another tab brought. */
  readonly beside: (record: JobRecord) => void;
}

/** ms */
const MOMENT = 300;
const AGAIN = 2000;

/** `mine` is given where unsaved work of an earlier visit is taken up again; its revision is the one it began from. */
export const startKeeper = (base: JobRecord, events: KeeperEvents, mine?: JobRecord): Keeper => new RecordKeeper(base, events, mine);

class RecordKeeper implements Keeper {
  private revision: number;
  private waiting: JobRecord | undefined;
  private theirs: JobRecord | undefined;
  private timer: ReturnType<typeof setTimeout> | undefined;
  private busy: Promise<boolean> | undefined;
  private underWay: JobRecord | undefined;
  private closed = false;
  private away = false;
  private told: Saving = 'saved';
  private readonly id: string;
  private readonly events: KeeperEvents;

  constructor(base: JobRecord, events: KeeperEvents, mine: JobRecord | undefined) {
    this.id = base.id;
    this.revision = mine?.revision ?? base.revision;
    this.events = events;
    this.waiting = mine;
    if (mine !== undefined) this.later(0);
  }

  keep(record: JobRecord): void {
    this.waiting = record;
    keepDraft({ ...record, revision: this.revision });
    // It is not saved from the moment it is changed; any trouble stays told.
    if (this.told === 'saved') this.tell('saving');
    this.later(MOMENT);
  }

  async takeTheirs(): Promise<void> {
    const record = this.theirs;
    if (record === undefined) return;
    this.revision = record.revision;
    this.waiting = undefined;
    this.theirs = undefined;
    dropDraft(record.id);
    this.events.record(record);
    this.tell('saved');
  }

  async keepMine(): Promise<void> {
    if (this.theirs === undefined) return;
    this.revision = this.theirs.revision;
    this.theirs = undefined;
    await this.begin();
  }

  async flush(): Promise<boolean> {
    return (await this.begin()) && (this.waiting === undefined || this.begin());
  }

  async look(): Promise<void> {
    if (this.away) await this.begin();
    if (this.waiting !== undefined || this.theirs !== undefined) return;
    const answer = await fetchJob(this.id);
    if (answer.kind !== 'ok') return;
    this.events.beside(answer.value);
    if (answer.value.revision <= this.revision || this.waiting !== undefined) return;
    this.revision = answer.value.revision;
    this.events.record(answer.value);
  }

  leave(): void {
    const record = this.waiting;
    if (record === undefined || this.theirs !== undefined) return;
    if (this.busy === undefined) void this.begin();
    // What is under way will have counted the revision up; where it has not, the draft is there still.
    else if (record !== this.underWay) void saveJob(record.id, saidOf(record, this.revision + 1));
  }

  close(): void {
    this.closed = true;
    void this.flush();
  }

  private tell(saving: Saving): void {
    this.told = saving;
    this.events.saving(saving);
  }

  private later(wait: number): void {
    clearTimeout(this.timer);
    if (this.closed) return;
    this.timer = setTimeout(() => void this.begin(), wait);
  }

  /** One at a time: the revision that an answer brings is the one the next saving begins from. */
  private begin(): Promise<boolean> {
    this.busy ??= this.save().finally(() => {
      this.busy = undefined;
    });
    return this.busy;
  }

  private async save(): Promise<boolean> {
    clearTimeout(this.timer);
    const record = this.waiting;
    if (record === undefined) return true;
    if (this.theirs !== undefined) return false;
    this.away = false;
    // A server that was gone may be so still: that stays told until it answers.
    if (this.told !== 'waiting for the server') this.tell('saving');
    this.underWay = record;
    const answer = await saveJob(record.id, saidOf(record, this.revision));
    if (answer.kind === 'ok') return this.saved(record, answer.value.revision);
    if (answer.kind === 'refused' && answer.status === 409) return this.elsewhere();
    if (answer.kind === 'refused' && answer.status === 404) return this.putAway();
    return this.gone();
  }

  private gone(): boolean {
    this.tell('waiting for the server');
    this.later(AGAIN);
    return false;
  }

  /** Whoever puts it back says so with `flush`; a tab that is looked at again tries by itself. */
  private putAway(): boolean {
    this.away = true;
    this.tell('put away');
    return false;
  }

  /** What was changed while it was under way is saved next. */
  private saved(record: JobRecord, revision: number): boolean | Promise<boolean> {
    this.revision = revision;
    if (this.waiting !== undefined && this.waiting !== record) {
      keepDraft({ ...this.waiting, revision });
      this.tell('saving');
      return this.save();
    }
    this.waiting = undefined;
    dropDraft(record.id);
    this.tell('saved');
    return true;
  }

  /** What is in force may be our own: the server took it, and was gone before it could say so. */
  private async elsewhere(): Promise<boolean> {
    const answer = await fetchJob(this.id);
    if (answer.kind !== 'ok') return this.gone();
    if (this.waiting !== undefined && continues(this.waiting, answer.value)) {
      this.revision = answer.value.revision;
      return this.save();
    }
    this.theirs = answer.value;
    this.tell('changed elsewhere');
    return false;
  }
}

const saidOf = ({ name, steps, cursor, line, answeredFrom }: JobRecord, revision: number): JobSaving => ({
  revision,
  name,
  steps,
  cursor,
  line,
  answeredFrom,
});

/** Whether saving ours loses nothing of what is in force: the same steps, or those with more after them. */
const continues = (ours: JobRecord, inForce: JobRecord): boolean => {
  const { steps, cursor } = inForce;
  if (!alike(steps, ours.steps.slice(0, steps.length))) return false;
  return cursor === steps.length - 1 || (cursor === ours.cursor && steps.length === ours.steps.length);
};

const alike = (one: unknown, other: unknown): boolean => JSON.stringify(one) === JSON.stringify(other);

/** Unsaved work of an earlier visit, where there is some that the server does not have. What was written down since stays. */
export const unsaved = (record: JobRecord): JobRecord | undefined => {
  const draft = draftOf(record.id);
  if (draft === undefined || alike([draft.steps, draft.cursor], [record.steps, record.cursor])) return undefined;
  const { log, programs } = record;
  return { ...draft, log, programs: programs ?? draft.programs };
};
