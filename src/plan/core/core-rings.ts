/**
 * The nested paths that cut an opening without a core: rings parallel to the rough cut, from it inward until nothing is
 * left that the wire has not taken.
 *
 * Every place inside a ring is as far from it as the levels are apart, so steps of half the kerf leave nothing standing anywhere. Wider
 * steps do so too as long as no place between two rings is farther from the inner one than half the kerf, which is looked at: sharp
 * corners and places where a ring inside falls away get the narrower step.
 */
import { boundsOfChain, perimeterOf } from '../../geometry/area.ts';
import type { Contour } from '../../geometry/contour.ts';
import { pointAt } from '../../geometry/measure.ts';
import { distanceIn, type Lookup, lookupOfSegments } from '../../geometry/near/lookup.ts';
import { offsetContour } from '../../geometry/offset/offset.ts';
import type { Segment } from '../../geometry/segment.ts';

/** One path round, of the wire's centre, with those inside it; counter-clockwise. */
export interface Ring {
  readonly contour: Contour;
  /** mm from this ring to those inside it: as much of new metal the wire takes here. The whole kerf where there is none inside. */
  readonly bite: number;
  readonly inside: readonly Ring[];
}

export type Rings =
  | { readonly kind: 'rings'; readonly outermost: Ring; readonly count: number }
  | { readonly kind: 'untraceable' | 'too many' };

/** Shares of the kerf that a step may have, the widest first. Common practice, no source: about 0.8. */
const STEPS = [0.8, 0.7, 0.6] as const;

/** Overlap beyond what is exactly needed, on each side, as a share of the kerf: the program rounds, and a gap is never quite the same. */
const SPARE = 0.03;

/** Metal thinner than twice this share of the kerf between two sides of a ring is nothing: the sparks of either side take it. */
const NOTHING = 0.01;

/** Openings that take more rings than this are not cut without a core by anybody. */
const MOST = 2000;

/** @param outermost where the wire's centre runs in the rough cut. @param kerf its width, mm. */
export const ringsWithin = (outermost: Contour, kerf: number): Rings => {
  const budget = { left: MOST };
  const ring = ringOf(outermost, kerf, budget);
  if (ring === 'untraceable') return { kind: budget.left < 0 ? 'too many' : 'untraceable' };
  return { kind: 'rings', outermost: ring, count: MOST - budget.left };
};

const ringOf = (contour: Contour, kerf: number, budget: { left: number }): Ring | 'untraceable' => {
  budget.left -= 1;
  if (budget.left < 0) return 'untraceable';
  const beyond = shrunk(contour, (0.5 - NOTHING) * kerf);
  if (beyond === 'untraceable') return beyond;
  if (beyond.length === 0) return { contour, bite: kerf, inside: [] };
  const step = stepFrom(contour, kerf);
  if (step === 'untraceable') return step;
  const inside: Ring[] = [];
  for (const inner of step.contours) {
    const ring = ringOf(inner, kerf, budget);
    if (ring === 'untraceable') return ring;
    inside.push(ring);
  }
  return { contour, bite: step.bite, inside };
};

interface Step {
  readonly bite: number;
  readonly contours: readonly Contour[];
}

/** The widest step that leaves nothing between the ring and those inside it. */
const stepFrom = (contour: Contour, kerf: number): Step | 'untraceable' => {
  const half = (0.5 - SPARE) * kerf;
  const untouched = shrunk(contour, half);
  if (untouched === 'untraceable') return untouched;
  for (const share of STEPS) {
    const contours = shrunk(contour, share * kerf);
    // A ring inside that comes apart, or falls away, leaves a neck that only a narrower step is sure to take.
    if (contours === 'untraceable' || contours.length !== untouched.length) continue;
    const reached = lookupOfSegments(contours.flatMap((c) => c.segments));
    if (untouched.every((edge) => isReached(edge, reached, half))) return { bite: share * kerf, contours };
  }
  return { bite: half, contours: untouched };
};

/** Looks at every end and a few places between: farthest from the ring inside are corners and the tips of fingers. */
const isReached = (edge: Contour, ring: Lookup, half: number): boolean =>
  edge.segments.every((s) => placesOn(s).every((share) => distanceIn(ring, pointAt(s, share)) <= half));

const placesOn = (s: Segment): readonly number[] => (s.kind === 'line' ? [0, 0.5] : [0, 0.25, 0.5, 0.75]);

/** Parallel inside; what is hardly a place is none. */
const shrunk = (contour: Contour, by: number): readonly Contour[] | 'untraceable' => {
  const outcome = offsetContour(contour, by);
  if (outcome.kind === 'vanished') return [];
  if (outcome.kind !== 'offset') return 'untraceable';
  return outcome.contours.filter(isAnything);
};

/** A ring of less than this all round, mm, is a spot; the ring around it takes that. */
const LEAST = 0.01;

const isAnything = (c: Contour): boolean => {
  if (perimeterOf(c) >= 2 * LEAST) return true;
  const { minX, minY, maxX, maxY } = boundsOfChain(c);
  return Math.hypot(maxX - minX, maxY - minY) >= LEAST;
};
