/**
 * Lays chains out flat: moved near the origin, wide arcs cut, hair-short segments dropped; says what is unsound in them. It runs over
 * long arrays of plain numbers: `!` stands where one of those is read.
 */
import type { Chain } from '../contour.ts';
import type { Curves } from '../flat/curves.ts';
import { addArc, addLine, emptyCurves, join, LENGTH, RADIUS, STRIDE, WIDEST_ARC } from '../flat/curves.ts';
import { beside, chordCount } from '../flat-arc.ts';
import type { Arc, Point, Segment } from '../segment.ts';
import type { Unsound } from './offset-outcome.ts';
import { soundnessOf } from './usable.ts';

/** Chains laid out for an offset to their left. */
export interface Layout {
  readonly kind: 'layout';
  /** The source. Open paths are followed by themselves travelled back, so that the whole is closed. */
  readonly curves: Curves;
  /** How many of the curves are source: all, or for an open path the way out only. */
  readonly sources: number;
  /** Origin of the last of these. */
  readonly lastOrigin: number;
  /** First curve of each chain, and the end of the last one. */
  readonly chainStarts: readonly number[];
  /** At the end of a curve: 1 or -1 where the turn there is half a turn that only this tells to be left or right, else 0. */
  readonly halfTurns: Int8Array;
  /** For each origin: which segment of which chain. */
  readonly originSegments: readonly number[];
  readonly originChains: readonly number[];
  /** Of each origin that was laid out as chords: the arc that they stand for. */
  readonly flats: ReadonlyMap<number, FlatArc>;
  readonly shift: Point;
  /** mm: the largest coordinate after the shift, which rounding goes by. */
  readonly size: number;
  /** mm: the largest radius. */
  readonly widestRadius: number;
  /** Whether the chains were reversed, since the offset asked for was to their right. */
  readonly reversed: boolean;
}

export interface FlatArc {
  readonly radius: number;
  /** 1 where it turns to the left in the sense of the layout, else -1. */
  readonly turn: number;
}

/** mm: shorter segments are left out and the next one starts where the last one ended. */
const HAIR = 5e-7;

/** Rounding of a place that was computed in some steps, as a share of the largest coordinate; a single step gives 1e-16. */
const ROUNDING = 4e-15;

/** A chain with the number that the caller knows it by. */
export type NumberedChain = readonly [number: number, chain: Chain];

/** Lays closed chains out, or one open path; `reversed` for an offset to the right. */
export const layOut = (numbered: readonly NumberedChain[], reversed: boolean): Layout | Unsound => {
  const chains = numbered.map(([, chain]) => chain);
  const unsound = soundnessOf(chains);
  if (unsound) return unsound;
  const { shift, size } = placeOf(chains);
  const open = chains.some((chain) => !chain.closed);
  let room = 0;
  for (const chain of chains) for (const s of chain.segments) room += partsOf(s);
  const curves = emptyCurves(open ? 2 * room : room, size * ROUNDING);
  const halfTurns = new Int8Array(open ? 2 * room : room);
  const sheet: Sheet = { curves, halfTurns, shift, originSegments: [], originChains: [], flats: new Map() };
  const chainStarts = [0];
  let sources = 0;
  for (const [number, chain] of numbered) {
    const first = curves.count;
    addChain(sheet, chain, number, reversed);
    sources = curves.count;
    if (open) {
      addChain(sheet, chain, number, !reversed);
      join(curves, sources - 1, sources);
      // At both ends the way round turns back about the outside.
      halfTurns[sources - 1] = -1;
      halfTurns[curves.count - 1] = -1;
    }
    join(curves, curves.count - 1, first);
    chainStarts.push(curves.count);
  }
  let widestRadius = 0;
  for (let i = 0; i < curves.count; i++) widestRadius = Math.max(widestRadius, curves.data[i * STRIDE + RADIUS]!);
  return { kind: 'layout', ...sheet, sources, lastOrigin: curves.origin[sources - 1]!, chainStarts, size, widestRadius, reversed };
};

/** What the chains are written onto. */
interface Sheet {
  readonly curves: Curves;
  readonly halfTurns: Int8Array;
  readonly shift: Point;
  readonly originSegments: number[];
  readonly originChains: number[];
  readonly flats: Map<number, FlatArc>;
}

const partsOf = (s: Segment): number => {
  if (s.kind === 'line') return 1;
  return isFlat(s) ? chordsOf(s) : Math.ceil(Math.abs(s.sweep) / WIDEST_ARC);
};

/** The shift that brings the chains near the origin without rounding any coordinate; none where they are near already. */
const placeOf = (chains: readonly Chain[]): { shift: Point; size: number } => {
  let x0 = Infinity;
  let y0 = Infinity;
  let x1 = -Infinity;
  let y1 = -Infinity;
  for (const chain of chains) {
    for (const { from, to } of chain.segments) {
      x0 = Math.min(x0, from.x, to.x);
      x1 = Math.max(x1, from.x, to.x);
      y0 = Math.min(y0, from.y, to.y);
      y1 = Math.max(y1, from.y, to.y);
    }
  }
  const across = Math.max(x1 - x0, y1 - y0, 1e-3);
  const step = 2 ** Math.ceil(Math.log2(across));
  const near = (low: number, high: number): number => {
    const middle = Math.round((low + high) / 2 / step) * step;
    return Math.abs(middle) < 16 * step ? 0 : middle;
  };
  const shift = { x: near(x0, x1), y: near(y0, y1) };
  const size = Math.max(Math.abs(x0 - shift.x), Math.abs(x1 - shift.x), Math.abs(y0 - shift.y), Math.abs(y1 - shift.y));
  return { shift, size };
};

/** Adds one chain, each curve joined to the one before. */
const addChain = (sheet: Sheet, chain: Chain, number: number, reversed: boolean): void => {
  const { curves, shift } = sheet;
  const count = chain.segments.length;
  const begin = curves.count;
  // The place that the last kept segment ended at, in coordinates of the source.
  let anchor: Point | undefined;
  const leading = leadingHair(chain, reversed);
  for (let k = 0; k < count; k++) {
    const along = (k + leading) % count;
    const at = reversed ? count - 1 - along : along;
    const segment = chain.segments[at]!;
    const from = reversed ? segment.to : segment.from;
    const to = reversed ? segment.from : segment.to;
    const origin = sheet.originSegments.push(at) - 1;
    sheet.originChains.push(number);
    if (anchor && roughLength(segment) < HAIR && distance(to, anchor) < HAIR) {
      noteHair(curves, sheet.halfTurns, segment, from, to);
      continue;
    }
    const start = anchor && distance(from, anchor) < HAIR ? anchor : from;
    const before = curves.count;
    if (segment.kind === 'arc' && isFlat(segment)) {
      sheet.flats.set(origin, { radius: segment.radius, turn: Math.sign(reversed ? -segment.sweep : segment.sweep) });
      addChords(curves, segment, start, to, reversed, shift, origin);
    } else addSegment(curves, segment, start, to, reversed, shift, origin);
    for (let i = Math.max(before, begin + 1); i < curves.count; i++) join(curves, i - 1, i);
    anchor = to;
  }
  if (chain.closed && anchor) closeHair(curves, begin, anchor, shift);
};

/** How many hair-short segments the chain starts with; they are then met last, with a segment before them to end on. */
const leadingHair = (chain: Chain, reversed: boolean): number => {
  if (!chain.closed) return 0;
  const count = chain.segments.length;
  const k = chain.segments.findIndex((_, i) => roughLength(chain.segments[reversed ? count - 1 - i : i]!) >= HAIR);
  return Math.max(k, 0);
};

const roughLength = (s: Segment): number => (s.kind === 'line' ? distance(s.from, s.to) : Math.abs(s.sweep) * s.radius);

const distance = (p: Point, q: Point): number => Math.hypot(p.x - q.x, p.y - q.y);

/** A dropped segment that turned left of the last curve's direction turns a fold at its end to the left, and the other way round. */
const noteHair = (curves: Curves, halfTurns: Int8Array, segment: Segment, from: Point, to: Point): void => {
  const last = curves.count - 1;
  if (last < 0 || segment.kind !== 'line' || curves.turn[last] !== 0) return;
  const o = last * STRIDE;
  const cross = curves.data[o + 4]! * (to.y - from.y) - curves.data[o + 5]! * (to.x - from.x);
  if (halfTurns[last] === 0) halfTurns[last] = Math.sign(cross);
};

/** After dropped segments at the very end the last curve may end a hair off the start of the first: draw that start back. */
const closeHair = (curves: Curves, begin: number, anchor: Point, shift: Point): void => {
  const o = begin * STRIDE;
  const d = curves.data;
  const x = anchor.x - shift.x;
  const y = anchor.y - shift.y;
  if (curves.count === begin || (d[o] === x && d[o + 1] === y)) return;
  d[o] = x;
  d[o + 1] = y;
  if (curves.turn[begin] !== 0) return;
  const dx = d[o + 2]! - x;
  const dy = d[o + 3]! - y;
  d[o + LENGTH] = Math.hypot(dx, dy);
  d[o + 4] = dx / d[o + LENGTH]!;
  d[o + 5] = dy / d[o + LENGTH]!;
};

const addSegment = (curves: Curves, s: Segment, from: Point, to: Point, reversed: boolean, shift: Point, origin: number): void => {
  if (s.kind === 'line') addLine(curves, from.x - shift.x, from.y - shift.y, to.x - shift.x, to.y - shift.y, origin);
  else addArcParts(curves, s, from, to, reversed, shift, origin);
};

/**
 * Almost straight arcs are laid out as chords: where one meets another curve at hardly an angle, the rounding of a centre so far away
 * decides on which side it lies. Those that would take many chords stay arcs as long as their centres are near enough.
 */
const isFlat = (s: Arc): boolean =>
  Math.abs(s.sweep) < FLAT_SWEEP && (s.radius > FAR_CENTRE || (s.radius > FLAT_RADIUS && chordsOf(s) <= FEW_CHORDS));

const chordsOf = (s: Arc): number => chordCount(s, CHORD_RISE);

/** mm */
const FLAT_RADIUS = 1e4;
const FAR_CENTRE = 1e5;
const FEW_CHORDS = 200;
/** rad: for less, the parabola that stands for the arc is off by a millionth of its rise. */
const FLAT_SWEEP = 0.004;
/** mm: how far an arc rises over a chord of it, a fiftieth of the accuracy promised. */
const CHORD_RISE = 2e-8;

/** An almost straight arc as chords between places of its own. */
const addChords = (curves: Curves, s: Arc, from: Point, to: Point, reversed: boolean, shift: Point, origin: number): void => {
  const parts = chordsOf(s);
  let here = from;
  for (let k = 1; k <= parts; k++) {
    const next = k === parts ? to : beside(from, to, reversed ? -s.sweep : s.sweep, k / parts);
    addLine(curves, here.x - shift.x, here.y - shift.y, next.x - shift.x, next.y - shift.y, origin);
    here = next;
  }
};

/** An arc in parts of at most `WIDEST_ARC`. */
const addArcParts = (curves: Curves, s: Arc, from: Point, to: Point, reversed: boolean, shift: Point, origin: number): void => {
  const sweep = reversed ? -s.sweep : s.sweep;
  const parts = partsOf(s);
  const cx = s.centre.x - shift.x;
  const cy = s.centre.y - shift.y;
  const rx = from.x - shift.x - cx;
  const ry = from.y - shift.y - cy;
  const radius = Math.sqrt(rx * rx + ry * ry);
  const turn = Math.sign(sweep);
  let ax = from.x - shift.x;
  let ay = from.y - shift.y;
  for (let k = 1; k <= parts; k++) {
    const angle = (sweep * k) / parts;
    const cosine = k === parts ? 0 : Math.cos(angle);
    const sine = k === parts ? 0 : Math.sin(angle);
    const bx = k === parts ? to.x - shift.x : cx + rx * cosine - ry * sine;
    const by = k === parts ? to.y - shift.y : cy + rx * sine + ry * cosine;
    const i = addArc(curves, ax, ay, bx, by, cx, cy, radius, turn, origin);
    curves.data[i * STRIDE + RADIUS] = radius;
    ax = bx;
    ay = by;
  }
};
