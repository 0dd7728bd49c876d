/** Points and directions on an elliptic arc. */
import { sineCosine } from '../../geometry/angle.ts';
import type { EllipticArc } from './curve.ts';
import { isFullTurn } from './oval.ts';
import type { ParametricCurve } from './parametric.ts';

/** The arc over its own parameter, which runs downwards where the arc runs backwards. */
export const ellipseCurve = ({ centre, major, minor, start, end }: EllipticArc): ParametricCurve => ({
  start,
  end,
  pointAt: (t) => {
    const { sine, cosine } = sineCosine(t);
    return { x: centre.x + cosine * major.x + sine * minor.x, y: centre.y + cosine * major.y + sine * minor.y };
  },
  tangentAt: (t) => {
    const { sine, cosine } = sineCosine(t);
    return { x: cosine * minor.x - sine * major.x, y: cosine * minor.y - sine * major.y };
  },
  seams: [],
  closed: isFullTurn(end - start),
});
