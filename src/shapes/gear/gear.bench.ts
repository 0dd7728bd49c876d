/** How long making a gear takes, beside a plain loop that samples the same teeth into a polyline of the same tolerance. */
import type { BenchRow } from '../../../tools/bench-row.ts';
import { type Point, point } from '../../geometry/segment.ts';
import { makeShape } from '../list/make.ts';
import { type ShapeInput, shapeSchema } from '../list/questions.ts';
import { MEANS } from '../made.fixture.ts';
import { inv, involutePoint } from '../teeth/involute.ts';

interface Work {
  readonly teeth: number;
  readonly rounds: number;
  /** Part of the speed of the plain loop that we promise. */
  readonly atLeast: number;
}

const MODULE = 2;
const WORK: readonly Work[] = [
  { teeth: 20, rounds: 60, atLeast: 0.005 },
  { teeth: 200, rounds: 25, atLeast: 0.03 },
];

/** One row for each gear: ms for one, the median over rounds in which both take their turn, after a warm-up. */
export const rows = async (): Promise<BenchRow[]> => WORK.map(measure);

const measure = ({ teeth, rounds, atLeast }: Work): BenchRow => {
  const request = shapeSchema.parse({ kind: 'gear', module: MODULE, teeth } satisfies ShapeInput);
  const make = (): number => {
    const made = makeShape(request, MEANS);
    if (made.kind === 'refused') throw new Error(made.findings[0]?.code);
    return made.shape.outlines[0]?.contour.segments.length ?? 0;
  };
  const [segments, points] = [make(), sampled(teeth, request.fit).length];
  const times: [number[], number[]] = [[], []];
  for (let round = 0; round < rounds; round += 1) {
    times[0].push(timed(make));
    times[1].push(timed(() => sampled(teeth, request.fit).length));
  }
  const [ours, loop] = times.map((all) => median(all.slice(Math.floor(rounds / 5)))) as [number, number];
  return {
    name: `gear of ${teeth} teeth with root, sizes and findings`,
    ours,
    unit: 'ms',
    peers: [{ name: 'a plain loop over flanks and lands only', value: loop, atLeast }],
    note: `${segments} lines and arcs against ${points} points`,
  };
};

const timed = (run: () => number): number => {
  const start = performance.now();
  run();
  return performance.now() - start;
};

const median = (values: readonly number[]): number => values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] as number;

/** Flanks from base to tip circle and back, each by points so close that chords stay within the tolerance; no root, no sizes. */
const sampled = (teeth: number, tolerance: number): readonly Point[] => {
  const alpha = Math.PI / 9;
  const [reference, tip] = [(MODULE * teeth) / 2, (MODULE * (teeth + 2)) / 2];
  const base = reference * Math.cos(alpha);
  const half = Math.PI / (2 * teeth) + inv(alpha);
  const end = Math.sqrt((tip / base) ** 2 - 1);
  // The radius of curvature is base t: a chord over a step stays off by an eighth of step² / radius, a step in length being base t dt.
  const steps = Math.ceil(end / Math.sqrt((8 * tolerance) / base / end));
  const points: Point[] = [];
  for (let tooth = 0; tooth < teeth; tooth += 1) {
    const turn = (2 * Math.PI * tooth) / teeth;
    for (let i = 0; i <= steps; i += 1) points.push(involutePoint(base, (end * i) / steps, turn - half, 1));
    for (let i = steps; i >= 0; i -= 1) points.push(involutePoint(base, (end * i) / steps, turn + half, -1));
    points.push(point(base * Math.cos(turn + half), base * Math.sin(turn + half)));
  }
  return points;
};
