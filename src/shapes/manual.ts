/** What the manual says of shapes of any family. */
import type { Manual } from '../text/manual.ts';
import type { catalogue } from './findings.ts';

export const manual: Manual<typeof catalogue> = {
  'corner-below-any-wire': {
    title: 'No wire reaches into the corners of the shape',
    meaning:
      'An inside corner is asked for that is tighter than half of the finest wire there is; the spark gap comes on top of it. The wire leaves its own radius there, whatever is drawn.',
    matters:
      'The metal that stays in the corner may keep the mate from going home, and a very fine, slow and expensive wire is chosen for a corner that it cannot cut.',
    remedy: 'Allow a radius that the wire in stock can cut, or a relief; ask the customer if the drawing says sharp.',
  },
};
