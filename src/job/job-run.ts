/** All that one run of a job is asked with: its inputs, its drawing, the shop and the dialect, and what the caller remembers and tells. */

import type { Point } from '../geometry/segment.ts';
import type { Dialect } from '../nc/dialect/dialect.ts';
import type { Shape } from '../shapes/shape.ts';
import type { Finding } from '../text/finding.ts';
import type { Text } from '../text/text.ts';
import type { Job } from './job.ts';
import type { Memory } from './memory.ts';
import type { Shop } from './shop.ts';

export interface JobRun {
  readonly job: Job;
  /** Keys that the user or the job file gave; what is missing here was assumed. */
  readonly said: ReadonlySet<string>;
  /** What was found on reading its files. */
  readonly notes?: readonly Finding[] | undefined;
  readonly drawing: Uint8Array;
  readonly drawingName: string;
  /** Where the job is by numbers: what was made of them; the drawing shows it. */
  readonly shape?: Shape | undefined;
  readonly shop: Shop;
  readonly dialect: Dialect;
  /** Day of the answer, ISO 8601. */
  readonly day: string;
  /** By loop id: entries at which our own proof refused the first plan of this job. */
  readonly refused?: Readonly<Record<string, readonly Point[]>> | undefined;
  /** Told before each stage begins: 'reading the drawing', with how far the job is, 0 to 1. */
  readonly progress?: (stage: Text, share: number) => void;
  /** Shared by the runs of one job and its what-ifs; the drawing must be the same in all of them. */
  readonly memory?: Memory;
}
