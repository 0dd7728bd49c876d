/** Cuts a group in program order: what has no metal in the end, and which pieces came loose at which cut. */

import type { Path64, Paths64 } from 'clipper2-ts';
import { areaOf, boundsOfChain, mergedBounds, perimeterOf } from '../../geometry/area.ts';
import { boundsOf, lengthOf } from '../../geometry/measure.ts';
import type { Point, Segment } from '../../geometry/segment.ts';
import { firstItem, itemAt, roundPairs } from '../../sequence/sequence.ts';
import { drawnLine, turnsRound } from '../drawn-line.ts';
import type { Wanted } from '../proof.ts';
import type { CutChain } from './chains.ts';
import { chainsOf } from './chains.ts';
import type { GroupWork } from './group-alone.ts';
import {
  areaOfLoop,
  CRUMB_AREA,
  difference,
  isHeldIn,
  isVoid,
  lengthOfLoop,
  millimetres,
  openingsOf,
  placeInside,
  united,
} from './metal.ts';
import { halfKerfOf, keptPlaces } from './open-line-deviation.ts';
import { discOf, polygonOf, sweepOf, unitsOf } from './sweep.ts';
import { isParted, type WeakTab, weakTab } from './tab.ts';

/** A piece of metal that nothing holds any more. Places in mm from the origin of the work. */
export interface FreedPiece {
  /** The cut that set it free, as an index into the cuts of the work. */
  readonly cut: number;
  readonly at: Point;
  /** mm² within its outline, openings of other groups in it not taken off. */
  readonly area: number;
  /** Clockwise, in units. */
  readonly loop: Path64;
  /** Openings of the work in it; what stands in them is no metal of its own. */
  readonly openings: Paths64;
  /** Innermost wanted contour of the work that it lies in. */
  readonly inside?: number | undefined;
  /** Open line of the work on whose kept side it lies. */
  readonly beside?: number | undefined;
  /** Share of its edge that was cut before the run that set it free, where the edge is not of the block or a hole: near 1 when it stood on a tab. */
  readonly standing: number;
  /** What it then hung by, where that is too little to carry it. */
  readonly weak?: WeakTab | undefined;
}

/** A cut before which the wire is threaded. */
export interface Start {
  readonly cut: number;
  /** It would be threaded in full metal. */
  readonly inMetal: boolean;
  /** By rapid that leads the threaded wire to the cut: through metal. */
  readonly way: readonly boolean[];
}

export interface Release {
  readonly pieces: readonly FreedPiece[];
  /** Everything without metal in the end. Slugs and scrap are gone; wanted parts, though loose, are there as clockwise loops. */
  readonly empty: Paths64;
  /** By run of the work: it took metal away. */
  readonly fresh: readonly boolean[];
  /** mm² gone from within the outermost edges of the cuts, after the given cut. */
  readonly removed: readonly { readonly cut: number; readonly area: number }[];
  /** By travel of the work and by rapid of the travel: it leads the wire through metal. */
  readonly throughMetal: readonly (readonly boolean[])[];
  readonly starts: readonly Start[];
  /** First cuts of chains that took a full kerf of metal. */
  readonly inFull: readonly number[];
}

/** Half of the edge cut, at least: before that a stop has another reason than to hold the piece. */
export const STANDING_ON_A_TAB = 0.5;

/** A piece up to this mass, kg, is flushed away before it can do harm. Common practice, no source. */
export const CRUMB_MASS = 5e-5;

interface State {
  /** Without metal from the first. */
  readonly start: Paths64;
  empty: Paths64;
  beforeRun: Paths64;
  readonly pieces: FreedPiece[];
  readonly fresh: boolean[];
  readonly removed: { cut: number; area: number }[];
  readonly throughMetal: (readonly boolean[])[];
  readonly starts: Start[];
  readonly inFull: number[];
}

export const releaseOf = (work: GroupWork): Release => {
  const start = startOf(work);
  const state: State = {
    start,
    empty: start,
    beforeRun: start,
    pieces: [],
    fresh: [],
    removed: [],
    throughMetal: [],
    starts: [],
    inFull: [],
  };
  let run = -1;
  for (const chain of chainsOf(work.cuts)) {
    const now = itemAt(work.cuts, chain.first).run;
    if (now !== run) state.beforeRun = state.empty;
    run = now;
    const threaded = work.starts.find((s) => s.cut === chain.first);
    if (threaded !== undefined) state.starts.push(startIn(work, state.empty, threaded));
    cutChain(work, state, chain);
    state.fresh[run] ??= false;
    const travel = work.travels.findIndex((t) => t.after === chain.last);
    if (travel >= 0) state.throughMetal[travel] = itemAt(work.travels, travel).segments.map((s) => meetsMetal(work, state.empty, s));
  }
  const { pieces, empty, fresh, removed, throughMetal, starts, inFull } = state;
  return { pieces, empty, fresh, removed, throughMetal, starts, inFull };
};

/** A chain that takes more than this share of its kerf runs in full metal; a skim takes a tenth. */
const FULL = 0.5;

/** mm² that the chain sweeps, as if it nowhere met itself. */
const kerfOf = ({ cuts }: GroupWork, { first, last }: CutChain): number => {
  const { radius } = itemAt(cuts, first);
  const length = cuts.slice(first, last + 1).reduce((sum, c) => sum + lengthOf(c.segment), 0);
  return 2 * radius * length + Math.PI * radius ** 2;
};

const cutChain = (work: GroupWork, state: State, chain: CutChain): void => {
  const before = state.empty;
  const after = withoutCrumbs(united([before, sweepOfCuts(work, chain)]));
  const run = itemAt(work.cuts, chain.first).run;
  const taken = emptyArea(after) - emptyArea(before);
  if (taken > CRUMB_AREA) state.fresh[run] = true;
  if (taken > FULL * kerfOf(work, chain)) state.inFull.push(chain.first);
  const gone = new Set<Path64>();
  const { loose, anchors } = newlyLoose(work, state.pieces, after);
  for (const loop of loose) {
    const piece = pieceOf(work, { before, after, chain, anchors }, loop);
    const standing = standingShare(state, piece.loop);
    state.pieces.push({ ...piece, standing, weak: standing < STANDING_ON_A_TAB ? undefined : weakTabOf(work, state, piece, anchors) });
    anchors.push(unitsOf(piece.at.x, piece.at.y));
    if (!isKept(work, piece)) for (const l of [loop, ...openingsOf(loop, after)]) gone.add(l);
  }
  state.empty = gone.size === 0 ? after : after.filter((l) => !gone.has(l));
  state.removed.push({ cut: chain.last, area: work.block === undefined ? emptyArea(state.empty) : 0 });
};

/** The holes, and round a group at the edge everything outside the block. */
const startOf = (work: GroupWork): Paths64 => {
  const holes = work.holes.map((h) => discOf(h.at, h.diameter / 2));
  if (work.block === undefined) return holes.length === 0 ? [] : united([holes]);
  const box = mergedBounds([
    boundsOfChain(work.block),
    ...work.cuts.map((c) => boundsOf(c.segment)),
    ...work.travels.flatMap((t) => t.segments.map(boundsOf)),
    ...work.starts.flatMap((s) => s.way.map(boundsOf)),
  ]);
  const margin = 10;
  const outside = [
    unitsOf(box.minX - margin, box.minY - margin),
    unitsOf(box.maxX + margin, box.minY - margin),
    unitsOf(box.maxX + margin, box.maxY + margin),
    unitsOf(box.minX - margin, box.maxY + margin),
  ];
  return united([difference([outside], [polygonOf(work.block.segments)]), holes]);
};

const sweepOfCuts = (work: GroupWork, chain: CutChain): Paths64 => {
  const cuts = work.cuts.slice(chain.first, chain.last + 1);
  return sweepOf(
    cuts.map((c) => c.segment),
    firstItem(cuts).radius,
  );
};

const withoutCrumbs = (loops: Paths64): Paths64 => loops.filter((l) => l.length >= 3 && Math.abs(areaOfLoop(l)) > CRUMB_AREA);

const emptyArea = (loops: Paths64): number => loops.reduce((sum, l) => sum + areaOfLoop(l), 0);

/**
 * Enclosed metal that was not loose before, the largest first, and the places from which it must be parted: in the frame and in
 * wanted parts that are loose already. At the edge of the block all metal is enclosed: the frame, which the machine holds, is
 * then the largest piece that is no part; where an open line parts the block, the larger side of it.
 */
const newlyLoose = (work: GroupWork, known: readonly FreedPiece[], loops: Paths64): { loose: readonly Path64[]; anchors: Point[] } => {
  const anchors: Point[] = known.filter((p) => isKept(work, p)).map((p) => unitsOf(p.at.x, p.at.y));
  const enclosed = loops.filter((l) => areaOfLoop(l) < 0 && !anchors.some((p) => isHeldIn(l, loops, p)));
  const loose = enclosed.sort((a, b) => areaOfLoop(a) - areaOfLoop(b));
  if (work.block === undefined || loose.length === 0) return { loose, anchors };
  const frames = loose.filter((l) => !isCutPart(work, l, loops));
  const frame = frames[0] ?? firstItem(loose);
  return { loose: loose.filter((l) => l !== frame), anchors: [...anchors, placeInside(frame, loops)] };
};

/** A part, or metal that an open line keeps; what lies in a contour belongs to that. */
const isKept = (work: GroupWork, { inside, beside }: Pick<FreedPiece, 'inside' | 'beside'>): boolean =>
  isPart(work, inside) || (inside === undefined && beside !== undefined);

/** Metal no larger than the part it lies in: a block from which that part is not cut yet is no part, wherever one looks into it. */
const isCutPart = (work: GroupWork, loop: Path64, loops: Paths64): boolean => {
  const inside = innermostOf(work.wanted, millimetres(placeInside(loop, loops)));
  if (inside === undefined || !isPart(work, inside)) return false;
  const { contour } = itemAt(work.wanted, inside);
  return -areaOfLoop(loop) <= Math.abs(areaOf(contour)) + perimeterOf(contour) * 2 * halfKerfOf(work);
};

const isPart = (work: GroupWork, inside: number | undefined): boolean =>
  inside !== undefined && itemAt(work.wanted, inside).kept === 'punch';

/** Number of the innermost of some wanted contours around a place, none where it lies in none of them. */
export const innermostOf = (wanted: readonly Pick<Wanted, 'contour' | 'kept'>[], at: Point): number | undefined => {
  let found: { index: number; area: number } | undefined;
  wanted.forEach(({ contour }, index) => {
    const b = boundsOfChain(contour);
    if (at.x < b.minX || at.x > b.maxX || at.y < b.minY || at.y > b.maxY || turnsRound(drawnLine(contour), at) === 0) return;
    const area = Math.abs(areaOf(contour));
    if (found === undefined || area < found.area) found = { index, area };
  });
  return found?.index;
};

interface Parting {
  readonly before: Paths64;
  readonly after: Paths64;
  readonly chain: CutChain;
  readonly anchors: readonly Point[];
}

/** Finds the cut that set the piece free: the fewest cuts of the chain that part a place inside it from every anchor. */
const pieceOf = (work: GroupWork, { before, after, chain, anchors }: Parting, loose: Path64) => {
  const place = placeInside(loose, after);
  let [low, high, loop, loops] = [chain.first, chain.last, loose, after];
  while (low < high) {
    const middle = (low + high) >> 1;
    const then = united([before, sweepOfCuts(work, { first: chain.first, last: middle })]);
    const parted = then.find((l) => areaOfLoop(l) < 0 && isHeldIn(l, then, place) && !anchors.some((a) => isHeldIn(l, then, a)));
    if (parted === undefined) low = middle + 1;
    else [high, loop, loops] = [middle, parted, then];
  }
  const at = millimetres(place);
  const inside = innermostOf(work.wanted, at);
  const beside = keptPlaces(work).find((k) => isHeldIn(loop, loops, unitsOf(k.at.x, k.at.y)))?.line;
  return {
    cut: high,
    at,
    area: netArea(loop, loops),
    loop,
    openings: openingsOf(loop, loops),
    inside,
    beside,
  };
};

/** What a piece that stood on a tab hung by; a crumb needs none. */
const weakTabOf = (
  { cuts, tabMetal }: GroupWork,
  { beforeRun }: State,
  { loop, at, area, cut }: Pick<FreedPiece, 'loop' | 'at' | 'area' | 'cut'>,
  anchors: readonly Point[],
): WeakTab | undefined => {
  if (area * tabMetal.height * tabMetal.density * 1e-6 <= CRUMB_MASS) return undefined;
  const place = unitsOf(at.x, at.y);
  const freedAt = itemAt(cuts, cut).segment.to;
  return weakTab({ loop, area, freedAt }, beforeRun, tabMetal, (loops) => isParted(loops, place, anchors));
};

/** Area of a piece without the openings in it that were cut in the same group. */
const netArea = (loop: Path64, loops: Paths64): number =>
  openingsOf(loop, loops).reduce((area, l) => area - areaOfLoop(l), -areaOfLoop(loop));

/** Looks at about a hundred places spread along the edge, each a micrometre outside the piece. What was free from the first is no cut. */
const standingShare = ({ start, beforeRun: before }: State, loop: Path64): number => {
  const length = lengthOfLoop(loop);
  const wanted = 96;
  let [free, all, due] = [0, 0, 0];
  for (const [p, q] of roundPairs(loop)) {
    const size = Math.hypot(q.x - p.x, q.y - p.y);
    const pieces = Math.max(1, Math.min(Math.ceil((size / 1e5 / length) * wanted), wanted));
    due += size;
    if (due / 1e5 < length / wanted) continue;
    due = 0;
    for (let n = 0; n < pieces; n += 1) {
      const share = (n + 0.5) / pieces;
      const x = p.x + (q.x - p.x) * share - (100 * (q.y - p.y)) / size;
      const y = p.y + (q.y - p.y) * share + (100 * (q.x - p.x)) / size;
      if (isVoid(start, x, y)) continue;
      all += 1;
      if (isVoid(before, x, y)) free += 1;
    }
  }
  return all === 0 ? 0 : free / all;
};

/** The wire itself without its gap, a micrometre thinner so that rubbing along an edge is no cut. */
const meetsMetal = (work: GroupWork, empty: Paths64, rapid: Segment): boolean => {
  const wire = united([sweepOf([rapid], work.wireRadius - 1e-3)]);
  return emptyArea(difference(wire, empty)) > CRUMB_AREA;
};

const startIn = (work: GroupWork, empty: Paths64, { cut, way }: GroupWork['starts'][number]): Start => ({
  cut,
  inMetal: isInMetal(work, empty, (way[0] ?? itemAt(work.cuts, cut).segment).from),
  way: way.map((rapid) => meetsMetal(work, empty, rapid)),
});

/** The same for the wire that is threaded. Most starts lie in a hole, which a distance tells. */
const isInMetal = (work: GroupWork, empty: Paths64, at: Point): boolean => {
  const radius = work.wireRadius - 1e-3;
  if (work.holes.some((h) => Math.hypot(h.at.x - at.x, h.at.y - at.y) + radius <= h.diameter / 2)) return false;
  return emptyArea(difference([discOf(at, radius)], empty)) > CRUMB_AREA;
};
