/** Turns loops of flat curves into contours of the house: exact joints, centres that agree with both ends, in the sense of the source. */
import { itemAt, type NonEmpty } from '../../sequence/sequence.ts';
import { fromBulge } from '../bulge.ts';
import type { Contour } from '../contour.ts';
import { contour } from '../contour.ts';
import { reverse } from '../cut.ts';
import { distanceBetween, type Point, type Segment } from '../segment.ts';
import type { FlatArc, Layout } from './flat-source.ts';
import type { Loop, LoopStretch } from './loops.ts';
import { circleOf } from './loops.ts';
import type { Traced } from './trace-offset.ts';

/** What stretches are of: the curves that were traced, and how their source was laid out. */
export interface Emitting {
  readonly traced: Pick<Traced, 'curves' | 'distance'>;
  readonly layout: Pick<Layout, 'shift' | 'reversed' | 'flats'>;
}

/** The contour of a loop. */
export const emit = (loop: Loop, emitting: Emitting): Contour => contour(segmentsOf(loop.stretches, undefined, emitting));

/** Segments of a run of stretches that ends at `end`, or where it began when none is told. */
export const segmentsOf = (
  stretches: NonEmpty<LoopStretch>,
  end: Point | undefined,
  { traced: { curves, distance }, layout: { shift, reversed, flats } }: Emitting,
): readonly Segment[] => {
  const shifted = ({ x, y }: Point): Point => ({ x: x + shift.x, y: y + shift.y });
  const first = shifted(stretches[0]);
  const last = end === undefined ? first : shifted(end);
  let from = first;
  const segments: Segment[] = [];
  // One walk, and no pairs in between: an outline may have ten thousand stretches.
  for (let i = 0; i < stretches.length; i++) {
    const s = itemAt(stretches, i);
    const flat = flats.get(s.origin / 2);
    if (flat !== undefined) i = lastChord(stretches, i);
    const next = stretches[i + 1];
    const to = next === undefined ? last : shifted(next);
    if (flat !== undefined && from !== to) segments.push(flatArcOf(from, to, flat, distance, reversed));
    else if (s.sweep === 0) segments.push(lineOf(from, to, reversed));
    else segments.push(arcOf(circleOf(curves, s), s, [from, to], shift, reversed));
    from = to;
  }
  return reversed ? segments.reverse() : segments;
};

/** The last of the chords that stand for one arc: on the outside they have bridges of odd origin between them. */
const lastChord = (stretches: NonEmpty<LoopStretch>, first: number): number => {
  const { origin } = itemAt(stretches, first);
  let last = first;
  for (let i = first + 1; i < stretches.length; i++) {
    const next = itemAt(stretches, i).origin;
    if (next === origin) last = i;
    else if (next !== origin + 1) break;
  }
  return last;
};

/** The arc beside an almost straight one, from its ends and its radius. */
const flatArcOf = (a: Point, b: Point, { radius, turn }: FlatArc, distance: number, reversed: boolean): Segment => {
  const half = Math.asin(Math.min(1, distanceBetween(a, b) / 2 / (radius - turn * distance)));
  const segment = fromBulge(a, b, turn * Math.tan(half / 2));
  return reversed ? reverse(segment) : segment;
};

const lineOf = (a: Point, b: Point, reversed: boolean): Segment => ({ kind: 'line', from: reversed ? b : a, to: reversed ? a : b });

const arcOf = (
  given: ReturnType<typeof circleOf>,
  s: LoopStretch,
  [a, b]: readonly [Point, Point],
  shift: Point,
  reversed: boolean,
): Segment => {
  const fitted = agreeing(a, b, { x: given.x + shift.x, y: given.y + shift.y }, given.radius, s.sweep);
  return {
    kind: 'arc',
    from: reversed ? b : a,
    to: reversed ? a : b,
    centre: fitted.centre,
    radius: fitted.radius,
    sweep: reversed ? -fitted.sweep : fitted.sweep,
  };
};

/** mm: an arc whose ends agree with its circle to this needs no fitting. */
const AGREES = 1e-12;

interface Fitted {
  readonly centre: Point;
  readonly radius: number;
  readonly sweep: number;
}

/**
 * Where an end was drawn over by a hair, the centre moves along the middle line of the chord so that it is equally far from
 * both ends again, by no more than the ends were moved.
 */
const agreeing = (a: Point, b: Point, centre: Point, radius: number, sweep: number): Fitted => {
  if (a === b) return { centre, radius, sweep: Math.sign(sweep) * 2 * Math.PI };
  const ax = a.x - centre.x;
  const ay = a.y - centre.y;
  const bx = b.x - centre.x;
  const by = b.y - centre.y;
  const away = Math.sqrt(ax * ax + ay * ay);
  const off = Math.abs(away - Math.sqrt(bx * bx + by * by));
  if (off <= AGREES * Math.max(1, radius)) return { centre, radius: away, sweep: sweepLike(ax, ay, bx, by, sweep) };
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  const along = (dx * (ax + bx) + dy * (ay + by)) / (2 * (dx * dx + dy * dy));
  const moved = { x: centre.x + along * dx, y: centre.y + along * dy };
  return {
    centre: moved,
    radius: Math.hypot(a.x - moved.x, a.y - moved.y),
    sweep: sweepLike(a.x - moved.x, a.y - moved.y, b.x - moved.x, b.y - moved.y, sweep),
  };
};

/** The sweep between two directions that is nearest to the known one. */
const sweepLike = (ax: number, ay: number, bx: number, by: number, known: number): number => {
  const turn = Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
  return turn + 2 * Math.PI * Math.round((known - turn) / (2 * Math.PI));
};
