/** What running a job can find, beyond what its layers find. */
import { type Catalogue, finder } from '../text/finding.ts';

export const catalogue = {
  'file-not-valid': { severity: 'refusal', title: 'A value in a job, shop, dialect or set-up file is wrong' },
  'layer-unknown': { severity: 'refusal', title: 'A layer was asked for that the drawing does not have' },
  'no-closed-contour': { severity: 'refusal', title: 'The drawing has no closed contour to cut' },
  'open-of-unknown-line': { severity: 'warning', title: 'The job says how to cut an open line that is not there' },
  'ease-failed': { severity: 'refusal', title: 'The corners of a contour cannot be eased by so much' },
  'measured-not-readable': { severity: 'refusal', title: 'A measurement cannot be read' },
  'measured-loop-unknown': { severity: 'refusal', title: 'A contour was measured that the job does not cut' },
  'thermal-growth-large': { severity: 'warning', title: 'The part grows noticeably while it is cut, and the program is not scaled for it' },
  'program-scaled': { severity: 'note', title: 'The program is scaled for the temperature of the work piece' },
  'datum-set': { severity: 'note', title: 'The program has its zero elsewhere than the drawing' },
  'scale-below-resolution': { severity: 'note', title: 'Scaling for temperature moves less than the program can write' },
  'wire-by-whole-job': { severity: 'note', title: 'The wire with which the whole job costs least, and what the others would cost' },
  'wire-not-proven': { severity: 'warning', title: 'The program with the cheapest wire was not proven' },
  'corners-eased': { severity: 'repair', title: 'Inside corners were rounded before planning, as agreed' },
  'shape-limits-narrow': { severity: 'warning', title: 'The limits of the shape are narrower than the cut is expected to be' },
  'shape-limits-unasked': { severity: 'note', title: 'The job allows more than the limits of the shape' },
  'nest-drawing-unusable': { severity: 'refusal', title: 'A drawing of a nest has nothing that could be laid' },
  'nest-island-left': { severity: 'warning', title: 'A loop inside an opening of a piece is cut away with it' },
} satisfies Catalogue;

export const find = finder(catalogue);
