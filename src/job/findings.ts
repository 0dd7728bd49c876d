/** What running a job can find, beyond what its layers find. */
import { type Catalogue, finder } from '../text/finding.ts';

export const catalogue = {
  'file-not-valid': 'refusal',
  'old-keys': 'note',
  'layer-unknown': 'refusal',
  'currencies-mixed': 'warning',
  'currency-not-named': 'doubt',
  'no-closed-contour': 'refusal',
  'open-of-unknown-line': 'warning',
  'without-of-unknown-loop': 'warning',
  'contour-not-found': 'doubt',
  'contour-found-again': 'note',
  'contour-size-unusable': 'refusal',
  'contour-aimed': 'note',
  'ease-failed': 'refusal',
  'measured-not-readable': 'refusal',
  'measured-loop-unknown': 'refusal',
  'measured-doubted': 'doubt',
  'thermal-growth-large': 'warning',
  'program-scaled': 'note',
  'datum-set': 'note',
  'scale-below-resolution': 'note',
  'wire-by-whole-job': 'note',
  'wire-not-proven': 'warning',
  'planned-again': 'note',
  'plan-not-proven': 'refusal',
  'corners-eased': 'repair',
  'shape-limits-narrow': 'warning',
  'shape-limits-unasked': 'note',
  'nest-drawing-unusable': 'refusal',
  'nest-island-left': 'warning',
} satisfies Catalogue;

export const find = finder(catalogue);
