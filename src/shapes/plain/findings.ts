/** What making plain shapes has to say. */
import { type Catalogue, finder } from '../../text/finding.ts';

export const catalogue = {
  'shape-without-room': { severity: 'refusal', title: 'A radius, a hole or a clearance has no room in the shape' },
} satisfies Catalogue;

export const find = finder(catalogue);
