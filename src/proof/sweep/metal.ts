/** Unions of swept outlines, and the loops they leave: places without metal, and the pieces of metal enclosed by them. */

import type { Path64, Paths64 } from 'clipper2-ts';
import { ClipType, FillRule } from 'clipper2-ts/dist/Core.js';
import { Clipper64 } from 'clipper2-ts/dist/Engine.js';
import type { Bounds } from '../../geometry/measure.ts';
import type { Point } from '../../geometry/segment.ts';
import { firstItem, itemAt, roundPairs } from '../../sequence/sequence.ts';
import { UNITS_PER_MM } from './sweep.ts';

/** Enclosed metal smaller than this, mm², is a rounding crumb between two passes: it counts as cut. */
export const CRUMB_AREA = 1e-4;

/** Everything without metal: outer loops run counter-clockwise, enclosed metal clockwise. */
export const united = (parts: readonly Paths64[]): Paths64 => run(ClipType.Union, parts, []);

export const difference = (from: Paths64, take: Paths64): Paths64 => run(ClipType.Difference, [from], take);

const run = (kind: ClipType, subjects: readonly Paths64[], clips: Paths64): Paths64 => {
  const clipper = new Clipper64();
  clipper.preserveCollinear = false;
  for (const s of subjects) if (s.length > 0) clipper.addSubject(s);
  if (clips.length > 0) clipper.addClip(clips);
  const out: Paths64 = [];
  if (!clipper.execute(kind, FillRule.NonZero, out)) throw new Error('the polygon library gave up on a swept outline');
  return out;
};

/** Signed, mm². */
export const areaOfLoop = (loop: Path64): number => {
  let twice = 0;
  // The sides that end at the origin count nothing: the closing one is left out.
  const origin = firstItem(loop);
  let p = origin;
  for (const q of loop) {
    twice += (p.x - origin.x) * (q.y - origin.y) - (p.y - origin.y) * (q.x - origin.x);
    p = q;
  }
  return twice / 2 / UNITS_PER_MM ** 2;
};

export const lengthOfLoop = (loop: Path64): number => {
  let length = 0;
  for (const [p, q] of roundPairs(loop)) length += Math.hypot(q.x - p.x, q.y - p.y);
  return length / UNITS_PER_MM;
};

/** Even-odd over one loop; `x`, `y` in units. */
export const isInside = (loop: Path64, x: number, y: number): boolean => {
  let inside = false;
  let q = loop.at(-1);
  if (q === undefined) return false;
  for (const p of loop) {
    if (p.y > y !== q.y > y && x < p.x + ((y - p.y) / (q.y - p.y)) * (q.x - p.x)) inside = !inside;
    q = p;
  }
  return inside;
};

/** Even-odd over all loops: true where there is no metal. */
export const isVoid = (loops: Paths64, x: number, y: number): boolean => {
  let inside = false;
  for (const loop of loops) if (isInside(loop, x, y)) inside = !inside;
  return inside;
};

/** The place is in the metal that the loop bounds, not in an island within an opening of it, as a part stands in a ring. */
export const isHeldIn = (loop: Path64, loops: Paths64, { x, y }: Point): boolean =>
  isInside(loop, x, y) && !loops.some((l) => l !== loop && areaOfLoop(l) > 0 && isInside(l, x, y) && encloses(loop, l));

/** Of loops that do not cross: one place of the inner one says it. */
const encloses = (loop: Path64, inner: Path64): boolean => {
  const { x, y } = firstItem(inner);
  return isInside(loop, x, y);
};

/** Openings in the metal that a loop bounds; with the piece they are gone, and what stands in them stays. */
export const openingsOf = (loop: Path64, loops: Paths64): Paths64 => {
  const within = loops.filter((l) => l !== loop && encloses(loop, l));
  const islands = within.filter((l) => areaOfLoop(l) < 0);
  return within.filter((l) => areaOfLoop(l) > 0 && !islands.some((island) => encloses(island, l)));
};

/**
 * A place in the metal that a loop bounds, and in no island that stands in an opening of it: the middle of the longest chord of that metal on one
 * of a few level lines. In units.
 */
export const placeInside = (loop: Path64, loops: Paths64): Point => {
  const b = boundsOfLoop(loop);
  const openings = openingsOf(loop, loops);
  const { x, y } = firstItem(loop);
  let best = { x, y, length: -1 };
  for (const share of [0.4871, 0.2713, 0.7419, 0.0931, 0.9127]) {
    const y = b.minY + (b.maxY - b.minY) * share + 0.37;
    const chord = longestChord([loop, ...openings], y);
    if (chord.length > best.length) best = { x: chord.x, y, length: chord.length };
  }
  return { x: best.x, y: best.y };
};

const boundsOfLoop = (loop: Path64): Bounds => {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const p of loop) {
    if (p.x < minX) minX = p.x;
    if (p.x > maxX) maxX = p.x;
    if (p.y < minY) minY = p.y;
    if (p.y > maxY) maxY = p.y;
  }
  return { minX, minY, maxX, maxY };
};

const longestChord = (loops: Paths64, y: number): { x: number; length: number } => {
  const crossings: number[] = [];
  for (const loop of loops) {
    let q = loop.at(-1);
    if (q === undefined) continue;
    for (const p of loop) {
      if (p.y > y !== q.y > y) crossings.push(p.x + ((y - p.y) / (q.y - p.y)) * (q.x - p.x));
      q = p;
    }
  }
  crossings.sort((a, b) => a - b);
  let best = { x: 0, length: -1 };
  for (let i = 0; i + 1 < crossings.length; i += 2) {
    const [enters, leaves] = [itemAt(crossings, i), itemAt(crossings, i + 1)];
    const length = leaves - enters;
    if (length > best.length) best = { x: (enters + leaves) / 2, length };
  }
  return best;
};

export const millimetres = (p: { x: number; y: number }): Point => ({ x: p.x / UNITS_PER_MM, y: p.y / UNITS_PER_MM });
