/** Several parts out of one block: how many, in which order, and how near the nearest two are. */
import { itemAt } from '../../sequence/sequence.ts';
import type { Finding } from '../../text/finding.ts';
import { contour, count, mm, type Part } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import { find } from '../findings.ts';
import type { KeptLoop } from '../kept-side.ts';
import { type Near, nearestPlace, pairsNear } from '../near-pairs.ts';
import { someLoops, spot, thousandths } from '../said.ts';

/** Parts further apart than this, mm, are not held against each other. */
const FAR = 20;

/** @param order loops in the order in which they are first cut. */
export const severalParts = (cut: readonly KeptLoop[], order: readonly string[]): readonly Finding[] => {
  const parts = cut.filter((c) => c.kept === 'punch' && !cut.some((o) => o.loop.id === c.loop.parent));
  if (parts.length < 2) return [];
  const ids = new Set(parts.map((p) => p.loop.id));
  const named = someLoops(
    order.filter((id) => ids.has(id)),
    'comma',
  );
  const sequence = sequenceOf(cut.length - parts.length, named);
  return [
    find(
      'several-parts',
      say`${{ parts: count(parts.length, 'part') }} come out of one block, all from one datum in one set-up: ${{ order: sequence }}. ${{ apart: apartSaid(parts) }}`,
    ),
  ];
};

const sequenceOf = (openings: number, parts: Part | Text): Part | Text => {
  if (openings === 0) return parts;
  return openings === 1 ? words.openingFirst(parts) : words.openingsFirst(openings, parts);
};

const apartSaid = (parts: readonly KeptLoop[]): Text => {
  const near = pairsNear(parts, FAR).flatMap(([i, j]) => {
    const [one, other] = [itemAt(parts, i).loop, itemAt(parts, j).loop];
    const place = nearestPlace(one.contour, other.contour, FAR);
    return place === undefined ? [] : [{ ...place, one: one.id, other: other.id }];
  });
  return near.length === 0 ? words.far : words.nearest(near.reduce((a, b) => (b.width < a.width - 1e-9 ? b : a)));
};

const words = phrases('several-parts', {
  openingFirst: (parts: Part | Text) => say`the opening in them first, then ${{ parts }}`,
  openingsFirst: (openings: number, parts: Part | Text) =>
    say`the ${{ openings: count(openings, 'opening') }} in them first, then ${{ parts }}`,
  far: say`None are closer than ${{ far: mm(FAR) }}.`,
  nearest: ({ one, other, width, at }: Near & { readonly one: string; readonly other: string }) =>
    say`The closest two, ${{ one: contour(one) }} and ${{ other: contour(other) }}, are ${{ apart: thousandths(width) }} apart at ${{ at: spot(at) }}.`,
});
