/** What a job holds the cut against though nobody asked for it. */

import type { WantedField } from '../../text/wanted.ts';
import type { JobRun } from '../job-run.ts';

const FIELDS: readonly WantedField[] = ['tolerance', 'finish', 'insideCorner'];

/** None where all of it was given. */
export const takenOf = ({ said }: Pick<JobRun, 'said'>): readonly WantedField[] | undefined => {
  const taken = FIELDS.filter((field) => !said.has(field));
  return taken.length === 0 ? undefined : taken;
};
