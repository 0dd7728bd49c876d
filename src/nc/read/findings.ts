/** What can be wrong with a program text; every refusal names the line. */
import type { Catalogue } from '../../text/finding.ts';
import { finder } from '../../text/finding.ts';

export const catalogue = {
  'program-too-long': { severity: 'refusal' },
  'program-end-missing': { severity: 'refusal' },
  'program-text-after-end': { severity: 'warning' },
  'percent-missing': { severity: 'warning' },
  'block-too-long': { severity: 'refusal' },
  'block-may-be-skipped': { severity: 'doubt' },
  'sign-unknown': { severity: 'refusal' },
  'number-bad': { severity: 'refusal' },
  'decimal-point-missing': { severity: 'warning' },
  'comment-bad': { severity: 'refusal' },
  'sequence-number-bad': { severity: 'refusal' },
  'word-unknown': { severity: 'refusal' },
  'word-twice': { severity: 'refusal' },
  'word-beside-a-move': { severity: 'refusal' },
  'axis-unknown': { severity: 'refusal' },
  'units-not-stated': { severity: 'refusal' },
  'units-of-other-pair': { severity: 'refusal' },
  'units-differ': { severity: 'warning' },
  'distance-mode-not-stated': { severity: 'refusal' },
  'coordinate-too-large': { severity: 'refusal' },
  'motion-not-stated': { severity: 'refusal' },
  'plane-not-xy': { severity: 'refusal' },
  'datum-moved': { severity: 'refusal' },
  'feed-zero': { severity: 'refusal' },
  'arc-by-k': { severity: 'refusal' },
  'arc-incomplete': { severity: 'refusal' },
  'arc-words-idle': { severity: 'refusal' },
  'arc-does-not-close': { severity: 'refusal' },
  'arc-radius-zero': { severity: 'refusal' },
  'arc-radius-too-small': { severity: 'refusal' },
  'arc-full-by-radius': { severity: 'refusal' },
  'register-not-named': { severity: 'refusal' },
  'register-idle': { severity: 'refusal' },
  'register-unknown': { severity: 'refusal' },
  'compensation-already-on': { severity: 'refusal' },
  'compensation-left-on': { severity: 'refusal' },
  'compensation-on-an-arc': { severity: 'refusal' },
  'compensation-forbids': { severity: 'refusal' },
  'approach-too-short': { severity: 'refusal' },
  'arc-tighter-than-offset': { severity: 'refusal' },
  'inside-corner-not-entered': { severity: 'refusal' },
  'path-turns-back': { severity: 'refusal' },
} satisfies Catalogue;

export type ReadCode = keyof typeof catalogue;

export const find = finder(catalogue);
