/** What the manual says of bores and keyways. */
import type { Manual } from '../../text/manual.ts';
import type { catalogue } from './findings.ts';

export const manual: Manual<typeof catalogue> = {
  'shaft-not-in-table': {
    title: 'The standard has no key for a shaft of this diameter',
    meaning: 'Key standards list keys by the diameter of the shaft. This one is below or above their tables.',
    matters: 'Only the designer can say which key it is.',
    remedy: 'Ask for the key (width, height, depth in the hub), and have the opening drawn; or correct the diameter.',
  },
  'keyway-impossible': {
    title: 'There is no such bore or keyway',
    meaning:
      'The corner radius is larger than the keyway, or the outside diameter ends below the top of the keyway, so that nothing would hold the hub together.',
    remedy: 'Look at the number that the finding points to.',
  },
  'keyway-corner-beyond-standard': {
    title: 'The corners of the keyway are rounder or sharper than the standard has them',
    meaning:
      'The corner radius is outside the range of the standard. A wire leaves half its diameter and the gap in every inside corner anyway.',
    matters: 'With too round a corner, a key with sharp edges stands on it instead of on the flanks; too sharp a one weakens the hub.',
    remedy: 'Stay within the range stated in the finding; it says which wire can make it.',
  },
  'bore-wall-thin': {
    title: 'The wall between bore or keyway and the teeth is thin',
    meaning:
      'Below the roots of its teeth a gear needs a rim that holds them. Gear rating takes a rim thinner than 1.2 times the depth of the teeth for one that bends with them.',
    matters:
      'The teeth then break from below, first of all under the corner of a keyway, and thin rims come out of round when they are hardened or pressed on a shaft.',
    remedy:
      'A smaller bore, a flatter key, more or larger teeth; or leave the keyway out and clamp the wheel. Where the drawing wants it so, it can be cut as it is.',
  },
  'shaft-at-step': {
    title: 'The diameter stands at the step between two keys',
    meaning:
      'Rows of the table go up to and including their last diameter. A shaft of just that size has the smaller key; a hundredth larger, it would have the next.',
    matters: 'The wrong key does not fit the shaft that the customer has.',
    remedy: 'Nothing, if the shaft is as specified. Ask whether the diameter was rounded.',
  },
};
