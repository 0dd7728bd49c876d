/** What running a job can find, beyond what its layers find. */
import { type Catalogue, finder } from '../text/finding.ts';

export const catalogue = {
  'file-not-valid': { severity: 'refusal' },
  'layer-unknown': { severity: 'refusal' },
  'no-closed-contour': { severity: 'refusal' },
  'open-of-unknown-line': { severity: 'warning' },
  'ease-failed': { severity: 'refusal' },
  'measured-not-readable': { severity: 'refusal' },
  'measured-loop-unknown': { severity: 'refusal' },
  'thermal-growth-large': { severity: 'warning' },
  'program-scaled': { severity: 'note' },
  'datum-set': { severity: 'note' },
  'scale-below-resolution': { severity: 'note' },
  'wire-by-whole-job': { severity: 'note' },
  'wire-not-proven': { severity: 'warning' },
  'corners-eased': { severity: 'repair' },
  'shape-limits-narrow': { severity: 'warning' },
  'shape-limits-unasked': { severity: 'note' },
  'nest-drawing-unusable': { severity: 'refusal' },
  'nest-island-left': { severity: 'warning' },
} satisfies Catalogue;

export const find = finder(catalogue);
