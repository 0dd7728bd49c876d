/** What the manual says of hours, price and schedule. */
import type { Manual } from '../text/manual.ts';
import type { catalogue } from './findings.ts';

export const manual: Manual<typeof catalogue> = {
  'rates-not-yet': {
    title: 'No rates are valid on the day of the quotation',
    meaning: 'The shop file lists its rates with the day from which each is valid, and the day asked for lies before the first of them.',
    matters: 'A price worked out with rates of another time is a wrong price, so none is given.',
    remedy: 'Add a block of rates with an earlier `from` to the shop file, or ask for a later day (`date` in the job file).',
  },
  'pass-unknown': {
    title: 'The program cuts with a condition that no pass has',
    meaning:
      'Hours are worked out from the program as it was read back: each cutting move belongs to a condition or an offset register, and each of those to a pass with a feed. Here a move has a number that no pass has.',
    matters: 'It would be counted with no time at all, so no hours are given.',
    remedy: 'Look at the block named: a register or condition was changed by hand, or the program belongs to another job.',
  },
  'metal-without-price': {
    title: 'The shop supplies the material, and it has no price',
    meaning: 'The job says that the shop pays for the metal, but neither the job nor the rates of the shop give a price per kg for it.',
    matters: 'The price would be short by all of the metal, so it is asked for instead of being counted as nothing.',
    remedy:
      'Give `stock.price` in the job file, or `materialPrices` in the rates of the shop; `stock.suppliedBy` says that the customer brings it.',
  },
  'spool-runs-out': {
    title: 'One spool of wire is not enough for one piece',
    meaning: 'New wire runs through all the time that the machine sparks. This job needs more of it than one spool holds.',
    matters: 'A spool that runs out at night stops the machine until the morning, and a change in mid-contour may leave a mark.',
    remedy: 'Put a fresh spool on before the start, plan the change for an attended stop, or use a larger spool.',
  },
  'spool-ends-at-night': {
    title: 'The spool of wire runs out while the machine is unattended',
    meaning: 'Wire is used up as long as the machine sparks. On this schedule the spool ends outside the shifts.',
    matters:
      'The machine then stands until an operator comes, changes the spool and threads again, often in the middle of a contour, where the new start may leave a mark.',
    remedy:
      'Put on a full spool at the last stop before, even if the old one is not empty yet: the finding says when that is. State what is left on a spool as `spoolLeft` in the job file. Or start so that the spool ends within a shift.',
  },
  'stop-at-night': {
    title: 'A stop comes outside the shifts, and the machine waits',
    meaning: 'Slugs, tabs, threading by hand and loading need an operator. On this schedule at least one of them comes outside the shifts.',
    matters: 'The machine stands from then until the next shift: hours that are in no price, and a delivery a day later.',
    remedy:
      'Start at another time, run all roughs first (`"run": "unattended first"` in the job file) so that the stops come together, or have an operator come in. Shifts are given in the shop file.',
  },
  'schedule-cut-short': {
    title: 'Only the first pieces of a long run are scheduled',
    meaning:
      'A job of very many pieces or openings has more stops and cuts than could be read. The schedule covers whole pieces until there are enough and leaves the others out.',
    matters: 'Finish time, waiting and night hours are those of the pieces scheduled; hours and price elsewhere count all of them.',
    remedy: 'Ask for fewer pieces to see a shorter run, or multiply: every further piece takes about as long as the last one scheduled.',
  },
  'nobody-comes': {
    title: 'The shop has no shift in which the machine is attended',
    meaning: 'The list of shifts in the shop file comes to no minute of the week: it is empty, or breaks cover all of it.',
    matters: 'An operator must start the machine and tend the stops, so the run cannot be scheduled. Hours and price do not need it.',
    remedy:
      'Give `shifts` at least one entry with days, `from` and `to`, or leave it out: the default is Monday to Friday, 07:00 to 16:00.',
  },
  'better-start': {
    title: 'Another start would put more of the cutting into the night',
    meaning:
      'At night the machine cuts unattended. With the start selected here, less of the cutting falls outside the shifts than with another start within the next days.',
    matters:
      'A long cut started in the afternoon leaves the machine free for other work by day. Where the shop has another job for the night, the early start may still be the right one.',
    remedy: 'Set `startAt` in the job file to the moment proposed, or to the one you want, and see where the stops come.',
  },
};
