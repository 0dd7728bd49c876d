/** What the manual says of plain shapes. */
import type { Manual } from '../../text/manual.ts';
import type { catalogue } from './findings.ts';

export const manual: Manual<typeof catalogue> = {
  'shape-without-room': {
    title: 'A radius, a hole or a clearance has no room in the shape',
    meaning:
      'Corner radii of two neighbours would meet, holes would run into each other or out of the ring, or the clearance is larger than the shape itself.',
    remedy: 'Look at the number that the finding points to, and make it smaller or the shape larger.',
  },
};
