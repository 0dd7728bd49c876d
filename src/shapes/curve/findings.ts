/** What making rotors and spirals has to say. */
import { type Catalogue, finder } from '../../text/finding.ts';

export const catalogue = {
  'rotor-impossible': 'refusal',
  'rotor-undercut': 'refusal',
  'rotor-pins-meet': 'refusal',
  'rotor-wall-thin': 'warning',
  'rotor-ring-fouls': 'refusal',
  'spiral-impossible': 'refusal',
  'spiral-turns-touch': 'refusal',
  'spiral-wall-thin': 'warning',
  'spiral-springs': 'warning',
} satisfies Catalogue;

export const find = finder(catalogue);
