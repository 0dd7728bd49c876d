/** Half a tooth as a whole ring: mirrored, turned round the middle and joined. Lengths in mm, angles in rad. */
import { type Contour, contour } from '../../geometry/contour.ts';
import { line, type Point, point, type Segment } from '../../geometry/segment.ts';

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

export const turned = (s: Segment, angle: number): Segment => {
  if (angle === 0) return s;
  const [c, n] = [Math.cos(angle), Math.sin(angle)];
  const turn = ({ x, y }: Point): Point => point(c * x - n * y, n * x + c * y);
  return s.kind === 'line' ? line(turn(s.from), turn(s.to)) : { ...s, from: turn(s.from), to: turn(s.to), centre: turn(s.centre) };
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

/** Each begins with the very numbers that the one before ends with. */
export const linked = (segments: readonly Segment[], closed = true): readonly Segment[] => {
  const n = segments.length;
  return segments.map((s, i) => {
    const before = i > 0 || closed ? segments[(i + n - 1) % n] : undefined;
    return before === undefined ? s : { ...s, from: before.to };
  });
};
