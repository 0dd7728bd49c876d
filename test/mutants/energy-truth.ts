/** With what energy a program cuts, by the squares that each cut takes and by the last cut that comes to each place of a contour. */
import type { Chain } from '../../src/geometry/contour.ts';
import { distanceToSegment, lengthOf, pointAt } from '../../src/geometry/measure.ts';
import { contains } from '../../src/geometry/near/inside.ts';
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
/** mm that a pass may leave more than one before it, which took all there was: between the two nobody can say. */
const [PERHAPS, SURE] = [3e-3, 8e-3];
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

/** What is to be finished: contours, and open lines with one side kept, as far as they lie in the block; places so far apart along them. */
const facesOf = ({
  wanted,
  wantedOpen = [],
  block,
}: ProofQuestion): readonly { readonly name: string; readonly places: readonly Place[] }[] => [
  ...wanted.map(({ loop, contour }) => ({ name: loop, places: placesOn(contour) })),
  ...wantedOpen
    .filter((o) => o.kept !== 'slit')
    .map(({ chain, path }) => ({ name: chain, places: placesOn(path).filter(({ at }) => contains(block, at, 0) === 'inside') })),
];

interface Place {
  readonly at: Point;
  /** mm of the face. */
  readonly step: number;
}

const placesOn = ({ segments }: Chain): readonly Place[] =>
  segments.flatMap((s) => {
    const steps = Math.ceil(lengthOf(s) / 0.1);
    return Array.from({ length: steps }, (_, i) => ({ at: pointAt(s, (i + 0.5) / steps), step: lengthOf(s) / steps }));
  });

const faces = (cuts: readonly TruthCut[], question: ProofQuestion, last: number): Told => {
  const lengths = facesOf(question).map(({ name, places }) => ({
    name,
    length: places.reduce((sum, { at, step }) => {
      const cut = cuts.findLast((c) => reaches(c, at, question.tolerance));
      return sum + (cut !== undefined && cut.radius > last + SAME ? step : 0);
    }, 0),
  }));
  return {
    faults: lengths.flatMap(({ name, length }) => (length > LONG ? [`${name} is not finished`] : [])),
    unclear: lengths.some(({ length }) => length > SHORT && length <= LONG),
  };
};

/** Of the set-up's passes, or else of those that the program uses: the longest stretch of each face that one of them does not come near, or takes nothing of. */
const leftOut = (cuts: readonly TruthCut[], question: ProofQuestion, radii: readonly number[]): Told => {
  const passes = [...new Set(radii)].sort((a, b) => (question.passes === undefined ? b - a : 0));
  const stretches = facesOf(question).flatMap(({ name, places }) => {
    const left = places.map(({ at, step }) => ({ step, by: passes.map((radius) => leftBy(cuts, radius, at)) }));
    return passes.flatMap((_, n) => {
      const before = (by: readonly number[]): number => Math.min(...by.slice(0, n));
      const isIdle = (by: readonly number[], more: number): boolean => there(by[n]) <= STOCK && there(by[n]) > before(by) + more;
      return [
        { what: `pass ${n + 1} of ${name} is left out`, ...longest(left, (by) => there(by[n]) > STOCK + 3 * Math.max(0, Math.min(...by))) },
        {
          what: `pass ${n + 1} of ${name} takes nothing`,
          most: longest(left, (by) => isIdle(by, SURE)).most,
          some: longest(left, (by) => isIdle(by, PERHAPS)).most,
        },
      ];
    });
  });
  return {
    faults: stretches.flatMap(({ what, most }) => (most > MANY ? [what] : [])),
    unclear: stretches.some(({ most, some }) => most <= MANY && some > FEW),
  };
};

const leftBy = (cuts: readonly TruthCut[], radius: number, at: Point): number =>
  Math.min(...cuts.filter((c) => Math.abs(c.radius - radius) <= SAME).map((c) => distanceToSegment(c.segment, at) - radius));

/** mm of the longest stretch, told twice. */
const longest = (
  left: readonly { readonly step: number; readonly by: readonly number[] }[],
  isOn: (by: readonly number[]) => boolean,
): { readonly most: number; readonly some: number } => {
  let [run, most] = [0, 0];
  for (const { step, by } of left) {
    run = isOn(by) ? run + step : 0;
    most = Math.max(most, run);
  }
  return { most, some: most };
};

const reaches = ({ segment, radius }: TruthCut, p: Point, tolerance: number): boolean =>
  distanceToSegment(segment, p) <= radius + tolerance;
