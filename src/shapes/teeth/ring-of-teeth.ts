/** Half a tooth as a whole ring: mirrored, turned round the middle and joined. Lengths in mm, angles in rad. */
import { type Contour, contour } from '../../geometry/contour.ts';
import { line, type Point, point, type Segment } from '../../geometry/segment.ts';
import { linked, turned } from '../linked.ts';

/**
 * A counter-clockwise contour whose first tooth has its middle on the X axis.
 *
 * @param half from the middle of the tip, on the X axis, over the flank to the middle of the space.
 */
export const ringOf = (half: readonly Segment[], teeth: number): Contour => {
  const pitch = (2 * Math.PI) / teeth;
  const mirrored = half.map(mirror).reverse();
  const one = [...mirrored, ...half].filter((s) => s.kind === 'arc' || s.from.x !== s.to.x || s.from.y !== s.to.y);
  const segments = Array.from({ length: teeth }, (_, i) => one.map((s) => turned(s, i * pitch))).flat();
  return contour(linked(inOne(segments)));
};

/** About the X axis, run the other way round, so that a half tooth goes on into its mirror image. */
const mirror = (s: Segment): Segment => {
  const over = ({ x, y }: Point): Point => point(x, -y);
  return s.kind === 'line' ? line(over(s.to), over(s.from)) : { ...s, from: over(s.to), to: over(s.from), centre: over(s.centre) };
};

/** Halves of tip and root lands, which lie on circles about the middle, become one arc each. */
const inOne = (segments: readonly Segment[]): readonly Segment[] => {
  const joined: Segment[] = [];
  for (const s of segments) {
    const before = joined.at(-1);
    if (before !== undefined && sameLand(before, s)) joined[joined.length - 1] = landOf(before, s);
    else joined.push(s);
  }
  const [first, last] = [joined[0], joined.at(-1)];
  if (joined.length < 3 || first === undefined || last === undefined || !sameLand(last, first)) return joined;
  return [...joined.slice(1, -1), landOf(last, first)];
};

const sameLand = (a: Segment, b: Segment): boolean =>
  a.kind === 'arc' && b.kind === 'arc' && isMiddle(a.centre) && isMiddle(b.centre) && Math.abs(a.radius - b.radius) < 1e-9;

const isMiddle = ({ x, y }: Point): boolean => Math.hypot(x, y) < 1e-12;

const landOf = (a: Segment, b: Segment): Segment =>
  a.kind === 'arc' && b.kind === 'arc' ? { ...a, to: b.to, sweep: a.sweep + b.sweep } : a;
