/** What can keep a plan from becoming a program, and what the operator should know about the text. */
import type { Catalogue } from '../../text/finding.ts';
import { finder } from '../../text/finding.ts';

export const catalogue = {
  'operator-not-told': { severity: 'refusal', title: 'The dialect has neither a word nor a comment for what somebody must do' },
  'stop-unexplained': { severity: 'warning', title: 'The program stops without saying why' },
  'path-not-joined': { severity: 'refusal', title: 'A move does not begin where the one before ended' },
  'compensation-needs-a-straight-move': { severity: 'refusal', title: 'Compensation would be switched on an arc or on no move at all' },
  'coordinate-unusable': { severity: 'refusal', title: 'A coordinate or offset that no program can carry' },
  'register-shared': { severity: 'refusal', title: 'Two passes want different offsets in one register' },
  'pass-not-planned': { severity: 'refusal', title: 'A step asks for a pass or a register that the plan does not have' },
  'sequence-starts-again': { severity: 'note', title: 'The sequence numbers begin again' },
} satisfies Catalogue;

export type WriteCode = keyof typeof catalogue;

export const find = finder(catalogue);
