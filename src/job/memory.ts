/** Remembers what stages gave for the same inputs, so that a what-if runs again only what its change reaches. */

export interface Memory {
  /** What `make` gave for this stage and key before, or what it gives now; of a stage that weighs much only the last `most` are kept. */
  readonly recall: <T>(stage: string, key: string, make: () => T, most?: number) => T;
}

/** Keeps the last results of each stage, as many of each as `usual` where the stage says nothing; the oldest goes first. */
export const memoryOf = (usual = 64): Memory => {
  const stages = new Map<string, Map<string, unknown>>();
  return {
    recall: <T>(stage: string, key: string, make: () => T, most = usual): T => {
      const kept = stages.get(stage) ?? new Map<string, unknown>();
      stages.set(stage, kept);
      if (kept.has(key)) return kept.get(key) as T;
      const made = make();
      kept.set(key, made);
      if (kept.size > most) kept.delete(kept.keys().next().value as string);
      return made;
    },
  };
};

export const noMemory: Memory = { recall: (_stage, _key, make) => make() };
