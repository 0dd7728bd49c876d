/**
 * Lists whose type says what cannot be missing: those with something in them, neighbours two by two, lists walked side by side. Where
 * no type can say it, what is relied on is looked at, and an error says what is missing: no wrong number comes of it.
 */

/** A list with at least one thing in it. */
export type NonEmpty<T> = readonly [T, ...T[]];

export const isFilled = <T>(list: readonly T[]): list is NonEmpty<T> => list.length > 0;

export const lastOf = <T>(list: NonEmpty<T>): T => list[list.length - 1] as T;

/** A value that the lines before have seen to, or an error that says what was relied on. */
export const certain = <T>(value: T, reliedOn: string): NonNullable<T> => {
  if (value !== undefined && value !== null) return value;
  throw new Error(`relied on, and not so: ${reliedOn}`);
};

/** A list that the lines before have seen to be filled. */
export const filled = <T>(list: readonly T[], reliedOn: string): NonEmpty<T> => {
  if (isFilled(list)) return list;
  throw new Error(`relied on, and not so: ${reliedOn}`);
};

/** What stands at an index that was made for this list. */
export const itemAt = <T>(list: ArrayLike<T>, index: number): NonNullable<T> => {
  const item = list[index];
  if (item !== undefined && item !== null) return item;
  throw new Error(`nothing stands at ${index} in a list of ${list.length}`);
};

export const firstItem = <T>(list: ArrayLike<T>): NonNullable<T> => itemAt(list, 0);

export const lastItem = <T>(list: ArrayLike<T>): NonNullable<T> => itemAt(list, list.length - 1);

/** What a map holds under a key that was put into it. */
export const itemOf = <K, T>(map: { readonly get: (key: K) => T | undefined }, key: K): NonNullable<T> => {
  const item = map.get(key);
  if (item !== undefined && item !== null) return item;
  throw new Error(`nothing is held under ${String(key)}`);
};

/** Counted round and round: -1 is the last, and after the last comes the first again. */
export const aroundAt = <T>(list: NonEmpty<T>, index: number): T => {
  const turned = index % list.length;
  return list[turned < 0 ? turned + list.length : turned] as T;
};

export const mapFilled = <T, U>(list: NonEmpty<T>, change: (item: T, index: number) => U): NonEmpty<U> =>
  list.map(change) as unknown as NonEmpty<U>;

/** Each thing with the one after it: one pair fewer than things. */
export const neighbours = <T>(list: readonly T[]): readonly (readonly [T, T])[] => list.slice(1).map((item, i) => [list[i] as T, item]);

/** Each thing with the one after it, the last with the first. */
export const roundPairs = <T>(list: readonly T[]): readonly (readonly [T, T])[] =>
  list.map((item, i) => [item, list[(i + 1) % list.length] as T]);

/** Two lists of one length side by side; of another length one of them was not made for the other. */
export const sideBySide: {
  <T, U>(first: NonEmpty<T>, second: NonEmpty<U>): NonEmpty<readonly [T, U]>;
  <T, U>(first: readonly T[], second: readonly U[]): readonly (readonly [T, U])[];
} = <T, U>(first: readonly T[], second: readonly U[]) => {
  if (first.length !== second.length) throw new Error(`${first.length} things cannot stand beside ${second.length}, one by one`);
  return first.map((item, i) => [item, second[i] as U] as const) as unknown as NonEmpty<readonly [T, U]>;
};

/** Where in a list the least stands, the first of equals; -1 in an empty one. */
export const indexOfLeast = <T>(list: Iterable<T>, amount: (item: T) => number): number => {
  let [at, found, least] = [0, -1, Number.POSITIVE_INFINITY];
  for (const item of list) {
    const value = amount(item);
    if (found < 0 || value < least) [found, least] = [at, value];
    at += 1;
  }
  return found;
};

/** The first index from which on a condition holds, found by halving; the length where it never does. */
export const firstFrom = <T>(sorted: ArrayLike<T>, holds: (item: T) => boolean): number => {
  let [low, high] = [0, sorted.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (holds(sorted[middle] as T)) high = middle;
    else low = middle + 1;
  }
  return low;
};

/** What has one key together, keys and things in the order of the list. */
export const grouped = <T, K>(list: Iterable<T>, keyOf: (item: T) => K): ReadonlyMap<K, NonEmpty<T>> => {
  const groups = new Map<K, [T, ...T[]]>();
  for (const item of list) {
    const group = groups.get(keyOf(item));
    if (group === undefined) groups.set(keyOf(item), [item]);
    else group.push(item);
  }
  return groups;
};
