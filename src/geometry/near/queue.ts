/** A queue that gives out the entry with the greatest rank first: a binary heap. */

export interface RankedQueue<T> {
  readonly size: () => number;
  readonly put: (rank: number, entry: T) => void;
  /** The entry of greatest rank; the queue must not be empty. */
  readonly take: () => { readonly rank: number; readonly entry: T };
}

interface Ranked<T> {
  readonly rank: number;
  readonly entry: T;
}

export const rankedQueue = <T>(): RankedQueue<T> => {
  const heap: Ranked<T>[] = [];
  return {
    size: () => heap.length,
    put: (rank, entry) => {
      heap.push({ rank, entry });
      raise(heap, heap.length - 1);
    },
    take: () => {
      if (heap.length === 0) throw new RangeError('nothing is left in the queue');
      const top = heap[0]!;
      const last = heap.pop()!;
      if (heap.length > 0) {
        heap[0] = last;
        sink(heap, 0);
      }
      return top;
    },
  };
};

const raise = <T>(heap: Ranked<T>[], start: number): void => {
  let i = start;
  while (i > 0) {
    const parent = (i - 1) >> 1;
    if (heap[parent]!.rank >= heap[i]!.rank) return;
    swap(heap, i, parent);
    i = parent;
  }
};

const sink = <T>(heap: Ranked<T>[], start: number): void => {
  let i = start;
  for (;;) {
    const left = 2 * i + 1;
    let greatest = i;
    for (const child of [left, left + 1]) if (child < heap.length && heap[child]!.rank > heap[greatest]!.rank) greatest = child;
    if (greatest === i) return;
    swap(heap, i, greatest);
    i = greatest;
  }
};

const swap = <T>(heap: T[], i: number, j: number): void => {
  const held = heap[i]!;
  heap[i] = heap[j]!;
  heap[j] = held;
};
