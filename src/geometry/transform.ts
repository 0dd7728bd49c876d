/** Moving, turning, mirroring and scaling: similarities only, under which lines stay lines and arcs stay arcs. */
import { sineCosine, sineCosineOfDegrees } from './angle.ts';
import type { Chain } from './contour.ts';
import type { Point, Segment } from './segment.ts';
import { isFullCircle } from './segment.ts';

/** x' = a x - s b y + moveX, y' = b x + s a y + moveY with s = -1 where it mirrors; a² + b² is the square of the scale. */
export interface Similarity {
  readonly a: number;
  readonly b: number;
  readonly mirrors: boolean;
  readonly moveX: number;
  readonly moveY: number;
}

export const translation = (x: number, y: number): Similarity => ({ a: 1, b: 0, mirrors: false, moveX: x, moveY: y });

/** Counter-clockwise by an angle in rad about a point; quarter turns are exact. */
export const rotation = (angle: number, about: Point = ORIGIN): Similarity => {
  const { sine, cosine } = sineCosine(angle);
  return aboutPoint({ a: cosine, b: sine, mirrors: false, moveX: 0, moveY: 0 }, about);
};

/** Counter-clockwise by degrees about a point; multiples of 90 are exact. */
export const rotationOfDegrees = (degrees: number, about: Point = ORIGIN): Similarity => {
  const { sine, cosine } = sineCosineOfDegrees(degrees);
  return aboutPoint({ a: cosine, b: sine, mirrors: false, moveX: 0, moveY: 0 }, about);
};

/** By a factor above 0 about a point. */
export const scaling = (factor: number, about: Point = ORIGIN): Similarity => {
  if (!(factor > 0 && Number.isFinite(factor))) throw new RangeError(`a drawing is scaled by a factor above 0, not by ${factor}`);
  return aboutPoint({ a: factor, b: 0, mirrors: false, moveX: 0, moveY: 0 }, about);
};

/** In the line through a point at an angle in rad to the x axis: 0 turns y over, pi/2 turns x over. */
export const mirroring = (angle: number, about: Point = ORIGIN): Similarity => {
  const { sine, cosine } = sineCosine(2 * angle);
  return aboutPoint({ a: cosine, b: sine, mirrors: true, moveX: 0, moveY: 0 }, about);
};

/** First the one, then the other. */
export const inTurn = (first: Similarity, second: Similarity): Similarity => {
  const s = second.mirrors ? -1 : 1;
  const move = transformPoint(second, { x: first.moveX, y: first.moveY });
  return {
    a: second.a * first.a - s * second.b * first.b,
    b: second.b * first.a + s * second.a * first.b,
    mirrors: first.mirrors !== second.mirrors,
    moveX: move.x,
    moveY: move.y,
  };
};

export const scaleOf = (t: Similarity): number => (t.b === 0 ? Math.abs(t.a) : t.a === 0 ? Math.abs(t.b) : Math.hypot(t.a, t.b));

export const transformPoint = (t: Similarity, p: Point): Point => {
  const y = t.mirrors ? -p.y : p.y;
  return { x: t.a * p.x - t.b * y + t.moveX, y: t.b * p.x + t.a * y + t.moveY };
};

/** A mirror turns the sense of arcs round. */
export const transformSegment = (t: Similarity, segment: Segment): Segment => {
  const from = transformPoint(t, segment.from);
  const to = isFullCircle(segment) ? from : transformPoint(t, segment.to);
  if (segment.kind === 'line') return { kind: 'line', from, to };
  return {
    kind: 'arc',
    from,
    to,
    centre: transformPoint(t, segment.centre),
    radius: segment.radius * scaleOf(t),
    sweep: t.mirrors ? -segment.sweep : segment.sweep,
  };
};

/** Equal ends stay equal, as they get the same arithmetic. A mirrored contour runs the other way round. */
export const transformChain = <C extends Chain>(t: Similarity, chain: C): C => ({
  ...chain,
  segments: chain.segments.map((s) => transformSegment(t, s)),
});

const ORIGIN: Point = { x: 0, y: 0 };

const aboutPoint = (t: Similarity, about: Point): Similarity => {
  const moved = transformPoint(t, about);
  return { ...t, moveX: about.x - moved.x, moveY: about.y - moved.y };
};
