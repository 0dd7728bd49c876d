/** Points and directions on an elliptic arc. */
import { sineCosine } from '../geometry/angle.ts';
import type { EllipticArc } from './curve.ts';
import { type ParametricCurve, unit } from './parametric.ts';

/** The arc with its own parameter; one that runs backwards is turned so that its parameter rises from `start`. */
export const ellipseCurve = (arc: EllipticArc): ParametricCurve => {
  const { centre, major, minor } = arc;
  const way = arc.end < arc.start ? -1 : 1;
  const start = way * arc.start;
  return {
    start,
    end: way * arc.end,
    pointAt: (t) => {
      const { sine, cosine } = sineCosine(way * t);
      return { x: centre.x + cosine * major.x + sine * minor.x, y: centre.y + cosine * major.y + sine * minor.y };
    },
    tangentAt: (t) => {
      const { sine, cosine } = sineCosine(way * t);
      return unit(way * (cosine * minor.x - sine * major.x), way * (cosine * minor.y - sine * major.y));
    },
    breaks: [],
  };
};
