/** Several parts out of one block: how many, in which order, and how near the nearest two are. */
import type { Finding } from '../../text/finding.ts';
import { find } from '../findings.ts';
import type { KeptLoop } from '../kept-side.ts';
import { nearestPlace, pairsNear } from '../near-pairs.ts';

/** Parts further apart than this, mm, are not held against each other. */
const FAR = 20;

/** As many are named in one sentence. */
const NAMED = 12;

/** @param order loops in the order in which they are first cut. */
export const severalParts = (cut: readonly KeptLoop[], order: readonly string[]): readonly Finding[] => {
  const parts = cut.filter((c) => c.kept === 'punch' && !cut.some((o) => o.loop.id === c.loop.parent));
  if (parts.length < 2) return [];
  const ids = new Set(parts.map((p) => p.loop.id));
  const inOrder = order.filter((id) => ids.has(id));
  const named = inOrder.length > NAMED ? `${inOrder.slice(0, NAMED).join(', ')} and ${inOrder.length - NAMED} more` : inOrder.join(', ');
  const openings = cut.length - parts.length;
  const first = openings === 0 ? '' : `the ${openings === 1 ? 'opening' : `${openings} openings`} in them first, then `;
  return [
    find(
      'several-parts',
      `${parts.length} parts come out of one block, all from one datum in one clamping: ${first}${named}. ${apartSaid(parts)}`,
    ),
  ];
};

const apartSaid = (parts: readonly KeptLoop[]): string => {
  const near = pairsNear(parts, FAR).flatMap(([i, j]) => {
    const place = nearestPlace(parts[i]!.loop.contour, parts[j]!.loop.contour, FAR);
    return place === undefined ? [] : [{ ...place, names: `${parts[i]!.loop.id} and ${parts[j]!.loop.id}` }];
  });
  if (near.length === 0) return `No two are nearer than ${FAR} mm.`;
  const { width, names, at } = near.reduce((a, b) => (b.width < a.width - 1e-9 ? b : a));
  return `The nearest two, ${names}, are ${width.toFixed(3)} mm apart at (${at.x.toFixed(3)}, ${at.y.toFixed(3)}).`;
};
