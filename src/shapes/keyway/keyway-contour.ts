/** The bore of a hub with its keyways as one contour of lines and arcs. mm, rad. */
import { type Contour, contour } from '../../geometry/contour.ts';
import { arc, line, type Point, point, type Segment } from '../../geometry/segment.ts';
import { polar, spun } from '../polar.ts';

/** Of the bore its radius; of a keyway half its width, its top from the middle, and the radius in its corners. */
export interface KeywayForm {
  readonly radius: number;
  readonly half: number;
  readonly top: number;
  readonly corner: number;
}

/** Why it cannot be drawn: the corners have no room across or up the keyway, or two keyways meet. */
export const roomFor = ({ radius, half, top, corner }: KeywayForm): boolean =>
  half < radius && corner <= half && corner <= top - Math.sqrt(radius * radius - half * half);

/** Farthest place of a keyway from the middle. */
export const reachOf = ({ half, top, corner }: KeywayForm): number => Math.hypot(top - corner, half - corner) + corner;

/** Counter-clockwise; the keyways point at angles from X. */
export const boreWith = ({ radius, half, top, corner }: KeywayForm, spans: readonly number[]): Contour => {
  const foot = Math.asin(half / radius);
  const segments = spans.flatMap((turn, i): Segment[] => {
    const at = (x: number, y: number): Point => spun(point(x, y), turn);
    const next = (spans[i + 1] ?? (spans[0] as number) + 2 * Math.PI) - foot;
    const [from, to] = [polar(radius, turn + foot), polar(radius, next)];
    const into = polar(radius, turn - foot);
    const [low, high] = [at(top - corner, -half), at(top - corner, half)];
    const crest = corner > 0 ? [at(top, -half + corner), at(top, half - corner)] : [at(top, -half), at(top, half)];
    const [a, b] = crest as [Point, Point];
    return [
      line(into, corner > 0 ? low : a),
      ...(corner > 0 ? [arc(low, a, at(top - corner, -half + corner), Math.PI / 2)] : []),
      ...(half - corner > 1e-12 ? [line(a, b)] : []),
      ...(corner > 0 ? [arc(b, high, at(top - corner, half - corner), Math.PI / 2)] : []),
      line(corner > 0 ? high : b, from),
      arc(from, to, point(0, 0), next - turn - foot),
    ];
  });
  return contour(segments.map((s, i) => ({ ...s, from: (segments[(i + segments.length - 1) % segments.length] as Segment).to })));
};
