/** In which order the files of tests run: those that wait for a browser first, then the longest, so that no core is left alone at the end. */
import { statSync } from 'node:fs';

/** Files that take seconds, by a part of their path; all others go by their size. */
const LONG = ['mutants/', 'offset/', 'test/fuzz', 'examples.test', 'nest', 'round-trip', 'kinds-of-cut', 'wire-choice', 'job/run'] as const;

interface File {
  readonly moduleId: string;
  readonly project: { readonly name: string };
}

export class LongestFirst {
  /** Files of one project stay together: between them its processes would be ended and begun anew. */
  async sort<F extends File>(files: F[]): Promise<F[]> {
    return files.toSorted((a, b) => a.project.name.localeCompare(b.project.name) || weight(b) - weight(a));
  }

  async shard<F extends File>(files: F[]): Promise<F[]> {
    return files;
  }
}

const weight = ({ moduleId }: File): number => (LONG.some((part) => moduleId.includes(part)) ? 1e9 : 0) + statSync(moduleId).size;
