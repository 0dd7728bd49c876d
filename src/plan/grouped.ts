/** Things sorted into groups by a key, in the order in which they come. */
export const grouped = <K, T>(things: readonly T[], key: (thing: T) => K): Map<K, T[]> => {
  const groups = new Map<K, T[]>();
  for (const thing of things) {
    const k = key(thing);
    const group = groups.get(k);
    if (group === undefined) groups.set(k, [thing]);
    else group.push(thing);
  }
  return groups;
};
