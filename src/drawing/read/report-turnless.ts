/** Tells of arcs that end at the angle where they start: the remains of a fillet, or a circle that somebody may have meant. */

import { nearPoints } from '../../geometry/near/near-points.ts';
import type { Point } from '../../geometry/segment.ts';
import type { Finding, Place } from '../../text/finding.ts';
import { length, type Part } from '../../text/part.ts';
import { say } from '../../text/say.ts';
import type { Curve, DrawnCurve } from '../curve/curve.ts';
import { ellipseCurve } from '../curve/ellipse.ts';
import type { DrawingUnits } from '../drawing.ts';
import { find } from '../findings.ts';
import { type DrawnPiece, fromOf, toOf } from '../piece/piece.ts';
import { point, spot } from '../place-in-file.ts';

/** @param join mm: so near to another end an arc without turn is what was left of a fillet */
export const reportTurnless = (
  arcs: readonly DrawnCurve[],
  pieces: readonly DrawnPiece[],
  units: DrawingUnits,
  join: number,
): Finding[] => {
  if (arcs.length === 0) return [];
  const endsAt = endsOf(pieces, Math.max(join, LEAST_REACH));
  return arcs.map((arc) => told(arc, endsAt, units));
};

const told = ({ curve, hidden }: DrawnCurve, endsAt: (at: Point) => boolean, units: DrawingUnits): Finding => {
  const { start, centre, radius } = roundOf(curve, units.millimetres);
  const [at, place] = [point(start, units), spot(start, units, radius)];
  return endsAt(start) ? remains(at, place) : question(at, { centre: point(centre, units), radius }, place, hidden);
};

const remains = (at: Part, place: Place): Finding =>
  find('arc-without-turn/at-an-end', say`An arc at ${{ at }} ends at the angle where it starts, where other lines end.`, {
    place,
    severity: 'note',
    done: say`It was left out as what was left of a fillet.`,
  });

const question = (at: Part, round: { readonly centre: Part; readonly radius: number }, place: Place, hidden: boolean): Finding =>
  find(
    'arc-without-turn',
    say`An arc about ${{ centre: round.centre }}, of radius ${{ radius: length(round.radius) }}, ends at the angle where it starts, at ${{ at }}: it is nothing, or a full circle.`,
    {
      place,
      severity: hidden ? 'note' : 'doubt',
      done: say`It was left out.`,
      remedy: say`If an opening is meant, draw it as a circle; otherwise delete the arc.`,
    },
  );

/** Whether a piece starts or ends at a place. */
const endsOf = (pieces: readonly DrawnPiece[], reach: number): ((at: Point) => boolean) => {
  const near = nearPoints(2 * pieces.length, reach);
  pieces.forEach((piece, i) => {
    near.add(2 * i, fromOf(piece));
    near.add(2 * i + 1, toOf(piece));
  });
  return (at) => {
    let found = false;
    near.visit(at, () => {
      found = true;
    });
    return found;
  };
};

/** Where the circle or ellipse starts, in mm, and its size. */
const roundOf = (curve: Curve, millimetres: number): { readonly start: Point; readonly centre: Point; readonly radius: number } => {
  const scaled = (p: Point): Point => ({ x: p.x * millimetres, y: p.y * millimetres });
  if (curve.kind === 'arc') return { start: scaled(curve.from), centre: scaled(curve.centre), radius: curve.radius * millimetres };
  if (curve.kind !== 'ellipse') throw new TypeError('only arcs and ellipses can be without a turn');
  const radius = Math.hypot(curve.major.x, curve.major.y) * millimetres;
  return { start: scaled(ellipseCurve(curve).pointAt(curve.start)), centre: scaled(curve.centre), radius };
};

/** mm: where no gap is joined at all, ends that differ by rounding still meet. */
const LEAST_REACH = 1e-6;
