/**
 * A line of the drawing made ready for many questions: how far a place lies from it, and how often it runs round a place. The proof has
 * its own answers, so that no slip of the lookups that the plan was made with can hide a fault of the plan. Asked for each vertex of the
 * metal's edge, its boxes are plain numbers: `!` stands where one of those is read.
 */
import type { Chain } from '../geometry/contour.ts';
import { distanceToSegment, type Nearest, nearestOn } from '../geometry/measure.ts';
import type { Arc, Point, Segment } from '../geometry/segment.ts';

/** Built once a chain by `drawnLine`. A heap of boxes over its pieces in the order of travel: node 1 is the whole, 2n and 2n + 1 are the halves of n. */
export interface DrawnLine {
  readonly pieces: readonly MonotonePiece[];
  /** Number of the first node that is a piece; a power of two. */
  readonly leaves: number;
  /** Least x, least y, greatest x, greatest y of each node; nodes without a piece have the box of nothing. */
  readonly boxes: Float64Array;
}

/** A line, or a stretch of an arc that goes only up or only down. */
interface MonotonePiece {
  readonly of: Segment;
  /** Number of that segment in the chain. */
  readonly segment: number;
  readonly fromY: number;
  readonly toY: number;
  /** On which side of its centre a stretch of an arc lies: 1 to the right of it. */
  readonly side: 1 | -1;
}

const NUMBERS = 4;

export const drawnLine = (chain: Chain): DrawnLine => {
  const pieces = chain.segments.flatMap(piecesOf);
  const leaves = 2 ** Math.ceil(Math.log2(Math.max(1, pieces.length)));
  const boxes = new Float64Array(NUMBERS * 2 * leaves);
  for (let node = 0; node < 2 * leaves; node += 1) boxes.set([Infinity, Infinity, -Infinity, -Infinity], NUMBERS * node);
  pieces.forEach((piece, i) => {
    boxes.set(boxOf(piece), NUMBERS * (leaves + i));
  });
  for (let node = leaves - 1; node > 0; node -= 1) enclose(boxes, node);
  return { pieces, leaves, boxes };
};

/** Arcs end a stretch where they are highest and lowest. */
const piecesOf = (s: Segment, segment: number): readonly MonotonePiece[] => {
  if (s.kind === 'line') return [{ of: s, segment, fromY: s.from.y, toY: s.to.y, side: 1 }];
  const start = Math.atan2(s.from.y - s.centre.y, s.from.x - s.centre.x);
  const sense = Math.sign(s.sweep);
  const turned = [0, ...extremes(start, s.sweep), Math.abs(s.sweep)];
  return turned.slice(1).map((end, i) => {
    const begin = turned[i] as number;
    const middle = start + (sense * (begin + end)) / 2;
    return {
      of: s,
      segment,
      fromY: i === 0 ? s.from.y : extremeY(s, start + sense * begin),
      toY: i === turned.length - 2 ? s.to.y : extremeY(s, start + sense * end),
      side: Math.cos(middle) >= 0 ? 1 : -1,
    };
  });
};

/** How far an arc has turned, rad, where it is highest or lowest on its way. */
const extremes = (start: number, sweep: number): readonly number[] => {
  const sense = Math.sign(sweep);
  const first = (sense > 0 ? Math.ceil : Math.floor)((start - Math.PI / 2) / Math.PI);
  const found: number[] = [];
  for (let k = first; ; k += sense) {
    const turned = sense * (Math.PI / 2 + k * Math.PI - start);
    if (turned >= Math.abs(sweep)) return found;
    if (turned > 0) found.push(turned);
  }
};

const extremeY = ({ centre, radius }: Arc, angle: number): number => centre.y + (Math.sin(angle) > 0 ? radius : -radius);

const boxOf = ({ of, fromY, toY, side }: MonotonePiece): readonly [number, number, number, number] => {
  const [low, high] = [Math.min(fromY, toY), Math.max(fromY, toY)];
  if (of.kind === 'line') return [Math.min(of.from.x, of.to.x), low, Math.max(of.from.x, of.to.x), high];
  const { centre, radius } = of;
  const [a, b] = [xAt(of, side, low), xAt(of, side, high)];
  const out = low <= centre.y && centre.y <= high ? centre.x + side * radius : a;
  return [Math.min(a, b, out), low, Math.max(a, b, out), high];
};

/** Where the circle of an arc is as high as `y`, on one side of its centre. */
const xAt = ({ centre, radius }: Arc, side: 1 | -1, y: number): number =>
  centre.x + side * Math.sqrt(Math.max(0, radius * radius - (y - centre.y) ** 2));

const enclose = (boxes: Float64Array, node: number): void => {
  const [at, a, b] = [NUMBERS * node, NUMBERS * 2 * node, NUMBERS * (2 * node + 1)];
  for (const low of [0, 1]) {
    boxes[at + low] = Math.min(boxes[a + low]!, boxes[b + low]!);
    boxes[at + low + 2] = Math.max(boxes[a + low + 2]!, boxes[b + low + 2]!);
  }
};

/** The place of a line nearest to another place. */
export interface NearestPlace extends Nearest {
  /** Number of the segment in its chain. */
  readonly segment: number;
}

/** Distance from a place to the line, mm. */
export const distanceFrom = (line: DrawnLine, p: Point): number => nearestPiece(line, p).distance;

/** The place of the line nearest to a place; of several, the first on the way. */
export const nearestPlace = (line: DrawnLine, p: Point): NearestPlace => {
  const { of, segment } = line.pieces[nearestPiece(line, p).node - line.leaves]!;
  return { ...nearestOn(of, p), segment };
};

interface Best {
  node: number;
  /** mm */
  distance: number;
}

const nearestPiece = (line: DrawnLine, p: Point): Readonly<Best> => {
  const best = { node: line.leaves, distance: Infinity };
  lookInto(line, p, 1, best);
  return best;
};

/** Of two halves the one whose box is nearer is looked into first, and the other only where it could hold something as near. */
const lookInto = (line: DrawnLine, p: Point, node: number, best: Best): void => {
  if (node >= line.leaves) {
    const distance = distanceToSegment(line.pieces[node - line.leaves]!.of, p);
    if (distance > best.distance || (distance === best.distance && node > best.node)) return;
    best.node = node;
    best.distance = distance;
    return;
  }
  const [left, right] = [squareTo(line.boxes, 2 * node, p), squareTo(line.boxes, 2 * node + 1, p)];
  const first = left <= right ? 2 * node : 2 * node + 1;
  if (Math.min(left, right) <= reachOf(best)) lookInto(line, p, first, best);
  if (Math.max(left, right) <= reachOf(best)) lookInto(line, p, first ^ 1, best);
};

/** Square of the distance that a box may have; a little more, since of two pieces that end at the nearest place the first one is wanted. */
const reachOf = ({ distance }: Best): number => distance * distance * (1 + 1e-12);

/** Square of the distance from a place to a box, 0 inside it. */
const squareTo = (boxes: Float64Array, node: number, p: Point): number => {
  const k = NUMBERS * node;
  const x = Math.max(boxes[k]! - p.x, 0, p.x - boxes[k + 2]!);
  const y = Math.max(boxes[k + 1]! - p.y, 0, p.y - boxes[k + 3]!);
  return x * x + y * y;
};

/** How many times a closed line runs round a place counter-clockwise; of no meaning exactly on the line. */
export const turnsRound = (line: DrawnLine, p: Point): number => turnsOf(line, p, 1);

/** Counts the pieces that a ray to the right crosses: those that go up from below the place, less those that come down. */
const turnsOf = (line: DrawnLine, p: Point, node: number): number => {
  const k = NUMBERS * node;
  if (line.boxes[k + 2]! <= p.x || line.boxes[k + 1]! > p.y || line.boxes[k + 3]! < p.y) return 0;
  if (node < line.leaves) return turnsOf(line, p, 2 * node) + turnsOf(line, p, 2 * node + 1);
  const { of, fromY, toY, side } = line.pieces[node - line.leaves]!;
  const way = fromY <= p.y && p.y < toY ? 1 : toY <= p.y && p.y < fromY ? -1 : 0;
  if (way === 0) return 0;
  const x = of.kind === 'arc' ? xAt(of, side, p.y) : of.from.x + ((of.to.x - of.from.x) * (p.y - of.from.y)) / (of.to.y - of.from.y);
  return x > p.x ? way : 0;
};
