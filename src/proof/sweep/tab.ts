/**
 * Whether what still holds a piece can carry it until somebody does: its own weight and the flushing, against the narrowest metal on the
 * way from the piece to what is clamped. The law is that of a short cantilever of rectangular section (any textbook of statics): bending
 * stress σ = 6 F e / (b h²), with b across the load and h along it, and mean shear F / (b h) against σ / √3.
 */
import type { Path64, Paths64 } from 'clipper2-ts';
import { ClipperOffset, EndType, JoinType } from 'clipper2-ts/dist/Offset.js';
import type { Point } from '../../geometry/segment.ts';
import { itemAt, roundPairs } from '../../sequence/sequence.ts';
import { areaOfLoop, isHeldIn, isVoid, millimetres } from './metal.ts';
import { UNITS_PER_MM } from './sweep.ts';

/** What a piece is made of, as far as its tab goes. */
export interface TabMetal {
  /** mm, along the wire, which stands upright. */
  readonly height: number;
  /** g/cm³ */
  readonly density: number;
  /** MPa at which it yields or breaks. */
  readonly strength: number;
}

/** MPa that anything but soft metals and graphite bears: a mild steel yields there. Taken where nobody says what is cut. */
export const UNKNOWN_STRENGTH = 200;

/**
 * MPa by which the flushing is stronger on one side of a piece than on the other, over its height and as much of its breadth as lies below
 * a nozzle. Common practice is to flush the last of a rough gently, at a fiftieth of full pressure; no source.
 */
const FLUSHING = 0.02;
/** mm across the opening of a nozzle. Common practice, no source. */
const NOZZLE = 10;

const GRAVITY = 9.81;

/**
 * mm of tab along the contour that carry a piece.
 *
 * @param area mm². @param lever mm from the tab to the centre of gravity. @param breadth mm of the piece.
 */
export const leastTab = (
  { area, lever, breadth }: { readonly area: number; readonly lever: number; readonly breadth: number },
  { height, density, strength }: TabMetal,
): number => {
  const flushing = FLUSHING * height * Math.min(NOZZLE, breadth);
  const down = area * height * density * 1e-6 * GRAVITY + flushing;
  const bent = (6 * down * lever) / (strength * height * height);
  const pushedAside = Math.sqrt((6 * flushing * lever) / (strength * height));
  const sheared = (Math.sqrt(3) * down) / (strength * height);
  return Math.max(bent, pushedAside, sheared);
};

export interface WeakTab {
  readonly at: Point;
  /** mm of metal at the narrowest place between the piece and what is clamped. */
  readonly width: number;
  readonly needed: number;
}

/**
 * The metal by which a piece hangs, where that is too little. Several tabs count as the widest of them.
 *
 * @param before everything without metal before the run that frees the piece.
 * @param parted whether the piece is parted from all that holds it when there is no metal in these loops.
 */
export const weakTab = (
  piece: { readonly loop: Path64; readonly area: number; readonly freedAt: Point },
  before: Paths64,
  metal: TabMetal,
  parted: (loops: Paths64) => boolean,
): WeakTab | undefined => {
  const { centre, breadth } = weighed(piece.loop);
  const lever = Math.hypot(centre.x - piece.freedAt.x, centre.y - piece.freedAt.y);
  const needed = leastTab({ area: piece.area, lever, breadth }, metal);
  const coarse = before.map(thinned);
  const holds = (width: number): boolean => !parted(grown(coarse, width / 2));
  if (holds(needed)) return undefined;
  let [low, high] = [0, needed];
  while (high - low > 1e-3) {
    const width = (low + high) / 2;
    if (holds(width)) low = width;
    else high = width;
  }
  return { at: piece.freedAt, width: low, needed };
};

/** mm: a hundredth of the tab that a light piece needs is near enough, and takes a quarter of the time. */
const NEAR = 2e-3;
/** Points that one chord stands for, at most. */
const MOST_THINNED = 12;

/** The same loop with fewer points. */
const thinned = (loop: Path64): Path64 => {
  const kept: Path64 = [];
  let at = 0;
  while (at < loop.length) {
    const from = itemAt(loop, at);
    kept.push(from);
    let next = at + 1;
    while (next + 1 < loop.length && next - at < MOST_THINNED && isChord(loop, at, next + 1)) next += 1;
    at = next;
  }
  return kept.length < 3 ? loop : kept;
};

/** No point between the two lies off the line from the one to the other. */
const isChord = (loop: Path64, from: number, to: number): boolean => {
  const [a, b] = [itemAt(loop, from), itemAt(loop, to)];
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const most = NEAR * UNITS_PER_MM * Math.hypot(dx, dy);
  for (let i = from + 1; i < to; i += 1) {
    const p = itemAt(loop, i);
    if (Math.abs(dx * (p.y - a.y) - dy * (p.x - a.x)) > most || dx * (p.x - a.x) + dy * (p.y - a.y) < 0) return false;
  }
  return true;
};

const grown = (loops: Paths64, by: number): Paths64 => {
  const offsetter = new ClipperOffset(2, NEAR * UNITS_PER_MM);
  offsetter.addPaths(loops, JoinType.Round, EndType.Polygon);
  const out: Paths64 = [];
  offsetter.execute(by * UNITS_PER_MM, out);
  return out;
};

/** Centre of gravity, and the root of its area for its breadth. */
const weighed = (loop: Path64): { readonly centre: Point; readonly breadth: number } => {
  let [twice, x, y] = [0, 0, 0];
  const o = loop[0] ?? { x: 0, y: 0 };
  for (const [p, q] of roundPairs(loop)) {
    const cross = (p.x - o.x) * (q.y - o.y) - (q.x - o.x) * (p.y - o.y);
    twice += cross;
    x += cross * (p.x + q.x - 2 * o.x);
    y += cross * (p.y + q.y - 2 * o.y);
  }
  const centre = millimetres({ x: o.x + x / (3 * twice), y: o.y + y / (3 * twice) });
  return { centre, breadth: Math.sqrt(Math.abs(areaOfLoop(loop))) };
};

/**
 * Whether metal that the loops enclose is at a place, and none of the places that hold it. One of these that has no metal left round it, since
 * it lay beside a kerf that has grown, tells nothing: the largest piece is what is clamped then.
 */
export const isParted = (loops: Paths64, { x, y }: Point, anchors: readonly Point[]): boolean => {
  const pieces = loops.filter((l) => areaOfLoop(l) < 0);
  const own = pieces.find((l) => isHeldIn(l, loops, { x, y }));
  if (own === undefined || anchors.some((a) => isHeldIn(own, loops, a))) return false;
  return !anchors.some((a) => isVoid(loops, a.x, a.y)) || pieces.some((l) => areaOfLoop(l) < areaOfLoop(own));
};
