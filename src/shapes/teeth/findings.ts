/** What making gears has to say. */
import { type Catalogue, finder } from '../../text/finding.ts';

export const catalogue = {
  'gear-size-twice': 'refusal',
  'gear-helical': 'refusal',
  'gear-impossible': 'refusal',
  'gear-pointed': 'refusal',
  'gear-ring-tip': 'refusal',
  'gear-tip-thin': 'warning',
  'gear-undercut': 'warning',
  'gear-root-too-round': 'refusal',
  'gear-root-sharp': 'warning',
  'gear-pin-off-flank': 'warning',
  'gear-mate-interferes': 'warning',
  'gear-contact-short': 'warning',
} satisfies Catalogue;

export const find = finder(catalogue);
