/** Writing down what was done at the machine. */
import type { LogEntry } from '../../server/message/job-record.ts';

export type WriteDown = (entry: Omit<LogEntry, 'at'>) => void;
