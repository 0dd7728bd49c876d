/** What making letters has to say. */
import { type Catalogue, finder } from '../../text/finding.ts';

export const catalogue = {
  'font-unusable': { severity: 'refusal', title: 'The font cannot be read, or has not what is asked of it' },
  'letter-missing': { severity: 'refusal', title: 'The font has no such character' },
  'letters-need-shaping': { severity: 'refusal', title: 'The script is not set letter by letter from left to right' },
  'text-without-letters': { severity: 'refusal', title: 'The text leaves nothing to cut' },
  'letter-without-room': { severity: 'refusal', title: 'The clearance, or a fine detail, leaves nothing of a letter' },
  'letters-too-fine': { severity: 'refusal', title: 'The text comes to too many lines and arcs' },
  'letter-islands-fall': { severity: 'warning', title: 'The middles of letters are loose islands that fall out' },
  'letter-bridge-impossible': { severity: 'warning', title: 'A bridge finds no way from the middle of a letter to the plate' },
  'letter-bridge-wide': { severity: 'warning', title: 'A bridge is wider than the middle of the letter it holds' },
  'letters-run-together': { severity: 'warning', title: 'Letters run into each other and become one' },
  'letters-in-parts': { severity: 'note', title: 'A letter is more than one piece' },
} satisfies Catalogue;

export const find = finder(catalogue);
