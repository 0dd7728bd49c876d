/** For tests: shapes, questions, and a judge that looks for faults in a plan without knowing how it was made. */
import { there } from '../../test/there.ts';
import { type Contour, contour } from '../geometry/contour.ts';
import { lengthOf, pointAt } from '../geometry/measure.ts';
import { lookupOf, nearestIn } from '../geometry/near/lookup.ts';
import { arc, circle, distanceBetween, line, type Point, point, type Segment } from '../geometry/segment.ts';
import { standardMachine } from '../physics/cut/machine.ts';
import { findMaterial } from '../physics/material/find-material.ts';
import type { Material } from '../physics/material/material.ts';
import { wires } from '../physics/wire/wires.ts';
import { sentenceOf } from '../text/finding.fixture.ts';
import { planCut } from './cut/plan-cut.ts';
import type { CutPlan, Step } from './plan.ts';
import type { PlanQuestion, WantedLoop } from './question.ts';

export const polygon = (...corners: readonly (readonly [number, number])[]): Contour =>
  contour(corners.map(([x, y], i) => line(point(x, y), point(...(corners[(i + 1) % corners.length] as [number, number])))));

export const rectangle = (x: number, y: number, width: number, height: number): Contour =>
  polygon([x, y], [x + width, y], [x + width, y + height], [x, y + height]);

export const disc = (x: number, y: number, radius: number): Contour => contour([circle(point(x, y), radius)]);

/** Two straights and two half circles; `width` over all. */
export const slot = (x: number, y: number, length: number, width: number): Contour => {
  const r = width / 2;
  const [a, b, c, d] = [point(x, y - r), point(x + length, y - r), point(x + length, y + r), point(x, y + r)];
  return contour([line(a, b), arc(b, c, point(x + length, y), Math.PI), line(c, d), arc(d, a, point(x, y), Math.PI)]);
};

/** A star with inside and outside corners. */
export const star = (x: number, y: number, tips: number, outer: number, inner: number): Contour =>
  polygon(
    ...Array.from({ length: 2 * tips }, (_, i): readonly [number, number] => {
      const r = i % 2 === 0 ? outer : inner;
      const angle = (i * Math.PI) / tips;
      return [x + r * Math.cos(angle), y + r * Math.sin(angle)];
    }),
  );

export const loop = (id: string, c: Contour, depth = 0, parent?: string): WantedLoop => ({
  id,
  contour: c,
  depth,
  ...(parent === undefined ? {} : { parent }),
});

const steel = (): Material => {
  const found = findMaterial('d2');
  if (found.kind !== 'material') throw new Error('the list of materials has no d2');
  return found.material;
};

export const questionFor = (loops: readonly WantedLoop[], changes: Partial<PlanQuestion> = {}): PlanQuestion => ({
  loops,
  holes: [],
  marks: [],
  outline: 'cut',
  kept: {},
  blockMargin: 10,
  wires,
  machine: standardMachine,
  material: steel(),
  height: 25,
  flush: 'sealed',
  finish: 0.8,
  finishRule: 'mean',
  tolerance: 0.02,
  insideCorner: 0.25,
  startHole: 2,
  run: 'attended',
  outsideCorners: 'arc',
  resolution: { unit: 1, decimals: 4 },
  ...changes,
});

/** The plan of what can be cut as asked; a refusal is an error of the test. */
export const planned = (question: PlanQuestion): CutPlan => {
  const plan = planCut(question);
  if (plan.kind === 'refused') throw new Error(sentenceOf(plan.findings.find((f) => f.severity === 'refusal')));
  return plan;
};

/** A plate with openings of several kinds, itself a part. */
export const plate = (): readonly WantedLoop[] => [
  loop('L1', rectangle(0, 0, 120, 80)),
  loop('L2', rectangle(10, 10, 20, 15), 1, 'L1'),
  loop('L3', disc(50, 20, 8), 1, 'L1'),
  loop('L4', slot(75, 20, 30, 6), 1, 'L1'),
  loop('L5', star(30, 55, 7, 16, 10), 1, 'L1'),
];

type CutStep = Extract<Step, { readonly kind: 'cut' }>;

/** Everything that is wrong with a plan, in sentences; none when it is right. */
export const faultsOf = (plan: CutPlan, question: PlanQuestion): readonly string[] => [
  ...joints(plan),
  ...gouges(plan, question),
  ...coverage(plan),
  ...order(plan),
];

const joints = (plan: CutPlan): string[] => {
  const faults: string[] = [];
  let centre: Point | undefined;
  let programmed: Point | undefined;
  plan.steps.forEach((step, i) => {
    if (step.kind === 'travel') [centre, programmed] = [step.to, step.to];
    if (step.kind === 'thread' && (centre === undefined || distanceBetween(centre, step.at) > 1e-9))
      faults.push(`step ${i}: threads elsewhere`);
    if (step.kind !== 'cut') return;
    if (step.centre !== undefined) {
      if (centre === undefined || distanceBetween(centre, step.centre.from) > 1e-8) faults.push(`step ${i}: the centre path jumps`);
      centre = step.centre.to;
    }
    if (step.programmed !== undefined) {
      if (programmed === undefined || distanceBetween(programmed, step.programmed.from) > 1e-8)
        faults.push(`step ${i}: the programmed path jumps`);
      programmed = step.programmed.to;
    }
    for (const s of [step.centre, step.programmed]) if (s !== undefined && !sound(s)) faults.push(`step ${i}: a segment is not sound`);
  });
  return faults;
};

const sound = (s: Segment): boolean => {
  if (!(lengthOf(s) > 0)) return false;
  if (s.kind === 'line') return true;
  return Math.abs(distanceBetween(s.from, s.centre) - s.radius) < 1e-8 && distanceBetween(pointAt(s, 1 - 1e-12), s.to) < 1e-6;
};

/** The wire's centre never nearer to a wanted contour than the offset of its pass. */
const gouges = (plan: CutPlan, question: PlanQuestion): string[] => {
  const cut = new Set(plan.contours.map((c) => c.loop));
  const lookups = question.loops.filter((l) => cut.has(l.id)).map((l) => ({ id: l.id, lookup: lookupOf(l.contour) }));
  const offsets = new Map(plan.passes.map((p) => [p.number, p.offset.value]));
  const faults: string[] = [];
  plan.steps.forEach((step, i) => {
    if (step.kind !== 'cut' || step.centre === undefined) return;
    for (let n = 0; n <= 8; n += 1) {
      const p = pointAt(step.centre, n / 8);
      for (const { id, lookup } of lookups) {
        const away = nearestIn(lookup, p).distance;
        const offset = there(offsets.get(step.pass));
        if (away < offset - 1e-6)
          faults.push(`step ${i} (${step.part}, pass ${step.pass}) comes ${away} mm near ${id}, its offset is ${offset} mm`);
      }
    }
  });
  return faults;
};

/** 1, and 11 of the second family of passes. */
const isRough = (pass: number): boolean => pass % 10 === 1;

/** Each pass goes round each contour once, tab included, and past its start. */
const coverage = (plan: CutPlan): string[] => {
  const travelled = new Map<string, number>();
  let current = '';
  for (const step of plan.steps) {
    if (step.kind === 'contour begins') current = step.loop;
    if (step.kind !== 'cut' || step.programmed === undefined) continue;
    const key = `${current} ${step.pass} ${step.part}`;
    travelled.set(key, (travelled.get(key) ?? 0) + lengthOf(step.programmed));
  }
  return plan.contours.flatMap(({ loop: id, kept, courses, tab }) =>
    courses.flatMap(({ pass, programmed }) => {
      const round = programmed.segments.reduce((sum, s) => sum + lengthOf(s), 0);
      const sum = (part: CutStep['part']): number => travelled.get(`${id} ${pass} ${part}`) ?? 0;
      const faults: string[] = [];
      if (isRough(pass) && Math.abs(sum('contour') + sum('tab') - round) > 0.005) faults.push(`${id}: the rough does not close`);
      if (isRough(pass) && Math.abs(sum('tab') - (tab?.length ?? 0)) > 0.05) faults.push(`${id}: the tab has another length`);
      if (!isRough(pass) && sum('contour') + sum('tab') + sum('overlap') < round + 0.19) faults.push(`${id}: pass ${pass} leaves a gap`);
      if (!isRough(pass) && kept === 'die' && Math.abs(sum('overlap') - 0.3) > 0.05) faults.push(`${id}: pass ${pass} has no overlap`);
      return faults;
    }),
  );
};

/** Somebody holds the piece before its tab is cut, and takes it out after; inner loops come before those around them. */
const order = (plan: CutPlan): string[] => {
  const faults: string[] = [];
  const state = new Map<string, 'standing' | 'held' | 'cut' | 'out'>();
  let current = '';
  for (const step of plan.steps) {
    if (step.kind === 'contour begins') current = step.loop;
    const now = state.get(current) ?? 'standing';
    if (step.kind === 'stop' && (step.purpose === 'secure slug' || step.purpose === 'secure part')) state.set(step.loop, 'held');
    if (step.kind === 'cut' && step.part === 'tab' && isRough(step.pass)) {
      if (now === 'standing') faults.push(`${current}: nobody holds the piece`);
      state.set(current, 'cut');
    }
    if (step.kind === 'stop' && (step.purpose === 'take out slug' || step.purpose === 'take out part')) {
      if (now !== 'cut') faults.push(`${current}: taken out before it is free`);
      state.set(step.loop, 'out');
    }
  }
  for (const { loop: id, core, tab } of plan.contours) {
    if (core === undefined && state.get(id) !== 'out') faults.push(`${id}: the piece is never taken out`);
    if (core !== undefined && (state.has(id) || tab !== undefined)) faults.push(`${id}: nobody is needed where there is no core`);
  }
  if (plan.steps.at(-1)?.kind !== 'end') faults.push('the plan does not end');
  return faults;
};

export const cutLength = (plan: CutPlan): number =>
  plan.steps.reduce((sum, s) => sum + (s.kind === 'cut' && s.centre !== undefined ? lengthOf(s.centre) : 0), 0);
