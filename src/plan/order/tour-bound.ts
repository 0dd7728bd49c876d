/**
 * Lengths that no way through points can undercut. A way is a tree that happens to have no forks, so it is at least as long as the
 * shortest tree. Adding a toll to every point, paid at each end of an edge and given back twice, changes no way but makes forks dear:
 * the tolls are raised where the tree forks and lowered where it ends, and the best tree length met is the bound
 * (M. Held and R. M. Karp's one-tree with subgradient steps).
 * It runs over long arrays of plain numbers: `!` stands where one of those is read.
 */

import { neighboursOf } from '../../geometry/near/neighbours.ts';
import type { Point } from '../../geometry/segment.ts';

/** Points compared in all rounds together; more rounds hardly raise the bound. */
const WORK = 4e8;
const [FEWEST_ROUNDS, MOST_ROUNDS] = [80, 300];

/**
 * Bound by trees. An imaginary point beside both ends of the way closes it; its edges cost nothing but the tolls.
 * @param fixed the last of the points is where the way must begin.
 */
export const treeBound = (points: readonly Point[], fixed: boolean): number => {
  const count = points.length;
  if (count < 2) return 0;
  const field = new Field(points);
  const rounds = Math.min(MOST_ROUNDS, Math.max(FEWEST_ROUNDS, Math.floor(WORK / count ** 2)));
  let best = 0;
  let step = 0;
  for (let round = 0; round < rounds; round += 1) {
    const length = field.span(fixed);
    best = Math.max(best, length);
    if (round === 0) step = (0.7 * length) / count;
    if (!field.raiseTolls(step)) break;
    step *= 0.02 ** (1 / rounds);
  }
  return best;
};

/** Points with their tolls and the tree of the last round; it never leaves this file. */
class Field {
  readonly #x: Float64Array;
  readonly #y: Float64Array;
  readonly #toll: Float64Array;
  readonly #degree: Int32Array;
  readonly #degreeBefore: Int32Array;
  /** Points not yet in the tree, and for each point the nearest in it. */
  readonly #left: Int32Array;
  readonly #reach: Float64Array;
  readonly #from: Int32Array;

  constructor(points: readonly Point[]) {
    this.#x = Float64Array.from(points, (p) => p.x);
    this.#y = Float64Array.from(points, (p) => p.y);
    this.#toll = new Float64Array(points.length);
    this.#degree = new Int32Array(points.length);
    this.#degreeBefore = new Int32Array(points.length).fill(2);
    this.#left = new Int32Array(points.length);
    this.#reach = new Float64Array(points.length);
    this.#from = new Int32Array(points.length);
  }

  /** Length of the shortest tree with tolls and with the two edges of the imaginary point, tolls given back. */
  span(fixed: boolean): number {
    const count = this.#x.length;
    this.#degreeBefore.set(this.#degree);
    this.#degree.fill(0);
    let total = this.#tree();
    const ends = this.#ends(fixed);
    for (const end of ends) {
      this.#degree[end]! += 1;
      total += this.#toll[end]!;
    }
    for (let i = 0; i < count; i += 1) total -= 2 * this.#toll[i]!;
    return total;
  }

  /** Prim's tree: the nearest point left joins it, until none is left. */
  #tree(): number {
    const [x, y, toll, left, reach, from, degree] = [this.#x, this.#y, this.#toll, this.#left, this.#reach, this.#from, this.#degree];
    let size = x.length - 1;
    for (let i = 0; i < size; i += 1) left[i] = i;
    reach.fill(Number.POSITIVE_INFINITY);
    let last = x.length - 1;
    let total = 0;
    while (size > 0) {
      const [lx, ly, lt] = [x[last]!, y[last]!, toll[last]!];
      let nearest = 0;
      let least = Number.POSITIVE_INFINITY;
      for (let i = 0; i < size; i += 1) {
        const p = left[i]!;
        const [dx, dy] = [x[p]! - lx, y[p]! - ly];
        const d = Math.sqrt(dx * dx + dy * dy) + toll[p]! + lt;
        if (d < reach[p]!) {
          reach[p] = d;
          from[p] = last;
        }
        if (reach[p]! < least) {
          least = reach[p]!;
          nearest = i;
        }
      }
      last = left[nearest]!;
      size -= 1;
      left[nearest] = left[size]!;
      degree[last]! += 1;
      degree[from[last]!]! += 1;
      total += least;
    }
    return total;
  }

  /** The two points whose tolls are least, or the fixed start and the least of the others. */
  #ends(fixed: boolean): readonly [number, number] {
    const toll = this.#toll;
    const count = toll.length;
    let one = fixed ? count - 1 : toll[0]! <= toll[1]! ? 0 : 1;
    let two = fixed ? 0 : 1 - one;
    for (let i = fixed ? 1 : 2; i < count - (fixed ? 1 : 0); i += 1) {
      if (!fixed && toll[i]! < toll[one]!) [one, two] = [i, one];
      else if (toll[i]! < toll[two]!) two = i;
    }
    return [one, two];
  }

  /** Dearer where the tree forks, cheaper where it ends. False when it does neither: the tree is a way, and the bound its length. */
  raiseTolls(step: number): boolean {
    let uneven = false;
    for (let i = 0; i < this.#toll.length; i += 1) {
      if (this.#degree[i] !== 2) uneven = true;
      this.#toll[i]! += step * (0.6 * (this.#degree[i]! - 2) + 0.4 * (this.#degreeBefore[i]! - 2));
    }
    return uneven;
  }
}

/** Half the way to the two nearest others of every point, with two ends that need only one: weaker, but quick for any number. */
export const nearestBound = (points: readonly Point[]): number => {
  if (points.length < 3) return 0;
  const seconds: number[] = [];
  let sum = 0;
  for (const [i, [one, two]] of neighboursOf(points, 2).entries()) {
    const [p, a, b] = [points[i]!, points[one!]!, points[two!]!];
    const second = Math.hypot(p.x - b.x, p.y - b.y);
    sum += Math.hypot(p.x - a.x, p.y - a.y) + second;
    seconds.push(second);
  }
  const [largest, next] = seconds.toSorted((a, b) => b - a);
  return (sum - largest! - next!) / 2;
};
