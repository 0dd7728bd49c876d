/**
 * What a program really does to the metal, worked out without the proof: exact distances from the drawing to the wire's
 * path and back for the surface, a grid of squares for what comes loose and when, and the list of actions for stops and wire.
 */

import { distanceToSegment, lengthOf, pointAt } from '../../src/geometry/measure.ts';
import { distanceTo } from '../../src/geometry/near/distance.ts';
import { contains } from '../../src/geometry/near/inside.ts';
import type { Point, Segment } from '../../src/geometry/segment.ts';
import type { Action } from '../../src/nc/read/program.ts';
import type { ProofQuestion } from '../../src/proof/proof.ts';
import { there } from '../there.ts';
import { energyTruth } from './energy-truth.ts';
import type { Clump, Raster } from './raster.ts';
import { clumpsOf, looseFrom, NEVER, neighbours, rasterOf, squareAt } from './raster.ts';
import { startFaults, wireFaults } from './wire-truth.ts';

export interface TruthCut {
  readonly segment: Segment;
  readonly radius: number;
  readonly action: number;
  readonly run: number;
}

export interface Truth {
  /** Most metal left beyond what the good program leaves, and deepest gouge, mm. */
  readonly left: number;
  readonly gouge: number;
  /** What else is wrong, in words; empty when nothing is. */
  readonly faults: readonly string[];
  /** A piece comes loose that is about as light as a crumb, or with about half its edge cut before: a matter of words. */
  readonly unclear: boolean;
}

/** mm: a quarter of the tolerance is the program's, and at least 1 µm. */
export const mayBeOff = ({ tolerance }: ProofQuestion): number => Math.max(0.001, tolerance / 4);

/** Metal that the wire would leave at places along every contour, mm; negative inside a kerf. */
export type Surface = readonly (readonly number[])[];

/** A notch 2 µm deep is 40 µm wide at this wire: places this far apart miss at most 0.4 µm of it. */
const STEP = 0.02;
const SQUARE = 0.05;

export const truthOf = (actions: readonly Action[], question: ProofQuestion, good: Surface | undefined): Truth & { surface: Surface } => {
  const cuts = cutsOf(actions, question);
  const surface = surfaceOf(cuts, question);
  const left = Math.max(...surface.flatMap((s, i) => s.map((f, k) => f - Math.max(0, good?.[i]?.[k] ?? f))), 0);
  const raster = rasterOfCuts(cuts, question);
  const loose = looseFaults(actions, cuts, question, raster);
  const start = startFaults(actions, cuts, question, raster);
  const energy = energyTruth(actions, cuts, question, raster);
  const faults = [...loose.faults, ...wireFaults(actions, question, raster), ...start.faults, ...energy.faults];
  const unclear = loose.unclear || loose.broken || start.unclear || energy.unclear;
  return { surface, left, gouge: gougeOf(cuts, question, raster), faults, unclear };
};

/** Half the wire and the gap of the condition, or else of the register; a move with neither takes the nearest of its run. */
export const cutsOf = (actions: readonly Action[], question: ProofQuestion): readonly TruthCut[] => {
  const cuts: (TruthCut & { setting: number | undefined })[] = [];
  let run = 0;
  let broken = true;
  actions.forEach((a, action) => {
    if (a.kind === 'stop' || a.kind === 'thread' || a.kind === 'cut wire' || (a.kind === 'move' && a.rapid)) broken = true;
    if (a.kind !== 'move' || a.rapid) return;
    if (broken) run += 1;
    broken = false;
    cuts.push({ segment: a.centre, radius: 0, action, run, setting: a.condition ?? a.register });
  });
  return cuts.map((c, i) => {
    const before = cuts.slice(0, i + 1).findLast((o) => o.setting !== undefined && !rapidBetween(actions, o.action, c.action));
    const behind = cuts.slice(i).find((o) => o.setting !== undefined);
    const gap = question.gaps.get((before ?? behind)?.setting ?? 0) ?? 0;
    return { segment: c.segment, radius: question.wireDiameter / 2 + gap, action: c.action, run: c.run };
  });
};

const rapidBetween = (actions: readonly Action[], from: number, to: number): boolean =>
  actions.slice(from, to).some((a) => a.kind === 'move' && a.rapid);

const surfaceOf = (cuts: readonly TruthCut[], question: ProofQuestion): Surface =>
  question.wanted.map(({ contour }) =>
    contour.segments.flatMap((s) => {
      const steps = Math.ceil(lengthOf(s) / STEP);
      return Array.from({ length: steps }, (_, i) => clearance(cuts, pointAt(s, i / steps)));
    }),
  );

/** Distance from a place to the nearest kerf; negative within one. */
export const clearance = (cuts: readonly TruthCut[], p: Point): number => {
  let least = Infinity;
  for (const { segment, radius } of cuts) {
    if (farOff(segment, p, least + radius)) continue;
    least = Math.min(least, distanceToSegment(segment, p) - radius);
  }
  return least;
};

const farOff = (s: Segment, p: Point, reach: number): boolean => {
  const r = s.kind === 'arc' ? 2 * s.radius : 0;
  return (
    p.x < Math.min(s.from.x, s.to.x) - r - reach ||
    p.x > Math.max(s.from.x, s.to.x) + r + reach ||
    p.y < Math.min(s.from.y, s.to.y) - r - reach ||
    p.y > Math.max(s.from.y, s.to.y) + r + reach
  );
};

/** How deep any wire position reaches into metal that must stay. */
const gougeOf = (cuts: readonly TruthCut[], question: ProofQuestion, raster: Raster): number => {
  const owners = { raster, of: ownersOf(question, raster) };
  let worst = 0;
  for (const { segment, radius } of cuts) {
    const steps = Math.max(2, Math.ceil(lengthOf(segment) / STEP));
    for (let i = 0; i <= steps; i += 1) worst = Math.max(worst, depthAt(pointAt(segment, i / steps), radius, question, owners));
  }
  return worst;
};

interface Owners {
  readonly raster: Raster;
  readonly of: Int16Array;
}

const depthAt = (p: Point, radius: number, question: ProofQuestion, owners: Owners): number => {
  const size = sizeOf(question);
  if (p.x < -radius || p.y < -radius || p.x > size + radius || p.y > size + radius) return 0;
  const nearest = Math.min(...question.wanted.map((w) => distanceTo(w.contour, p)));
  return isWanted(p, nearest, question, owners) ? radius + nearest : Math.max(0, radius - nearest);
};

const sizeOf = (question: ProofQuestion): number => Math.max(...question.block.segments.map((s) => s.from.x));

/** Metal that must stay: in a part and in none of its openings; round openings that lie in no part, all of the block. */
const isWanted = (p: Point, nearest: number, question: ProofQuestion, owners: Owners): boolean => {
  const square = squareAt(p, owners.raster);
  const owner = nearest > 2 * SQUARE && square >= 0 ? there(owners.of[square]) : innermost(p, question);
  if (owner >= 0) return there(question.wanted[owner]).kept === 'punch';
  return !question.wanted.some((w) => w.kept === 'punch');
};

/** In these programs an opening is never round a part, so an opening that holds the place is the innermost. */
const innermost = (p: Point, question: ProofQuestion): number => {
  const holding = question.wanted.flatMap((w, i) => (contains(w.contour, p, 0) === 'inside' ? [i] : []));
  return holding.find((i) => there(question.wanted[i]).kept === 'die') ?? holding[0] ?? -1;
};

const rasterOfCuts = (cuts: readonly TruthCut[], question: ProofQuestion): Raster => {
  const size = sizeOf(question);
  return rasterOf(cuts, {
    low: { x: 0, y: 0 },
    high: { x: size, y: size },
    size: SQUARE,
    frame: { x: size - 0.5, y: size - 0.5 },
    isAir: (x, y) => question.holes.some((h) => (h.at.x - x) ** 2 + (h.at.y - y) ** 2 < (h.diameter / 2) ** 2),
  });
};

/** A piece lighter than this, g, is flushed away and need not be held: the rule that docs/proof.md states. */
const CRUMB = 0.05;
/** Squares along a kerf that make a cut and not a rounding. */
const FRESH = 12;

export const looseFaults = (actions: readonly Action[], cuts: readonly TruthCut[], question: ProofQuestion, raster: Raster) => {
  const faults: string[] = [];
  let [unclear, broken] = [false, false];
  const owners = ownersOf(question, raster);
  for (const { cut, squares, left } of clumpsOf(raster)) {
    const grams = gramsOf(squares.length, question, raster);
    if (grams < CRUMB / 2) continue;
    // A piece that breaks up after it came loose, and one about as light as a crumb: matters of words.
    unclear ||= grams < CRUMB * 1.7;
    broken ||= gramsOf(left[1] ?? 0, question, raster) > CRUMB / 2;
    if (grams < CRUMB * 1.7) continue;
    const owner = mostOf(squares.map((i) => there(owners[i])));
    // Beside an open line metal lies in no contour: it belongs to the line that was cut last.
    const whose = owner < 0 && (question.wantedOpen ?? []).length > 0 ? contourOfCut(there(cuts[cut]), question) : owner;
    // Scrap is held by whoever stands where it is cut free.
    const held = isHeld(actions, cuts, question, raster, cut, whose < 0 ? contourOfCut(there(cuts[cut]), question) : whose);
    if (held === 'either') unclear = true;
    else if (!held) faults.push(`a piece of contour ${whose} falls unheld with cut ${cut}`);
    if (question.wanted[whose]?.kept !== 'punch') {
      const further = goesOn(actions, cuts, cut);
      if (further === 'to the end') faults.push(`a piece of contour ${whose} is never taken out`);
      else unclear ||= further === 'a little';
    }
    const off = brokenOff(actions, cuts, question, raster, { cut, squares, left, whose });
    faults.push(...off.faults);
    unclear ||= off.unclear;
    const late = squares.filter((i) => raster.cutAt[i] !== NEVER && contourOfCut(there(cuts[there(raster.cutAt[i])]), question) !== whose);
    // A lead-out may run through scrap that has come loose: no wanted metal is lost, but somebody should know.
    if (late.length > FRESH && whose < 0) unclear = true;
    if (late.length > FRESH && whose >= 0) faults.push(`a fallen piece of contour ${whose} is cut`);
    if (whose === -1 && question.wanted.some((w) => w.kept === 'die') && !question.wanted.some((w) => w.kept === 'punch'))
      faults.push(`the block falls apart with cut ${cut}`);
  }
  return { faults, unclear, broken };
};

/** How the wire goes on behind a freeing cut before somebody stops to take the piece out: the rest of a tab and the way out are little. */
const goesOn = (actions: readonly Action[], cuts: readonly TruthCut[], cut: number): 'no further' | 'a little' | 'to the end' => {
  const free = there(cuts[cut]);
  const stop = actions.findIndex(
    (a, i) => i > free.action && a.kind === 'stop' && !a.optional && !/THREAD|CUT THE WIRE|CONDITION/.test(a.comment),
  );
  const before = cuts.slice(cut + 1).filter((c) => stop < 0 || c.action < stop);
  if (stop < 0 || before.some((c) => c.run !== free.run)) return 'to the end';
  const way = before.reduce((sum, c) => sum + lengthOf(c.segment), 0);
  return way < 2.5 ? 'no further' : 'a little';
};

/**
 * What a part that is loose already loses by later cuts falls as well, though the part is held: seen from the largest square that is left of
 * the part as from a frame.
 */
const brokenOff = (
  actions: readonly Action[],
  cuts: readonly TruthCut[],
  question: ProofQuestion,
  raster: Raster,
  { cut, squares, left, whose }: Clump & { readonly whose: number },
): { readonly faults: readonly string[]; readonly unclear: boolean } => {
  const nothing = { faults: [], unclear: false };
  if (question.wanted[whose]?.kept !== 'punch' || gramsOf(left[1] ?? 0, question, raster) < CRUMB * 1.7) return nothing;
  const owners = ownersOf(question, raster);
  const middle = squares.find((i) => raster.cutAt[i] === NEVER && owners[i] === whose);
  if (middle === undefined) return nothing;
  const mine = new Set(squares);
  const seen = looseFrom(raster, middle, cuts.length);
  const told = clumpsOf(seen)
    .filter((c) => c.cut > cut && mine.has(there(c.squares[0])) && gramsOf(c.squares.length, question, raster) >= CRUMB * 1.7)
    .map((c) => ({ cut: c.cut, held: isHeld(actions, cuts, question, seen, c.cut, whose) }));
  return {
    faults: told.filter((t) => t.held === false).map((t) => `a piece breaks off the part ${whose} with cut ${t.cut}`),
    unclear: told.some((t) => t.held === 'either'),
  };
};

const gramsOf = (squares: number, question: ProofQuestion, { size }: Raster): number =>
  squares * size ** 2 * question.height * question.density * 1e-3;

const mostOf = (values: readonly number[]): number => {
  const counts = new Map<number, number>();
  for (const v of values) counts.set(v, (counts.get(v) ?? 0) + 1);
  return there([...counts].sort((a, b) => b[1] - a[1])[0])[0];
};

/** Innermost contour round each square, -1 for none. */
const ownersOf = (question: ProofQuestion, raster: Raster): Int16Array => {
  const known = remembered.get(question.wanted);
  if (known !== undefined) return known;
  const owners = new Int16Array(raster.cutAt.length).fill(-1);
  const order = question.wanted.map((w, i) => ({ i, w, box: boxOf(w.contour.segments) })).sort((a, b) => b.box.area - a.box.area);
  for (const { i, w, box } of order)
    for (let n = 0; n < owners.length; n += 1) {
      const p = placeOf(n, raster);
      if (p.x > box.x0 && p.x < box.x1 && p.y > box.y0 && p.y < box.y1 && insideFast(w.contour.segments, p)) owners[n] = i;
    }
  remembered.set(question.wanted, owners);
  return owners;
};

/** The mutants of one program share its drawing. */
const remembered = new WeakMap<ProofQuestion['wanted'], Int16Array>();

const placeOf = (n: number, r: Raster): Point => ({
  x: r.low.x + ((n % r.columns) + 0.5) * r.size,
  y: r.low.y + (Math.floor(n / r.columns) + 0.5) * r.size,
});

const boxOf = (segments: readonly Segment[]) => {
  const points = segments.flatMap((s) => [0, 0.25, 0.5, 0.75].map((t) => pointAt(s, t)));
  const [x0, x1] = [Math.min(...points.map((p) => p.x)), Math.max(...points.map((p) => p.x))];
  const [y0, y1] = [Math.min(...points.map((p) => p.y)), Math.max(...points.map((p) => p.y))];
  return { x0, x1, y0, y1, area: (x1 - x0) * (y1 - y0) };
};

/** Good enough for squares: the contour as chords. */
const insideFast = (segments: readonly Segment[], p: Point): boolean => {
  let inside = false;
  const test = (a: Point, b: Point): void => {
    if (a.y > p.y !== b.y > p.y && p.x < a.x + ((p.y - a.y) / (b.y - a.y)) * (b.x - a.x)) inside = !inside;
  };
  for (const s of segments) {
    if (s.kind === 'line') test(s.from, s.to);
    else for (let i = 0; i < 8; i += 1) test(pointAt(s, i / 8), pointAt(s, (i + 1) / 8));
  }
  return inside;
};

/** The contour that a cut runs along or towards; open lines are counted on behind the contours. */
const contourOfCut = (cut: TruthCut, question: ProofQuestion): number => {
  const p = pointAt(cut.segment, 0.5);
  let best = { index: -1, distance: Infinity };
  [...question.wanted.map((w) => w.contour), ...(question.wantedOpen ?? []).map((o) => o.path)].forEach((c, index) => {
    const distance = distanceTo(c, p);
    if (distance < best.distance) best = { index, distance };
  });
  return best.index;
};

/**
 * Held: the piece stands on a tab, the wire stops beside it with more than threading in mind, then cuts it free. Walks back
 * from the freeing run over runs of the same contour that take nothing.
 */
const isHeld = (
  actions: readonly Action[],
  cuts: readonly TruthCut[],
  question: ProofQuestion,
  raster: Raster,
  cut: number,
  whose: number,
): boolean | 'either' => {
  const freeing = there(cuts[cut]).run;
  const start = cuts.findIndex((c) => c.run === freeing);
  const standing = standingShare(raster, cut, start);
  if (Math.abs(standing - 0.5) < 0.12) return 'either';
  if (standing < 0.5) return false;
  let end = there(cuts[start]).action;
  for (let c = start - 1; c >= 0; c -= 1) {
    const mine = contourOfCut(there(cuts[c]), question) === whose;
    if (
      actions
        .slice(there(cuts[c]).action, end)
        .some(
          (a, i, between) =>
            a.kind === 'stop' && !a.optional && isForHands(a.comment) && besideIt(between, i, mine, c, cuts, question, whose),
        )
    )
      return true;
    end = there(cuts[c]).action;
    const taken = raster.cutAt.reduce((sum, n) => sum + (cuts[n]?.run === there(cuts[c]).run ? 1 : 0), 0);
    if (mine && taken > FRESH) return false;
  }
  return false;
};

/** Not for the wire or its energy alone. */
const isForHands = (comment: string): boolean => !/THREAD|CUT THE WIRE|CONDITION/.test(comment);

/** Share of the edge squares of what falls with a cut that was cut before the run of that cut began. */
const standingShare = (raster: Raster, cut: number, start: number): number => {
  const { columns, cutAt, looseAt, rows } = raster;
  let [edge, free] = [0, 0];
  for (let i = 0; i < cutAt.length; i += 1) {
    if (looseAt[i] !== cut || there(cutAt[i]) <= cut) continue;
    const cutBeside = neighbours(i, columns, rows).filter((j) => there(cutAt[j]) <= cut);
    if (cutBeside.length === 0) continue;
    edge += 1;
    if (cutBeside.some((j) => there(cutAt[j]) < start)) free += 1;
  }
  return edge === 0 ? 0 : free / edge;
};

/** No rapid stands between the stop and a cut of this contour, before or behind it. */
const besideIt = (
  between: readonly Action[],
  stop: number,
  mine: boolean,
  before: number,
  cuts: readonly TruthCut[],
  question: ProofQuestion,
  whose: number,
): boolean => {
  const travels = (list: readonly Action[]): boolean => list.some((a) => a.kind === 'move' && a.rapid);
  if (mine && !travels(between.slice(0, stop))) return true;
  const next = cuts[before + 1];
  return next !== undefined && contourOfCut(next, question) === whose && !travels(between.slice(stop));
};
