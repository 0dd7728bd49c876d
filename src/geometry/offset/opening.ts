/** Opening and closing: offset one way and back, which shows what a round tool of that radius really leaves. */
import { counterClockwise } from '../chain.ts';
import type { Contour, Region } from '../contour.ts';
import { neighbourOrder } from './neighbour-order.ts';
import { prepareRegion, traceRegions } from './offset.ts';
import type { OffsetRegionOutcome } from './offset-outcome.ts';
import { contradiction, NO_DISTANCE, noDistance, prepareTrusted } from './prepare.ts';

/**
 * What a disc of this radius can sweep inside the source: narrow places are lost, inside corners get the radius.
 *
 * @param source a region, or a contour, which stands for its inside whichever way it runs.
 * @param radius mm, more than 0.
 */
export const open = (source: Contour | Region, radius: number): OffsetRegionOutcome => thereAndBack(source, radius, 'left');

/** The same seen from outside: gaps and pockets that the disc does not pass into are filled, corners between pieces get the radius. */
export const close = (source: Contour | Region, radius: number): OffsetRegionOutcome => thereAndBack(source, radius, 'right');

const thereAndBack = (source: Contour | Region, radius: number, side: 'left' | 'right'): OffsetRegionOutcome => {
  if (!Number.isFinite(radius) || radius < 0) return noDistance(radius);
  const region = 'outer' in source ? source : { outer: counterClockwise(source), holes: [] };
  const prepared = prepareRegion(region, side);
  if (prepared.kind !== 'prepared') return prepared;
  if (radius < NO_DISTANCE) return { kind: 'offset', regions: [region], rounded: [], slivers: 0 };
  const there = traceRegions(prepared, radius, {});
  if (there.kind !== 'traced') return there;
  const chains = there.regions.flatMap((r) => [r.outer, ...r.holes]);
  const returning = prepareTrusted(neighbourOrder(chains), side === 'left' ? 'right' : 'left');
  if (returning.kind !== 'prepared') return returning;
  const back = traceRegions(returning, there.distance, {});
  if (back.kind === 'vanished') return contradiction(back.at, radius);
  if (back.kind !== 'traced') return back;
  return { kind: 'offset', regions: back.regions, rounded: [], slivers: there.slivers + back.slivers };
};
