/** Where the wire comes in to an open line and goes out of it: beside the block, through a hole, or nowhere. */

import { type Path, path as pathOf } from '../../geometry/contour.ts';
import { besides } from '../../geometry/frame.ts';
import { boundsOf, endDirection, startDirection } from '../../geometry/measure.ts';
import { awayFrom } from '../../geometry/near/clearance-to.ts';
import { closestBetween } from '../../geometry/near/closest.ts';
import { windingIn } from '../../geometry/near/inside.ts';
import { type Lookup, lookupOfSegments, nearestIn, segmentsNear } from '../../geometry/near/lookup.ts';
import { touchingDisc } from '../../geometry/near/touching-disc.ts';
import { distanceBetween, line, type Point } from '../../geometry/segment.ts';
import { lastOf } from '../../sequence/sequence.ts';
import { type OpenEnd, type WantedLine, wireSide } from '../open-line.ts';
import { type GivenHole, originOf } from '../question.ts';
import { wayOutOfBlock } from '../start/block-edge.ts';
import { drilledFor, type HoleRules, LEAD, leastRoom, roomFor } from '../start/holes.ts';

export interface EndsAsked {
  readonly line: WantedLine;
  /** Edge of the block. */
  readonly edge: Lookup;
  /** Contours that are cut, and clamps, where there are any. */
  readonly others?: Lookup | undefined;
  readonly holes: readonly GivenHole[];
  readonly rules: HoleRules;
  readonly halfKerf: number;
  /** What the user says of this line. */
  readonly start?: 'hole' | 'edge' | undefined;
  /** The drawing shows the block; else its edge is only assumed. */
  readonly blockDrawn: boolean;
}

export type Ends =
  | { readonly kind: 'found'; readonly from: OpenEnd; readonly to: OpenEnd }
  | { readonly kind: 'no hole'; readonly at: Point; readonly room: number; readonly needed: number };

/** One end of the line, with the direction out of it. */
interface Tip {
  readonly at: Point;
  readonly out: Point;
  /** Towards the side on which the wire runs; none for a slit. */
  readonly aside?: Point;
}

export const endsOf = (asked: EndsAsked): Ends => {
  const tips = tipsOf(asked.line);
  const free = tips.map((tip) => edgeEnd(tip, asked));
  if (asked.line.kept === 'slit') return slitEnds(asked, tips, free);
  const from = free[0] ?? holeEnd(tips[0], asked);
  if (from.kind === 'no hole') return from;
  const to = free[1] ?? holeEnd(tips[1], asked);
  return to.kind === 'no hole' ? to : { kind: 'found', from, to };
};

/** A slit needs one way in; its other end may be blind. */
const slitEnds = (asked: EndsAsked, tips: readonly [Tip, Tip], free: readonly (OpenEnd | undefined)[]): Ends => {
  const [first, last] = tips;
  const from = free[0] ?? givenHole(first, asked);
  const to = free[1] ?? givenHole(last, asked);
  const blind = ({ at }: Tip): OpenEnd => ({ kind: 'blind', at });
  if (from !== undefined || to !== undefined) return { kind: 'found', from: from ?? blind(first), to: to ?? blind(last) };
  const drilled = holeEnd(tips[0], asked);
  return drilled.kind === 'no hole' ? drilled : { kind: 'found', from: drilled, to: { kind: 'blind', at: tips[1].at } };
};

const tipsOf = ({ path, kept }: WantedLine): readonly [Tip, Tip] => {
  const [first, last] = [path.segments[0], lastOf(path.segments)];
  const [u, v] = [startDirection(first), endDirection(last)];
  const aside = (along: Point) => (kept === 'slit' ? {} : { aside: besides(along, wireSide(kept)) });
  return [
    { at: first.from, out: { x: -u.x, y: -u.y }, ...aside(u) },
    { at: last.to, out: v, ...aside(v) },
  ];
};

/** mm within which an end is taken to lie on the edge of the block. */
export const ON_EDGE = 0.02;

/** Straight on out of the block where the line ends at its edge, where the user says so, or where nobody knows the block better. */
const edgeEnd = (tip: Tip, asked: EndsAsked): OpenEnd | undefined => {
  const { edge, halfKerf, start, blockDrawn, line: wanted } = asked;
  const reaches = windingIn(edge, tip.at) === 0 || nearestIn(edge, tip.at).distance <= ON_EDGE;
  const runsOn = start === 'edge' || (start === undefined && !blockDrawn && (wanted.kept !== 'slit' || isOnOutline(tip.at, asked)));
  if (!reaches && !runsOn) return undefined;
  const gone = wayOutOfBlock(tip.at, tip.out, edge, halfKerf);
  if (gone === undefined) return undefined;
  const at = { x: tip.at.x + tip.out.x * gone, y: tip.at.y + tip.out.y * gone };
  return reaches || isFree(tip, at, asked) ? { kind: 'edge', at } : undefined;
};

/** Where a slit begins on the outline of a part, the way on leads through waste; with no part at all nothing is in the way. */
const isOnOutline = (at: Point, { others }: EndsAsked): boolean => others === undefined || awayFrom(others, at) <= ON_EDGE;

/** mm that the way out keeps from other contours besides the kerf; on the first stretch the contour it begins at is near anyway. */
const CLEAR = 0.5;

const isFree = (tip: Tip, at: Point, { others, halfKerf, line: wanted }: EndsAsked): boolean => {
  if (others === undefined) return true;
  const need = halfKerf + CLEAR;
  const skip = wanted.kept === 'slit' ? 2 * need : 0;
  if (distanceBetween(tip.at, at) <= skip) return true;
  const way = line({ x: tip.at.x + tip.out.x * skip, y: tip.at.y + tip.out.y * skip }, at);
  return segmentsNear(others, boundsOf(way), need).every(({ segment }) => closestBetween(way, segment, 0).distance >= need);
};

/** As near to an end a hole must be to be taken for it, mm. */
const NEAR = 10;

const givenHole = (tip: Tip, asked: EndsAsked): Extract<OpenEnd, { kind: 'hole' }> | undefined => {
  const own = lookupOfSegments(asked.line.path.segments);
  const usable = asked.holes.filter(({ at, diameter }) => {
    const away = distanceBetween(at, tip.at);
    if (tip.aside === undefined) return away <= diameter / 2 + 0.5;
    const side = (at.x - tip.at.x) * tip.aside.x + (at.y - tip.at.y) * tip.aside.y;
    return (
      away <= NEAR && side > asked.rules.roughOffset + 0.6 && nearestIn(own, at).distance > Math.max(diameter / 2, asked.rules.roughOffset)
    );
  });
  const nearest = usable.toSorted((a, b) => distanceBetween(a.at, tip.at) - distanceBetween(b.at, tip.at))[0];
  return nearest === undefined ? undefined : { kind: 'hole', at: nearest.at, diameter: nearest.diameter, origin: originOf(nearest) };
};

type HoleEnd = Extract<OpenEnd, { kind: 'hole' }> | Extract<Ends, { kind: 'no hole' }>;

/** A hole that is there, or one to be drilled: beside the end in the waste, and for a slit on the line itself. */
const holeEnd = (tip: Tip, asked: EndsAsked): HoleEnd => {
  const given = givenHole(tip, asked);
  if (given !== undefined) return given;
  const { rules } = asked;
  const needed = leastRoom(rules);
  const obstacles = lookupOfSegments([
    ...(tip.aside === undefined ? [] : asked.line.path.segments),
    ...(asked.others?.segments ?? []),
    ...asked.edge.segments,
  ]);
  const room =
    tip.aside === undefined
      ? awayFrom(obstacles, tip.at)
      : touchingDisc(obstacles, tip.at, tip.aside, Math.max(LEAD, roomFor(rules.diameter, rules))).radius;
  const drilled = drilledFor(room, rules);
  if (drilled === undefined) return { kind: 'no hole', at: tip.at, room, needed };
  const at = tip.aside === undefined ? tip.at : { x: tip.at.x + tip.aside.x * room, y: tip.at.y + tip.aside.y * room };
  return { kind: 'hole', at, ...drilled, origin: 'placed' };
};

/** The line with straight pieces to where it leaves the block, and how long those are. */
export const extendedTo = (
  path: Path,
  from: OpenEnd,
  to: OpenEnd,
): { readonly path: Path; readonly before: number; readonly after: number } => {
  const [first, last] = [path.segments[0], lastOf(path.segments)];
  const before = from.kind === 'edge' ? distanceBetween(from.at, first.from) : 0;
  const after = to.kind === 'edge' ? distanceBetween(last.to, to.at) : 0;
  const segments = [...(before > 0 ? [line(from.at, first.from)] : []), ...path.segments, ...(after > 0 ? [line(last.to, to.at)] : [])];
  return { path: pathOf(segments), before, after };
};
