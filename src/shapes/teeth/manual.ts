/** What the manual says of gears and racks. */
import type { Manual } from '../../text/manual.ts';
import type { catalogue } from './findings.ts';

export const manual: Manual<typeof catalogue> = {
  'gear-size-twice': {
    title: 'Module and diametral pitch are both given, or neither is',
    meaning:
      'The module or the diametral pitch sets the size of the teeth: m = 25.4 / P. With both given one may contradict the other; with neither there is no size.',
    remedy: 'Keep one of the two. Drawings in millimetres give the module, drawings in inches the diametral pitch.',
  },
  'gear-helical': {
    title: 'A straight wall cannot have helical teeth',
    meaning:
      'The flanks of a helical gear turn about its axis over the width. A wire is straight at every moment: it can lean, but a wall that turns is not made of straight lines that the two ends of a wire could follow to the accuracy of a gear.',
    matters: 'A helical rack is another matter: its teeth are straight, only at an angle to its sides.',
    remedy:
      'Cut the gear as a spur gear, have it hobbed or ground, or slice a helical blank that was cut elsewhere. Turn the blank of a rack by the helix angle, so that the wire runs along the teeth, and cut it as a straight rack.',
  },
  'gear-impossible': {
    title: 'There is no such gear',
    meaning:
      'Some numbers contradict each other: a tip circle below the root, a bore larger than the root circle, more play than a tooth is thick, or teeth so few that nothing of the involute is left.',
    remedy: 'Look at the number that the finding points to. It states which diameters contradict each other.',
  },
  'gear-pointed': {
    title: 'The flanks meet below the tip circle',
    meaning:
      'Profile shift moves both flanks of a tooth together at its tip. Where they meet the tooth ends, whatever the tip diameter says.',
    matters: 'The gear would come out smaller over its tips than specified, with teeth that end in edges.',
    remedy: 'Take a smaller tip diameter, as stated in the finding, or less profile shift.',
  },
  'gear-ring-tip': {
    title: 'The tips of the internal teeth lie inside the base circle',
    meaning:
      'An involute begins at its base circle. Teeth of a ring that reach further in have no flank there. With full teeth of 20° it happens below 34 teeth.',
    matters: 'Their tips foul every pinion.',
    remedy: 'A larger tip diameter, as stated in the finding, or a smaller addendum; more teeth or a larger pressure angle also help.',
  },
  'gear-tip-thin': {
    title: 'The tooth is thin at its tip',
    meaning: 'The tip is thinner than a fifth of the module (common practice, no source).',
    matters:
      'Such a tip turns brittle when it is hardened through, and chips. It also burns away a little at the sharp edges while it is cut.',
    remedy: 'A smaller tip diameter, a tip chamfer, or less profile shift.',
  },
  'gear-undercut': {
    title: 'The root cuts into the involute',
    meaning: 'With few teeth the rack that generates the root digs into the flank. The wire cuts it without trouble.',
    matters: 'The tooth is weaker at its foot, and the involute ends higher, so that the pair carries over a shorter length.',
    remedy:
      'A profile shift as stated in the finding avoids it; so does a larger pressure angle. If the gear replaces one that was hobbed, the undercut is right as it is.',
  },
  'gear-root-too-round': {
    title: 'The root radius has no room between the teeth',
    meaning: 'Two root radii stand beside each other in every space. Larger than one full round from flank to flank they cannot be.',
    remedy: 'Take the radius stated in the finding, or ask for one full round.',
  },
  'gear-root-sharp': {
    title: 'No wire gets into the root as it is drawn',
    meaning:
      'A wire leaves at least half its thickness and the gap as a radius in every inside corner. The root drawn here is sharper than the thinnest wires can cut, so it comes out rounder whatever wire is chosen.',
    matters: 'The tip of the mate may touch what is left there. A sharp root is also where teeth break.',
    remedy: 'Give the root a radius, or let a rack with rounded tips generate it.',
  },
  'gear-pin-off-flank': {
    title: 'The pin does not measure the flanks',
    meaning:
      'A size over pins is valid only where the pins touch the involute of both flanks. A pin that is too thin falls to the bottom of the space; one that is too thick touches the corner of the tip.',
    matters: 'The size would say nothing about the teeth.',
    remedy: 'Leave the pin out, so that the best one is selected, or take a pin near that size.',
  },
  'gear-mate-interferes': {
    title: 'The tip of one gear runs into the root of the other',
    meaning: 'Below its form diameter a tooth has no involute. Here the tip of the mate reaches further down.',
    matters: 'The gears do not turn evenly, and may jam.',
    remedy: 'A smaller tip on the mate, profile shift on the smaller gear, or a smaller root radius.',
  },
  'gear-contact-short': {
    title: 'Less than one pair of teeth carries all the time',
    meaning:
      'The contact ratio states how many pairs carry on average. Below 1 there are moments when none does. Usual are 1.2 and more (common practice, no source).',
    matters: 'The gears knock.',
    remedy: 'A larger tip diameter, more teeth, or a smaller pressure angle.',
  },
};
