/** Closed lines kept as plain numbers, two to a point, since a plate of many openings has hundreds of thousands of such points: `!` stands where one is read. */
import type { Path64 } from 'clipper2-ts';
import type { Bounds } from '../../geometry/measure.ts';
import type { Point } from '../../geometry/segment.ts';
import type { PlacedOutline } from '../proof.ts';
import { UNITS_PER_MM } from './sweep.ts';

/** x and y of each point in turn, mm. */
export type Outline = Float64Array;

/** A loop in mm without those points that lie within 2 µm of the line between their neighbours that stay. */
export const outlineOf = (loop: Path64): Outline => {
  const kept: number[] = [loop[0]!.x / UNITS_PER_MM, loop[0]!.y / UNITS_PER_MM];
  let from = 0;
  for (let i = 2; i <= loop.length; i += 1) {
    let straight = true;
    for (let k = from + 1; k < i && straight; k += 1) straight = offLine(loop, k, from, i % loop.length) < 2e-3;
    if (straight) continue;
    kept.push(loop[i - 1]!.x / UNITS_PER_MM, loop[i - 1]!.y / UNITS_PER_MM);
    from = i - 1;
  }
  return Float64Array.from(kept);
};

/** mm from point `k` of a loop to the line through its points `a` and `b`. */
const offLine = (loop: Path64, k: number, a: number, b: number): number => {
  const x = loop[a]!.x / UNITS_PER_MM;
  const y = loop[a]!.y / UNITS_PER_MM;
  const alongX = loop[b]!.x / UNITS_PER_MM - x;
  const alongY = loop[b]!.y / UNITS_PER_MM - y;
  const toX = loop[k]!.x / UNITS_PER_MM - x;
  const toY = loop[k]!.y / UNITS_PER_MM - y;
  const length = Math.hypot(alongX, alongY);
  return length === 0 ? Math.hypot(toX, toY) : Math.abs(alongX * toY - alongY * toX) / length;
};

export const boundsOfOutline = (outline: Outline): Bounds => {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (let i = 0; i < outline.length; i += 2) {
    minX = Math.min(minX, outline[i]!);
    maxX = Math.max(maxX, outline[i]!);
    minY = Math.min(minY, outline[i + 1]!);
    maxY = Math.max(maxY, outline[i + 1]!);
  }
  return { minX, minY, maxX, maxY };
};

/** Even-odd. */
export const isWithin = (outline: Outline, x: number, y: number): boolean => {
  let inside = false;
  let qx = outline[outline.length - 2]!;
  let qy = outline[outline.length - 1]!;
  for (let i = 0; i < outline.length; i += 2) {
    const px = outline[i]!;
    const py = outline[i + 1]!;
    if (py > y !== qy > y && x < px + ((y - py) / (qy - py)) * (qx - px)) inside = !inside;
    qx = px;
    qy = py;
  }
  return inside;
};

/** For drawing. Its points are made when they are asked for. */
export const placedAt = (outline: Outline, origin: Point): PlacedOutline => ({
  origin,
  get points() {
    return Array.from({ length: outline.length / 2 }, (_, i) => ({ x: outline[2 * i]!, y: outline[2 * i + 1]! }));
  },
});
