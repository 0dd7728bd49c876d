/** What is written down at the machine: sent at once, kept in the browser while the server is gone, in order and never twice. */
import type { LogEntry } from '../../server/message/job-record.ts';
import { addToLog } from './server.ts';

export interface LogKeeper {
  add(entry: Omit<LogEntry, 'at'>): void;
  /** Entries the server does not have yet. */
  readonly waiting: () => readonly LogEntry[];
  close(): void;
}

/** ms */
const AGAIN = 2000;

/** `kept` is told whenever the server has taken an entry, with the log as it is now; `changed` whenever the waiting ones change. */
export const startLogKeeper = (
  id: string,
  told: { readonly kept: (log: readonly LogEntry[]) => void; readonly changed: () => void },
): LogKeeper => {
  let waiting: readonly LogEntry[] = kept(id);
  let timer: ReturnType<typeof setTimeout> | undefined;
  let busy = false;

  const put = (entries: readonly LogEntry[]): void => {
    waiting = entries;
    try {
      localStorage.setItem(keyOf(id), JSON.stringify(entries));
    } catch {
      // The entries stay in this tab at least.
    }
    told.changed();
  };
  const send = async (): Promise<void> => {
    clearTimeout(timer);
    const [first] = waiting;
    if (first === undefined || busy) return;
    busy = true;
    const answer = await sent(id, first);
    busy = false;
    if (answer.kind !== 'ok') {
      timer = setTimeout(() => void send(), AGAIN);
      return;
    }
    put(waiting.slice(1));
    told.kept(answer.value.log);
    void send();
  };
  void send();
  return {
    add(entry) {
      put([...waiting, { ...entry, at: new Date().toISOString() }]);
      void send();
    },
    waiting: () => waiting,
    close: () => clearTimeout(timer),
  };
};

/** Nothing that was written down may stop what comes after it: what the server refuses is sent with its time of the server, and at last as a note. */
const sent = async (id: string, entry: LogEntry): ReturnType<typeof addToLog> => {
  const { at: _, ...timeless } = entry;
  const answer = await addToLog(id, entry);
  if (!isRefused(answer)) return answer;
  const again = await addToLog(id, timeless);
  return isRefused(again) ? addToLog(id, { ...timeless, kind: 'note', text: `${entry.kind}: ${entry.text}` }) : again;
};

const isRefused = (answer: Awaited<ReturnType<typeof addToLog>>): boolean => answer.kind === 'refused' && answer.status === 400;

const keyOf = (id: string): string => `log ${id}`;

const kept = (id: string): readonly LogEntry[] => {
  try {
    return JSON.parse(localStorage.getItem(keyOf(id)) ?? '[]') as readonly LogEntry[];
  } catch {
    return [];
  }
};
