/** Arcs for hand-made drawings, and drawings reversed or turned. */
import { FULL_TURN, sineCosine, sineCosineOfDegrees } from '../geometry/angle.ts';
import { reverse } from '../geometry/cut.ts';
import type { Arc, Point, Segment } from '../geometry/segment.ts';
import type { DrawnCurve } from './curve/curve.ts';

/** By centre, radius and angles in degrees; 0 to 360 is a full circle. */
export const arcOf = ([x, y]: readonly [number, number], radius: number, from: number, to: number): Arc => {
  const at = (degrees: number): { x: number; y: number } => {
    const { sine, cosine } = sineCosineOfDegrees(degrees);
    return { x: x + radius * cosine, y: y + radius * sine };
  };
  const full = Math.abs(to - from) === 360;
  return { kind: 'arc', from: at(from), to: full ? at(from) : at(to), centre: { x, y }, radius, sweep: ((to - from) / 360) * FULL_TURN };
};

/** Every entity drawn the other way round: its pieces in the opposite order, each reversed. */
export const reversed = (curves: readonly DrawnCurve[]): DrawnCurve[] => {
  const entities = new Map<number, DrawnCurve[]>();
  for (const c of curves) entities.set(c.entity, [{ ...c, curve: reverse(c.curve as Segment) }, ...(entities.get(c.entity) ?? [])]);
  return [...entities.values()].flat();
};

/** Turned about the origin by an angle in rad and moved by the same length in x and y. */
export const turned = (curves: readonly DrawnCurve[], angle: number, by: number): DrawnCurve[] => {
  const { sine, cosine } = sineCosine(angle);
  const move = (p: Point): Point => ({ x: p.x * cosine - p.y * sine + by, y: p.x * sine + p.y * cosine + by });
  return curves.map((c) => {
    const s = c.curve as Segment;
    const ends = { from: move(s.from), to: move(s.to) };
    return { ...c, curve: s.kind === 'line' ? { ...s, ...ends } : { ...s, ...ends, centre: move(s.centre) } };
  });
};
