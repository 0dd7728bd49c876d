/** What the manual says of rotors and spirals. */
import type { Manual } from '../../text/manual.ts';
import type { catalogue } from './findings.ts';

export const manual: Manual<typeof catalogue> = {
  'rotor-impossible': {
    title: 'There is no such rotor',
    meaning:
      'Numbers contradict each other: an eccentricity at which the path of a pin makes loops, a bore that meets the valleys, output holes that meet each other, a root circle that the teeth of the outer rotor do not reach, or a number that is missing.',
    matters:
      'The pins roll cleanly only while the eccentricity times their number stays below the radius of their circle; most drives use some 0.5 to 0.8 of that.',
    remedy: 'Change the number that the finding points to; it states how far it may go.',
  },
  'rotor-undercut': {
    title: 'The pins cut the lobes of the rotor away',
    meaning:
      "The wall of the rotor stands one pin radius inside the path of the pin centres. Where that path bends outwards with a smaller radius than the pin's, the wall runs back on itself: the lobe ends in an edge, and there the pins lose it.",
    matters: 'A rotor cut that way would have play where it carries most. So it is refused, with the place and the largest pin that fits.',
    remedy: 'Smaller pins, less eccentricity, a larger circle of pins, or fewer pins.',
  },
  'rotor-pins-meet': {
    title: 'The pins of the ring run into each other',
    meaning: 'So many pins of this diameter do not fit beside each other on their circle.',
    matters: 'The metal of the ring between the pins holds them; here none is left.',
    remedy: 'Smaller pins, fewer of them, or a larger circle. Leave some metal of the ring between them.',
  },
  'rotor-wall-thin': {
    title: 'Little metal is left between two openings of the disc',
    meaning:
      'Between bore, output holes and the valleys of the lobes less than a millimetre of metal is left at the thinnest place. An output hole is wider than its pin by twice the eccentricity, which takes more room than expected.',
    matters: 'Such a wall bends under a bearing that is pressed in, and moves when stress in the stock is freed by the cut.',
    remedy:
      'A smaller bore, fewer or thinner output pins, or another circle for them; else stress-relieved stock, and rough cuts of all openings before the skims.',
  },
  'rotor-ring-fouls': {
    title: 'The roots of the ring are in the way of the lobes',
    meaning:
      'The rounds between the teeth and the root circle of the outer rotor reach into the room that the lobes of the inner one pass through, or begin on the part of the teeth that carries.',
    matters: 'The rotors would jam once in every turn, or run on an edge.',
    remedy: 'A smaller round, or more clearance at the root. When the round is left out, the largest that clears is selected.',
  },
  'spiral-impossible': {
    title: 'There is no such spiral',
    meaning:
      'A number is missing, or the spiral cannot begin where it should: an involute begins on its base circle at the earliest, a logarithmic spiral never comes to the middle, and a line that bends more closely than half the width would let the inner side run back on itself.',
    remedy: 'A larger radius to begin with, less width, or the number that the finding asks for.',
  },
  'spiral-turns-touch': {
    title: 'Neighbouring turns of the spiral run into each other',
    meaning:
      'The width of slot or strip is as much as the distance from one turn to the next, so nothing is left between them; or they meet near the middle, where the turns of an Archimedean spiral come closer to each other than their pitch.',
    remedy: 'Less width, more pitch, or a larger radius to begin with.',
  },
  'spiral-wall-thin': {
    title: 'Little is left between neighbouring turns',
    meaning: 'Less than three tenths of a millimetre lies between two turns.',
    matters:
      'Of a slot it is a wall of metal, which heats through, bends and burns away under the rough cut. Of a strip it is the gap, through which the wire has to pass with its spark gap on both sides.',
    remedy:
      'Less width or more pitch. If it has to be so, a thin wire at low power, and for a wall one side finished before the other is started.',
  },
  'spiral-springs': {
    title: 'A long thin strip springs while it is cut',
    meaning:
      'A strip many times as long as it is thick has hardly any stiffness across. As its second side is freed, the stress in the stock bends it; flushing shakes it, and at its end it may touch the wire. For a slot it is the metal between the turns that does so, and the core in the middle hangs on nothing else.',
    matters: 'What is cut last is then no longer where it was when the cut began.',
    remedy:
      'Stress-relieved stock, weak flushing, tabs between the turns until the skims are done, the core held from below, and a light last pass after everything has moved.',
  },
};
