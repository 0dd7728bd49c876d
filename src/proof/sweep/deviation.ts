/**
 * How far the metal that is left lies from a wanted contour: from places along the contour to the edge of the metal, and back
 * from every vertex of that edge to the contour, so that nothing between two places is missed.
 */
import type { Path64 } from 'clipper2-ts';
import { boundsOfChain } from '../../geometry/area.ts';
import type { Contour } from '../../geometry/contour.ts';
import { lengthOf, pointAt } from '../../geometry/measure.ts';
import type { Point } from '../../geometry/segment.ts';
import { firstItem, itemAt, sideBySide } from '../../sequence/sequence.ts';
import { type DrawnLine, distanceFrom, drawnLine, turnsRound } from '../drawn-line.ts';
import { type Profile, type ProfilePlace, packed } from '../profile.ts';
import type { Deviation } from '../proof.ts';
import type { Edges } from './edges.ts';
import { edgesOf } from './edges.ts';
import { type GroupWork, type WorkWanted, workFor } from './group-alone.ts';
import type { InsideCorner } from './inside-corners.ts';
import { insideCorners, openedBy, radiusFrom, roundReach } from './inside-corners.ts';
import { areaOfLoop, isInside } from './metal.ts';
import { inSlit, measureOpen, type OpenMeasure, type Vertex } from './open-line-deviation.ts';
import type { Release } from './release.ts';
import { RESOLUTION, UNITS_PER_MM } from './sweep.ts';

/** Places along a contour stand no further apart than this on arcs, mm, and twice as far on lines. */
export const SPACING = 0.2;

export interface ContourMeasure {
  /** By place round the contour. */
  readonly profile: Profile;
  /** Worst metal left and worst gouge; corners that may come out round count with what is left beyond the round that is allowed. */
  readonly leftMost: Deviation;
  readonly gougeMost: Deviation;
  /** Places that are out by the most, with the resolution and the fit of the contour against them; none where all are right. */
  readonly beyond: { readonly left?: Beyond | undefined; readonly gouge?: Beyond | undefined };
  readonly rounded: readonly {
    readonly at: Point;
    readonly wanted: number;
    readonly radius: number;
    readonly left: number;
    readonly excused: boolean;
  }[];
  /** Stretches that were never cut through: metal stands there further from the cut than half a kerf. Shares of the perimeter. */
  readonly standing: readonly { readonly from: number; readonly to: number; readonly at: Point; readonly length: number }[];
  /** Shares of the places round the contour that are out of tolerance on either side. */
  readonly outShare: number;
}

/** `limit`, mm: what the program may use of the tolerance, or all of it where the wire is too thick for a corner. */
export interface Beyond extends Deviation {
  readonly limit: number;
}

interface Measured extends WorkWanted {
  readonly line: DrawnLine;
}

export interface Measures {
  readonly contours: readonly ContourMeasure[];
  /** Open lines. */
  readonly open: readonly OpenMeasure[];
}

/** Measures every wanted contour and open line of the work against the metal that is left. */
export const measuresOf = (work: GroupWork, release: Release): Measures => {
  const edges = edgesOf(release.empty);
  const measured = work.wanted.map((w) => ({ ...w, line: drawnLine(w.contour) }));
  const back = backwards(work, release, edges, measured);
  const inMouth = inSlit(work);
  return {
    contours: measured.map((m, i) => {
      const own = back.contours.filter((b) => b.wanted === i);
      return measureOf(
        workFor(work, m),
        edges,
        m,
        work.open.length === 0 ? own : own.filter((b) => b.amount > 0 || !inMouth(b.at)),
        inMouth,
      );
    }),
    open: sideBySide(work.open, back.open).map(([line, places]) => measureOpen(work, edges, line, places, (at) => inMouth(at, line))),
  };
};

interface Off {
  readonly at: Point;
  readonly amount: number;
  /** On the drawing, from where `amount` reaches to the metal's edge, or on the metal's edge, from where it reaches to the drawing. */
  readonly from: 'drawing' | 'metal';
}

const measureOf = (
  work: GroupWork,
  edges: Edges,
  m: Measured,
  back: readonly (Off & { surface: boolean })[],
  inMouth: (at: Point) => boolean,
): ContourMeasure => {
  const corners = insideCorners(m.contour, m.kept, Infinity);
  const profile = profileOf(edges, m.contour);
  const halfKerf = Math.max(...work.cuts.map((c) => c.radius), work.wireRadius);
  const excuse = excuser(m, corners, work.insideCorner);
  // What no path of this wire gets out of a corner is not the program's doing: it has all of the tolerance.
  const last = Math.min(...work.passes.map((p) => p.radius));
  const reached = last > work.insideCorner && Number.isFinite(last) ? excuser(m, corners, last) : excuse;
  const standing = standingOf(profile, m.contour, halfKerf, excuse);
  const whole = standing.length === 0;
  const all: readonly Off[] = [
    ...profile.flatMap((p): Off[] => (p.deviation < 0 && inMouth(p.at) ? [] : [{ at: p.at, amount: p.deviation, from: 'drawing' }])),
    ...back.filter((b) => b.amount < 0 || (whole && b.surface)),
  ];
  const judged = all.map((o) => (o.amount > RESOLUTION ? { ...o, amount: excuse(o) } : o));
  const byProgram = reached === excuse ? judged : all.map((o) => (o.amount > RESOLUTION ? { ...o, amount: reached(o) } : o));
  const nothing: Off = { at: firstItem(profile).at, amount: 0, from: 'drawing' };
  const leftMost = judged.reduce((a, b) => (b.amount > a.amount ? b : a), nothing);
  const gougeMost = judged.reduce((a, b) => (b.amount < a.amount ? b : a), nothing);
  const out = profile.filter(
    (p) =>
      (p.deviation < -work.allowed && !inMouth(p.at)) ||
      (p.deviation > work.allowed && reached({ at: p.at, amount: p.deviation, from: 'drawing' }) > work.allowed),
  );
  const least = RESOLUTION + m.fit;
  const left = worst(byProgram, 1, work.allowed, least) ?? worst(judged, 1, work.tolerance, least);
  return {
    profile: packed(profile),
    leftMost: deviation(leftMost),
    gougeMost: deviation(gougeMost),
    beyond: { left, gouge: worst(judged, -1, work.allowed, least) },
    rounded: whole ? roundedOf(edges, corners, work, excuse) : [],
    standing,
    outShare: out.length / profile.length,
  };
};

const deviation = ({ at, amount }: Off): Deviation => ({ at, amount });

/** The place furthest beyond the limit to one side: 1 metal left, -1 gouged. */
const worst = (places: readonly Off[], side: 1 | -1, limit: number, least: number): Beyond | undefined => {
  const most = places.reduce<Off | undefined>((a, b) => (a === undefined || side * (b.amount - a.amount) > 0 ? b : a), undefined);
  return most === undefined || side * most.amount + least <= limit ? undefined : { at: most.at, amount: most.amount, limit };
};

/** Every corner and end, and places between them; on arcs an even number of steps, so that the middle is one of them. */
const profileOf = (edges: Edges, contour: Contour): readonly ProfilePlace[] => {
  const perimeter = contour.segments.reduce((sum, s) => sum + lengthOf(s), 0);
  const far = farthest(contour);
  const profile: ProfilePlace[] = [];
  let run = 0;
  for (const s of contour.segments) {
    const length = lengthOf(s);
    const steps = 2 * Math.max(1, Math.ceil(length / SPACING / (s.kind === 'line' ? 4 : 2)));
    for (let i = 0; i < steps; i += 1) {
      const at = pointAt(s, i / steps);
      profile.push({ share: (run + (length * i) / steps) / perimeter, at, deviation: Math.min(edges.distance(at.x, at.y), far) });
    }
    run += length;
  }
  return profile;
};

/** Stands for the distance to the nearest cut where the group has none: half the smaller side of the contour's box. */
const farthest = (contour: Contour): number => {
  const box = boundsOfChain(contour);
  return Math.min(box.maxX - box.minX, box.maxY - box.minY) / 2;
};

/**
 * From the edge of the metal back to the nearest wanted contour. Places on drilled holes and on the block's own edge are
 * not the wire's work. `surface`: the place lies on the metal that the contour is to bound, not across the kerf from it.
 */
const backwards = (work: GroupWork, release: Release, edges: Edges, measured: readonly Measured[]) => {
  const found: (Off & { wanted: number; surface: boolean })[] = [];
  const open: Vertex[][] = work.open.map(() => []);
  if (measured.length + open.length === 0) return { contours: found, open };
  const lines = work.open.map((o) => drawnLine(o.path));
  const bounded = release.empty.map((loop) => boundedKind(work, release, loop));
  const notByWire = untouched(work);
  for (const { at, loop, mouth } of placesOnEdge(edges, work)) {
    let wanted = 0;
    let distance = Infinity;
    measured.forEach((m, i) => {
      const d = distanceFrom(m.line, at);
      if (d < distance) [wanted, distance] = [i, d];
    });
    let line = -1;
    lines.forEach((l, i) => {
      const d = distanceFrom(l, at);
      if (d < distance) [line, distance] = [i, d];
    });
    const isMouth = mouth && line >= 0;
    if (distance <= RESOLUTION || (notByWire(at) && !isMouth)) continue;
    if (line >= 0) {
      itemAt(open, line).push({ at, isMouth });
      continue;
    }
    const m = itemAt(measured, wanted);
    const keptSide = (turnsRound(m.line, at) !== 0) === (m.kept === 'punch');
    found.push({ at, from: 'metal', amount: keptSide ? -distance : distance, wanted, surface: bounded[loop] === m.kept });
  }
  return { contours: found, open };
};

/** An edge longer than this, mm, is looked at between its ends too: a straight slit from one contour to another has no vertex of its own. */
const LONG_EDGE = 0.5;

/** Where a long edge is looked at, as shares of it; uneven, so that no symmetry of a drawing hides both. */
const BETWEEN = [0.37, 0.71];

/** Every vertex of the metal's edge, and places on its long edges. `mouth`: where a kerf meets the edge of the block. */
const placesOnEdge = function* (
  edges: Edges,
  { block }: GroupWork,
): Iterable<{ readonly at: Point; readonly loop: number; readonly mouth: boolean }> {
  const edge = block && drawnLine(block);
  const onBlock = (e: number): boolean => edge !== undefined && distanceFrom(edge, edges.at(e)) < 1e-3;
  const before = new Int32Array(block === undefined ? 0 : edges.count);
  if (block !== undefined) for (let e = 0; e < edges.count; e += 1) before[itemAt(edges.next, e)] = e;
  for (let e = 0; e < edges.count; e += 1) {
    const [n, loop] = [itemAt(edges.next, e), itemAt(edges.loop, e)];
    const [from, to] = [edges.at(e), edges.at(n)];
    yield { at: from, loop, mouth: onBlock(e) && (!onBlock(n) || !onBlock(itemAt(before, e))) };
    const [dx, dy] = [to.x - from.x, to.y - from.y];
    if (dx * dx + dy * dy > LONG_EDGE * LONG_EDGE)
      for (const share of BETWEEN) yield { at: { x: from.x + dx * share, y: from.y + dy * share }, loop, mouth: false };
  }
};

/** Which kind of wanted metal a loop bounds: a loose part, or what stays clamped. */
const boundedKind = (work: GroupWork, release: Release, loop: Path64): 'die' | 'punch' | 'none' => {
  const encloses = areaOfLoop(loop) < 0;
  if (encloses && release.pieces.some((p) => isInside(loop, p.at.x * UNITS_PER_MM, p.at.y * UNITS_PER_MM))) return 'punch';
  return encloses === (work.block !== undefined) ? 'die' : 'none';
};

const untouched = (work: GroupWork): ((at: Point) => boolean) => {
  const box = work.block === undefined ? undefined : boundsOfChain(work.block);
  const edge = work.block && drawnLine(work.block);
  return (at) =>
    work.holes.some((h) => Math.abs(Math.hypot(at.x - h.at.x, at.y - h.at.y) - h.diameter / 2) < 1e-3) ||
    (box !== undefined && (at.x < box.minX || at.y < box.minY || at.x > box.maxX || at.y > box.maxY)) ||
    (edge !== undefined && distanceFrom(edge, at) < 1e-3);
};

/**
 * What is left beyond the round that an inside corner may have. Only near a corner: elsewhere the opened drawing says
 * nothing, as in a slot too narrow for that round.
 */
const excuser = (m: Measured, corners: readonly InsideCorner[], radius: number): ((o: Off) => number) => {
  const tight = corners.filter((c) => c.wanted < radius);
  if (radius <= 0 || tight.length === 0) return (o) => o.amount;
  let opened: Edges | undefined;
  return (o) => {
    const reach = (c: InsideCorner): number => Math.max(2 * radius, roundReach(c.turn, radius)) + c.wanted;
    if (!tight.some((c) => Math.hypot(c.at.x - o.at.x, c.at.y - o.at.y) < reach(c))) return o.amount;
    opened ??= openedBy(m.contour, m.kept, radius);
    const beyond = opened.distance(o.at.x, o.at.y);
    if (!Number.isFinite(beyond)) return o.amount;
    return Math.max(0, o.from === 'metal' ? -beyond : o.amount - Math.max(0, beyond));
  };
};

const standingOf = (
  profile: readonly ProfilePlace[],
  contour: Contour,
  halfKerf: number,
  excuse: (o: Off) => number,
): ContourMeasure['standing'] => {
  const stands = profile.map((p) => p.deviation > halfKerf && excuse({ at: p.at, amount: p.deviation, from: 'drawing' }) > halfKerf);
  if (!stands.includes(true)) return [];
  const perimeter = contour.segments.reduce((sum, s) => sum + lengthOf(s), 0);
  const gap = stands.indexOf(false);
  if (gap < 0) return [{ from: 0, to: 1, at: firstItem(profile).at, length: perimeter }];
  const stretches: { from: number; to: number; at: Point; length: number }[] = [];
  let first = -1;
  for (let n = 1; n <= profile.length; n += 1) {
    const i = (gap + n) % profile.length;
    if (stands[i] === true && first < 0) first = n;
    if (stands[i] === true || first < 0) continue;
    const at = (k: number) => itemAt(profile, (gap + k) % profile.length);
    const [from, to] = [at(first).share, at(n - 1).share];
    const share = (to - from + 1) % 1;
    stretches.push({ from, to, at: at((first + n - 1) >> 1).at, length: share * perimeter });
    first = -1;
  }
  return stretches;
};

/** Corners that hold more metal than the resolution can mistake. */
const roundedOf = (
  edges: Edges,
  corners: readonly InsideCorner[],
  work: GroupWork,
  excuse: (o: Off) => number,
): ContourMeasure['rounded'] =>
  corners.flatMap((c) => {
    const left = edges.distance(c.at.x, c.at.y);
    if (!(left > 2 * RESOLUTION) || !Number.isFinite(left)) return [];
    const excused = excuse({ at: c.at, amount: left, from: 'drawing' }) <= work.tolerance - RESOLUTION;
    return [{ at: c.at, wanted: c.wanted, radius: radiusFrom(c, left), left, excused }];
  });
