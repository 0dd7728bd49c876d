/** Clamps and other forbidden zones over the block: no cut may run into them, and the nozzles need room beside them. */

import { type Bounds, boundsOf } from '../../geometry/measure.ts';
import { closestBetween } from '../../geometry/near/closest.ts';
import type { Point, Segment } from '../../geometry/segment.ts';
import type { Finding } from '../../text/finding.ts';
import { contour, count, fixed, mm } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import { type Clamp, edgesOfClamp } from '../clamp.ts';
import { find } from '../findings.ts';
import type { Visit } from '../path/contour-layout.ts';
import { movedPoint, movedSegment } from '../path/moved.ts';
import type { StartHole } from '../plan.ts';
import { spot } from '../said.ts';

/** All that the wire does for one contour, and where from: as designed, and how far it was moved from there. */
export interface DesignedCut {
  readonly loop: string;
  readonly by: Point;
  readonly hole: StartHole;
  readonly visits: readonly Visit[];
}

/** Nozzles sit beside the wire: a clamp nearer than this to a cut, mm, is said. Common practice, no source. */
const NEAR = 5;

/** @param halfKerf from the wire's centre to the edge of its cut, mm. */
export const clampFindings = (clamps: readonly Clamp[], runs: readonly DesignedCut[], halfKerf: number): readonly Finding[] => {
  if (clamps.length === 0) return [];
  // Equal openings share their visits, moved.
  const boxes = new Map<readonly Visit[], Bounds>();
  return runs.flatMap((run) => {
    const box = boxes.get(run.visits) ?? boundsAsDesigned(run);
    boxes.set(run.visits, box);
    return clamps.flatMap((clamp, i) => (isFar(box, run.by, clamp) ? [] : clampFinding(run, clamp, i + 1, halfKerf)));
  });
};

const centresOf = (visits: readonly Visit[]): readonly Segment[] =>
  visits.flatMap((v) => v.steps.flatMap((s) => (s.kind === 'cut' && s.centre !== undefined ? [s.centre] : [])));

const boundsAsDesigned = ({ visits, hole, by }: DesignedCut): Bounds => {
  const r = hole.diameter / 2;
  const at = { x: hole.at.x - by.x, y: hole.at.y - by.y };
  const boxes = [...centresOf(visits).map(boundsOf), { minX: at.x - r, minY: at.y - r, maxX: at.x + r, maxY: at.y + r }];
  return boxes.reduce((a, b) => ({
    minX: Math.min(a.minX, b.minX),
    minY: Math.min(a.minY, b.minY),
    maxX: Math.max(a.maxX, b.maxX),
    maxY: Math.max(a.maxY, b.maxY),
  }));
};

const isFar = (box: Bounds, by: Point, { low, high }: Clamp): boolean =>
  box.minX + by.x > high.x + NEAR || box.maxX + by.x < low.x - NEAR || box.minY + by.y > high.y + NEAR || box.maxY + by.y < low.y - NEAR;

const clampFinding = ({ loop, by, hole, visits }: DesignedCut, clamp: Clamp, number: number, halfKerf: number): Finding[] => {
  const cut = nearestOfAll(visits, by, clamp);
  const drilled = hole.origin === 'block edge' ? Number.POSITIVE_INFINITY : distanceTo(clamp, hole.at) - hole.diameter / 2;
  const [room, at] = drilled < cut.distance - halfKerf ? [drilled, hole.at] : [cut.distance - halfKerf, cut.at];
  if (room >= NEAR) return [];
  const which = words.clamp(number);
  const place = { kind: 'spot', x: at.x, y: at.y, reach: 3, loop } as const;
  if (room <= 0)
    return [
      find(
        'cuts-clamp',
        say`The wire would run into ${{ clamp: which }} while it cuts ${{ loop: contour(loop) }}, at ${{ at: spot(at) }}.`,
        {
          place,
          remedy: say`Move ${{ clamp: which }}, or clamp the block from another side.`,
        },
      ),
    ];
  return [
    find(
      'near-clamp',
      say`${{ loop: contour(loop) }} comes within ${{ room: mm(room, fixed(2)) }} of ${{ clamp: which }} at ${{ at: spot(at) }}; the nozzles need about ${{ need: mm(NEAR) }} (common practice).`,
      { place, remedy: say`Check that the nozzles clear ${{ clamp: which }}, or move it.` },
    ),
  ];
};

const words = phrases('clamp', { clamp: (number: number) => say`clamp ${{ number: count(number) }}` });

interface Nearest {
  readonly distance: number;
  readonly at: Point;
}

const nearestOfAll = (visits: readonly Visit[], by: Point, clamp: Clamp): Nearest => {
  const edges = edgesOfClamp(clamp);
  let best: Nearest = { distance: Number.POSITIVE_INFINITY, at: movedPoint({ x: 0, y: 0 }, by) };
  for (const still of centresOf(visits)) {
    const segment = movedSegment(still, by);
    if (isInside(clamp, segment.to)) return { distance: 0, at: segment.to };
    for (const edge of edges) {
      const { distance, first } = closestBetween(segment, edge, 0);
      if (distance < best.distance) best = { distance, at: first.at };
    }
  }
  return best;
};

const isInside = ({ low, high }: Clamp, p: Point): boolean => p.x >= low.x && p.x <= high.x && p.y >= low.y && p.y <= high.y;

/** 0 inside. */
const distanceTo = ({ low, high }: Clamp, p: Point): number =>
  Math.hypot(Math.max(low.x - p.x, 0, p.x - high.x), Math.max(low.y - p.y, 0, p.y - high.y));
