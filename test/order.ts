/** In which order the files of tests run: those that wait for a browser or a server first, then the longest, so that no core is left alone at the end. */
import { statSync } from 'node:fs';

/** Files that take seconds: they begin first, and the quick run for everyday work leaves them out. */
export const LONG = [
  'test/fuzz.test.ts',
  'test/examples.test.ts',
  'test/kinds-of-cut.test.ts',
  'test/files-of-0.3.test.ts',
  'test/one-leaf.test.ts',
  'test/checks.test.ts',
  'tools/altered.test.ts',
  'test/told-in-inch.test.ts',
  'test/drawing-shown.test.ts',
  'src/job/request/shape-drawing.test.ts',
  'src/geometry/make/combine.test.ts',
  'test/mutants/**',
  'src/geometry/offset/nasty-shapes.test.ts',
  'src/geometry/offset/fuzz.test.ts',
  'src/shapes/lettering/**',
  'src/shapes/curve/rotor.test.ts',
  'src/shapes/gear/rolling.test.ts',
  'src/nest/lay/**',
  'src/job/nest.test.ts',
  'src/job/core.test.ts',
  'src/job/by-hand.test.ts',
  'src/job/pipeline/**',
  'src/job/what-if/**',
  'src/plan/plan.invariants.test.ts',
  'src/plan/core/core.invariants.test.ts',
  'src/plan/start/override.invariants.test.ts',
  'src/nc/write/grid-moves.invariants.test.ts',
  'src/nc/round-trip.invariants.test.ts',
];

interface File {
  readonly moduleId: string;
  readonly project: { readonly name: string };
}

/** Those that share their process last: many of them are short. */
const PROJECTS = ['apart', 'server', 'pure'];

export class LongestFirst {
  /** Files of one project stay together: between them its processes would be ended and begun anew. */
  async sort<F extends File>(files: F[]): Promise<F[]> {
    return files.toSorted((a, b) => PROJECTS.indexOf(a.project.name) - PROJECTS.indexOf(b.project.name) || weight(b) - weight(a));
  }

  async shard<F extends File>(files: F[]): Promise<F[]> {
    return files;
  }
}

const weight = ({ moduleId }: File): number =>
  (LONG.some((part) => moduleId.includes(part.replace('**', ''))) ? 1e9 : 0) + statSync(moduleId).size;
