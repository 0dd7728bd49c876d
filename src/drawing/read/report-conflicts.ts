/** Turns the conflicts of loops with themselves and each other into findings, each with its place. */

import { lengthOf, pointAt } from '../../geometry/measure.ts';
import type { ChainContact } from '../../geometry/near/crossings.ts';
import type { Point, Segment } from '../../geometry/segment.ts';
import { distanceBetween } from '../../geometry/segment.ts';
import { isFilled, itemAt } from '../../sequence/sequence.ts';
import type { Finding } from '../../text/finding.ts';
import { contour, length, list, type Part } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import type { DrawingUnits } from '../drawing.ts';
import { find } from '../findings.ts';
import type { Conflict } from '../join/conflicts.ts';
import { firstOf, point, spot } from '../place-in-file.ts';

/** What a conflict needs to know of its loops. */
export interface NamedLoop {
  readonly id: string;
  readonly hidden: boolean;
  readonly segments: readonly Segment[];
}

export const reportConflicts = (conflicts: readonly Conflict[], loops: readonly NamedLoop[], units: DrawingUnits): Finding[] =>
  conflicts.flatMap((conflict) => {
    const [first, second] = [itemAt(loops, conflict.first), itemAt(loops, conflict.second)];
    const told = first === second ? [reportSelf(conflict, first, units)] : reportPair(conflict, first, second, units);
    // What lies on a hidden layer is not cut, so nothing has to be refused for its sake.
    return first.hidden || second.hidden ? told.map((f) => ({ ...f, severity: 'note' as const })) : told;
  });

/** Where it crosses itself it cannot be cut; where it only touches itself or runs over itself there may be a meaning. */
const reportSelf = (conflict: Conflict, loop: NamedLoop, units: DrawingUnits): Finding => {
  const along = conflict.contacts.filter((c) => c.kind === 'overlap');
  const crossing = conflict.contacts.find((c) => c.kind === 'crossing' && !endsAnOverlap(c, along));
  // A search that was ended among crossings has not seen them all.
  const tangled = conflict.endless ? conflict.contacts.find((c) => c.kind === 'crossing') : crossing;
  const worst = crossing ?? tangled ?? along[0] ?? conflict.contacts[0];
  const at = placeOf(worst, loop);
  const more = {
    place: { ...spot(at, units), loop: loop.id },
    done: words.keptIt,
    remedy: words.roundOnce,
  };
  const where = whereOf(point(at, units), conflict.contacts.length, conflict.endless);
  if (crossing ?? tangled) return find('loop-crosses-itself', say`${{ loop: contour(loop.id) }} crosses itself at ${{ where }}.`, more);
  return find('loop-touches-itself', along.length > 0 ? words.runsOver(loop.id, where) : words.touchesItself(loop.id, where), more);
};

/** Crossing, sharing and touching are told apart; each once per pair of loops, at its first place. */
const reportPair = (conflict: Conflict, a: NamedLoop, b: NamedLoop, units: DrawingUnits): Finding[] => {
  const both = list(
    (conflict.first < conflict.second ? [a, b] : [b, a]).map((loop) => contour(loop.id)),
    'and',
  );
  const along = conflict.contacts.filter((c) => c.kind === 'overlap');
  const crossing = conflict.contacts.filter((c) => c.kind === 'crossing' && !endsAnOverlap(c, along));
  if (isFilled(crossing))
    return [
      find(
        'loops-cross',
        say`${{ both }} cross at ${{ where: whereOf(point(crossing[0].at, units), crossing.length, conflict.endless) }}.`,
        {
          place: spot(crossing[0].at, units),
          done: words.keptBoth,
          remedy: say`Remove one of them, or draw the intended outline.`,
        },
      ),
    ];
  if (isFilled(along))
    return [
      find(
        'loops-share-edge',
        say`${{ both }} share ${{ shared: length(sharedLength(along, a)) }} of edge at ${{ where: firstOf(point(placeOf(along[0], a), units), along.length) }}.`,
        {
          place: spot(placeOf(along[0], a), units),
          done: words.keptBoth,
          remedy: say`Two parts cannot share a cut: leave room for the wire between them.`,
        },
      ),
    ];
  const [touch] = conflict.contacts;
  return [
    find('loops-touch', say`${{ both }} touch at ${{ where: firstOf(point(touch.at, units), conflict.contacts.length) }}.`, {
      place: spot(touch.at, units),
      done: words.keptBoth,
    }),
  ];
};

/** Where two loops begin or cease to run along each other it is not told which side they change to. */
const endsAnOverlap = ({ at }: ChainContact, along: readonly ChainContact[]): boolean =>
  along.some(({ contact }) => contact.kind === 'overlap' && [contact.from, contact.to].some((p) => distanceBetween(p, at) <= NEAR));

/** mm: two tellings of one place. */
const NEAR = 1e-5;

const whereOf = (at: Part, places: number, endless: boolean): Part | Text => (endless ? words.andManyOthers(at) : firstOf(at, places));

/** The middle of a shared stretch lies on the loop whose segment was looked at; other places are where they are. */
const placeOf = ({ contact, at, first }: ChainContact, loop: NamedLoop): Point =>
  contact.kind === 'overlap' ? pointAt(itemAt(loop.segments, first), (contact.first[0] + contact.first[1]) / 2) : at;

const sharedLength = (contacts: readonly ChainContact[], loop: NamedLoop): number =>
  contacts.reduce(
    (sum, { contact, first }) =>
      sum + (contact.kind === 'overlap' ? Math.abs(contact.first[1] - contact.first[0]) * lengthOf(itemAt(loop.segments, first)) : 0),
    0,
  );

const words = phrases('conflicts-of-loops', {
  keptIt: say`It was kept as drawn.`,
  keptBoth: say`Both were kept as drawn.`,
  roundOnce: say`Draw the outline so that it goes round once.`,
  runsOver: (loop: string, where: Part | Text) => say`${{ loop: contour(loop) }} runs over itself at ${{ where }}.`,
  touchesItself: (loop: string, where: Part | Text) => say`${{ loop: contour(loop) }} touches itself at ${{ where }}.`,
  andManyOthers: (at: Part) => say`${{ at }} and at a hundred other places or more`,
});
