/** Unsaved work in the browser's own storage, so that a closed tab, a crash or a server that is gone loses nothing. */
import type { JobRecord } from '../../server/message/job-record.ts';

const keyOf = (id: string): string => `draft ${id}`;

/** A full storage loses the draft only; the work goes on. */
export const keepDraft = (record: JobRecord): void => {
  try {
    localStorage.setItem(keyOf(record.id), JSON.stringify(record));
  } catch {
    // Nothing to be done: the server still has, or will have, the record.
  }
};

export const dropDraft = (id: string): void => localStorage.removeItem(keyOf(id));

/** Written by this page; one that cannot be read is none. */
export const draftOf = (id: string): JobRecord | undefined => {
  try {
    const text = localStorage.getItem(keyOf(id));
    return text === null ? undefined : (JSON.parse(text) as JobRecord);
  } catch {
    return undefined;
  }
};
