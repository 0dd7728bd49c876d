/** What can keep a plan from becoming a program, and what the operator should know about the text. */
import type { Catalogue } from '../../text/finding.ts';
import { finder } from '../../text/finding.ts';

export const catalogue = {
  'operator-not-told': { severity: 'refusal' },
  'stop-unexplained': { severity: 'warning' },
  'path-not-joined': { severity: 'refusal' },
  'compensation-needs-a-straight-move': { severity: 'refusal' },
  'coordinate-unusable': { severity: 'refusal' },
  'register-shared': { severity: 'refusal' },
  'pass-not-planned': { severity: 'refusal' },
  'sequence-starts-again': { severity: 'note' },
} satisfies Catalogue;

export type WriteCode = keyof typeof catalogue;

export const find = finder(catalogue);
