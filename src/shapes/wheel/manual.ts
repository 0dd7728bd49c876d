/** What the manual says of sprockets and ratchets. */
import type { Manual } from '../../text/manual.ts';
import type { catalogue } from './findings.ts';

export const manual: Manual<typeof catalogue> = {
  'form-impossible': {
    title: 'The numbers give no such shape',
    meaning: 'Two of the numbers contradict each other: a bore larger than the root, a root outside the tip, a tooth without width.',
    remedy: 'Look at the number that the finding points to; it states which other number it contradicts.',
  },
  'sprocket-pointed': {
    title: 'The teeth of the sprocket end in a point below the tip circle',
    meaning:
      'The two flanks of a tooth are arcs that come together towards the tip. With few teeth, or the largest gap that the standard allows, they meet before the tip circle is reached. The tooth ends there; the chain runs all the same.',
    matters: 'The tip diameter comes out smaller than asked for.',
    remedy: 'Nothing, if the tip diameter that results lies within the limits of the standard; else the smaller gap.',
  },
  'sprocket-root-outside': {
    title: 'The clearance takes the root of the sprocket out of its limits',
    meaning:
      'The root diameter of a chain wheel is the pitch diameter less the roller at most, and lies in h11 below that. A clearance moves every wall, the root too.',
    matters: 'The rollers lie deeper or higher than the pitch circle, so that the chain no longer runs on its own pitch.',
    remedy: 'No clearance, or a smaller one. The largest of the tooth gaps gives the rollers room at the flanks without moving the root.',
  },
  'ratchet-throws-pawl': {
    title: 'The ratchet throws its pawl out under load',
    meaning:
      'A tooth pushes square to its face. Where that push passes outside the pivot of the pawl, the load itself lifts the pawl out of the teeth: the face leans outwards, or the pivot lies too near to the wheel.',
    matters: 'Friction and a spring hold the pawl only until grease, wear or a knock lets it slip; the load then runs back.',
    remedy:
      'Undercut the faces by some degrees, or set the pivot farther out. Without a pivot the pawl is assumed to stand square to the radius at the face; give `pawlPivot` and `pawlLength` where it is known.',
  },
  'ratchet-pawl-out-of-reach': {
    title: 'The pawl does not reach the faces of the ratchet',
    meaning:
      'From the pivot that is given, a pawl of this length never touches the middle of a face: it is too short, or it reaches over the wheel.',
    matters: 'The wheel itself is drawn all the same, but whether it holds the pawl cannot be checked.',
    remedy:
      'Look at `pawlPivot`, which is measured from the middle of the wheel, and `pawlLength`, from the pivot to the nose. Leave both out where the pawl is not known.',
  },
  'ratchet-pointed': {
    title: 'The teeth of the ratchet end in points',
    meaning: 'Face and back meet in an edge without a land, or with next to none.',
    matters:
      'Such an edge chips in hardened steel, wears fast in soft steel, and is the first thing the spark rounds off, so that the diameter over the tips comes out small.',
    remedy:
      'Give the tips a land; a twentieth of the pitch is common practice. If the drawing shows points, ask whether a small land is allowed.',
  },
};
