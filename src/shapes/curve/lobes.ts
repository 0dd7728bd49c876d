/** Half a lobe, fitted once, mirrored and copied round: so all lobes are alike, and each is alike to both sides. */
import { type Contour, contour } from '../../geometry/contour.ts';
import { reverse } from '../../geometry/cut.ts';
import { fitArcs } from '../../geometry/make/fit-arcs.ts';
import type { FitCurve } from '../../geometry/make/fit-curve.ts';
import type { Segment } from '../../geometry/segment.ts';
import { mirroring, rotation, type Similarity, transformSegment } from '../../geometry/transform.ts';

export type Lobed = { readonly kind: 'lobed'; readonly contour: Contour; readonly deviation: number } | { readonly kind: 'not fitted' };

/** `half` goes counter-clockwise from the X axis to the ray at half a lobe's angle, and meets both squarely. */
export const lobed = (half: FitCurve, lobes: number, within: number): Lobed => {
  const fitted = fitArcs(half, within);
  if (fitted.kind !== 'fitted') return { kind: 'not fitted' };
  const back = fitted.segments.map((s) => reverse(transformSegment(mirroring(Math.PI / lobes), s))).toReversed();
  return { kind: 'lobed', contour: copiedRound([...fitted.segments, ...back], lobes), deviation: fitted.deviation };
};

/** A piece of contour copied round the middle, its ends joined to the bit. */
export const copiedRound = (one: readonly Segment[], times: number): Contour => {
  const turns: readonly Similarity[] = Array.from({ length: times }, (_, i) => rotation((2 * Math.PI * i) / times));
  return linked(turns.flatMap((turn) => one.map((s) => transformSegment(turn, s))));
};

/** Each segment starts with the very numbers that the one before ends with. */
export const linked = (segments: readonly Segment[]): Contour =>
  contour(segments.map((s, i) => ({ ...s, from: (segments[(i + segments.length - 1) % segments.length] as Segment).to })));
