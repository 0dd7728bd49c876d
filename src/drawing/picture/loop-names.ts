/** The names of the loops and chains on the sheet, small and with a halo of paper, each inside the upper right of its shape. */

import { boundsOfChain } from '../../geometry/area.ts';
import type { Chain } from '../../geometry/contour.ts';
import type { Point } from '../../geometry/segment.ts';
import { placed } from '../../picture/label-room.ts';
import type { View } from '../../picture/svg.ts';
import { escaped, PAPER, px, QUIET } from '../../picture/svg.ts';
import { itemAt, sideBySide } from '../../sequence/sequence.ts';
import type { Drawing } from '../drawing.ts';

/** More names than this would be all that is seen. */
const NAMED = 120;

export const loopNames = (drawing: Drawing, view: View): string[] => {
  const shapes: { readonly id: string; readonly chain: Chain; readonly inside: boolean }[] = [
    ...drawing.loops.map((l) => ({ id: l.id, chain: l.contour, inside: true })),
    ...drawing.openChains.map((c) => ({ id: c.id, chain: c.path, inside: false })),
  ];
  if (shapes.length > NAMED) return [];
  const named = shapes.flatMap(({ id, chain, inside }) => {
    // A name larger than its shape would hide it.
    if (sizeOf(chain) * view.scale < 26) return [];
    const [x, y] = view.at(inside ? corner(chain) : middle(chain));
    return [{ id, inside, x, y }];
  });
  // The larger loop comes first and keeps its name where two would be written over each other.
  const patches = placed(named.map(({ x, y }) => ({ tries: [{ x, y, across: 12, up: 5.5 }] })));
  return sideBySide(named, patches).flatMap(([{ id, inside, x, y }, patch]) =>
    patch === undefined ? [] : [name(inside ? x - 6 : x + 6, inside ? y + 13 : y - 5, id, inside ? 'end' : 'start')],
  );
};

const sizeOf = (chain: Chain): number => {
  const { minX, minY, maxX, maxY } = boundsOfChain(chain);
  return Math.max(maxX - minX, maxY - minY);
};

/** The corner furthest up and to the right, and of those further right. */
const corner = (chain: Chain): Point =>
  chain.segments.reduce((best, s) => (s.from.x + s.from.y > best.x + best.y + 1e-9 ? s.from : best), chain.segments[0].from);

const middle = (chain: Chain): Point => itemAt(chain.segments, Math.floor(chain.segments.length / 2)).from;

const name = (x: number, y: number, id: string, anchor: 'start' | 'end'): string =>
  `<text x="${px(x)}" y="${px(y)}" font-size="9" fill="${QUIET}" stroke="${PAPER}" stroke-width="2.5" stroke-linejoin="round" paint-order="stroke"${anchor === 'end' ? ' text-anchor="end"' : ''}>${escaped(id)}</text>`;
