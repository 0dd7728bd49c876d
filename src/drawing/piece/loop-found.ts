/** A closed loop or an open chain as the joining hands it on: segments in mm, joined exactly, and what they came from. */

import { areaOf, boundsOfChain, perimeterOf } from '../../geometry/area.ts';
import { counterClockwise } from '../../geometry/chain.ts';
import type { Contour } from '../../geometry/contour.ts';
import { contour } from '../../geometry/contour.ts';
import type { Bounds } from '../../geometry/measure.ts';
import type { Point, Segment } from '../../geometry/segment.ts';
import { itemAt } from '../../sequence/sequence.ts';
import type { Step } from './piece.ts';
import { layerOf, segmentsOf } from './piece.ts';

export interface FoundLoop {
  /** Counter-clockwise. */
  readonly contour: Contour;
  readonly layer: string;
  readonly hidden: boolean;
  /** All of it is drawn as lines that explain, and by what that is known. */
  readonly construction?: string | undefined;
  readonly deviation: number;
  /** In mm², of the drawn curves; the contour's own differs by what fitting left. */
  readonly area: number;
  readonly perimeter: number;
  /** Of its bounds: the centre of mass of a loop that crosses itself may be anywhere. */
  readonly middle: Point;
  readonly bounds: Bounds;
}

export const foundLoop = (steps: readonly Step[], hidden: boolean): FoundLoop => {
  const drawn = contour(joinedParts(steps));
  const whole = counterClockwise(drawn);
  const excess = steps.reduce((sum, { piece, forward }) => sum + (forward ? piece.excess : -piece.excess), 0);
  const bounds = boundsOfChain(whole);
  return {
    contour: whole,
    layer: layerOf(steps.map((s) => s.piece)),
    hidden,
    construction: steps.every((s) => s.piece.construction !== undefined) ? steps[0]?.piece.construction : undefined,
    deviation: deviationOf(steps),
    area: Math.abs(areaOf(drawn) + excess),
    perimeter: perimeterOf(whole),
    middle: { x: (bounds.minX + bounds.maxX) / 2, y: (bounds.minY + bounds.maxY) / 2 },
    bounds,
  };
};

/** mm by which what was drawn may lie off the arcs that stand for it. */
export const deviationOf = (steps: readonly Step[]): number => steps.reduce((most, s) => Math.max(most, s.piece.deviation), 0);

/** The segments of a closed round of steps, where parts of one cut line or arc that follow each other are one again. */
const joinedParts = (steps: readonly Step[]): Segment[] => {
  const start = steps.findIndex((step, i) => step.piece.source !== steps.at(i - 1)?.piece.source);
  const turned = start > 0 ? [...steps.slice(start), ...steps.slice(0, start)] : steps;
  const all: Segment[] = [];
  turned.forEach((step, i) => {
    for (const segment of segmentsOf([step])) {
      const last = all.at(-1);
      const one = last && i > 0 && itemAt(turned, i - 1).piece.source === step.piece.source ? asOne(last, segment) : undefined;
      if (one) all[all.length - 1] = one;
      else all.push(segment);
    }
  });
  return all;
};

/** Two parts of the same line or arc as one segment, or undefined where they are not. */
const asOne = (a: Segment, b: Segment): Segment | undefined => {
  if (a.kind === 'line' && b.kind === 'line') {
    const [ax, ay, bx, by] = [a.to.x - a.from.x, a.to.y - a.from.y, b.to.x - b.from.x, b.to.y - b.from.y];
    const straight = ax * bx + ay * by > 0 && Math.abs(ax * by - ay * bx) <= STRAIGHT * (ax * bx + ay * by);
    return straight ? { kind: 'line', from: a.from, to: b.to } : undefined;
  }
  if (a.kind !== 'arc' || b.kind !== 'arc' || a.centre !== b.centre || Math.abs(a.sweep + b.sweep) >= 2 * Math.PI) return undefined;
  return { ...a, to: b.to, sweep: a.sweep + b.sweep };
};

/** Rad: a cut line whose parts turn by less than this was not bent by the ends it was cut at. */
const STRAIGHT = 1e-9;
