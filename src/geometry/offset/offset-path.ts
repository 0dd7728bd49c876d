/** The parallel curve on one side of an open path. */
import { aroundAt, lastOf, roundPairs } from '../../sequence/sequence.ts';
import type { Contour, Path } from '../contour.ts';
import { path } from '../contour.ts';
import { emit, segmentsOf } from './emit.ts';
import type { Layout } from './flat-source.ts';
import type { Loop, LoopStretch } from './loops.ts';
import type { OffsetOptions, OffsetPathOutcome } from './offset-outcome.ts';
import { bridgingOf, contradiction, NO_DISTANCE, noDistance, pointsOf, prepare } from './prepare.ts';
import type { Traced } from './trace-offset.ts';
import { trace } from './trace-offset.ts';

/**
 * The parallel curve of an open path as far as it stays the distance from the whole path, its ends included.
 *
 * The path is gone round, there and back, as if it were a contour without width: what comes near its other side or its ends
 * is then cut as it must be. Of the way round only what lies on the side asked for is kept.
 *
 * @param distance mm; positive to the left of travel.
 */
export const offsetPath = (source: Path, distance: number, options: OffsetOptions = {}): OffsetPathOutcome => {
  if (!Number.isFinite(distance)) return noDistance(distance);
  const prepared = prepare([[0, source]], distance > 0 ? 'left' : 'right');
  if (prepared.kind !== 'prepared') return prepared;
  if (Math.abs(distance) < NO_DISTANCE) return { kind: 'offset', paths: [source], loops: [], rounded: [], slivers: 0 };
  const { layout, tree } = prepared;
  const traced = trace(layout, tree, Math.abs(distance), bridgingOf(options), (loops) => loops.length === 0);
  if (traced.kind === 'untraceable') return contradiction(source.segments[0].from, distance);
  const runs = traced.loops.flatMap((loop) => runsOf(traced, layout, loop)).sort((a, b) => a.order - b.order);
  if (layout.reversed) runs.reverse();
  if (runs.length === 0) return { kind: 'vanished' };
  const ends = [source.segments[0].from, lastOf(source.segments).to];
  const corners = pointsOf(layout, traced.rounded).filter((p) => !ends.some((e) => e.x === p.x && e.y === p.y));
  return {
    kind: 'offset',
    paths: runs.flatMap((run) => (run.chain.closed ? [] : [run.chain])),
    loops: runs.flatMap((run) => (run.chain.closed ? [run.chain] : [])),
    rounded: corners,
    slivers: traced.slivers,
  };
};

interface SideRun {
  readonly chain: Contour | Path;
  readonly order: number;
}

/** The runs of a loop that lie on the side asked for. */
const runsOf = (traced: Traced, layout: Layout, loop: Loop): SideRun[] => {
  const wanted = (s: LoopStretch): boolean => isOnWayOut(layout, s);
  const first = loop.stretches.findIndex((s, i) => wanted(s) && !wanted(aroundAt(loop.stretches, i - 1)));
  if (first < 0) {
    return wanted(loop.stretches[0]) ? [{ chain: emit(loop, { traced, layout }), order: loop.stretches[0].curve }] : [];
  }
  const runs: SideRun[] = [];
  let run: [LoopStretch, ...LoopStretch[]] | undefined;
  // Begun where a run begins, the way round ends with what is not wanted: each run has a stretch after it.
  for (const [here, next] of roundPairs([...loop.stretches.slice(first), ...loop.stretches.slice(0, first)])) {
    if (!wanted(here)) continue;
    if (run === undefined) run = [here];
    else run.push(here);
    if (wanted(next)) continue;
    runs.push({ chain: path(segmentsOf(run, next, { traced, layout })), order: run[0].curve });
    run = undefined;
  }
  return runs;
};

/** Sides have even origins and bridges odd ones, the last bridge of the way out being the round end of the path. */
const isOnWayOut = (layout: Layout, s: LoopStretch): boolean => s.origin <= 2 * layout.lastOrigin;
