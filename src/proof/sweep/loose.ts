/** The pieces that come loose, in program order: how heavy, whose they are, and whether somebody held them. */

import type { Point } from '../../geometry/segment.ts';
import { firstFrom, itemAt } from '../../sequence/sequence.ts';
import type { LooseFinding, ProofQuestion, WantedOpen } from '../proof.ts';
import { firstWanted } from './group-alone.ts';
import { boundsOfOutline, isWithin, type Outline, placedAt } from './outline.ts';
import type { GroupOutcome, Proven } from './proven-group.ts';
import { innermostOf, STANDING_ON_A_TAB } from './release.ts';
import type { WeakTab } from './tab.ts';
import type { Stop, Trace } from './wire-doings.ts';
import { tendsToWork } from './wire-doings.ts';

export interface Loose {
  readonly finding: LooseFinding;
  /** The freeing cut, in the list of all cuts. */
  readonly cut: number;
  /** Groups that lie within the piece. */
  readonly within: readonly number[];
  readonly group: number;
  /** Its edge as it fell, measured from the origin. */
  readonly outline: Outline;
  readonly origin: Point;
  /** What it hung by before, where that is too little to carry it. */
  readonly weak?: WeakTab | undefined;
}

/** All loose pieces, ordered by the cut that frees them. */
export const looseOf = (proven: readonly Proven[], trace: Trace, question: ProofQuestion): readonly Loose[] => {
  const groups = byX(proven.map((p) => ({ at: firstPlace(p, trace, question) })));
  const holes = byX(question.holes);
  const stops = stopsByGroup(proven, trace);
  const loose = proven.flatMap((p, g) =>
    p.outcome.pieces.map((piece): Loose => {
      const cut = itemAt(p.group.cuts, piece.cut);
      const at = moved(piece.at, p.origin);
      const within = insideOf(piece, p.origin, groups).filter((n) => n !== g);
      const inner = within.reduce((sum, n) => sum + removedBefore(itemAt(proven, n), cut), 0);
      const drilled = insideOf(piece, p.origin, holes).filter((h) => !touched(h, [p, ...within.map((n) => itemAt(proven, n))]));
      const bored = drilled.reduce((sum, h) => sum + (Math.PI * itemAt(question.holes, h).diameter ** 2) / 4, 0);
      const area = Math.max(piece.area - inner - bored, 0);
      const owner = piece.inside === undefined ? innermostOf(question.wanted, at) : p.group.wanted[piece.inside];
      const line =
        owner === undefined && piece.beside !== undefined ? question.wantedOpen?.[itemAt(p.group.open, piece.beside)] : undefined;
      const finding: LooseFinding = {
        loop: owner === undefined ? line?.chain : itemAt(question.wanted, owner).loop,
        block: itemAt(trace.cuts, cut).block,
        at,
        area,
        mass: area * question.height * question.density * 1e-6,
        role: roleOf(owner, line, question),
        held: isHeld(p, piece, stops.get(g) ?? [], trace),
        outline: placedAt(piece.outline, p.origin),
      };
      return { finding, cut, within, group: g, outline: piece.outline, origin: p.origin, weak: weakAt(piece, p.origin) };
    }),
  );
  return withoutPartsWithin(
    loose.sort((a, b) => a.cut - b.cut),
    question,
  );
};

/** Parts that came loose before stand within a piece and are none of it: a ring does not weigh what its island does. In order of the cuts. */
const withoutPartsWithin = (loose: readonly Loose[], { height, density }: ProofQuestion): readonly Loose[] => {
  const parts = new Map<number, number>();
  return loose.map((l) => {
    const taken = l.within.reduce((sum, g) => sum + (parts.get(g) ?? 0), 0);
    const area = Math.max(l.finding.area - taken, 0);
    if (l.finding.role === 'part') parts.set(l.group, (parts.get(l.group) ?? 0) + area);
    return taken === 0 ? l : { ...l, finding: { ...l.finding, area, mass: area * height * density * 1e-6 } };
  });
};

const weakAt = ({ weak }: RememberedPiece, origin: Point): WeakTab | undefined => weak && { ...weak, at: moved(weak.at, origin) };

const roleOf = (owner: number | undefined, line: WantedOpen | undefined, question: ProofQuestion): LooseFinding['role'] => {
  if (owner !== undefined) return itemAt(question.wanted, owner).kept === 'punch' ? 'part' : 'slug';
  return line === undefined ? 'scrap' : 'part';
};

type RememberedPiece = GroupOutcome['pieces'][number];

/**
 * A stop counts when the wire stands in this group, after the last run that took metal there and before the run that frees
 * the piece, and when the piece then stands on a tab. One that is for the wire or a condition holds nothing.
 */
const isHeld = (p: Proven, piece: RememberedPiece, stops: readonly Stop[], trace: Trace): boolean => {
  if (piece.standing < STANDING_ON_A_TAB) return false;
  const { runs, fresh } = p.outcome;
  const freeing = itemAt(runs, piece.cut);
  const end = actionOf(p, trace, runs.indexOf(freeing));
  for (let run = freeing - 1; run >= 0; run -= 1) {
    const start = actionOf(p, trace, runs.lastIndexOf(run));
    if (stops.some((s) => s.action > start && s.action < end && tendsToWork(s))) return true;
    if (fresh[run] === true) return false;
  }
  return false;
};

const actionOf = (p: Proven, trace: Trace, cut: number): number => itemAt(trace.cuts, itemAt(p.group.cuts, cut)).action;

/** A stop belongs to the group that the wire has just cut in, or will cut in next, unless it travels in between. */
const stopsByGroup = (proven: readonly Proven[], trace: Trace): ReadonlyMap<number, readonly Stop[]> => {
  const groupOfCut = new Int32Array(trace.cuts.length).fill(-1);
  proven.forEach((p, g) => {
    for (const c of p.group.cuts) groupOfCut[c] = g;
  });
  const stops = new Map<number, Stop[]>();
  for (const stop of trace.stops) {
    const groups = new Set<number>();
    if (!stop.travelBefore && stop.before >= 0) groups.add(itemAt(groupOfCut, stop.before));
    if (!stop.travelAfter && stop.after < trace.cuts.length) groups.add(itemAt(groupOfCut, stop.after));
    for (const g of groups) stops.set(g, [...(stops.get(g) ?? []), stop]);
  }
  return stops;
};

interface NumberedPlace {
  readonly index: number;
  readonly at: Point;
}

const byX = (things: readonly { readonly at: Point }[]): readonly NumberedPlace[] =>
  things.map(({ at }, index) => ({ index, at })).sort((a, b) => a.at.x - b.at.x);

const firstPlace = (p: Proven, trace: Trace, question: ProofQuestion): Point => {
  const cut = p.group.cuts[0];
  return cut === undefined ? firstWanted(p.group, question) : itemAt(trace.cuts, cut).segment.from;
};

/** Which of the things, sorted by x, lie within a piece, and not on an island in an opening of it. */
const insideOf = (
  { outline, openings }: Pick<RememberedPiece, 'outline' | 'openings'>,
  origin: Point,
  places: readonly NumberedPlace[],
): readonly number[] => {
  const { minX, minY, maxX, maxY } = boundsOfOutline(outline);
  const found: number[] = [];
  for (let i = firstFrom(places, ({ at }) => at.x >= minX + origin.x); i < places.length; i += 1) {
    const { index, at } = itemAt(places, i);
    if (at.x > maxX + origin.x) break;
    const [x, y] = [at.x - origin.x, at.y - origin.y];
    if (y >= minY && y <= maxY && isWithin(outline, x, y) && !openings.some((o) => isWithin(o, x, y))) found.push(index);
  }
  return found;
};

/** mm² that a group within the piece had lost when the given cut was made. */
const removedBefore = (p: Proven, cut: number): number => {
  let area = 0;
  for (const r of p.outcome.removed) if (itemAt(p.group.cuts, r.cut) <= cut) area = r.area;
  return area;
};

/** A hole that cuts have run into is counted with its group. */
const touched = (hole: number, groups: readonly Proven[]): boolean =>
  groups.some((p) => p.group.cuts.length > 0 && p.group.holes.includes(hole));

export const moved = (p: Point, by: Point): Point => ({ x: p.x + by.x, y: p.y + by.y });
