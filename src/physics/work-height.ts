/** What the wire cuts through and the drill goes through: the height that the job says. */
import { type Figure, given } from '../quantity/figure.ts';
import { saidBy } from '../quantity/source.ts';
import { say } from '../text/say.ts';

/** mm, exactly. */
export const workHeight = (height: number): Figure =>
  given({
    key: 'job.height',
    name: say('job.height')`height of the work`,
    value: height,
    unit: 'mm',
    basis: 'job',
    source: saidBy.job,
  });
