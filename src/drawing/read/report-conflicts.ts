/** Turns the conflicts of loops with themselves and each other into findings, each with its place. */

import { lengthOf, pointAt } from '../../geometry/measure.ts';
import type { ChainContact } from '../../geometry/near/crossings.ts';
import type { Point, Segment } from '../../geometry/segment.ts';
import { distanceBetween } from '../../geometry/segment.ts';
import type { Finding } from '../../text/finding.ts';
import type { DrawingUnits } from '../drawing.ts';
import { find } from '../findings.ts';
import type { Conflict } from '../join/conflicts.ts';
import { count, length, point, spot } from '../place-in-file.ts';

/** What a conflict needs to know of its loops. */
export interface NamedLoop {
  readonly id: string;
  readonly hidden: boolean;
  readonly segments: readonly Segment[];
}

export const toldConflicts = (conflicts: readonly Conflict[], loops: readonly NamedLoop[], units: DrawingUnits): Finding[] =>
  conflicts.flatMap((conflict) => {
    const [first, second] = [loops[conflict.first]!, loops[conflict.second]!];
    const told = first === second ? [toldSelf(conflict, first, units)] : toldPair(conflict, first, second, units);
    // What lies on a hidden layer is not cut, so nothing has to be refused for its sake.
    return first.hidden || second.hidden ? told.map((f) => ({ ...f, severity: 'note' as const })) : told;
  });

/** Where it crosses itself it cannot be cut; where it only touches itself or runs over itself there may be a meaning. */
const toldSelf = (conflict: Conflict, loop: NamedLoop, units: DrawingUnits): Finding => {
  const along = conflict.contacts.filter((c) => c.kind === 'overlap');
  const crossing = conflict.contacts.find((c) => c.kind === 'crossing' && !endsAnOverlap(c, along));
  const worst = crossing ?? along[0] ?? conflict.contacts[0]!;
  const at = placeOf(worst, loop);
  const more = {
    place: { ...spot(at, units), loop: loop.id },
    done: 'It was kept as drawn.',
    remedy: 'Draw the outline so that it goes round once.',
  };
  const where = `at ${point(at, units)}${others(conflict.contacts.length)}.`;
  if (crossing) return find('loop-crosses-itself', `${loop.id} crosses itself ${where}`, more);
  return find('loop-touches-itself', `${loop.id} ${along.length > 0 ? 'runs over itself' : 'touches itself'} ${where}`, more);
};

/** Crossing, sharing and touching are told apart; each once per pair of loops, at its first place. */
const toldPair = (conflict: Conflict, a: NamedLoop, b: NamedLoop, units: DrawingUnits): Finding[] => {
  const both = conflict.first < conflict.second ? `${a.id} and ${b.id}` : `${b.id} and ${a.id}`;
  const along = conflict.contacts.filter((c) => c.kind === 'overlap');
  const crossing = conflict.contacts.filter((c) => c.kind === 'crossing' && !endsAnOverlap(c, along));
  if (crossing.length > 0)
    return [
      find('loops-cross', `${both} cross at ${point(crossing[0]!.at, units)}${others(crossing.length)}.`, {
        place: spot(crossing[0]!.at, units),
        done: 'Both were kept as drawn.',
        remedy: 'Leave out one of them, or draw the outline that is meant.',
      }),
    ];
  if (along.length > 0)
    return [
      find(
        'loops-share-edge',
        `${both} share ${length(sharedLength(along, a))} of edge at ${point(placeOf(along[0]!, a), units)}${others(along.length)}.`,
        {
          place: spot(placeOf(along[0]!, a), units),
          done: 'Both were kept as drawn.',
          remedy: 'Two parts cannot share a cut: leave room for the wire between them.',
        },
      ),
    ];
  const touch = conflict.contacts[0]!;
  return [
    find('loops-touch', `${both} touch at ${point(touch.at, units)}${others(conflict.contacts.length)}.`, {
      place: spot(touch.at, units),
      done: 'Both were kept as drawn.',
    }),
  ];
};

/** Where two loops begin or cease to run along each other it is not told which side they change to. */
const endsAnOverlap = ({ at }: ChainContact, along: readonly ChainContact[]): boolean =>
  along.some(({ contact }) => contact.kind === 'overlap' && [contact.from, contact.to].some((p) => distanceBetween(p, at) <= NEAR));

/** mm: two tellings of one place. */
const NEAR = 1e-5;

const others = (n: number): string => (n > 1 ? ` and at ${count(n - 1, 'other place')}` : '');

/** The middle of a shared stretch lies on the loop whose segment was looked at; other places are where they are. */
const placeOf = ({ contact, at, first }: ChainContact, loop: NamedLoop): Point =>
  contact.kind === 'overlap' ? pointAt(loop.segments[first]!, (contact.first[0] + contact.first[1]) / 2) : at;

const sharedLength = (contacts: readonly ChainContact[], loop: NamedLoop): number =>
  contacts.reduce(
    (sum, { contact, first }) =>
      sum + (contact.kind === 'overlap' ? Math.abs(contact.first[1] - contact.first[0]) * lengthOf(loop.segments[first]!) : 0),
    0,
  );
