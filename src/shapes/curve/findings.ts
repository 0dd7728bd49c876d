/** What making rotors and spirals has to say. */
import { type Catalogue, finder } from '../../text/finding.ts';

export const catalogue = {
  'rotor-impossible': { severity: 'refusal', title: 'There is no such rotor' },
  'rotor-undercut': { severity: 'refusal', title: 'The pins cut the lobes of the rotor away' },
  'rotor-pins-meet': { severity: 'refusal', title: 'The pins of the ring run into each other' },
  'rotor-wall-thin': { severity: 'warning', title: 'Little metal is left between two openings of the disc' },
  'rotor-ring-fouls': { severity: 'refusal', title: 'The roots of the ring are in the way of the lobes' },
  'spiral-impossible': { severity: 'refusal', title: 'There is no such spiral' },
  'spiral-turns-touch': { severity: 'refusal', title: 'Neighbouring turns of the spiral run into each other' },
  'spiral-wall-thin': { severity: 'warning', title: 'Little is left between neighbouring turns' },
  'spiral-springs': { severity: 'warning', title: 'A long thin strip springs while it is cut' },
} satisfies Catalogue;

export const find = finder(catalogue);
