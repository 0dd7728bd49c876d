/** What planning has to say to a user. */
import { type Catalogue, finder } from '../finding/finding.ts';

export const catalogue = {
  'nothing-to-cut': { severity: 'refusal', title: 'No contour is left to be cut' },
  'kept-side': { severity: 'note', title: 'Which side of a contour is kept' },
  'kept-of-unknown-loop': { severity: 'warning', title: 'A kept side was given for a loop that is not there' },
  'wire-unknown': { severity: 'refusal', title: 'The wire asked for is not one of the shop' },
  'wire-not-in-stock': { severity: 'warning', title: 'The wire asked for is not on the shelf' },
  'no-wire-in-stock': { severity: 'refusal', title: 'The shop has no wire that could be used' },
  'wire-chosen': { severity: 'note', title: 'The wire that was chosen and why the others were not' },
  'contour-unsound': { severity: 'refusal', title: 'A contour crosses itself or does not hold together' },
  'corner-too-tight': { severity: 'refusal', title: 'An inside corner is too tight for the wire' },
  'corner-rounded': { severity: 'note', title: 'An inside corner comes out with the radius that the wire leaves' },
  'slot-too-narrow': { severity: 'refusal', title: 'A place is narrower than the kerf' },
  'finish-out-of-reach': { severity: 'refusal', title: 'The finish asked for cannot be reached' },
  'tolerance-out-of-reach': { severity: 'refusal', title: 'The tolerance asked for cannot be held' },
  'hole-does-not-fit': { severity: 'refusal', title: 'There is no room for a start hole' },
  'hole-made-smaller': { severity: 'warning', title: 'A start hole had to be smaller than asked' },
  'hole-not-usable': { severity: 'warning', title: 'A hole of the drawing cannot be used to start a contour' },
  'no-room-for-lead': { severity: 'refusal', title: 'The wire has no room to come in and turn round' },
  'entry-on-arc': { severity: 'note', title: 'A contour is begun on a curve' },
  'entry-near-corner': { severity: 'warning', title: 'A contour is begun close to a corner' },
  'tab-round-corner': { severity: 'warning', title: 'A tab reaches round a corner' },
  'slug-splits': { severity: 'warning', title: 'The slug comes off in pieces' },
  'slug-tiny': { severity: 'warning', title: 'A slug is too small to be caught' },
  'slug-heavy': { severity: 'warning', title: 'A loose piece is too heavy to be lifted by hand' },
  'cuts-too-close': { severity: 'warning', title: 'Two cuts leave a web thinner than the kerf' },
  'contours-touch': { severity: 'refusal', title: 'Two contours touch' },
  'cuts-overlap': { severity: 'refusal', title: 'Two contours are so close that one cut would spoil the other' },
  'budget-over-tolerance': { severity: 'warning', title: 'With heat, stress and repeatability the tolerance is not sure to be held' },
  'correction-suspicious': { severity: 'warning', title: 'A correction is larger than wire and gap can be off' },
  'correction-arc-too-tight': {
    severity: 'refusal',
    title: 'With the corrected register an inside arc of the program cannot be gone round',
  },
  'register-below-gap': { severity: 'refusal', title: 'A corrected register leaves the wire no gap' },
  'corrections-disagree': { severity: 'warning', title: 'Contours were measured that want different corrections' },
  'block-beyond-travel': { severity: 'warning', title: 'The block is larger than the travel of the machine' },
} satisfies Catalogue;

export const find = finder(catalogue);
