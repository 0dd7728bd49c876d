/** What making rotors and spirals has to say. */
import { type Catalogue, finder } from '../../text/finding.ts';

export const catalogue = {
  'rotor-impossible': { severity: 'refusal' },
  'rotor-undercut': { severity: 'refusal' },
  'rotor-pins-meet': { severity: 'refusal' },
  'rotor-wall-thin': { severity: 'warning' },
  'rotor-ring-fouls': { severity: 'refusal' },
  'spiral-impossible': { severity: 'refusal' },
  'spiral-turns-touch': { severity: 'refusal' },
  'spiral-wall-thin': { severity: 'warning' },
  'spiral-springs': { severity: 'warning' },
} satisfies Catalogue;

export const find = finder(catalogue);
