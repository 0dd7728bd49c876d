/** What laying pieces into a plate has to say to a user. */
import { type Catalogue, finder } from '../text/finding.ts';

export const catalogue = {
  'nest-value-unusable': { severity: 'refusal', title: 'A number of the nest is missing, negative or too large' },
  'nest-outline-unusable': { severity: 'refusal', title: 'An outline of the nest crosses itself or does not hold together' },
  'plate-too-small': { severity: 'refusal', title: 'Nothing is left of the plate inside its margin' },
  'piece-too-large': { severity: 'warning', title: 'A piece has no room even on an empty plate' },
  'pieces-left': { severity: 'warning', title: 'Not all pieces have room on the plate' },
  'pieces-too-many': { severity: 'refusal', title: 'More pieces are asked for than are laid at once' },
  'nest-stopped': { severity: 'note', title: 'The search for a better layout was stopped' },
  'stack-sheets': { severity: 'note', title: 'How many sheets are cut in one stack, and what sets the limit' },
  'stack-too-high': { severity: 'refusal', title: 'Not even one sheet has room under the upper guide' },
  'stack-flush': { severity: 'warning', title: 'Sheets would lie too far apart to be flushed in a stack' },
  'stack-value-unusable': { severity: 'refusal', title: 'A number of the stack is missing, negative or too large' },
  'stack-uneven': { severity: 'warning', title: 'Much of the height of the stack is bow and burr, not sheet' },
} satisfies Catalogue;

export const find = finder(catalogue);
