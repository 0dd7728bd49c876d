/** With what energy a program cuts, by the squares that each cut takes and by the last cut that comes to each place of a contour. */
import type { Contour } from '../../src/geometry/contour.ts';
import { distanceToSegment, lengthOf, pointAt } from '../../src/geometry/measure.ts';
import type { Point } from '../../src/geometry/segment.ts';
import type { Action } from '../../src/nc/read/program.ts';
import type { ProofQuestion } from '../../src/proof/proof.ts';
import { there } from '../there.ts';
import { clumpsOf, type Raster } from './raster.ts';
import type { TruthCut } from './truth.ts';

interface Told {
  readonly faults: readonly string[];
  readonly unclear: boolean;
}

const nothing: Told = { faults: [], unclear: false };

/** Half kerfs nearer than this are of one energy, mm. */
const SAME = 1e-6;
/** Shares of a full kerf: a skim takes a tenth. Between the two nobody can say. */
const [SOME, MOST] = [0.25, 0.7];
/** mm of a contour whose last pass is missing: overlaps and ways in are shorter, and nobody can say in between. */
const [SHORT, LONG] = [0.1, 0.45];
/** mm of a contour that a pass may miss beside a corner. */
const [FEW, MANY] = [0.35, 0.75];
/** mm that a pass may leave for the next ones. */
const STOCK = 0.3;
/** kg: a piece this light is flushed away; a few squares more or less decide nothing. */
const [LIGHT, HEAVY] = [2.5e-5, 8.5e-5];

export const energyTruth = (actions: readonly Action[], cuts: readonly TruthCut[], question: ProofQuestion, raster: Raster): Told => {
  const planned = question.passes?.map((n) => question.wireDiameter / 2 + there(question.gaps.get(n)));
  const radii = planned ?? cuts.map((c) => c.radius);
  const [rough, last] = [Math.max(...radii), Math.min(...radii)];
  const all = [
    choices(actions, question),
    ...(rough - last > SAME
      ? [roughs(cuts, raster, rough), tabs(cuts, question, raster, rough), faces(cuts, question, last), leftOut(cuts, question, radii)]
      : []),
  ];
  return { faults: all.flatMap((t) => t.faults), unclear: all.some((t) => t.unclear) };
};

/** Conditions by word, or chosen anywhere: then before every cut. */
const choices = (actions: readonly Action[], { dialect }: ProofQuestion): Told => {
  const conditions = actions.flatMap((a) => (a.kind === 'move' && !a.rapid ? [a.condition] : []));
  const byWord = dialect.words.condition !== undefined || conditions.some((c) => c !== undefined);
  return byWord && conditions.includes(undefined) ? { faults: ['a cut before any condition'], unclear: false } : nothing;
};

const roughs = (cuts: readonly TruthCut[], raster: Raster, rough: number): Told => {
  const squares = new Float64Array(cuts.length);
  for (const n of raster.cutAt) if (n >= 0 && n < cuts.length) squares[n] = there(squares[n]) + raster.size ** 2;
  const runs = new Map<number, { taken: number; swept: number }>();
  cuts.forEach(({ radius, segment, run }, n) => {
    if (radius >= rough - SAME) return;
    const [taken, swept] = [there(squares[n]), 2 * radius * lengthOf(segment)];
    const known = runs.get(run) ?? { taken: 0, swept: 0 };
    runs.set(run, { taken: known.taken + taken, swept: known.swept + swept });
  });
  const unclear = [...runs.values()].some(({ taken, swept }) => taken > SOME * swept && taken <= Math.max(MOST * swept, 1));
  const full = [...runs].filter(([, { taken, swept }]) => taken > MOST * swept && taken > 1);
  return { faults: full.map(([run]) => `run ${run} is a skim in full metal`), unclear };
};

const tabs = (cuts: readonly TruthCut[], { height, density }: ProofQuestion, raster: Raster, rough: number): Told => {
  const freed = clumpsOf(raster)
    .map(({ cut, squares }) => ({ cut, mass: squares.length * raster.size ** 2 * height * density * 1e-6 }))
    .filter(({ cut, mass }) => mass > LIGHT && there(cuts[cut]).radius < rough - SAME);
  return {
    faults: freed.filter(({ mass }) => mass > HEAVY).map(({ cut }) => `a piece is cut free by a skim, cut ${cut}`),
    unclear: freed.some(({ mass }) => mass <= HEAVY),
  };
};

const faces = (cuts: readonly TruthCut[], { wanted, tolerance }: ProofQuestion, last: number): Told => {
  const lengths = wanted.map(({ contour }) => {
    let length = 0;
    for (const s of contour.segments) {
      const steps = Math.ceil(lengthOf(s) / 0.1);
      for (let i = 0; i < steps; i += 1) {
        const cut = cuts.findLast((c) => reaches(c, pointAt(s, (i + 0.5) / steps), tolerance));
        if (cut !== undefined && cut.radius > last + SAME) length += lengthOf(s) / steps;
      }
    }
    return length;
  });
  return {
    faults: lengths.flatMap((l, n) => (l > LONG ? [`contour ${n} is not finished`] : [])),
    unclear: lengths.some((l) => l > SHORT && l <= LONG),
  };
};

/** Of the set-up's passes, or else of those that the program uses: the longest stretch of each contour that one of them does not come near. */
const leftOut = (cuts: readonly TruthCut[], { wanted }: ProofQuestion, radii: readonly number[]): Told => {
  const stretches = [...new Set(radii)].flatMap((radius) => {
    const own = cuts.filter((c) => Math.abs(c.radius - radius) <= SAME);
    return wanted.map(({ contour, loop }) => ({
      what: `a pass of contour ${loop} is left out`,
      length: longestWithout(own, cuts, contour),
    }));
  });
  return {
    faults: stretches.flatMap(({ what, length }) => (length > MANY ? [what] : [])),
    unclear: stretches.some(({ length }) => length > FEW && length <= MANY),
  };
};

/** In a sharp corner no cut gets near, and a wide one less so than a narrow one. */
const longestWithout = (own: readonly TruthCut[], all: readonly TruthCut[], { segments }: Contour): number => {
  let [run, most] = [0, 0];
  for (const s of segments) {
    const steps = Math.ceil(lengthOf(s) / 0.1);
    for (let i = 0; i < steps; i += 1) {
      const at = pointAt(s, (i + 0.5) / steps);
      const off = (of: readonly TruthCut[]): number => Math.min(...of.map((c) => distanceToSegment(c.segment, at) - c.radius));
      run = own.some((c) => reaches(c, at, STOCK)) || off(own) <= STOCK + 3 * Math.max(0, off(all)) ? 0 : run + lengthOf(s) / steps;
      most = Math.max(most, run);
    }
  }
  return most;
};

const reaches = ({ segment, radius }: TruthCut, p: Point, tolerance: number): boolean =>
  distanceToSegment(segment, p) <= radius + tolerance;
