/** Turns the conflicts of loops with themselves and each other into findings, each with its place. */
import type { Finding } from '../finding/finding.ts';
import type { ChainContact } from '../geometry/crossings.ts';
import { distanceBetween, midpoint } from '../geometry/segment.ts';
import type { DrawingUnits } from './drawing.ts';
import { find } from './findings.ts';
import type { Conflict } from './judge.ts';
import { count, length, point, spot } from './say.ts';

/** What a conflict needs to know of its loops. */
export interface NamedLoop {
  readonly id: string;
  readonly hidden: boolean;
}

export const toldConflicts = (conflicts: readonly Conflict[], loops: readonly NamedLoop[], units: DrawingUnits): Finding[] =>
  conflicts.flatMap((conflict) => {
    const [first, second] = [loops[conflict.first]!, loops[conflict.second]!];
    const told = first === second ? [toldSelf(conflict, first, units)] : toldPair(conflict, first, second, units);
    // What lies on a hidden layer is not cut, so nothing has to be refused for its sake.
    return first.hidden || second.hidden ? told.map((f) => ({ ...f, severity: 'note' as const })) : told;
  });

const toldSelf = (conflict: Conflict, loop: NamedLoop, units: DrawingUnits): Finding => {
  const worst =
    conflict.contacts.find((c) => c.kind === 'crossing') ?? conflict.contacts.find((c) => c.kind === 'overlap') ?? conflict.contacts[0]!;
  const does = { crossing: 'crosses itself', touching: 'touches itself', overlap: 'runs over itself' }[worst.kind];
  return find('loop-crosses-itself', `${loop.id} ${does} at ${point(worst.at, units)}${others(conflict.contacts.length)}.`, {
    place: { ...spot(placeOf(worst), units), loop: loop.id } as Finding['place'],
    done: 'It was kept as drawn.',
    remedy: 'Draw the outline so that it goes round once.',
  });
};

/** Crossing, sharing and touching are told apart; each once per pair of loops, at its first place. */
const toldPair = (conflict: Conflict, a: NamedLoop, b: NamedLoop, units: DrawingUnits): Finding[] => {
  const along = conflict.contacts.filter((c) => c.kind === 'overlap');
  const crossing = conflict.contacts.filter((c) => c.kind === 'crossing' && !endsAnOverlap(c, along));
  if (crossing.length > 0)
    return [
      find('loops-cross', `${a.id} and ${b.id} cross at ${point(crossing[0]!.at, units)}${others(crossing.length)}.`, {
        place: spot(crossing[0]!.at, units),
        done: 'Both were kept as drawn.',
        remedy: 'Leave out one of them, or draw the outline that is meant.',
      }),
    ];
  if (along.length > 0)
    return [
      find(
        'loops-share-edge',
        `${a.id} and ${b.id} share ${length(sharedLength(along))} of edge at ${point(placeOf(along[0]!), units)}${others(along.length)}.`,
        {
          place: spot(placeOf(along[0]!), units),
          done: 'Both were kept as drawn.',
          remedy: 'Two parts cannot share a cut: leave room for the wire between them.',
        },
      ),
    ];
  const touch = conflict.contacts[0]!;
  return [
    find('loops-touch', `${a.id} and ${b.id} touch at ${point(touch.at, units)}${others(conflict.contacts.length)}.`, {
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

const placeOf = ({ contact, at }: ChainContact): { readonly x: number; readonly y: number } =>
  contact.kind === 'overlap' ? midpoint(contact.from, contact.to) : at;

/** By chords, which is near enough for a sentence. */
const sharedLength = (contacts: readonly ChainContact[]): number =>
  contacts.reduce((sum, { contact }) => sum + (contact.kind === 'overlap' ? distanceBetween(contact.from, contact.to) : 0), 0);
