/** A spiral of some width as one contour: out along its outer side, round the end, back along its inner side. Lengths in mm. */
import type { Contour } from '../../geometry/contour.ts';
import { fitArcs } from '../../geometry/make/fit-arcs.ts';
import { selfCrossings } from '../../geometry/near/crossings.ts';
import { narrowestGap } from '../../geometry/near/narrowest.ts';
import { arc, distanceBetween, line, type Point, type Segment } from '../../geometry/segment.ts';
import { linked } from './lobes.ts';
import { besideAt, type SpiralLine, sideOf } from './spiral-lines.ts';

export type SpiralMade =
  | {
      readonly kind: 'drawn';
      readonly contour: Contour;
      readonly deviation: number;
      /** Where two turns come nearest to each other; none when no turn faces another. */
      readonly nearest?: { readonly distance: number; readonly from: Point; readonly to: Point } | undefined;
    }
  | { readonly kind: 'turns touch'; readonly at: Point }
  | { readonly kind: 'too many arcs' }
  /** The spiral ends inside of its eye. */
  | { readonly kind: 'all eye' };

/** Arcs at most: a spiral that needs more has a fit far below what can be cut, or hundreds of turns. */
const MOST = 10_000;

export interface SpiralForm {
  readonly half: number;
  readonly ends: 'round' | 'square';
  /** Radius of a round eye about the beginning of the middle line, larger than `half`. */
  readonly eye?: number | undefined;
}

export const spiralContour = (spiral: SpiralLine, { half, ends, eye }: SpiralForm, within: number, most = MOST): SpiralMade => {
  const from = (aside: number): SpiralLine | undefined => (eye === undefined ? spiral : beyondEye(spiral, aside, eye));
  const [out, back] = [from(-half), from(half)];
  if (out === undefined || back === undefined) return { kind: 'all eye' };
  const outer = fitArcs(sideOf(out, -half, 'outwards'), within, most);
  const inner = fitArcs(sideOf(back, half, 'inwards'), within, most);
  if (outer.kind !== 'fitted' || inner.kind !== 'fitted') return { kind: 'too many arcs' };
  const cap = (before: Segment, after: Segment, angle: number): Segment =>
    ends === 'round' ? arc(before.to, after.from, spiral.pointAt(angle), Math.PI) : line(before.to, after.from);
  const [first, last] = [outer.segments, inner.segments];
  const [begin, end] = [first[0] as Segment, last.at(-1) as Segment];
  const segments = [
    ...first,
    cap(first.at(-1) as Segment, last[0] as Segment, spiral.end),
    ...last,
    eye === undefined ? cap(end, begin, spiral.start) : eyeOf(end.to, begin.from, spiral.pointAt(spiral.start)),
  ];
  const contour = linked(segments);
  const crossing = selfCrossings(contour, 1e-6)[0];
  if (crossing !== undefined) return { kind: 'turns touch', at: crossing.at };
  const gap = narrowestGap(contour, 'outside');
  return {
    kind: 'drawn',
    contour,
    deviation: Math.max(outer.deviation, inner.deviation),
    nearest: gap.kind === 'gap' ? gap : undefined,
  };
};

/** The line from where its side comes out of the eye; none when it never does. */
const beyondEye = (spiral: SpiralLine, aside: number, eye: number): SpiralLine | undefined => {
  const middle = spiral.pointAt(spiral.start);
  const away = (angle: number): number => distanceBetween(besideAt(spiral, aside, angle), middle);
  const step =
    (spiral.end - spiral.start) / Math.max(2000, Math.ceil((20 * (spiral.end - spiral.start) * spiral.speedAt(spiral.end)) / eye));
  let within = spiral.start;
  while (away(within + step) < eye) {
    within += step;
    if (within + step >= spiral.end) return undefined;
  }
  let beyond = within + step;
  for (let i = 0; i < 60; i += 1) {
    const between = (within + beyond) / 2;
    if (away(between) < eye) within = between;
    else beyond = between;
  }
  return { ...spiral, start: beyond };
};

/** Counter-clockwise round the back of the eye. */
const eyeOf = (from: Point, to: Point, middle: Point): Segment => {
  const turn = Math.atan2(to.y - middle.y, to.x - middle.x) - Math.atan2(from.y - middle.y, from.x - middle.x);
  return arc(from, to, middle, turn > 0 ? turn : turn + 2 * Math.PI);
};
