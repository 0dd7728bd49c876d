/** The two pieces into which an open line from edge to edge parts the block: which is the smaller, and how large it is. */

import { areaOf, perimeterOf } from '../../geometry/area.ts';
import { type Contour, contour, type Path } from '../../geometry/contour.ts';
import { slice } from '../../geometry/cut.ts';
import { lengthOf, tangentAt } from '../../geometry/measure.ts';
import { crossingsBetween } from '../../geometry/near/crossings.ts';
import { windingOf } from '../../geometry/near/inside.ts';
import type { Segment } from '../../geometry/segment.ts';
import { itemAt, roundPairs } from '../../sequence/sequence.ts';
import type { KeptLoop } from '../kept-side.ts';

export interface Parted {
  /** Side of the line on which the smaller piece lies. */
  readonly smaller: 'left' | 'right';
  /** mm², openings that are cut in it taken off. */
  readonly area: number;
  readonly perimeter: number;
  /** mm along the line from where it leaves the block to its end. */
  readonly beyond: number;
  /** Cotangent of the angle at which it leaves: the kerf reaches the edge so much sooner on one side. */
  readonly slant: number;
}

/** From the line to the far side of the cut on either side of it, mm. */
export interface Taken {
  readonly left: number;
  readonly right: number;
}

/**
 * None where the line does not lead through the block from edge to edge. Block counter-clockwise. Of two pieces that are about equally
 * large the one is told from which the cut is taken: whoever clamps the block clamps the other.
 */
export const partedBy = (path: Path, block: Contour, cut: readonly KeptLoop[], taken: Taken): Parted | undefined => {
  const meetings = crossingsBetween(path, block, 1e-6)
    .flatMap((c) =>
      c.contact.kind === 'overlap' ? [] : [{ on: c.first, share: c.contact.first, edge: c.second, edgeShare: c.contact.second }],
    )
    .toSorted((a, b) => a.on + a.share - (b.on + b.share));
  const [first, last] = [meetings[0], meetings.at(-1)];
  if (first === undefined || last === undefined || meetings.length < 2) return undefined;
  const within = between(path.segments, { at: first.on, share: first.share }, { at: last.on, share: last.share });
  const onward = round(block, { at: last.edge, share: last.edgeShare }, { at: first.edge, share: first.edgeShare });
  const left = joined([...within, ...onward]);
  const leftArea = Math.abs(areaOf(left)) - holesIn(left, cut);
  const whole =
    Math.abs(areaOf(block)) - cut.filter((c) => isOutermost(c, cut)).reduce((sum, c) => sum + Math.abs(areaOf(c.loop.contour)), 0);
  const length = perimeterOf({ segments: within });
  const sizes = { left: leftArea - length * taken.left, right: whole - leftArea - length * taken.right };
  const alike = Math.abs(sizes.left - sizes.right) < ALIKE * (sizes.left + sizes.right);
  const smaller = (alike ? taken.left >= taken.right : sizes.left < sizes.right) ? 'left' : 'right';
  const perimeter = smaller === 'left' ? perimeterOf(left) : perimeterOf(block) + 2 * length - perimeterOf(left);
  return {
    smaller,
    area: Math.max(0, sizes[smaller]),
    perimeter,
    beyond: perimeterOf(path) - lengthTo(path, { at: last.on, share: last.share }),
    slant: slantOf(itemAt(path.segments, last.on), last.share, itemAt(block.segments, last.edge), last.edgeShare),
  };
};

/** Share of both together by which two pieces may differ and still be called equally large. */
const ALIKE = 0.02;

const lengthTo = ({ segments }: Path, { at, share }: Place): number =>
  segments.slice(0, at).reduce((sum, s) => sum + lengthOf(s), 0) + share * lengthOf(itemAt(segments, at));

/** A line that hardly leaves the block at all is taken for one that leaves it at a sixth of a right angle. */
const MOST_SLANT = 4;

const slantOf = (a: Segment, share: number, b: Segment, edgeShare: number): number => {
  const [u, v] = [tangentAt(a, share), tangentAt(b, edgeShare)];
  return Math.min(MOST_SLANT, Math.abs(u.x * v.x + u.y * v.y) / Math.max(1e-9, Math.abs(u.x * v.y - u.y * v.x)));
};

interface Place {
  readonly at: number;
  readonly share: number;
}

/** Pieces from one place to a later one. */
const between = (segments: readonly Segment[], from: Place, to: Place): Segment[] => {
  if (from.at === to.at) return from.share < to.share ? [slice(itemAt(segments, from.at), from.share, to.share)] : [];
  return [
    part(itemAt(segments, from.at), from.share, 1),
    ...segments.slice(from.at + 1, to.at),
    part(itemAt(segments, to.at), 0, to.share),
  ].flat();
};

const part = (s: Segment, low: number, high: number): Segment[] => (high - low > 1e-12 ? [slice(s, low, high)] : []);

/** Forward along a contour, over its start where need be. */
const round = ({ segments }: Contour, from: Place, to: Place): Segment[] => {
  if (from.at < to.at || (from.at === to.at && from.share <= to.share)) return between(segments, from, to);
  return [
    ...part(itemAt(segments, from.at), from.share, 1),
    ...segments.slice(from.at + 1),
    ...segments.slice(0, to.at),
    ...part(itemAt(segments, to.at), 0, to.share),
  ];
};

/** Ends that differ by rounding are made one. */
const joined = (segments: readonly Segment[]): Contour => contour(roundPairs(segments).map(([s, next]) => ({ ...s, to: next.from })));

const isOutermost = ({ loop }: KeptLoop, cut: readonly KeptLoop[]): boolean => !cut.some((c) => c.loop.id === loop.parent);

const holesIn = (piece: Contour, cut: readonly KeptLoop[]): number =>
  cut
    .filter((c) => isOutermost(c, cut) && windingOf(piece, c.loop.contour.segments[0].from) !== 0)
    .reduce((sum, c) => sum + Math.abs(areaOf(c.loop.contour)), 0);
