/** What the proof can find; what each means stands in manual.ts. */
import type { Catalogue } from '../text/finding.ts';
import { finder } from '../text/finding.ts';

export const catalogue = {
  'proof-question-unusable': 'refusal',
  'scale-not-of-temperature': 'refusal',
  'program-not-readable': 'refusal',
  'gap-unknown': 'refusal',
  'contour-uncut': 'refusal',
  'tab-left-standing': 'refusal',
  'metal-left': 'refusal',
  'contour-gouged': 'refusal',
  'kept-metal-cut': 'refusal',
  'rough-on-skim-energy': 'refusal',
  'tab-on-skim-energy': 'refusal',
  'finish-on-rough-energy': 'refusal',
  'pass-left-out': 'refusal',
  'condition-missing': 'refusal',
  'corner-too-round': 'refusal',
  'corner-comes-out-round': 'note',
  'stray-cut': 'warning',
  'piece-falls-unheld': 'refusal',
  'tab-too-weak': 'refusal',
  'crumb-falls': 'warning',
  'slug-not-taken-out': 'refusal',
  'kept-metal-falls': 'refusal',
  'cut-in-fallen-piece': 'refusal',
  'wire-drawn-through-metal': 'refusal',
  'threaded-in-metal': 'refusal',
  'wire-left-threaded': 'refusal',
  'cut-without-wire': 'refusal',
  'threaded-twice': 'refusal',
} satisfies Catalogue;

export const find = finder(catalogue);
