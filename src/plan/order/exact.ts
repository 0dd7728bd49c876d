/**
 * The shortest way through a few points, found by trying every subset once (M. Held and R. M. Karp's dynamic programming).
 * The tables double with each point, and are long arrays of plain numbers: `!` stands where one of those is read.
 */
import { distanceBetween, type Point } from '../../geometry/segment.ts';

/** Ways that differ by less count as equally long, so that rounding does not choose among them. */
const SAME = 1e-9;

/** `work` counts the ways compared. Meant for at most a dozen points: time and memory double with each. */
export const exactOrder = (points: readonly Point[], start?: Point): { readonly order: readonly number[]; readonly work: number } => {
  const count = points.length;
  if (count <= 1) return { order: points.map((_, i) => i), work: 0 };
  const distances = points.map((p) => Float64Array.from(points, (q) => distanceBetween(p, q)));
  const all = 2 ** count;
  // At [subset of points visited, last of them]: the shortest way to it, and the point before.
  const length = new Float64Array(all * count).fill(Number.POSITIVE_INFINITY);
  const before = new Int8Array(all * count).fill(-1);
  for (let i = 0; i < count; i += 1) length[2 ** i * count + i] = start === undefined ? 0 : distanceBetween(start, points[i]!);
  let work = 0;
  for (let visited = 1; visited < all; visited += 1) {
    for (let last = 0; last < count; last += 1) {
      const here = length[visited * count + last]!;
      if (here === Number.POSITIVE_INFINITY) continue;
      const row = distances[last]!;
      for (let next = 0; next < count; next += 1) {
        if ((visited & (1 << next)) !== 0) continue;
        work += 1;
        const there = (visited | (1 << next)) * count + next;
        if (here + row[next]! < length[there]! - SAME) {
          length[there] = here + row[next]!;
          before[there] = last;
        }
      }
    }
  }
  const order = tracedBack(length, before, count);
  return { order: start === undefined ? fromTheCorner(order, points) : order, work };
};

const tracedBack = (length: Float64Array, before: Int8Array, count: number): readonly number[] => {
  let visited = 2 ** count - 1;
  let last = 0;
  for (let i = 1; i < count; i += 1) if (length[visited * count + i]! < length[visited * count + last]! - SAME) last = i;
  const order: number[] = [];
  while (last >= 0) {
    order.push(last);
    const previous = before[visited * count + last]!;
    visited -= 2 ** last;
    last = previous;
  }
  return order.reverse();
};

/** A way without a given start is as long backwards: it begins at the end that lies lower and further left. */
const fromTheCorner = (order: readonly number[], points: readonly Point[]): readonly number[] => {
  const [first, last] = [points[order[0]!]!, points[order.at(-1)!]!];
  return first.x + first.y <= last.x + last.y ? order : order.toReversed();
};
