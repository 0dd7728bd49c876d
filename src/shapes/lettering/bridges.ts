/** Bridges that tie the middles of letters to the plate: bars, straight through the letter on two opposite sides of each middle. */

import { boundsOfChain } from '../../geometry/area.ts';
import { counterClockwise } from '../../geometry/chain.ts';
import { type Contour, contour, type Region } from '../../geometry/contour.ts';
import { intersect } from '../../geometry/intersect.ts';
import { boundsOf } from '../../geometry/measure.ts';
import { windingIn } from '../../geometry/near/inside.ts';
import { type Lookup, lookupOf, lookupOfSegments, segmentsNear } from '../../geometry/near/lookup.ts';
import { roomiestPoint } from '../../geometry/near/roomiest.ts';
import { line, type Point } from '../../geometry/segment.ts';
import { neighbours, roundPairs, sideBySide } from '../../sequence/sequence.ts';

export interface BridgeRequest {
  /** mm */
  readonly width: number;
  /** `shortest` takes for each middle the way that crosses less of the letter. */
  readonly way: 'upright' | 'level' | 'shortest';
}

export interface Bars {
  /** Rectangles; what they cover is no opening. */
  readonly bars: readonly Contour[];
  /** Middles that a bar is wider than: little of them is left. */
  readonly covered: readonly Point[];
}

/** The bars of one letter, whose holes are its middles. */
export const barsOf = (region: Region, bridge: BridgeRequest): Bars => {
  const letter = { ink: lookupOfSegments([region.outer, ...region.holes].flatMap((c) => c.segments)), holes: region.holes.map(lookupOf) };
  const joined = new Set<string>();
  const bars: Contour[] = [];
  const covered: Point[] = [];
  sideBySide(letter.holes, region.holes).forEach(([hole, drawn], i) => {
    const middle = middleOf(drawn);
    if (middle.room < bridge.width / 2) covered.push(middle.at);
    for (const bar of chosen(letter, hole, middle.at, bridge)) {
      const into = letter.holes.findIndex((h, k) => k !== i && windingIn(h, bar.end) !== 0);
      // Two middles need no more than one bar between them.
      if (into >= 0 && joined.has(`${into} ${i}`)) continue;
      joined.add(`${i} ${into}`);
      bars.push(bar.outline);
    }
  });
  return { bars, covered };
};

/** A region wound round once by its contours together, and its holes. */
interface Letter {
  readonly ink: Lookup;
  readonly holes: readonly Lookup[];
}

const middleOf = (hole: Contour): { readonly at: Point; readonly room: number } => {
  const { minX, maxX } = boundsOfChain(hole);
  const { at, distance } = roomiestPoint({ outer: counterClockwise(hole), holes: [] }, Math.max((maxX - minX) / 500, 1e-4), 5000);
  return { at, room: distance };
};

interface Bar {
  readonly outline: Contour;
  /** A place beyond the letter where the bar ends. */
  readonly end: Point;
  readonly cost: number;
}

const chosen = (letter: Letter, hole: Lookup, middle: Point, { width, way }: BridgeRequest): readonly Bar[] => {
  const pairs = (way === 'shortest' ? (['upright', 'level'] as const) : [way]).map((axis) =>
    ([1, -1] as const).flatMap((side) => cheapest(letter, hole, middle, { width, axis, side })),
  );
  const cost = (bars: readonly Bar[]): number => bars.reduce((sum, b) => sum + b.cost, 0);
  return pairs.reduce((a, b) => (cost(b) < cost(a) ? b : a));
};

interface Course {
  readonly width: number;
  readonly axis: 'upright' | 'level';
  /** Up or right, down or left. */
  readonly side: 1 | -1;
}

/** Where the bar leaves the middle is chosen so that it crosses little of the letter and stays near the roomiest place. */
const cheapest = (letter: Letter, hole: Lookup, middle: Point, course: Course): readonly Bar[] => {
  const { minX, minY, maxX, maxY } = hole.bounds;
  const [low, high] = course.axis === 'upright' ? [minX, maxX] : [minY, maxY];
  const [along, across] = course.axis === 'upright' ? [middle.y, middle.x] : [middle.x, middle.y];
  const tries = SHARES.map((share) => low + course.width / 2 + share * (high - low - course.width)).filter((a) =>
    [-0.5, 0, 0.5].every((part) => windingIn(hole, placed(course, along, a + part * course.width)) !== 0),
  );
  const bars = [across, ...tries].flatMap((a) => barAt(letter, along, a, Math.abs(a - across), course));
  return bars.length === 0 ? [] : [bars.reduce((best, b) => (b.cost < best.cost ? b : best))];
};

/** Even places across the middle of a letter. */
const SHARES = Array.from({ length: 9 }, (_, i) => i / 8);

/** A place by how far it is along the bar and across it. */
const placed = ({ axis }: Course, along: number, across: number): Point =>
  axis === 'upright' ? { x: across, y: along } : { x: along, y: across };

const barAt = ({ ink }: Letter, start: number, across: number, aside: number, course: Course): readonly Bar[] => {
  const runs = LINES.map((part) => inkAlong(ink, start, across + part * course.width, course));
  const far = (a: number, b: number): number => (course.side * a > course.side * b ? a : b);
  const firsts = runs.flatMap((run) => run.slice(0, 1));
  if (firsts.length === 0) return [];
  let end = firsts.map((r) => r.to).reduce(far);
  for (;;) {
    const on = runs.flat().find((r) => course.side * (r.from - end) <= 0 && course.side * (r.to - end) > 0);
    if (on === undefined) break;
    end = on.to;
  }
  const next = runs.flat().flatMap((r) => (course.side * (r.from - end) > 0 ? [Math.abs(r.from - end)] : []));
  const past = end + course.side * Math.min(course.width / 2, ...next.map((n) => n / 2));
  const crossed = Math.max(
    ...runs.map((run) => run.reduce((sum, r) => sum + (course.side * (end - r.to) >= 0 ? Math.abs(r.to - r.from) : 0), 0)),
  );
  const [a, b] = [across - course.width / 2, across + course.width / 2];
  const corners = [placed(course, start, a), placed(course, start, b), placed(course, past, b), placed(course, past, a)];
  const outline = counterClockwise(contour(roundPairs(corners).map(([from, to]) => line(from, to))));
  return [{ outline, end: placed(course, past, across), cost: crossed + ASIDE * aside }];
};

/** Lines across the width of a bar along which the letter is looked through. */
const LINES = [-0.5, -0.25, 0, 0.25, 0.5];

/** A bar may leave the middle of a letter by this much for a way shorter by as much. */
const ASIDE = 0.5;

/** Stretches of a straight way from the middle of a letter outwards that lie in the letter, in the order in which they come. */
const inkAlong = (ink: Lookup, start: number, across: number, course: Course): readonly InkStretch[] => {
  const { minX, minY, maxX, maxY } = ink.bounds;
  const [low, high] = course.axis === 'upright' ? [minY, maxY] : [minX, maxX];
  const last = course.side > 0 ? high + course.width : low - course.width;
  const way = line(placed(course, start, across), placed(course, last, across));
  const cuts = segmentsNear(ink, boundsOf(way), 1e-6)
    .flatMap(({ segment }) => intersect(way, segment, 1e-7))
    .flatMap((m) => (m.kind === 'overlap' ? m.first : [m.first]));
  const at = [...new Set([0, ...cuts, 1])].sort((p, q) => p - q).map((share) => start + (last - start) * share);
  return neighbours(at).flatMap(([from, to]) => (windingIn(ink, placed(course, (from + to) / 2, across)) > 0 ? [{ from, to }] : []));
};

interface InkStretch {
  readonly from: number;
  readonly to: number;
}
