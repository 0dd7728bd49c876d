/** Lets work on the same thing come one after the other, and work on different things side by side. */
export type Turns = <T>(key: string, work: () => Promise<T>) => Promise<T>;

export const turns = (): Turns => {
  const last = new Map<string, Promise<unknown>>();
  return <T>(key: string, work: () => Promise<T>): Promise<T> => {
    const mine = (last.get(key) ?? Promise.resolve()).then(work);
    const settled = mine.then(
      () => undefined,
      () => undefined,
    );
    last.set(key, settled);
    void settled.then(() => {
      if (last.get(key) === settled) last.delete(key);
    });
    return mine;
  };
};
