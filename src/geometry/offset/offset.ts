/** Parallel curves at a distance, arcs kept as arcs: of closed contours and of regions with holes. */
import { areaOf } from '../area.ts';
import type { Contour, Region } from '../contour.ts';
import { emit } from './emit.ts';
import { holesToOuters } from './holes-to-outers.ts';
import type { Loop } from './loops.ts';
import { neighbourOrder } from './neighbour-order.ts';
import type {
  OffsetContourOutcome,
  OffsetOptions,
  OffsetRegionOutcome,
  OffsetRegions,
  SelfCrossing,
  Unsound,
  Vanished,
} from './offset-outcome.ts';
import type { Prepared } from './prepare.ts';
import { bridgingOf, contradiction, NO_DISTANCE, noDistance, pointsOf, prepare, vanishedOr } from './prepare.ts';
import type { Traced } from './trace-offset.ts';
import { trace } from './trace-offset.ts';
import { unsound } from './usable.ts';

export { offsetPath } from './offset-path.ts';

/**
 * The parallel curve of a closed contour.
 *
 * @param distance mm; positive to the left of travel, so a counter-clockwise contour shrinks by a positive distance and
 * grows by a negative one.
 * @returns contours on which every place is |distance| from the source to 1e-6 mm (farther only at extended corners), which
 * do not cross; or why there are none.
 */
export const offsetContour = (source: Contour, distance: number, options: OffsetOptions = {}): OffsetContourOutcome => {
  if (!Number.isFinite(distance)) return noDistance(distance);
  const prepared = prepare([[0, source]], distance > 0 ? 'left' : 'right');
  if (prepared.kind !== 'prepared') return prepared;
  if (Math.abs(distance) < NO_DISTANCE) return { kind: 'offset', contours: [source], enclosed: [], rounded: [], slivers: 0 };
  const { layout, tree } = prepared;
  const shrinks = areaOf(source) > 0 === distance > 0;
  // A shrunken outline has no holes, and a grown one is one piece with pockets at most.
  const wrong = shrinks ? hasHole : (loops: readonly Loop[]) => loops.filter((loop) => loop.area < 0).length !== 1;
  const traced = trace(layout, tree, Math.abs(distance), bridgingOf(options), wrong);
  if (traced.kind === 'untraceable') return contradiction(source.segments[0].from, distance);
  if (traced.loops.length === 0) return vanishedOr(prepared, Math.abs(distance));
  const ordered = traced.loops.toSorted((a, b) => Math.abs(b.area) - Math.abs(a.area));
  const emitted = (loops: readonly Loop[]) => loops.map((loop) => emit(loop, { traced, layout }));
  return {
    kind: 'offset',
    contours: emitted(ordered.filter((loop) => loop.area > 0 === shrinks)),
    enclosed: emitted(ordered.filter((loop) => loop.area > 0 !== shrinks)),
    rounded: pointsOf(layout, traced.rounded),
    slivers: traced.slivers,
  };
};

const hasHole = (loops: readonly Loop[]): boolean => loops.some((loop) => loop.area < 0);

/** The region shrunk by a positive distance, grown by a negative one, its holes with it: they may run into each other and the outside. */
export const offsetRegion = (source: Region, distance: number, options: OffsetOptions = {}): OffsetRegionOutcome => {
  if (!Number.isFinite(distance)) return noDistance(distance);
  const prepared = prepareRegion(source, distance > 0 ? 'left' : 'right');
  if (prepared.kind !== 'prepared') return prepared;
  if (Math.abs(distance) < NO_DISTANCE) return { kind: 'offset', regions: [source], rounded: [], slivers: 0 };
  const traced = traceRegions(prepared, Math.abs(distance), options);
  if (traced.kind !== 'traced') return traced;
  return { kind: 'offset', regions: traced.regions, rounded: pointsOf(prepared.layout, traced.rounded), slivers: traced.slivers };
};

/** Lays a region out, its holes in an order that keeps neighbours together; refuses it when the outlines run the wrong way round. */
export const prepareRegion = (source: Region, side: 'left' | 'right'): Prepared | SelfCrossing | Unsound => {
  const chains = [source.outer, ...source.holes];
  for (const chain of chains) {
    const area = areaOf(chain);
    if (chain === source.outer ? area < 0 : area > 0) {
      return unsound('wrong winding', chain.segments[0].from);
    }
  }
  return prepare(neighbourOrder(chains), side);
};

/** Traced, and its loops sorted into regions. */
export interface TracedRegions extends Traced {
  readonly regions: OffsetRegions['regions'];
}

/** Traces and nests; a hole that lies in no region is a contradiction. */
export const traceRegions = (prepared: Prepared, distance: number, options: OffsetOptions): TracedRegions | Vanished | Unsound => {
  const { layout, tree } = prepared;
  const shrinks = !layout.reversed;
  const wrong = (loops: readonly Loop[]): boolean => loops.length > 0 && !loops.some((loop) => loop.area > 0 === shrinks);
  const traced = trace(layout, tree, distance, bridgingOf(options), wrong);
  if (traced.kind === 'untraceable') return contradiction(layout.shift, distance);
  if (traced.loops.length === 0) return vanishedOr(prepared, distance);
  const regions = holesToOuters(traced.loops.map((loop) => emit(loop, { traced, layout })));
  return regions === 'hole outside' ? contradiction(layout.shift, distance) : { ...traced, regions };
};
