/**
 * One group as a piece of work that stands by itself: all lengths measured from an origin of its own and rounded to 1 nm. Two
 * openings that are the same but for their place give the same numbers to the last one, so one proof serves for both.
 */

import type { Contour, Path } from '../../geometry/contour.ts';
import type { Point, Segment } from '../../geometry/segment.ts';
import { itemAt, mapFilled } from '../../sequence/sequence.ts';
import type { ProofQuestion, Wanted, WantedOpen } from '../proof.ts';
import { allowedTo, ownTolerance } from '../share.ts';
import type { Energy, Pass } from './energies.ts';
import type { Group } from './groups.ts';
import { type TabMetal, UNKNOWN_STRENGTH } from './tab.ts';
import type { SweptCut, Trace, Travel } from './wire-doings.ts';

export interface GroupWork {
  readonly cuts: readonly WorkCut[];
  /** Travels from one cut of the group to the next, and what leads the wire out of the group, by the cut they follow. */
  readonly travels: readonly { readonly after: number; readonly segments: readonly Segment[] }[];
  /** Cuts that begin with the wire freshly threaded, in order, and the rapids that lead it there when it is threaded. */
  readonly starts: readonly { readonly cut: number; readonly way: readonly Segment[] }[];
  readonly wanted: readonly WorkWanted[];
  readonly holes: readonly { readonly at: Point; readonly diameter: number }[];
  readonly open: readonly { readonly path: Path; readonly kept: 'left' | 'right' | 'slit'; readonly own?: OwnLimits | undefined }[];
  /** Given where the group reaches the edge of the block. */
  readonly block?: Contour | undefined;
  readonly wireRadius: number;
  readonly tolerance: number;
  /** Of the tolerance, for the program. */
  readonly allowed: number;
  readonly insideCorner: number;
  readonly passes: readonly Pass[];
  readonly tabMetal: TabMetal;
}

export interface WorkWanted {
  readonly contour: Contour;
  readonly kept: 'die' | 'punch';
  readonly fit: number;
  /** Where it is asked, or cut, otherwise than the work. */
  readonly own?: OwnLimits | undefined;
}

export interface OwnLimits extends Pick<GroupWork, 'tolerance' | 'allowed'> {
  /** Numbers in the list of passes of those that run on it. */
  readonly due: readonly number[];
}

/** The work as one of its contours is judged. */
export const workFor = (work: GroupWork, { own }: Pick<WorkWanted, 'own'>): GroupWork =>
  own === undefined
    ? work
    : { ...work, tolerance: own.tolerance, allowed: own.allowed, passes: own.due.map((n) => itemAt(work.passes, n)) };

export interface WorkCut {
  readonly segment: Segment;
  readonly radius: number;
  /** Runs counted from 0 within the group. */
  readonly run: number;
  /** Follows straight on the cut before it in the list, with nothing of another group between. */
  readonly follows: boolean;
  readonly energy: Energy;
}

export interface PlacedWork {
  readonly work: GroupWork;
  /** What must be added to places of the work. */
  readonly origin: Point;
  /** Every number of the work in nm, and its structure: equal only for equal work. */
  readonly fingerprint: Float64Array;
}

/** What the trace says between its cuts: the travel behind a cut, and the cuts that begin with the wire freshly threaded, with the rapids that lead it there. */
export interface Ways {
  readonly travelsAfter: ReadonlyMap<number, number>;
  readonly starts: ReadonlyMap<number, readonly Segment[]>;
}

export const workOf = (group: Group, trace: Trace, { travelsAfter, starts }: Ways, question: ProofQuestion): PlacedWork => {
  const cuts = group.cuts.map((i) => itemAt(trace.cuts, i));
  const first = cuts[0]?.segment.from ?? firstWanted(group, question);
  const origin = { x: nanometre(first.x), y: nanometre(first.y) };
  const numbers: number[] = [];
  const local = localiser(origin, numbers);
  const work: GroupWork = {
    cuts: cutsOf(group, cuts, local, numbers),
    travels: travelsWithin(group, trace, travelsAfter, local, numbers),
    starts: startsWithin(group, starts, local, numbers),
    wanted: group.wanted.map((i) => {
      const wanted = itemAt(question.wanted, i);
      const { contour, kept, fit = 0 } = wanted;
      const own = ownLimits(wanted, question, trace.passes);
      numbers.push(kept === 'die' ? -1.5 : -2.5, nanometre(fit), contour.segments.length);
      if (own !== undefined) numbers.push(-11.5, own.tolerance, own.allowed, ...own.due);
      return { contour: local.contour(contour), kept, fit: nanometre(fit), own };
    }),
    holes: group.holes.map((i) => {
      const { at, diameter } = itemAt(question.holes, i);
      numbers.push(-3.5, diameter);
      return { at: local.point(at), diameter };
    }),
    open: group.open.map((i) => {
      const wanted = itemAt(question.wantedOpen ?? [], i);
      const { path, kept } = wanted;
      const own = ownLimits(wanted, question, trace.passes);
      numbers.push(KEPT_NUMBER[kept], path.segments.length);
      if (own !== undefined) numbers.push(-12.5, own.tolerance, own.allowed, ...own.due);
      return { path: local.path(path), kept, own };
    }),
    block: group.atEdge ? local.contour(question.block) : undefined,
    wireRadius: question.wireDiameter / 2,
    tolerance: question.tolerance,
    allowed: allowedTo(question),
    insideCorner: question.insideCorner,
    passes: trace.passes,
    tabMetal: { height: question.height, density: question.density, strength: question.strength ?? UNKNOWN_STRENGTH },
  };
  return { work, origin, fingerprint: Float64Array.from(numbers) };
};

const ownLimits = (wanted: Wanted | WantedOpen, question: ProofQuestion, passes: readonly Pass[]): OwnLimits | undefined => {
  if (wanted.tolerance === undefined && wanted.passes === undefined) return undefined;
  const asked = ownTolerance(question, wanted);
  const due = passes.flatMap(({ setting }, n) => (wanted.passes?.includes(setting) === false ? [] : [n]));
  return { tolerance: asked.tolerance, allowed: allowedTo(asked), due };
};

const KEPT_NUMBER = { left: -7.5, right: -8.5, slit: -9.5 } as const;

/** Where what is wanted of a group begins: for groups that no cut comes near. */
export const firstWanted = (group: Group, { wanted, wantedOpen = [] }: ProofQuestion): Point =>
  (wanted[group.wanted[0] ?? -1]?.contour ?? itemAt(wantedOpen, group.open[0] ?? -1).path).segments[0].from;

const cutsOf = (group: Group, cuts: readonly SweptCut[], local: Localiser, numbers: number[]): readonly WorkCut[] => {
  let run = -1;
  return cuts.map((cut, i) => {
    const before = cuts[i - 1];
    if (before?.run !== cut.run) run += 1;
    const follows = before !== undefined && before.run === cut.run && itemAt(group.cuts, i - 1) + 1 === itemAt(group.cuts, i);
    numbers.push(cut.radius, cut.energy.pass ?? -1, run, follows ? 1 : 0);
    return { segment: local.segment(cut.segment), radius: cut.radius, run, follows, energy: cut.energy };
  });
};

const travelsWithin = (
  group: Group,
  trace: Trace,
  travelsAfter: ReadonlyMap<number, number>,
  local: Localiser,
  numbers: number[],
): GroupWork['travels'] => {
  const travels: { after: number; segments: readonly Segment[] }[] = [];
  group.cuts.forEach((cut, i) => {
    const travel = trace.travels[travelsAfter.get(cut) ?? -1];
    if (travel === undefined || travel.rapids.length === 0) return;
    const stays = travel.after >= trace.cuts.length || group.cuts[i + 1] === travel.after;
    const rapids = stays ? travel.rapids : ledOut(travel);
    if (rapids.length === 0) return;
    numbers.push(-4.5, i);
    travels.push({ after: i, segments: rapids.map((r) => local.segment(r.segment)) });
  });
  return travels;
};

/** Rapids that lead the wire on before it may have been cut: back to the middle of an empty opening, say. */
const ledOut = ({ doings, rapids }: Travel): Travel['rapids'] => {
  const cut = doings.findIndex((d) => d === 'cut wire' || d === 'cut or not');
  return rapids.slice(0, (cut < 0 ? doings : doings.slice(0, cut)).filter((d) => typeof d === 'number').length);
};

const startsWithin = (group: Group, starts: Ways['starts'], local: Localiser, numbers: number[]): GroupWork['starts'] =>
  group.cuts.flatMap((c, cut) => {
    const way = starts.get(c);
    if (way === undefined) return [];
    numbers.push(-10.5, cut);
    return [{ cut, way: way.map((s) => local.segment(s)) }];
  });

interface Localiser {
  readonly point: (p: Point) => Point;
  readonly segment: (s: Segment) => Segment;
  readonly contour: (c: Contour) => Contour;
  readonly path: (p: Path) => Path;
}

/** Moves to the origin, rounds, and writes down every number it passes. */
const localiser = (origin: Point, numbers: number[]): Localiser => {
  const point = (p: Point): Point => {
    const q = { x: nanometre(p.x - origin.x), y: nanometre(p.y - origin.y) };
    numbers.push(q.x, q.y);
    return q;
  };
  const segment = (s: Segment): Segment => {
    if (s.kind === 'line') {
      numbers.push(-5.5);
      return { kind: 'line', from: point(s.from), to: point(s.to) };
    }
    const sweep = Math.round(s.sweep * 1e9) / 1e9;
    const radius = nanometre(s.radius);
    numbers.push(-6.5, sweep, radius);
    return { kind: 'arc', from: point(s.from), to: point(s.to), centre: point(s.centre), radius, sweep };
  };
  return {
    point,
    segment,
    contour: (c) => ({ closed: true, segments: mapFilled(c.segments, segment) }),
    path: (p) => ({ closed: false, segments: mapFilled(p.segments, segment) }),
  };
};

/** The added 0 turns a negative zero into a plain one, so that equal numbers have equal bits. */
const nanometre = (v: number): number => (Math.round(v * 1e6) + 0) / 1e6;

/** Remembers outcomes by the work they came from, compared number by number. */
export const memory = <T>() => {
  const held = new Map<number, { readonly fingerprint: Float64Array; readonly outcome: T }[]>();
  return (placed: PlacedWork, prove: (work: GroupWork) => T): T => {
    const hash = hashOf(placed.fingerprint);
    const candidates = held.get(hash) ?? [];
    const same = candidates.find((c) => equal(c.fingerprint, placed.fingerprint));
    if (same !== undefined) return same.outcome;
    const outcome = prove(placed.work);
    held.set(hash, [...candidates, { fingerprint: placed.fingerprint, outcome }]);
    return outcome;
  };
};

const hashOf = (numbers: Float64Array): number => {
  const words = new Int32Array(numbers.buffer);
  let hash = words.length;
  for (const word of words) hash = Math.imul(hash ^ word, 0x01000193) ^ (hash >>> 15);
  return hash;
};

const equal = (a: Float64Array, b: Float64Array): boolean => {
  if (a.length !== b.length) return false;
  for (let i = 0; i < a.length; i += 1) if (a[i] !== b[i]) return false;
  return true;
};
