/** What can be wrong with a program text; every refusal names the line. */
import type { Catalogue } from '../../text/finding.ts';
import { finder } from '../../text/finding.ts';

export const catalogue = {
  'program-too-long': 'refusal',
  'program-end-missing': 'refusal',
  'program-text-after-end': 'warning',
  'percent-missing': 'warning',
  'block-too-long': 'refusal',
  'block-may-be-skipped': 'doubt',
  'sign-unknown': 'refusal',
  'number-bad': 'refusal',
  'decimal-point-missing': 'warning',
  'comment-bad': 'refusal',
  'sequence-number-bad': 'refusal',
  'word-unknown': 'refusal',
  'word-twice': 'refusal',
  'word-beside-a-move': 'refusal',
  'axis-unknown': 'refusal',
  'units-not-stated': 'refusal',
  'units-of-other-pair': 'refusal',
  'units-differ': 'warning',
  'distance-mode-not-stated': 'refusal',
  'coordinate-too-large': 'refusal',
  'motion-not-stated': 'refusal',
  'plane-not-xy': 'refusal',
  'datum-moved': 'refusal',
  'feed-zero': 'refusal',
  'arc-by-k': 'refusal',
  'arc-incomplete': 'refusal',
  'arc-words-idle': 'refusal',
  'arc-does-not-close': 'refusal',
  'arc-radius-zero': 'refusal',
  'arc-radius-too-small': 'refusal',
  'arc-full-by-radius': 'refusal',
  'register-not-named': 'refusal',
  'register-idle': 'refusal',
  'register-unknown': 'refusal',
  'compensation-already-on': 'refusal',
  'compensation-left-on': 'refusal',
  'compensation-on-an-arc': 'refusal',
  'compensation-forbids': 'refusal',
  'approach-too-short': 'refusal',
  'arc-tighter-than-offset': 'refusal',
  'inside-corner-not-entered': 'refusal',
  'path-turns-back': 'refusal',
} satisfies Catalogue;

export type ReadCode = keyof typeof catalogue;

export const find = finder(catalogue);
