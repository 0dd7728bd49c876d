/** What belongs to each loop that is cut: the loops inside it, the holes it may start from, and what its leads must keep clear of. */

import { areaOf, boundsOfChain, perimeterOf } from '../geometry/area.ts';
import type { Contour } from '../geometry/contour.ts';
import { type BoxIndex, boxIndexOf } from '../geometry/near/box-index.ts';
import { windingOf } from '../geometry/near/inside.ts';
import type { Point } from '../geometry/segment.ts';
import { grouped } from './grouped.ts';
import type { KeptLoop } from './kept-side.ts';
import type { GivenHole } from './question.ts';
import type { Surroundings } from './same-shape.ts';

/** Holes go to the innermost loop around them: an opening starts from a hole in it, a part from one in the waste around it. */
export const surroundingsOf = (cut: readonly KeptLoop[], holes: readonly GivenHole[]): readonly Surroundings[] => {
  const children = grouped(cut, (k) => k.loop.parent ?? '');
  const home = holesByLoop(cut, holes);
  return cut.map((loop) => ({
    loop,
    inside: children.get(loop.loop.id) ?? [],
    holes: home.get(loop.kept === 'die' ? loop.loop.id : (loop.loop.parent ?? '')) ?? [],
  }));
};

/** By id of the innermost loop around them; '' for holes outside all loops. */
const holesByLoop = (cut: readonly KeptLoop[], holes: readonly GivenHole[]): ReadonlyMap<string, readonly GivenHole[]> => {
  if (holes.length === 0 || cut.length === 0) return new Map();
  const index = boxIndexOf(cut, ({ loop }) => boundsOfChain(loop.contour));
  return grouped(holes, (hole) => innermost(index, hole.at));
};

const innermost = (index: BoxIndex<KeptLoop>, at: Point): string => {
  let found: KeptLoop | undefined;
  for (const loop of index.search({ minX: at.x, minY: at.y, maxX: at.x, maxY: at.y })) {
    if (windingOf(loop.loop.contour, at) !== 0 && (found === undefined || loop.loop.depth > found.loop.depth)) found = loop;
  }
  return found?.loop.id ?? '';
};

/**
 * mm² of the piece that comes free: what is inside the contour without what was cut out of it before. A slug has also lost
 * the kerf beside the contour.
 *
 * @param reach from the contour to the far side of the rough cut.
 */
export const pieceArea = ({ loop, inside }: Surroundings, reach: number): number => {
  const own = Math.abs(areaOf(loop.loop.contour));
  // Round an island the kerf goes as well.
  const kerfOf = ({ kept, loop: { contour } }: KeptLoop): number =>
    loop.kept === 'die' && kept === 'punch' ? perimeterOf(contour) * reach + Math.PI * reach * reach : 0;
  const gone = inside.reduce((sum, child) => sum + Math.abs(areaOf(child.loop.contour)) + kerfOf(child), 0);
  if (loop.kept === 'punch') return Math.max(0, own - gone);
  return Math.max(0, own - gone - strip(loop.loop.contour, reach));
};

/** Inward strip along a contour: Steiner's formula, exact where no corner is lost. */
const strip = (contour: Contour, width: number): number => Math.max(0, perimeterOf(contour) * width - Math.PI * width * width);
