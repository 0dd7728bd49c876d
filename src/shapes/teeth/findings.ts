/** What making gears has to say. */
import { type Catalogue, finder } from '../../text/finding.ts';

export const catalogue = {
  'gear-size-twice': { severity: 'refusal', title: 'Module and diametral pitch are both given, or neither is' },
  'gear-helical': { severity: 'refusal', title: 'A straight wall cannot have helical teeth' },
  'gear-impossible': { severity: 'refusal', title: 'There is no such gear' },
  'gear-pointed': { severity: 'refusal', title: 'The flanks meet below the tip circle' },
  'gear-ring-tip': { severity: 'refusal', title: 'The tips of the internal teeth lie inside the base circle' },
  'gear-tip-thin': { severity: 'warning', title: 'The tooth is thin at its tip' },
  'gear-undercut': { severity: 'warning', title: 'The root cuts into the involute' },
  'gear-root-too-round': { severity: 'refusal', title: 'The root radius has no room between the teeth' },
  'gear-root-sharp': { severity: 'warning', title: 'No wire gets into the root as it is drawn' },
  'gear-pin-off-flank': { severity: 'warning', title: 'The pin does not measure the flanks' },
  'gear-mate-interferes': { severity: 'warning', title: 'The tip of one gear runs into the root of the other' },
  'gear-contact-short': { severity: 'warning', title: 'Less than one pair of teeth carries all the time' },
} satisfies Catalogue;

export const find = finder(catalogue);
