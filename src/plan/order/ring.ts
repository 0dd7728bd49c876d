/**
 * A way while it is being shortened, closed to a ring by an imaginary point beside both of its ends; changes can be taken back.
 * It is asked millions of times, so points are numbers in long arrays: `!` stands where one of those is read.
 */
import type { Point } from '../../geometry/segment.ts';

/** The start must stay beside the imaginary point: no way through points on a machine's table is as long as this, mm. */
const LOCK = 1e9;

export class Ring {
  readonly size: number;
  /** Number of the imaginary point. */
  readonly gap: number;
  /** Points moved in the ring since it was made. */
  moved = 0;
  readonly #x: Float64Array;
  readonly #y: Float64Array;
  readonly #way: Int32Array;
  readonly #place: Int32Array;
  readonly #start: number;
  /** Place and point before, two by two, of everything written since `remember`. */
  #journal: number[] = [];

  /** @param all the points and, where the way has a start, the start as the last of them. */
  constructor(all: readonly Point[], order: readonly number[], fixed: boolean) {
    this.#x = Float64Array.from(all, (p) => p.x);
    this.#y = Float64Array.from(all, (p) => p.y);
    this.gap = all.length;
    this.size = all.length + 1;
    this.#start = fixed ? all.length - 1 : -1;
    this.#way = Int32Array.from(fixed ? [this.gap, this.#start, ...order] : [this.gap, ...order]);
    this.#place = new Int32Array(this.size);
    for (let i = 0; i < this.size; i += 1) this.#place[this.#way[i]!] = i;
  }

  /** Points in order from the gap on, without the start, turned so that a fixed start comes first. */
  order(): readonly number[] {
    const order: number[] = [];
    const step = this.#start >= 0 && this.after(this.gap) !== this.#start ? -1 : 1;
    for (let i = 1, at = this.#place[this.gap]!; i < this.size; i += 1) {
      at = this.#around(at + step);
      if (this.#way[at] !== this.#start) order.push(this.#way[at]!);
    }
    return order;
  }

  after(p: number): number {
    const place = this.#place[p]! + 1;
    return this.#way[place === this.size ? 0 : place]!;
  }

  before(p: number): number {
    const place = this.#place[p]!;
    return this.#way[place === 0 ? this.size - 1 : place - 1]!;
  }

  /** The point so many places behind another. */
  behind(p: number, places: number): number {
    return this.#way[this.#around(this.#place[p]! + places)]!;
  }

  /** Nothing to and from the imaginary point, except that the start never leaves it. */
  distance(p: number, q: number): number {
    if (p === this.gap || q === this.gap) return p === this.#start || q === this.#start ? -LOCK : 0;
    const dx = this.#x[p]! - this.#x[q]!;
    const dy = this.#y[p]! - this.#y[q]!;
    return Math.sqrt(dx * dx + dy * dy);
  }

  /** The stretch from p onwards to q turned round; on a ring that is the same as turning all the rest. */
  turn(p: number, q: number): void {
    let [low, high] = [this.#place[p]!, this.#place[q]!];
    let length = this.#around(high - low) + 1;
    if (2 * length > this.size) {
      [low, high] = [this.#around(high + 1), this.#around(low - 1)];
      length = this.size - length;
    }
    for (let n = length >> 1; n > 0; n -= 1) {
      const [a, b] = [this.#way[low]!, this.#way[high]!];
      this.#put(low, b);
      this.#put(high, a);
      low = low + 1 === this.size ? 0 : low + 1;
      high = high === 0 ? this.size - 1 : high - 1;
    }
  }

  /** The stretch of a few points from p onwards, put between u and the point after u, turned round where that is wished. */
  move(p: number, length: number, u: number, turned: boolean): void {
    const first = this.#place[p]!;
    const stretch = Array.from({ length }, (_, i) => this.#way[this.#around(first + i)]!);
    if (turned) stretch.reverse();
    const ahead = this.#around(this.#place[u]! - first - length + 1);
    const back = this.size - length - ahead;
    let free = first;
    // The points between move over to the stretch's old places, whichever way round they are fewer.
    if (ahead <= back) {
      for (let n = 0; n < ahead; n += 1, free = this.#around(free + 1)) this.#put(free, this.#way[this.#around(free + length)]!);
    } else {
      let end = this.#around(first + length - 1);
      for (let n = 0; n < back; n += 1, end = this.#around(end - 1)) this.#put(end, this.#way[this.#around(end - length)]!);
      free = this.#around(end - length + 1);
    }
    for (const [i, q] of stretch.entries()) this.#put(this.#around(free + i), q);
  }

  /** Two stretches that follow each other behind p change places. */
  swap(p: number, one: number, two: number): void {
    const from = this.#place[p]! + 1;
    const both = Array.from({ length: one + two }, (_, i) => this.#way[this.#around(from + i)]!);
    for (let i = 0; i < both.length; i += 1) this.#put(this.#around(from + i), both[(i + one) % both.length]!);
  }

  remember(): void {
    this.#journal = [];
  }

  takeBack(): void {
    for (let i = this.#journal.length - 2; i >= 0; i -= 2) {
      const p = this.#journal[i + 1]!;
      this.#way[this.#journal[i]!] = p;
      this.#place[p] = this.#journal[i]!;
    }
    this.#journal = [];
  }

  #put(place: number, p: number): void {
    this.#journal.push(place, this.#way[place]!);
    this.#way[place] = p;
    this.#place[p] = place;
    this.moved += 1;
  }

  #around(place: number): number {
    return place >= this.size ? place - this.size : place < 0 ? place + this.size : place;
  }
}
