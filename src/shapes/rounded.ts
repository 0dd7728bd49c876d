/** A polygon with rounded corners as one contour of lines and arcs. Lengths in mm. */
import { type Contour, contour } from '../geometry/contour.ts';
import { arc, line, type Point, point, type Segment } from '../geometry/segment.ts';

export interface RoundedCorner extends Point {
  /** 0 for a sharp one, as is anything below a millionth. */
  readonly radius: number;
}

export type Rounded = { readonly kind: 'rounded'; readonly contour: Contour } | { readonly kind: 'no room'; readonly corner: number };

/** Counter-clockwise corners; `no room` where two rounds would meet on the side between them, or one reaches past it. */
export const rounded = (corners: readonly RoundedCorner[]): Rounded => {
  const n = corners.length;
  const ends = corners.map((c, i) => endsOf(corners[(i + n - 1) % n] as Point, c, corners[(i + 1) % n] as Point));
  for (let i = 0; i < n; i += 1) {
    const [a, b] = [corners[i] as RoundedCorner, corners[(i + 1) % n] as RoundedCorner];
    const room = Math.hypot(b.x - a.x, b.y - a.y) - (ends[i]?.back ?? 0) - (ends[(i + 1) % n]?.back ?? 0);
    if (room < -1e-9) return { kind: 'no room', corner: i };
  }
  const segments: Segment[] = [];
  ends.forEach((end, i) => {
    if (end.centre !== undefined) segments.push(arc(end.from, end.to, end.centre, end.sweep));
    const next = ends[(i + 1) % n] as CornerEnds;
    if (Math.hypot(next.from.x - end.to.x, next.from.y - end.to.y) > 1e-9) segments.push(line(end.to, next.from));
  });
  return {
    kind: 'rounded',
    contour: contour(segments.map((s, i) => ({ ...s, from: (segments[(i + segments.length - 1) % segments.length] as Segment).to }))),
  };
};

interface CornerEnds {
  readonly from: Point;
  readonly to: Point;
  readonly centre?: Point;
  readonly sweep: number;
  /** How much of either side the round takes. */
  readonly back: number;
}

const endsOf = (before: Point, at: RoundedCorner, after: Point): CornerEnds => {
  const into = unit(before, at);
  const out = unit(at, after);
  const turn = Math.atan2(into.x * out.y - into.y * out.x, into.x * out.x + into.y * out.y);
  if (!(at.radius > 1e-6) || Math.abs(turn) < 1e-9) return { from: at, to: at, sweep: 0, back: 0 };
  const back = at.radius * Math.tan(Math.abs(turn) / 2);
  const from = point(at.x - back * into.x, at.y - back * into.y);
  const to = point(at.x + back * out.x, at.y + back * out.y);
  const side = Math.sign(turn);
  return { from, to, centre: point(from.x - side * at.radius * into.y, from.y + side * at.radius * into.x), sweep: turn, back };
};

const unit = (a: Point, b: Point): Point => {
  const size = Math.hypot(b.x - a.x, b.y - a.y);
  return point((b.x - a.x) / size, (b.y - a.y) / size);
};
