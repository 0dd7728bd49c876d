/** What the manual says of form tools. */
import type { Manual } from '../../text/manual.ts';
import type { catalogue } from './findings.ts';

export const manual: Manual<typeof catalogue> = {
  'form-tool-incomplete': {
    title: 'The form tool needs another number',
    meaning:
      'A thread needs its pitch or its threads per inch, one of the two; a v needs the angle between its flanks and its depth. Rake needs the diameter of the work at the root, since what it changes depends on that.',
    remedy: 'Give the number that the finding points to.',
  },
  'form-tool-impossible': {
    title: 'The numbers give no such tool',
    meaning:
      'The flanks meet before the tip, a nose has no room on its point, the point is wider than its shank, the shoulders stand in the way of the groove, or nothing is left of the shank.',
    remedy: 'Change the number that the finding points to; it states how much room there is.',
  },
  'form-tool-front-clearance': {
    title: 'Straight walls give a tool no front clearance of their own',
    meaning:
      'A wire cuts walls square to the plate. A lathe tool needs clearance below its edge, so that it does not rub. Either it is ground on afterwards and the blank lies level: then the profile is the form of the groove itself. Or the whole blank is tilted in its holder and its top ground level: then the groove comes out shallower or steeper than the blank, and the profile has to be drawn for that tilt.',
    matters: 'Rake changes the form as well: away from the tip the edge lies below the axis, where the work has another radius.',
    remedy:
      'Give the clearance angle and the rake at which the tool will stand. The profile is then corrected for them, and true only there. Set the tip on centre height.',
  },
  'form-tool-side-rubs': {
    title: 'A side of the point has hardly any clearance',
    meaning:
      'Tilting a blank with straight walls frees its tip by the whole tilt, but its flanks only by the sine of their angle: steep flanks hardly, square ones not at all. On the leading side the lead of the thread takes its part of what there is.',
    matters: 'A flank without clearance rubs, heats, and tears the thread.',
    remedy:
      'Turn the tool in its holder by the lead angle, tilt it more, or have the sides ground. With the minor diameter of the work given, the lead is taken into account.',
  },
  'form-tool-rake-skews': {
    title: 'With rake the thread comes out a little skew',
    meaning:
      'With rake the edge leaves the plane through the axis of the work: towards the crest it cuts later, or sooner, than at the root. A thread has moved on along its axis by then, so both flanks are shifted to the same side, the more the nearer to the crest.',
    matters: 'The profile is corrected for the radius of the work but not for this. For plain grooves that are turned it does not matter.',
    remedy: 'Grind threading tools without rake where the form has to be true.',
  },
  'form-tool-nose-round': {
    title: 'The nose is rounder than the thread allows',
    meaning: 'The standard limits the radius at the root of the thread. The nose of this tool leaves a larger one.',
    matters: 'The crest of the mating thread may not clear it.',
    remedy: 'A nose at or below the limit, or more clearance at the root, if the drawing allows it.',
  },
};
