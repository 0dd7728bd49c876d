/** A spiral of some width as one contour: out along its outer side, round the end, back along its inner side. Lengths in mm. */
import type { Contour } from '../../geometry/contour.ts';
import { selfCrossings } from '../../geometry/crossings.ts';
import { fitArcs } from '../../geometry/fit.ts';
import { narrowestGap } from '../../geometry/narrowest.ts';
import { arc, line, type Point, type Segment } from '../../geometry/segment.ts';
import { linked } from './lobes.ts';
import { type SpiralLine, sideOf } from './spiral-lines.ts';

export type SpiralMade =
  | {
      readonly kind: 'drawn';
      readonly contour: Contour;
      readonly deviation: number;
      /** Where two turns come nearest to each other; none when no turn faces another. */
      readonly nearest?: { readonly distance: number; readonly from: Point; readonly to: Point };
    }
  | { readonly kind: 'turns touch'; readonly at: Point }
  | { readonly kind: 'too many arcs' };

/** Arcs at most: a spiral that needs more has a fit far below what can be cut, or hundreds of turns. */
const MOST = 10_000;

export const spiralContour = (spiral: SpiralLine, half: number, ends: 'round' | 'square', within: number, most = MOST): SpiralMade => {
  const outer = fitArcs(sideOf(spiral, -half, 'outwards'), within, most);
  const inner = fitArcs(sideOf(spiral, half, 'inwards'), within, most);
  if (outer.kind !== 'fitted' || inner.kind !== 'fitted') return { kind: 'too many arcs' };
  const cap = (from: Segment, to: Segment, angle: number): Segment =>
    ends === 'round' ? arc(from.to, to.from, spiral.pointAt(angle), Math.PI) : line(from.to, to.from);
  const [first, last] = [outer.segments, inner.segments];
  const segments = [
    ...first,
    cap(first.at(-1) as Segment, last[0] as Segment, spiral.end),
    ...last,
    cap(last.at(-1) as Segment, first[0] as Segment, spiral.start),
  ];
  const contour = linked(segments);
  const crossing = selfCrossings(contour, 1e-6)[0];
  if (crossing !== undefined) return { kind: 'turns touch', at: crossing.at };
  const gap = narrowestGap(contour, 'outside');
  return {
    kind: 'drawn',
    contour,
    deviation: Math.max(outer.deviation, inner.deviation),
    ...(gap.kind === 'gap' ? { nearest: gap } : {}),
  };
};
