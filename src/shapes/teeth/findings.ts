/** What making gears has to say. */
import { type Catalogue, finder } from '../../text/finding.ts';

export const catalogue = {
  'gear-size-twice': { severity: 'refusal' },
  'gear-helical': { severity: 'refusal' },
  'gear-impossible': { severity: 'refusal' },
  'gear-pointed': { severity: 'refusal' },
  'gear-ring-tip': { severity: 'refusal' },
  'gear-tip-thin': { severity: 'warning' },
  'gear-undercut': { severity: 'warning' },
  'gear-root-too-round': { severity: 'refusal' },
  'gear-root-sharp': { severity: 'warning' },
  'gear-pin-off-flank': { severity: 'warning' },
  'gear-mate-interferes': { severity: 'warning' },
  'gear-contact-short': { severity: 'warning' },
} satisfies Catalogue;

export const find = finder(catalogue);
