/** What the manual says of spark, wire and material. */
import type { Manual } from '../text/manual.ts';
import type { catalogue } from './findings.ts';

export const manual: Manual<typeof catalogue> = {
  'material-unknown': {
    title: 'The material is not in the list',
    meaning: 'The job names a material by a key that is neither built in nor in the shop file.',
    matters:
      'Cutting rate, finish, mass of the slug and the cautions on the set-up sheet all depend on the material, so nothing is worked out on a guess.',
    remedy:
      'Take one of the keys that the finding offers, or add the material to the shop file with its density, melting temperature, heat and conductivity; its cutting rate can then be estimated until the first job has been logged.',
  },
  'material-not-conducting': {
    title: 'The material does not conduct well enough to be spark cut',
    meaning:
      'A spark needs current through the work. Up to a resistivity of about 100 ohm·cm it can be cut; ceramics, glass and plastics lie many powers of ten above that.',
    matters: 'The answer is no, whatever the wire, machine or price.',
    remedy:
      'Ask the customer for a conducting grade (some ceramics come with enough conducting filler), or send the job to grinding, laser or water jet.',
  },
  'material-index-estimated': {
    title: 'The cutting rate was estimated from material constants',
    meaning:
      'The shop file has no cutting rate for this material, so its rate against tool steel was worked out from what it takes to melt it and from how well it conducts heat and current away.',
    matters:
      'Such an estimate is within about a third for common metals: hours and price carry that uncertainty, and the finding states it.',
    remedy: 'Make a short trial cut and enter the rate, or let the log of the first job replace the estimate.',
  },
  'wire-out-of-range': {
    title: 'No wire of this diameter is made',
    meaning: 'Wires for this work are made from 0.025 to 0.356 mm (0.001 to 0.014 in). The job or the shop file asks for another diameter.',
    matters: 'Often the unit is wrong: a wire of 0.010 in is 0.25 mm.',
    remedy: "Give a diameter within that range, or leave the wire out so that one of the shop's wires is selected.",
  },
  'wire-not-for-machine': {
    title: 'The machine cannot thread this wire',
    meaning: 'The wire can be bought, but guides and threading of this machine are made for others.',
    matters: 'A wire that does not fit the guides costs accuracy or does not thread at all.',
    remedy:
      "Choose a wire within the machine's range, change the range in the shop file if other guides are at hand, or take another machine.",
  },
  'height-out-of-range': {
    title: 'The work is too thick for the machine, or has no height',
    meaning: 'The height is what the wire cuts through. It must be more than 0 and no more than the upper head can be raised.',
    matters: 'Every hour and every price is proportional to it, so it is never guessed.',
    remedy: 'Give the height of the cut. Work that is too thick has to be split, or goes on a machine with more room.',
  },
  'pass-table-inconsistent': {
    title: 'A pass table of the shop cannot be run as entered',
    meaning:
      'The shop file holds a pass table for this wire and material, but its offsets contradict each other or the wire: a pass leaves no room for the spark, runs nearer than its gap allows, or takes nothing off the stock that the pass before left.',
    matters:
      'Offsets have to fall from pass to pass, and the last one is half the wire plus its gap. Cutting with such registers would gouge, or spark at nothing.',
    remedy: 'Correct the offsets, or take the table out: the starting model then works them out.',
  },
  'another-process-would-do': {
    title: 'Another process holds the requirements, and quicker',
    meaning:
      'Flame, plasma, laser and water jet were checked against the tolerance, the finish and the inside corners of the job, and at least one of them is good enough at this thickness. It cuts in minutes what the wire cuts in hours. The ranges are those of ISO 9013 that a good machine can be expected to hold at its best, which is common practice and no promise.',
    matters: 'Saying so costs an order and keeps a customer.',
    remedy:
      'Ask the customer whether tolerance and finish are really as coarse as specified. If they are, send the work to the other process, or cut with the wire only what needs it: rough the outline by jet or laser with half a millimetre of stock left, and finish that by wire.',
  },
  'height-hardly-known': {
    title: 'The cutting rate at this height is hardly known',
    meaning:
      'Cutting rates are known for heights of cut from 1 to 1000 mm. Thinner foil burns and flutters; thicker work can hardly be flushed.',
    matters: 'The hours are worked out all the same, but they are a guess.',
    remedy: 'Clamp foil in a stack between plates, and take the height of the stack; make a trial cut before promising a date.',
  },
};
