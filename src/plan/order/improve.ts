/** Shortens a way until no turned or moved stretch helps, then disturbs it a little, again and again, and keeps what got shorter. */

import { neighboursOf } from '../../geometry/near/neighbours.ts';
import type { Point } from '../../geometry/segment.ts';
import { itemAt } from '../../sequence/sequence.ts';
import { Ring } from './ring.ts';

/** Candidates for the next point, the nearest ones. */
const NEIGHBOURS = 8;
/** A gain below this, mm, is rounding. */
const LEAST = 1e-9;
/** Longest stretch that is moved as it is. */
const STRETCH = 3;
/** Longest stretch of a disturbance: it stays local, so that repairing it costs the same however many points there are. */
const DISTURBED = 30;
/** Points looked at or moved, for one point and one try: keeps the time in proportion. */
const WORK = 2000;

/** Never longer than the way it starts from. `tries` disturbances for each point. */
export const improved = (
  points: readonly Point[],
  order: readonly number[],
  start: Point | undefined,
  tries: number,
): { readonly order: readonly number[]; readonly work: number } => {
  const all = start === undefined ? points : [...points, start];
  const search = new Search(all, order, start !== undefined);
  search.settle(order);
  search.disturb(tries * points.length, WORK * points.length * (tries + 1));
  return { order: search.ring.order(), work: search.work };
};

/** The ring with its list of points to look at; it never leaves this file. */
class Search {
  readonly ring: Ring;
  readonly #neighbours: readonly (readonly number[])[];
  #due: number[] = [];
  readonly #waiting: Uint8Array;
  #looked = 0;

  constructor(all: readonly Point[], order: readonly number[], fixed: boolean) {
    this.ring = new Ring(all, order, fixed);
    const near = neighboursOf(all, NEIGHBOURS);
    // The imaginary point is near to everyone: whoever moves beside it becomes an end of the way.
    this.#neighbours = [...near.map((list, i) => (fixed && i === all.length - 1 ? list : [this.ring.gap, ...list])), []];
    this.#waiting = new Uint8Array(this.ring.size);
  }

  get work(): number {
    return this.#looked + this.ring.moved;
  }

  /** Looks at the given points and at all that changes touch, until nothing helps. Gives what was gained, mm. */
  settle(points: readonly number[]): number {
    let gained = 0;
    for (const p of points) this.#wait(p);
    for (let i = 0; i < this.#due.length; i += 1) {
      const p = itemAt(this.#due, i);
      this.#waiting[p] = 0;
      for (let gain = this.#better(p); gain > 0; gain = this.#better(p)) gained += gain;
    }
    this.#due = [];
    return gained;
  }

  /** Swaps two short neighbouring stretches, settles again, and takes all back that did not shorten the way. */
  disturb(times: number, most: number): void {
    const dice = steadyDice();
    const room = this.ring.size - 2;
    for (let n = 0; n < times && this.work < most; n += 1) {
      const longest = Math.min(DISTURBED, (room - 1) >> 1);
      const [one, two] = [1 + dice(longest), 1 + dice(longest)];
      const p = this.ring.behind(this.ring.gap, 1 + dice(room - one - two));
      const [a, b] = [this.ring.behind(p, 1), this.ring.behind(p, one)];
      const [c, d] = [this.ring.behind(p, one + 1), this.ring.behind(p, one + two)];
      const next = this.ring.after(d);
      const lost = this.#link(p, c) + this.#link(d, a) + this.#link(b, next) - this.#link(p, a) - this.#link(b, c) - this.#link(d, next);
      this.ring.remember();
      this.ring.swap(p, one, two);
      if (this.settle([p, a, b, c, d, next]) < lost - LEAST) this.ring.takeBack();
    }
  }

  /** One change that shortens the way by bringing p beside one of its neighbours; what it gains, or 0. */
  #better(p: number): number {
    for (const forward of [true, false]) {
      const before = forward ? this.ring.before(p) : this.ring.after(p);
      const now = this.#link(before, p);
      for (const near of itemAt(this.#neighbours, p)) {
        const won = now - this.#link(p, near);
        if (won <= LEAST) break;
        const gain = this.#turned(p, before, near, won, forward) || this.#moved(p, before, near, won, forward);
        if (gain > 0) return gain;
      }
    }
    return 0;
  }

  /** Turns the stretch between p and its neighbour, so that both come together. */
  #turned(p: number, before: number, near: number, won: number, forward: boolean): number {
    const other = forward ? this.ring.before(near) : this.ring.after(near);
    const gain = won + this.#link(other, near) - this.#link(before, other);
    if (gain <= LEAST) return 0;
    if (forward) this.ring.turn(p, other);
    else this.ring.turn(before, near);
    for (const q of [p, before, near, other]) this.#wait(q);
    return gain;
  }

  /** Moves the stretch that begins with p to either side of its neighbour. */
  #moved(p: number, before: number, near: number, won: number, forward: boolean): number {
    let end = p;
    for (let length = 1; length <= STRETCH; length += 1) {
      if (length > 1) end = forward ? this.ring.after(end) : this.ring.before(end);
      if (end === near || end === before) return 0;
      const next = forward ? this.ring.after(end) : this.ring.before(end);
      const opened = won + this.#link(end, next) - this.#link(before, next);
      for (const behind of [true, false]) {
        const other = behind ? this.ring.after(near) : this.ring.before(near);
        if (other === end || other === p) continue;
        const gain = opened + this.#link(near, other) - this.#link(end, other);
        if (gain <= LEAST) continue;
        // The stretch keeps its sense when p ends up on the same side as before.
        this.ring.move(forward ? p : end, length, behind ? near : other, forward !== behind);
        for (const q of [p, before, near, other, end, next]) this.#wait(q);
        return gain;
      }
    }
    return 0;
  }

  #link(p: number, q: number): number {
    this.#looked += 1;
    return this.ring.distance(p, q);
  }

  #wait(p: number): void {
    if (this.#waiting[p] === 1) return;
    this.#waiting[p] = 1;
    this.#due.push(p);
  }
}

/** Numbers from 0 to below `sides` that look random and are always the same (G. Marsaglia's shift register). */
const steadyDice = (): ((sides: number) => number) => {
  let state = 0x2545f491;
  return (sides) => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) % sides;
  };
};
