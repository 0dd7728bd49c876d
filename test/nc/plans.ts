/**
 * Plans for testing programs: polygons with sharp and rounded corners whose wire-centre paths are known by plain trigonometry,
 * worked out here and nowhere else, so that neither the planner nor the reader can be wrong in the same way.
 */

import { arc, line, type Point, type Segment } from '../../src/geometry/segment.ts';
import type { ProgramPlan } from '../../src/nc/write/write.ts';
import type { Step } from '../../src/plan/plan.ts';
import type { Figure } from '../../src/quantity/figure.ts';
import { name } from '../../src/text/part.ts';
import { only } from '../../src/text/say.ts';
import type { Random } from '../seeded.ts';
import { there } from '../there.ts';

const length = (value: number): Figure => ({ value, low: value, high: value, unit: 'mm' }) as Figure;

export interface PlanWish {
  readonly contours: number;
  readonly passes: number;
  readonly vertices: number;
  readonly outsideCorners: 'arc' | 'intersection';
  /** Offsets are whole multiples of this, so that register and radius round alike or not at the caller's wish. */
  readonly offsetStep: number;
}

/** One turn of one pass: what is programmed and what the wire's centre does, approach and leave included. */
export interface Lap {
  readonly side: 'left' | 'right';
  readonly offset: number;
  readonly condition: number;
  readonly register: number;
  readonly programmed: readonly Segment[];
  readonly centre: readonly Segment[];
}

export interface TestPlan {
  readonly plan: ProgramPlan;
  readonly laps: readonly Lap[];
  readonly stops: readonly { readonly sentence: string; readonly optional: boolean }[];
  readonly travels: readonly Point[];
}

export const testPlan = (random: Random, wish: PlanWish): TestPlan => {
  const passes = Array.from({ length: wish.passes }, (_, k) => {
    const offset = Math.max(1, Math.round((0.13 + 0.08 * (wish.passes - k) * (0.5 + random())) / wish.offsetStep)) * wish.offsetStep;
    return { number: k + 1, condition: 3 * k + 1, register: k + 1, offset: length(offset), gap: length(0.01 + 0.01 * k) };
  });
  const steps: Step[] = [];
  const laps: Lap[] = [];
  const stops: { sentence: string; optional: boolean }[] = [];
  const travels: Point[] = [];
  for (let index = 0; index < wish.contours; index += 1) {
    const shape = usableShape(random, { x: 40 * (index % 7) + random(), y: 40 * Math.floor(index / 7) - random() }, passes, wish);
    travels.push(shape.hole);
    steps.push(
      { kind: 'contour begins', loop: `L${index + 1}`, name: only(name(`L${index + 1} opening`)) },
      { kind: 'travel', to: shape.hole },
    );
    steps.push({ kind: 'thread', at: shape.hole });
    for (const [k, lap] of shape.laps.entries()) {
      const { number } = there(passes[k]);
      laps.push(lap);
      steps.push({ kind: 'condition', pass: number }, { kind: 'compensate', side: lap.side, register: lap.register });
      steps.push(...there(shape.cuts[k]).slice(0, -1));
      if (random() < 0.5) {
        const [purpose, loop] = [random() < 0.5 ? 'check' : 'secure slug', `L${index + 1}`] as const;
        const sentence = there(sentences[Math.floor(random() * sentences.length)]);
        stops.push({ sentence: `${loop} ${sentence}`, optional: purpose === 'check' });
        steps.push({ kind: 'stop', purpose, loop, text: only(name(sentence)) });
      }
      steps.push({ kind: 'cancel compensation' }, there(there(shape.cuts[k]).at(-1)));
    }
    steps.push({ kind: 'cut wire' });
  }
  steps.push({ kind: 'end' });
  return { plan: { steps, passes }, laps, stops, travels };
};

const sentences = [
  'Secure the slug (0.123 kg) with a magnet; then press start.',
  'Measure Ø 6 ± 0.01 and go on.',
  'Take the piece out: it weighs 1.5 kg, hold it with both hands, mind the wire, close the door, fill the tank again and press start.',
  'Prüfen',
];

interface Shape {
  readonly hole: Point;
  readonly laps: readonly Lap[];
  /** Per lap: the approach, the turn and the leave as steps of a plan. */
  readonly cuts: readonly (readonly Extract<Step, { kind: 'cut' }>[])[];
}

type Passes = ProgramPlan['passes'];

const usableShape = (random: Random, at: Point, passes: Passes, wish: PlanWish): Shape => {
  for (;;) {
    const shape = shapeOf(random, at, passes, wish);
    if (shape !== 'does not fit') return shape;
  }
};

/** A star-shaped polygon; wire inside or outside; every second pass the other way round. */
const shapeOf = (random: Random, at: Point, passes: Passes, wish: PlanWish): Shape | 'does not fit' => {
  const corners = Array.from({ length: wish.vertices }, (_, k) => {
    const angle = (2 * Math.PI * (k + 0.6 * random())) / wish.vertices;
    const radius = 5 + 9 * random();
    return { x: at.x + radius * Math.cos(angle), y: at.y + radius * Math.sin(angle) };
  });
  const inside = random() < 0.5;
  const roundings: readonly (number | 'sharp' | 'as the offset')[] = corners.map(() =>
    random() < 0.35 ? 'sharp' : random() < 0.3 ? 'as the offset' : 0.3 + 1.2 * random(),
  );
  const [first, second] = [there(corners[0]), there(corners[1])];
  const share = 0.4 + 0.2 * random();
  const entry = between(first, second, share);
  const edge = directionOf(first, second);
  const depth = there(passes[0]).offset.value + 0.4 + random();
  const way = inside ? 1 : -1;
  const slant = 0.4 * (random() - 0.5);
  const hole = { x: entry.x + way * depth * -edge.y + slant * edge.x, y: entry.y + way * depth * edge.x + slant * edge.y };
  const laps: Lap[] = [];
  const cuts: Extract<Step, { kind: 'cut' }>[][] = [];
  for (const [k, pass] of passes.entries()) {
    const forward = k % 2 === 0;
    const order = forward ? [...corners.slice(1), there(corners[0])] : [there(corners[0]), ...corners.slice(1).reverse()];
    const radii = forward ? [...roundings.slice(1), there(roundings[0])] : [there(roundings[0]), ...roundings.slice(1).reverse()];
    const signed = (inside === forward ? 1 : -1) * pass.offset.value;
    const turn = turnOf(entry, order, radii, signed, wish.outsideCorners);
    if (turn === 'does not fit') return turn;
    const made = cutsOf(hole, entry, turn, pass.number, signed, forward ? edge : { x: -edge.x, y: -edge.y });
    cuts.push(made);
    laps.push({
      side: signed > 0 ? 'left' : 'right',
      offset: pass.offset.value,
      condition: pass.condition,
      register: pass.register,
      programmed: made.flatMap((cut) => (cut.programmed === undefined ? [] : [cut.programmed])),
      centre: made.flatMap((cut) => (cut.centre === undefined ? [] : [cut.centre])),
    });
  }
  return { hole, laps, cuts };
};

interface Piece {
  readonly programmed?: Segment;
  readonly centre?: Segment;
}

/** Round the corners from the entry back to the entry. */
const turnOf = (
  entry: Point,
  corners: readonly Point[],
  roundings: readonly (number | 'sharp' | 'as the offset')[],
  signed: number,
  outsideCorners: 'arc' | 'intersection',
): readonly Piece[] | 'does not fit' => {
  const pieces: Piece[] = [];
  const offset = Math.abs(signed);
  let programmedAt = entry;
  let centreAt = beside(entry, directionOf(entry, there(corners[0])), signed);
  for (const [k, corner] of corners.entries()) {
    const before = directionOf(programmedAt, corner);
    const after = directionOf(corner, corners[k + 1] ?? entry);
    const theta = Math.atan2(before.x * after.y - before.y * after.x, before.x * after.x + before.y * after.y);
    if (Math.abs(theta) < 0.05 || Math.abs(theta) > 2.6) return 'does not fit';
    const inner = theta > 0 === signed > 0;
    const wished = there(roundings[k]);
    const radius = wished === 'sharp' ? 0 : wished === 'as the offset' ? offset : inner ? Math.max(wished, offset) : wished;
    const trim = radius * Math.tan(Math.abs(theta) / 2);
    const meet = offset * Math.tan(Math.abs(theta) / 2);
    const room = inner ? Math.max(trim, meet) : trim;
    if (room + 0.3 > (k === 0 ? 1 : 0.5) * distance(programmedAt, corner)) return 'does not fit';
    if (room + 0.3 > 0.5 * distance(corner, corners[k + 1] ?? entry)) return 'does not fit';
    const leave = along(corner, before, -trim);
    const enter = along(corner, after, trim);
    const way = Math.sign(theta);
    if (radius > 0) {
      const centre = beside(leave, before, way * radius);
      const [a, b] = [beside(leave, before, signed), beside(enter, after, signed)];
      pieces.push({ programmed: line(programmedAt, leave), centre: line(centreAt, a) });
      const vanished = inner && radius <= offset;
      const path = radius - way * signed;
      pieces.push({
        programmed: exact(leave, enter, centre, radius, theta),
        ...(vanished ? {} : { centre: exact(a, b, centre, path, theta) }),
      });
      programmedAt = enter;
      centreAt = vanished ? a : b;
    } else {
      const [a, b] = [beside(corner, before, signed), beside(corner, after, signed)];
      const meeting = along(a, before, inner ? -meet : meet);
      const crisp = inner || (outsideCorners === 'intersection' && 1 / Math.cos(theta / 2) <= 2);
      pieces.push({ programmed: line(programmedAt, corner), centre: line(centreAt, crisp ? meeting : a) });
      if (!crisp) pieces.push({ centre: arc(a, b, corner, theta) });
      programmedAt = corner;
      centreAt = crisp ? meeting : b;
    }
  }
  const last = directionOf(programmedAt, entry);
  pieces.push({ programmed: line(programmedAt, entry), centre: line(centreAt, beside(entry, last, signed)) });
  return pieces;
};

const cutsOf = (
  hole: Point,
  entry: Point,
  turn: readonly Piece[],
  pass: number,
  signed: number,
  edge: Point,
): Extract<Step, { kind: 'cut' }>[] => {
  const first = beside(entry, edge, signed);
  const last = there(there(turn.at(-1)).centre).to;
  return [
    { kind: 'cut', pass, part: 'approach', programmed: line(hole, entry), centre: line(hole, first) },
    ...turn.map((piece) => ({ kind: 'cut', pass, part: 'contour', ...piece }) as const),
    { kind: 'cut', pass, part: 'leave', programmed: line(entry, hole), centre: line(last, hole) },
  ];
};

const exact = (from: Point, to: Point, centre: Point, radius: number, sweep: number): Segment => ({
  kind: 'arc',
  from,
  to,
  centre,
  radius,
  sweep,
});
const distance = (a: Point, b: Point): number => Math.hypot(a.x - b.x, a.y - b.y);
const directionOf = (a: Point, b: Point): Point => ({ x: (b.x - a.x) / distance(a, b), y: (b.y - a.y) / distance(a, b) });
const along = (p: Point, d: Point, by: number): Point => ({ x: p.x + d.x * by, y: p.y + d.y * by });
const beside = (p: Point, d: Point, by: number): Point => ({ x: p.x - d.y * by, y: p.y + d.x * by });
const between = (a: Point, b: Point, share: number): Point => ({ x: a.x + (b.x - a.x) * share, y: a.y + (b.y - a.y) * share });
