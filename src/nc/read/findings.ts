/** What can be wrong with a program text; every refusal names the line. */
import type { Catalogue } from '../../text/finding.ts';
import { finder } from '../../text/finding.ts';

export const catalogue = {
  'program-too-long': { severity: 'refusal', title: 'The program is longer than the limit' },
  'program-end-missing': { severity: 'refusal', title: 'The program has no M02 or M30' },
  'program-text-after-end': { severity: 'warning', title: 'Text stands behind the end of the program and is never run' },
  'percent-missing': { severity: 'warning', title: 'The % lines that the dialect asks for are missing' },
  'block-too-long': { severity: 'refusal', title: 'A block is longer than the limit' },
  'block-may-be-skipped': { severity: 'doubt', title: 'A block begins with / and runs or not, as a switch says' },
  'sign-unknown': { severity: 'refusal', title: 'A sign that no program may contain' },
  'number-bad': { severity: 'refusal', title: 'A word whose number cannot be read' },
  'decimal-point-missing': { severity: 'warning', title: 'A coordinate without a decimal point' },
  'comment-bad': { severity: 'refusal', title: 'A comment that does not close, nests, or is not of the dialect' },
  'sequence-number-bad': { severity: 'refusal', title: 'A sequence number that is not a whole number from 0 to 99999' },
  'word-unknown': { severity: 'refusal', title: 'A word that neither the standard nor the dialect explains' },
  'word-twice': { severity: 'refusal', title: 'Two words of one block contradict each other' },
  'word-beside-a-move': { severity: 'refusal', title: 'A word of the dialect in one block with a move' },
  'axis-unknown': { severity: 'refusal', title: 'A move of an axis that two-axis cutting does not have' },
  'units-not-stated': { severity: 'refusal', title: 'A move before the program has said its unit' },
  'units-of-other-pair': { severity: 'refusal', title: 'A unit word of the pair that the dialect does not use' },
  'units-differ': { severity: 'warning', title: 'The program is in another unit than the dialect' },
  'distance-mode-not-stated': { severity: 'refusal', title: 'A move before G90 or G91' },
  'coordinate-too-large': { severity: 'refusal', title: 'A coordinate beyond what any machine travels' },
  'motion-not-stated': { severity: 'refusal', title: 'Coordinates without a word that says how to move' },
  'plane-not-xy': { severity: 'refusal', title: 'Another plane than XY' },
  'datum-moved': { severity: 'refusal', title: 'The datum changes after the wire has moved' },
  'feed-zero': { severity: 'refusal', title: 'A cut with the feed set to zero' },
  'arc-by-k': { severity: 'refusal', title: 'K in an arc of the XY plane' },
  'arc-incomplete': { severity: 'refusal', title: 'An arc without its end, or without centre and radius, or with both' },
  'arc-words-idle': { severity: 'refusal', title: 'I, J or R in a block that is no arc' },
  'arc-does-not-close': { severity: 'refusal', title: 'Start and end of an arc are not equally far from its centre' },
  'arc-radius-zero': { severity: 'refusal', title: 'An arc of no radius' },
  'arc-radius-too-small': { severity: 'refusal', title: 'An arc whose radius does not reach its end' },
  'arc-full-by-radius': { severity: 'refusal', title: 'An arc by R that ends where it starts' },
  'register-not-named': { severity: 'refusal', title: 'G41 or G42 without D' },
  'register-idle': { severity: 'refusal', title: 'D in a block without G41 or G42' },
  'register-unknown': { severity: 'refusal', title: 'A register number that the offset table does not have' },
  'compensation-already-on': { severity: 'refusal', title: 'G41 or G42 while compensation is on' },
  'compensation-left-on': { severity: 'refusal', title: 'The program ends with compensation on' },
  'compensation-on-an-arc': { severity: 'refusal', title: 'Compensation begins or ends on an arc' },
  'compensation-forbids': { severity: 'refusal', title: 'Unit or datum changes while compensation is on' },
  'approach-too-short': { severity: 'refusal', title: 'The move that switches compensation on is shorter than the offset' },
  'arc-tighter-than-offset': { severity: 'refusal', title: 'An inside arc that the wire with its offset cannot follow' },
  'inside-corner-not-entered': { severity: 'refusal', title: 'An inside corner that the wire with its offset cannot enter' },
  'path-turns-back': { severity: 'refusal', title: 'The compensated path turns back on itself' },
} satisfies Catalogue;

export type ReadCode = keyof typeof catalogue;

export const find = finder(catalogue);
