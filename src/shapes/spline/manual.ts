/** What the manual says of splines and serrations. */
import type { Manual } from '../../text/manual.ts';
import type { catalogue } from './findings.ts';

export const manual: Manual<typeof catalogue> = {
  'spline-impossible': {
    title: 'There is no such spline',
    meaning:
      'Numbers contradict each other: module and pitch of the wrong standard, a root radius without room, an outside diameter inside the splines, or play larger than a tooth. As a warning: the pin asked for does not rest on the flanks.',
    remedy: 'Look at the number that the finding points to.',
  },
  'spline-root-form': {
    title: 'The standard has no such root at this pressure angle',
    meaning:
      'Splines of 37.5° and 45° have short teeth; their spaces end in one round from flank to flank. A flat root is there for 30° only.',
    remedy: 'Choose the fillet root, or 30°.',
  },
  'spline-helical': {
    title: 'A straight wall cannot have helical splines',
    meaning:
      'The flanks of a helical spline turn about its axis along its length. A wire is straight at every moment: it can lean, but the walls it cuts then are made of straight lines, and a flank that turns about the middle is none.',
    matters: 'Besides, ISO 4156 and ANSI B92.1 have straight splines only.',
    remedy: 'Cut the spline straight, or have it broached, rolled or ground.',
  },
  'spline-class-not-in-table': {
    title: 'The standard has no such fit for this spline',
    meaning:
      'ISO 4156 makes the shaft thinner by the fundamental deviations d, e and f of ISO 286, which end at a pitch diameter of 1000 mm, and thicker for js and k. ANSI B92.1 has one side fit: at its tightest, shaft and hub have no play.',
    remedy: 'Choose fit h, with the play that is wanted given as `clearance`; it is shared between shaft and hub as asked.',
  },
  'spline-class-without-room': {
    title: 'The class leaves nothing for the size of the teeth',
    meaning:
      'A class gives one total tolerance. Part of it, the variation, is for what index, profile and lead may be off together, and grows with the length on which shaft and hub engage; the rest is for the size of the teeth. Here the variation takes all of it.',
    remedy: 'A coarser class, or the true length of engagement where it was given too long.',
  },
  'straight-spline-impossible': {
    title: 'There is no such straight-sided spline',
    meaning:
      'Numbers contradict each other or one is missing: a size of ISO 14 beside free numbers, splines so wide that nothing is left between them, corners without room, an outside diameter inside the grooves, or play larger than a spline.',
    matters:
      'A spline is specified in one of three ways: by its size in ISO 14, by fit and outer diameter in SAE J499, or by four free numbers. Where they are mixed it is not clear which is meant.',
    remedy: 'Look at the number that the finding points to; it states which other number it contradicts.',
  },
  'straight-pin-off-flank': {
    title: 'The pin does not rest on straight flanks',
    meaning:
      'A size over or between pins is valid only where both pins lie on the straight part of the flanks, clear of the bottom of the space, and stand out beyond the tips so that anvils reach them. The pin asked for does not.',
    matters:
      'Most straight-sided splines of ISO 14 are too low for any pin, and between the parallel walls of a hub a pin finds no seat: measure width and diameters there.',
    remedy: 'Leave the pin out, so that the best one is selected where there is one.',
  },
  'spline-corner-clash': {
    title: 'The corners of the splines would bear before their walls',
    meaning: 'The radius in the inner corners of this piece is larger than the chamfer that the edges of its mate usually have.',
    matters: 'Pushed together, the edges ride up on the radii; the shaft then sits on its corners instead of its inner diameter.',
    remedy:
      'Take a smaller root radius, a larger chamfer on the mate, or for the shaft a relief in place of the radius. The chamfer of the mate is assumed to be the usual one of the size, or the chamfer asked for here: check its drawing.',
  },
  'serration-impossible': {
    title: 'There is no such serration',
    meaning:
      'Numbers contradict each other or one is missing: a size of DIN 5481 beside free numbers, flanks that meet before the tips, roots without room, an angle too small for the number of teeth, an outside diameter inside the roots, or play larger than a tooth.',
    remedy: 'Look at the number that the finding points to; it states which other number it contradicts.',
  },
  'serration-tip-meets-root': {
    title: 'The tips of the serration touch the roots of its mate',
    meaning:
      'A serration centres and drives on its flanks; its tips have to stay clear of the roots they point into. With a root radius like that of this piece, the roots of the mate lie no deeper than these tips.',
    matters: 'The tips bear first, the flanks never do, and the hub wobbles on the shaft however well both were cut.',
    remedy: 'Take more off the tips (a smaller shaft diameter, a larger bore), or a smaller root radius on both parts.',
  },
};
