/**
 * What a fault put into a right program changes: measured against the right program's own kerf and the drawing, so that it serves
 * every kind of cut. A fault is harmless by one rule: nowhere along what is wanted does the nearest kerf lie further off by more
 * than the tolerance, nowhere does the wire reach deeper than the tolerance into metal that stays, no
 * piece falls unheld, and the wire is threaded only where no metal is.
 */
import { boundsOfChain } from '../../src/geometry/area.ts';
import { contour } from '../../src/geometry/contour.ts';
import { lengthOf, pointAt } from '../../src/geometry/measure.ts';
import { distanceTo } from '../../src/geometry/near/distance.ts';
import { contains } from '../../src/geometry/near/inside.ts';
import type { Point } from '../../src/geometry/segment.ts';
import type { Action } from '../../src/nc/read/program.ts';
import { there } from '../there.ts';
import { energyTruth } from './energy-truth.ts';
import type { PlannedJob } from './planned-jobs.ts';
import { type Raster, rasterOf } from './raster.ts';
import { clearance, cutsOf, looseFaults, type Truth, type TruthCut } from './truth.ts';
import { startFaults, wireFaults } from './wire-truth.ts';

const STEP = 0.04;
const SQUARE = 0.08;

export interface Good {
  readonly job: PlannedJob;
  readonly cuts: readonly TruthCut[];
  readonly places: readonly Place[];
  readonly clearances: readonly number[];
  /** Leads of later passes run through where a slug lay that is gone by then. */
  readonly broken: boolean;
}

export const goodOf = (job: PlannedJob, actions: readonly Action[]): Good => {
  const question = { ...job.question, program: '' };
  const cuts = cutsOf(actions, question);
  const places = placesOf(job);
  const { broken } = looseFaults(actions, cuts, question, rasterOfCuts(job, cuts));
  return { job, cuts, places, clearances: places.map((p) => short(cuts, p)), broken };
};

export const changeOf = (good: Good, actions: readonly Action[]): Truth => {
  const question = { ...good.job.question, program: '' };
  const cuts = cutsOf(actions, question);
  const left = good.places.reduce((most, p, i) => Math.max(most, short(cuts, p) - Math.max(0, there(good.clearances[i]))), 0);
  const raster = rasterOfCuts(good.job, cuts);
  const loose = certainlyLoose(good.job, actions, cuts, raster);
  // Nobody can say how wide the wire cuts with a setting that has no gap.
  const unset = cuts.some((c) => c.radius === question.wireDiameter / 2) ? ['a cut has no known gap'] : [];
  const start = startFaults(actions, cuts, question, raster);
  const energy = energyTruth(actions, cuts, question, raster);
  const faults = [...loose.faults, ...wireFaults(actions, question, raster), ...start.faults, ...energy.faults, ...unset];
  return {
    left,
    gouge: Math.max(gougeOf(good, cuts), biteOf(good, cuts)),
    faults,
    unclear: loose.unclear || start.unclear || energy.unclear || (loose.broken && !good.broken),
  };
};

/** Whether what comes loose hangs on less than the squares can show: with kerfs a little narrower something is amiss. */
export const hangsOnLittle = ({ job }: Good, actions: readonly Action[]): boolean => {
  const question = { ...job.question, program: '' };
  const narrow = cutsOf(actions, question).map((c) => ({ ...c, radius: c.radius - 0.75 * SQUARE }));
  return looseFaults(actions, narrow, question, rasterOfCuts(job, narrow)).faults.length > 0;
};

/** A bridge of metal thinner than the squares can show may hold or not: what comes loose must do so with narrower kerfs too. */
const certainlyLoose = (job: PlannedJob, actions: readonly Action[], cuts: readonly TruthCut[], raster: Raster) => {
  const question = { ...job.question, program: '' };
  const loose = looseFaults(actions, cuts, question, raster);
  if (loose.faults.length === 0) return loose;
  const narrow = cuts.map((c) => ({ ...c, radius: c.radius - 0.75 * SQUARE }));
  const sure = looseFaults(actions, narrow, question, rasterOfCuts(job, narrow)).faults.length > 0;
  return sure ? loose : { ...loose, faults: [], unclear: true };
};

interface Place extends Point {
  /** In the middle of a slit, whose width is what the kerf gives: there the way of the wire's centre counts. */
  readonly middle: boolean;
}

/** Along contours and open lines, within the block. */
const placesOf = ({ question }: PlannedJob): readonly Place[] => {
  const chains = [
    ...question.wanted.map((w) => ({ segments: w.contour.segments, middle: false })),
    ...(question.wantedOpen ?? []).map((o) => ({ segments: o.path.segments, middle: o.kept === 'slit' })),
  ];
  return chains
    .flatMap(({ segments, middle }) => segments.flatMap((s) => spread(lengthOf(s)).map((t) => ({ ...pointAt(s, t), middle }))))
    .filter((p) => contains(question.block, p, 0) === 'inside');
};

const short = (cuts: readonly TruthCut[], p: Place): number => clearance(p.middle ? cuts.map((c) => ({ ...c, radius: 0 })) : cuts, p);

const spread = (length: number): readonly number[] => {
  const steps = Math.ceil(length / STEP);
  return Array.from({ length: steps }, (_, i) => (i + 0.5) / steps);
};

/** How far from a corner of the drawing the metal begins that should begin there: a tip cut off between two kerfs is deeper than either. */
const biteOf = ({ cuts: right, job }: Good, cuts: readonly TruthCut[]): number => {
  const { block, tolerance, wanted } = job.question;
  let worst = 0;
  for (const { contour: edge, kept } of wanted)
    for (const { from: p } of edge.segments) {
      const least = -clearance(cuts, p);
      if (least < tolerance / 2 || clearance(right, p) < -1e-3 || contains(block, p, 0) !== 'inside') continue;
      const side = kept === 'punch' ? 'inside' : 'outside';
      const isMetal = (q: Point): boolean => clearance(cuts, q) >= 0 && contains(edge, q, 0) === side;
      let away = least;
      while (away < 3 * tolerance && !around(p, away).some(isMetal)) away += 5e-4;
      worst = Math.max(worst, away);
    }
  return worst;
};

const around = (p: Point, radius: number): readonly Point[] =>
  Array.from({ length: 90 }, (_, k) => ({
    x: p.x + radius * Math.cos((k * Math.PI) / 45),
    y: p.y + radius * Math.sin((k * Math.PI) / 45),
  }));

/** Never deeper than the disc of the wire stands out of the right kerf, nor than it reaches over the drawing. */
const gougeOf = (good: Good, cuts: readonly TruthCut[]): number => {
  const { question } = good.job;
  const edges = [...question.wanted.map((w) => w.contour), ...(question.wantedOpen ?? []).map((o) => o.path)];
  const box = boundsOfChain(question.block);
  let worst = 0;
  for (const { segment, radius } of cuts) {
    const steps = Math.max(2, Math.ceil(lengthOf(segment) / STEP));
    for (let i = 0; i <= steps; i += 1) {
      const p = pointAt(segment, i / steps);
      if (p.x < box.minX - radius || p.x > box.maxX + radius || p.y < box.minY - radius || p.y > box.maxY + radius) continue;
      const beyond = clearance(good.cuts, p) + radius;
      if (beyond <= worst) continue;
      const nearest = Math.min(...edges.map((e) => distanceTo(e, p)));
      const depth = isWaste(p, good.job) ? Math.max(0, radius - nearest) : radius + nearest;
      const outside = contains(question.block, p, 0) === 'inside' ? 0 : distanceTo(question.block, p);
      worst = Math.max(worst, Math.min(beyond, depth, radius - outside));
    }
  }
  return worst;
};

/** By the smallest contour round the place; outside all, what the job says of its frame. */
const isWaste = (p: Point, { question, frame, waste }: PlannedJob): boolean => {
  const around = question.wanted
    .filter((w) => contains(w.contour, p, 0) === 'inside')
    .map((w) => ({ kept: w.kept, box: boundsOfChain(w.contour) }))
    .sort((a, b) => (a.box.maxX - a.box.minX) * (a.box.maxY - a.box.minY) - (b.box.maxX - b.box.minX) * (b.box.maxY - b.box.minY))[0];
  if (around !== undefined) return around.kept === 'die';
  return frame === 'waste' || (waste !== undefined && contains(contour(waste), p, 0) === 'inside');
};

/** What is clamped holds the right upper corner of the block: so the jobs are made. */
const rasterOfCuts = ({ question }: PlannedJob, cuts: readonly TruthCut[]): Raster => {
  const { minX, minY, maxX, maxY } = boundsOfChain(question.block);
  return rasterOf(cuts, {
    low: { x: minX, y: minY },
    high: { x: maxX, y: maxY },
    size: SQUARE,
    frame: { x: maxX - 0.5, y: maxY - 0.5 },
    isAir: (x, y) => question.holes.some((h) => (h.at.x - x) ** 2 + (h.at.y - y) ** 2 < (h.diameter / 2) ** 2),
  });
};
