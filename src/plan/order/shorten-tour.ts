/**
 * Shortens a way through points: turns stretches round, and moves short ones to where they cost less. Bounded, and never longer than before.
 * Points are numbers in long arrays: `!` stands where one of those is read.
 */
import type { Point } from '../../geometry/segment.ts';

/** Places written while turning and moving, for one point: keeps the time in proportion to the number of points. */
const WORK = 3000;

/**
 * @param neighbours for each point the numbers of those near it; only they are tried as its next ones.
 * @param start where the way comes from; it stays first.
 */
export const shortened = (
  points: readonly Point[],
  order: readonly number[],
  neighbours: readonly (readonly number[])[],
  start?: Point,
): readonly number[] => {
  const way = new Way(points, order, start);
  for (let round = 0; round < 12 && way.work > 0; round += 1) {
    const turned = way.turnStretches(neighbours);
    const moved = way.moveStretches(neighbours);
    if (!turned && !moved) break;
  }
  return way.order();
};

/** The way while it is being worked on; it never leaves this file. */
class Way {
  work: number;
  readonly #x: Float64Array;
  readonly #y: Float64Array;
  /** Points in order; the start, where there is one, has the number `count` and stands first. */
  readonly #way: Int32Array;
  readonly #place: Int32Array;
  readonly #fixed: number;

  constructor(points: readonly Point[], order: readonly number[], start: Point | undefined) {
    const all = start === undefined ? points : [...points, start];
    this.#x = Float64Array.from(all, (p) => p.x);
    this.#y = Float64Array.from(all, (p) => p.y);
    this.#way = Int32Array.from(start === undefined ? order : [points.length, ...order]);
    this.#fixed = start === undefined ? 0 : 1;
    this.#place = new Int32Array(all.length);
    this.#way.forEach((p, i) => {
      this.#place[p] = i;
    });
    this.work = WORK * order.length;
  }

  order(): readonly number[] {
    return Array.from(this.#way.subarray(this.#fixed));
  }

  /** From a to b turned round, both included, wherever that makes the way shorter. */
  turnStretches(neighbours: readonly (readonly number[])[]): boolean {
    let better = false;
    for (let p = 0; p < neighbours.length; p += 1) {
      for (const q of neighbours[p]!) {
        if (this.work <= 0) return better;
        if (this.#turnBefore(p, q) || this.#turnAfter(p, q)) better = true;
      }
    }
    return better;
  }

  /** Makes q the point after p by turning what lies between. */
  #turnAfter(p: number, q: number): boolean {
    const [i, j] = [this.#place[p]!, this.#place[q]!];
    if (j <= i + 1) return false;
    const gain = this.#link(i, i + 1) + this.#link(j, j + 1) - this.#between(p, q) - this.#linkOf(this.#at(i + 1), this.#at(j + 1));
    if (gain <= 1e-9) return false;
    this.#turn(i + 1, j);
    return true;
  }

  /** Makes q the point before p by turning what lies between. */
  #turnBefore(p: number, q: number): boolean {
    const [i, j] = [this.#place[p]!, this.#place[q]!];
    if (j >= i - 1 || j < this.#fixed) return false;
    const gain = this.#link(i - 1, i) + this.#link(j - 1, j) - this.#between(p, q) - this.#linkOf(this.#at(i - 1), this.#at(j - 1));
    if (gain <= 1e-9) return false;
    this.#turn(j, i - 1);
    return true;
  }

  /** One to three points in a row moved next to a neighbour of their first or last. */
  moveStretches(neighbours: readonly (readonly number[])[]): boolean {
    let better = false;
    for (let p = 0; p < neighbours.length; p += 1) {
      for (let size = 1; size <= 3; size += 1) {
        if (this.work <= 0) return better;
        if (neighbours[p]!.some((q) => this.#moveBehind(p, size, q))) better = true;
      }
    }
    return better;
  }

  /** The stretch that begins with p put behind q. */
  #moveBehind(p: number, size: number, q: number): boolean {
    const first = this.#place[p]!;
    const last = first + size - 1;
    const target = this.#place[q]!;
    if (last >= this.#way.length || (target >= first - 1 && target <= last)) return false;
    const end = this.#at(last);
    const [before, after, next] = [this.#at(first - 1), this.#at(last + 1), this.#at(target + 1)];
    const gain =
      this.#linkOf(before, p) +
      this.#linkOf(end, after) -
      this.#linkOf(before, after) +
      this.#linkOf(q, next) -
      this.#linkOf(q, p) -
      this.#linkOf(end, next);
    if (gain <= 1e-9) return false;
    // A rotation is three turns.
    if (target > last) {
      this.#turn(first, target);
      this.#turn(first, first + target - last - 1);
      this.#turn(first + target - last, target);
    } else {
      this.#turn(target + 1, last);
      this.#turn(target + 1, target + size);
      this.#turn(target + size + 1, last);
    }
    return true;
  }

  #turn(low: number, high: number): void {
    const way = this.#way;
    this.work -= high - low;
    for (let i = low, j = high; i < j; i += 1, j -= 1) {
      const p = way[i]!;
      const q = way[j]!;
      way[i] = q;
      way[j] = p;
      this.#place[q] = i;
      this.#place[p] = j;
    }
  }

  /** Point at a place of the way; -1 beyond its ends. */
  #at(place: number): number {
    return place < 0 || place >= this.#way.length ? -1 : this.#way[place]!;
  }

  #link(a: number, b: number): number {
    return this.#linkOf(this.#at(a), this.#at(b));
  }

  /** Length from point to point; nothing beyond the ends of the way. */
  #linkOf(p: number, q: number): number {
    return p < 0 || q < 0 ? 0 : this.#between(p, q);
  }

  #between(p: number, q: number): number {
    const x = this.#x[p]! - this.#x[q]!;
    const y = this.#y[p]! - this.#y[q]!;
    return Math.sqrt(x * x + y * y);
  }
}
