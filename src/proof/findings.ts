/** What the proof can find; what each means stands in manual.ts. */
import type { Catalogue } from '../text/finding.ts';
import { finder } from '../text/finding.ts';

export const catalogue = {
  'proof-question-unusable': { severity: 'refusal' },
  'scale-not-of-temperature': { severity: 'refusal' },
  'program-not-readable': { severity: 'refusal' },
  'gap-unknown': { severity: 'refusal' },
  'contour-uncut': { severity: 'refusal' },
  'tab-left-standing': { severity: 'refusal' },
  'metal-left': { severity: 'refusal' },
  'contour-gouged': { severity: 'refusal' },
  'kept-metal-cut': { severity: 'refusal' },
  'corner-too-round': { severity: 'refusal' },
  'corner-comes-out-round': { severity: 'note' },
  'stray-cut': { severity: 'warning' },
  'piece-falls-unheld': { severity: 'refusal' },
  'crumb-falls': { severity: 'warning' },
  'slug-not-taken-out': { severity: 'warning' },
  'kept-metal-falls': { severity: 'refusal' },
  'cut-in-fallen-piece': { severity: 'refusal' },
  'wire-drawn-through-metal': { severity: 'refusal' },
  'threaded-in-metal': { severity: 'refusal' },
  'cut-without-wire': { severity: 'refusal' },
} satisfies Catalogue;

export const find = finder(catalogue);
