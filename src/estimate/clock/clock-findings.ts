/** What the owner should hear of a run on the clock: spools that end at night, long waits, pieces left out. */
import type { Finding } from '../../text/finding.ts';
import { printDuration } from '../../text/print/duration.ts';
import { find } from '../findings.ts';
import type { Clock } from './clock.ts';
import { printMoment } from './moment.ts';

export const clockFindings = (clock: Clock): readonly Finding[] => [
  ...spoolFindings(clock),
  ...waitFindings(clock),
  ...shortFindings(clock),
];

const spoolFindings = ({ spools }: Clock): readonly Finding[] => {
  const atNight = spools.filter((s) => s.atNight);
  const first = atNight[0];
  if (first === undefined) return [];
  const more = atNight.length === 1 ? '' : ` ${atNight.length - 1} more run out at night after it.`;
  return [
    find(
      'spool-ends-at-night',
      `The spool runs out ${printMoment(first.at)}, when nobody is there; the machine stands until ${printMoment(first.changed)}.${more}`,
      {
        place: { kind: 'field', path: 'spoolLeft' },
        remedy: `Put on a full spool at ${printMoment(first.before)}, the last time before that somebody is at the machine.`,
      },
    ),
  ];
};

/** Waits shorter than an hour are not worth a word. */
const LONG_WAIT = 60;

/** What waits for a new spool is told with the spool. */
const waitFindings = ({ events, start, spools }: Clock): readonly Finding[] => {
  const waits = events.filter(
    (e) =>
      e.kind === 'waiting for a person' &&
      e.to - e.from >= LONG_WAIT &&
      e.from > start &&
      !spools.some((s) => Math.abs(s.changed - e.to) < 1),
  );
  const first = waits[0];
  if (first === undefined) return [];
  const often = waits.length === 1 ? 'once' : `${waits.length} times`;
  return [
    find(
      'stop-at-night',
      `The machine waits ${often} for somebody to come, ${printDuration(waits.reduce((sum, w) => sum + w.to - w.from, 0))} in all: first from ${printMoment(first.from)} to ${printMoment(first.to)}.`,
      { ...(first.block === undefined ? {} : { place: { kind: 'line', line: first.block + 1 } as const }), remedy: WAIT_REMEDY },
    ),
  ];
};

const WAIT_REMEDY = 'Another start, or all roughs first, may bring the stops into the shift.';

const shortFindings = ({ pieces }: Clock): readonly Finding[] =>
  pieces.laid === pieces.asked
    ? []
    : [
        find(
          'clock-cut-short',
          `Only ${pieces.laid} of ${pieces.asked} pieces are laid on the clock: all of them would be too many events.`,
          {
            place: { kind: 'field', path: 'quantity' },
          },
        ),
      ];
