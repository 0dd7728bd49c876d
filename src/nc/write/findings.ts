/** What can keep a plan from becoming a program, and what the operator should know about the text. */
import type { Catalogue } from '../../text/finding.ts';
import { finder } from '../../text/finding.ts';

export const catalogue = {
  'operator-not-told': 'refusal',
  'stop-unexplained': 'warning',
  'path-not-joined': 'refusal',
  'compensation-needs-a-straight-move': 'refusal',
  'coordinate-unusable': 'refusal',
  'register-shared': 'refusal',
  'pass-not-planned': 'refusal',
  'sequence-starts-again': 'note',
} satisfies Catalogue;

export type WriteCode = keyof typeof catalogue;

export const find = finder(catalogue);
