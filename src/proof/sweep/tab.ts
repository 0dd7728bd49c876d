/**
 * Whether what still holds a piece can carry it until somebody does: its own weight and the flushing, against the narrowest metal on the
 * way from the piece to what is clamped. The law is that of a short cantilever of rectangular section (any textbook of statics): bending
 * stress σ = 6 F e / (b h²), with b across the load and h along it, and mean shear F / (b h) against σ / √3.
 */
import type { Path64, Paths64 } from 'clipper2-ts';
import { ClipperOffset, EndType, JoinType } from 'clipper2-ts/dist/Offset.js';
import type { Point } from '../../geometry/segment.ts';
import { itemAt, roundPairs } from '../../sequence/sequence.ts';
import { areaOfLoop, isHeldIn, isInside, isVoid, lengthOfLoop, millimetres } from './metal.ts';
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

/** What a piece asks of the metal that holds it. */
interface Needs {
  /** mm of breadth, of all tabs together: bent by the weight and sheared. */
  readonly breadth: number;
  /** mm², the squares of all breadths together: bent sideways by the flushing. */
  readonly squares: number;
}

/** @param area mm². @param lever mm from the tab to the centre of gravity. @param breadth mm of the piece. */
const needsOf = (
  { area, lever, breadth }: { readonly area: number; readonly lever: number; readonly breadth: number },
  { height, density, strength }: TabMetal,
): Needs => {
  const flushing = FLUSHING * height * Math.min(NOZZLE, breadth);
  const down = area * height * density * 1e-6 * GRAVITY + flushing;
  const bent = (6 * down * lever) / (strength * height * height);
  const sheared = (Math.sqrt(3) * down) / (strength * height);
  return { breadth: Math.max(bent, sheared), squares: (6 * flushing * lever) / (strength * height) };
};

/** mm of tab along the contour that carry a piece by themselves. */
export const leastTab = (...asked: Parameters<typeof needsOf>): number => {
  const { breadth, squares } = needsOf(...asked);
  return Math.max(breadth, Math.sqrt(squares));
};

export interface WeakTab {
  readonly at: Point;
  /** mm of metal at the narrowest place between the piece and what is clamped; of several tabs, of one that would carry as much. */
  readonly width: number;
  readonly needed: number;
}

/**
 * The metal by which a piece hangs, where that is too little.
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
  const leverTo = (p: Point): number => Math.hypot(centre.x - p.x, centre.y - p.y);
  const needed = leastTab({ area: piece.area, lever: leverTo(piece.freedAt), breadth }, metal);
  const coarse = before.map(thinned);
  const tabsAt = (width: number): number => {
    const loops = grown(coarse, width / 2);
    return parted(loops) ? 0 : Math.max(1, necksOf(piece.loop, loops).length);
  };
  if (tabsAt(needed) > 0) return undefined;
  const necks = necksOf(piece.loop, before);
  const widths = widthsOf(tabsAt, [0, Math.max(1, necks.length)], [needed, 0]);
  const at = piece.freedAt;
  if (widths.length < 2) return { at, width: widths[0] ?? 0, needed };
  // Each of them may carry its share with its own lever and no part bears more than it can: so the longest lever is on the safe side for all.
  const needs = needsOf({ area: piece.area, lever: Math.max(...[at, ...necks].map(leverTo)), breadth }, metal);
  const least = Math.max(needs.breadth, Math.sqrt(needs.squares));
  const width = Math.min(
    (least * widths.reduce((sum, w) => sum + w, 0)) / needs.breadth,
    Math.sqrt((least * least * widths.reduce((sum, w) => sum + w * w, 0)) / needs.squares),
  );
  return width >= least ? undefined : { at, width, needed: least };
};

/** mm of each tab: how far the places without metal must grow until it is gone. */
const widthsOf = (
  tabsAt: (width: number) => number,
  [low, more]: readonly [width: number, tabs: number],
  [high, fewer]: readonly [width: number, tabs: number],
): readonly number[] => {
  if (more <= fewer) return [];
  if (high - low <= 1e-3) return Array.from({ length: more - fewer }, () => low);
  const middle = (low + high) / 2;
  const tabs = tabsAt(middle);
  return [...widthsOf(tabsAt, [low, more], [middle, tabs]), ...widthsOf(tabsAt, [middle, tabs], [high, fewer])];
};

/** Places along the edge of a piece, so many at least, that are asked what lies outside of them. */
const PLACES = 1000;

/** Where metal holds a piece that several places without metal lie round: from one of them to the next along its edge. */
const necksOf = (piece: Path64, loops: Paths64): readonly Point[] => {
  const outer = loops.filter((l) => areaOfLoop(l) > 0).sort((a, b) => areaOfLoop(a) - areaOfLoop(b));
  const beside = placesBeside(piece).flatMap((p) => {
    if (!isVoid(loops, p.x, p.y)) return [];
    return [{ p, round: outer.findIndex((l) => isInside(l, p.x, p.y)) }];
  });
  return roundPairs(beside).flatMap(([from, to]) =>
    from.round === to.round ? [] : [millimetres({ x: (from.p.x + to.p.x) / 2, y: (from.p.y + to.p.y) / 2 })],
  );
};

/** A micrometre outside its edge. */
const placesBeside = (piece: Path64): readonly Point[] => {
  const step = (lengthOfLoop(piece) * UNITS_PER_MM) / PLACES;
  return roundPairs(piece).flatMap(([p, q]) => {
    const size = Math.hypot(q.x - p.x, q.y - p.y);
    const count = Math.ceil(size / step);
    return Array.from({ length: count }, (_, n) => {
      const share = (n + 0.5) / count;
      return {
        x: p.x + (q.x - p.x) * share - (UNITS_PER_MM * 1e-3 * (q.y - p.y)) / size,
        y: p.y + (q.y - p.y) * share + (UNITS_PER_MM * 1e-3 * (q.x - p.x)) / size,
      };
    });
  });
};

/** mm: a hundredth of the tab that a light piece needs is near enough, and takes a quarter of the time. */
const NEAR = 2e-3;

/** The same loop with fewer points. */
const thinned = (loop: Path64): Path64 => {
  const kept: Path64 = [];
  let at = 0;
  while (at < loop.length) {
    const from = itemAt(loop, at);
    kept.push(from);
    let next = at + 1;
    while (next + 1 < loop.length && isChord(loop, at, next + 1)) next += 1;
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
