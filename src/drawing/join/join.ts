/** From pieces to loops and chains: the stages in their order, and the list of everything that was changed on the way. */

import { perimeterOf } from '../../geometry/area.ts';
import type { Path } from '../../geometry/contour.ts';
import { path } from '../../geometry/contour.ts';
import { selfCrossings } from '../../geometry/near/crossings.ts';
import type { Point } from '../../geometry/segment.ts';
import { firstItem, isFilled, lastItem, type NonEmpty, sideBySide } from '../../sequence/sequence.ts';
import type { SingleLoops } from '../piece/doubled.ts';
import { dropDoubledLoops } from '../piece/doubled.ts';
import type { Doubled } from '../piece/doubled-pieces.ts';
import type { FoundLoop } from '../piece/loop-found.ts';
import { deviationOf, foundLoop } from '../piece/loop-found.ts';
import { dropOverlaps } from '../piece/overlap.ts';
import type { DrawnPiece, Step } from '../piece/piece.ts';
import { layerOf, segmentsOf } from '../piece/piece.ts';
import type { Tolerances } from '../piece/tolerances.ts';
import { dropTwins } from '../piece/twins.ts';
import { spend, type WorkLimit } from '../piece/work-limit.ts';
import { dropZeroLength } from '../piece/zero-length.ts';
import { sortEntities } from './closed-as-drawn.ts';
import { type LayersApart, separatedLayers } from './layers-apart.ts';
import type { Branch, JoinedLoose, Rounded } from './loose.ts';
import { joinLoose } from './loose.ts';
import type { Gap } from './nodes.ts';
import { endOf, startOf, stripChains } from './strip.ts';

export interface FoundChain {
  readonly path: Path;
  readonly layer: string;
  readonly hidden: boolean;
  readonly length: number;
  readonly deviation: number;
  readonly from: Point;
  readonly to: Point;
  /** Those of its ends that lie on a closed loop. */
  readonly onLoop: readonly Point[];
}

/** What was changed or met while joining. */
export interface JoinEvents {
  readonly zeroLength: readonly { readonly at: Point; readonly size: number }[];
  readonly doubledEdges: readonly Doubled[];
  readonly doubledLoops: SingleLoops['dropped'];
  readonly gaps: readonly Gap[];
  /** Ends united that differ by rounding alone: how many places, and the worst. */
  readonly rounded: Rounded;
  readonly branches: readonly Branch[];
  /** Layers that were joined by themselves. */
  readonly apart: readonly LayersApart[];
  readonly spurs: readonly FoundChain[];
  readonly flat: readonly FoundLoop[];
  readonly partlyHidden: readonly FoundLoop[];
}

export interface Joined {
  readonly loops: readonly FoundLoop[];
  readonly chains: readonly FoundChain[];
  readonly events: JoinEvents;
}

/** One visibility's share of the work: what is visible is joined among itself, what is hidden likewise. */
interface Part {
  readonly loops: readonly FoundLoop[];
  readonly chains: readonly (readonly Step[])[];
  readonly events: Pick<JoinEvents, 'doubledEdges' | 'gaps' | 'rounded' | 'branches' | 'apart'>;
}

export const joinPieces = (pieces: readonly DrawnPiece[], tolerances: Tolerances, work: WorkLimit): Joined => {
  const cleaned = dropZeroLength(pieces, tolerances.coincident);
  const seen = joinPart(
    cleaned.pieces.filter((p) => !p.hidden),
    tolerances,
    work,
  );
  const unseen = joinPart(
    cleaned.pieces.filter((p) => p.hidden),
    tolerances,
    work,
  );
  const mixed = joinMixed(seen.chains, unseen.chains, tolerances, work);
  const all = [...seen.loops, ...unseen.loops, ...mixed.loops];
  const flat = new Set(all.filter((loop) => isFlat(loop, work)));
  const single = dropDoubledLoops(
    all.filter((l) => !flat.has(l)),
    tolerances.sameLoop,
    work,
  );
  const stripped = stripChains(
    mixed.chains,
    single.loops.map((l) => l.contour),
    tolerances.same,
  );
  return {
    loops: single.loops,
    chains: sideBySide(stripped.chains, stripped.ending).map(([steps, onLoop]) => foundChain(steps, onLoop)),
    events: {
      zeroLength: cleaned.dropped,
      doubledEdges: [...seen.events.doubledEdges, ...unseen.events.doubledEdges, ...stripped.doubled],
      doubledLoops: single.dropped,
      gaps: [...seen.events.gaps, ...unseen.events.gaps, ...mixed.gaps],
      rounded: worse(seen.events.rounded, unseen.events.rounded),
      branches: [...seen.events.branches, ...unseen.events.branches],
      apart: [...seen.events.apart, ...unseen.events.apart],
      spurs: stripped.spurs.map((steps) => foundChain(steps, [])),
      flat: [...flat],
      partlyHidden: mixed.loops,
    },
  };
};

const joinPart = (pieces: readonly DrawnPiece[], tolerances: Tolerances, work: WorkLimit): Part => {
  const { closed, loose } = sortEntities(pieces, tolerances.coincident);
  const joined = joinedByLayers(loose, (some) => joinSingle(some, tolerances, work));
  return {
    loops: [
      ...closed.map((entity) => foundLoop(entity.steps, firstItem(entity.steps).piece.hidden)),
      ...joined.groups.flatMap((g) => g.loops),
    ],
    chains: joined.groups.flatMap((g) => g.chains),
    events: {
      doubledEdges: joined.groups.flatMap((g) => g.doubled),
      gaps: [...closed.flatMap((entity) => (entity.closing ? [entity.closing] : [])), ...joined.groups.flatMap((g) => g.gaps)],
      rounded: joined.groups.map((g) => g.rounded).reduce(worse),
      branches: joined.groups.flatMap((g) => g.branches),
      apart: joined.apart,
    },
  };
};

interface JoinedSingle extends JoinedLoose {
  readonly doubled: readonly Doubled[];
}

/** All of it together, or layers by themselves where that makes whole loops. */
const joinedByLayers = (
  loose: readonly DrawnPiece[],
  join: (some: readonly DrawnPiece[]) => JoinedSingle,
): { readonly groups: NonEmpty<JoinedSingle>; readonly apart: readonly LayersApart[] } => {
  const together = join(loose);
  const separated = separatedLayers(loose, together, join);
  const groups = separated?.groups.map(join) ?? [];
  return separated !== undefined && isFilled(groups) ? { groups, apart: [separated.apart] } : { groups: [together], apart: [] };
};

/** Loose pieces joined, every stretch of them once. */
const joinSingle = (loose: readonly DrawnPiece[], tolerances: Tolerances, work: WorkLimit): JoinedSingle => {
  const twins = dropTwins(loose, 2 * tolerances.fit + tolerances.coincident, work);
  const single = dropOverlaps(twins.pieces, tolerances.same, work);
  return { ...joinLoose(single.pieces, tolerances, work), doubled: [...twins.doubled, ...single.doubled] };
};

/** Open chains of both visibilities together: what closes only so is told, and the rest stays as it was. */
const joinMixed = (
  seen: readonly (readonly Step[])[],
  unseen: readonly (readonly Step[])[],
  tolerances: Tolerances,
  work: WorkLimit,
): { loops: readonly FoundLoop[]; chains: readonly (readonly Step[])[]; gaps: readonly Gap[] } => {
  if (seen.length === 0 || unseen.length === 0) return { loops: [], chains: [...seen, ...unseen], gaps: [] };
  const joined = joinLoose(
    [...seen, ...unseen].flatMap((chain) => chain.map((step) => step.piece)),
    tolerances,
    work,
  );
  if (joined.loops.length === 0) return { loops: [], chains: [...seen, ...unseen], gaps: [] };
  return joined;
};

const worse = (a: Rounded, b: Rounded): Rounded => ({ ...(a.worst >= b.worst ? a : b), places: a.places + b.places });

/** A loop that encloses nothing: not one whose parts cancel out because it crosses itself. */
const isFlat = (loop: FoundLoop, work: WorkLimit): boolean =>
  Math.abs(loop.area) <= FLAT * loop.perimeter &&
  !selfCrossings(loop.contour, FLAT, { most: 1, looked: (pairs) => spend(work, pairs) }).some((c) => c.contact.kind === 'crossing');

/** mm: half the mean width below which a loop is a line drawn there and back. */
const FLAT = 1e-5;

const foundChain = (steps: readonly Step[], onLoop: readonly Point[]): FoundChain => {
  const whole = path(segmentsOf(steps));
  const first = firstItem(steps);
  return {
    path: whole,
    layer: layerOf(steps.map((s) => s.piece)),
    hidden: steps.every((s) => s.piece.hidden && s.piece.construction === undefined),
    length: perimeterOf(whole),
    deviation: deviationOf(steps),
    from: startOf(first),
    to: endOf(lastItem(steps)),
    onLoop,
  };
};
