/** What the proof can find; each code has a page in docs/findings. */
import type { Catalogue } from '../text/finding.ts';
import { finder } from '../text/finding.ts';

export const catalogue = {
  'proof-question-unusable': { severity: 'refusal', title: 'The proof was asked with a value that it cannot work with.' },
  'scale-not-of-temperature': { severity: 'refusal', title: 'The stated scale of the program is not that of the stated temperature.' },
  'program-not-readable': { severity: 'refusal', title: 'The program breaks a rule of its control, so nothing is proven.' },
  'program-without-end': { severity: 'refusal', title: 'The program has no end.' },
  'gap-unknown': { severity: 'refusal', title: 'A cut is made with a setting whose spark gap nobody gave.' },
  'contour-uncut': { severity: 'refusal', title: 'A wanted contour is not cut.' },
  'tab-left-standing': { severity: 'refusal', title: 'A stretch of a contour is left standing.' },
  'metal-left': { severity: 'refusal', title: 'Metal is left beyond the tolerance.' },
  'contour-gouged': { severity: 'refusal', title: 'The wire cuts into the wanted metal beyond the tolerance.' },
  'kept-metal-cut': { severity: 'refusal', title: 'A cut goes through metal that must stay.' },
  'corner-too-round': { severity: 'refusal', title: 'An inside corner comes out rounder than allowed.' },
  'corner-comes-out-round': { severity: 'note', title: 'Inside corners come out rounder than drawn, as allowed.' },
  'stray-cut': { severity: 'warning', title: 'A cut serves no wanted contour.' },
  'piece-falls-unheld': { severity: 'refusal', title: 'A piece comes loose without a stop to secure it.' },
  'crumb-falls': { severity: 'warning', title: 'A crumb comes loose unheld.' },
  'slug-not-taken-out': { severity: 'warning', title: 'Cutting goes on while a loose slug lies in its opening.' },
  'kept-metal-falls': { severity: 'refusal', title: 'Metal that must stay falls away.' },
  'cut-in-fallen-piece': { severity: 'refusal', title: 'A contour is cut in a piece that has already come loose.' },
  'wire-drawn-through-metal': { severity: 'refusal', title: 'A rapid move draws the threaded wire through metal.' },
  'threaded-in-metal': { severity: 'refusal', title: 'The wire would be threaded in full metal.' },
  'cut-without-wire': { severity: 'refusal', title: 'A cut begins with no wire threaded.' },
} satisfies Catalogue;

export const find = finder(catalogue);
