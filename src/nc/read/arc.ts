/** An arc as a block gives it (ends, and centre or radius, all rounded) -> arcs that are consistent to the last bit. */
import { FULL_TURN, travelled } from '../../geometry/angle.ts';
import type { Arc, Line, Point, Segment } from '../../geometry/segment.ts';
import { mm, type Part, upTo } from '../../text/part.ts';
import { say } from '../../text/say.ts';
import { type Broken, broken } from './read-outcome.ts';
import { ARC_CLOSES, RADIUS_REACHES, SHORTEST_ARC } from './tolerance.ts';

/** `apart`: the ends lie differently far from the centre, by more than rounding makes. */
export type ArcOutcome = { readonly kind: 'arcs'; readonly arcs: readonly Segment[]; readonly apart?: number | undefined } | Broken;

export interface ArcWords {
  readonly from: Point;
  readonly to: Point;
  readonly counterClockwise: boolean;
  /** Last digit of the program, mm. */
  readonly digit: number;
  /** mm by which the ends may lie differently far from the centre, where that is more than rounding. */
  readonly slack: number;
}

/**
 * An arc by its centre. Rounding leaves the ends at slightly different distances from the centre; the centre is moved along
 * the chord until they agree. Beyond half a turn the chord is too short to do that well, so the arc becomes two.
 */
export const arcByCentre = (words: ArcWords, centre: Point): ArcOutcome => {
  const { from, to, digit, counterClockwise } = words;
  const atStart = distance(from, centre);
  const atEnd = distance(to, centre);
  if (atStart < digit / 2 || atEnd < digit / 2)
    return broken('arc-radius-zero/centre', (block) => say`${{ block }} has an arc whose centre lies on its start or its end.`);
  const apart = Math.abs(atStart - atEnd);
  if (apart > Math.max(ARC_CLOSES * digit, words.slack)) {
    return broken(
      'arc-does-not-close',
      (block) =>
        say`${{ block }} has an arc that starts ${{ start: millimetres(atStart) }} from its centre and ends ${{ end: millimetres(atEnd) }} from it.`,
    );
  }
  return {
    kind: 'arcs',
    arcs: arcsAbout(from, to, centre, counterClockwise, digit),
    apart: apart > ARC_CLOSES * digit ? apart : undefined,
  };
};

/** An arc by its radius: the shorter one, or the longer one when R is negative. */
export const arcByRadius = (words: ArcWords, radius: number): ArcOutcome => {
  const { from, to, digit, counterClockwise } = words;
  const chord = distance(from, to);
  if (chord === 0)
    return broken(
      'arc-full-by-radius',
      (block) => say`${{ block }} has an arc by R that ends where it starts, so its centre is undefined.`,
    );
  if (radius === 0) return broken('arc-radius-zero/radius', (block) => say`${{ block }} has an arc of radius 0.`);
  const size = Math.abs(radius);
  const missing = chord / 2 - size;
  if (missing > RADIUS_REACHES * digit) {
    return broken(
      'arc-radius-too-small',
      (block) =>
        say`${{ block }} has an arc of radius ${{ radius: millimetres(size) }} whose ends are ${{ chord: millimetres(chord) }} apart, more than twice that.`,
    );
  }
  const height = missing >= 0 ? 0 : Math.sqrt((size - chord / 2) * (size + chord / 2));
  const side = counterClockwise === radius > 0 ? 1 : -1;
  const centre = {
    x: (from.x + to.x) / 2 - (side * height * (to.y - from.y)) / chord,
    y: (from.y + to.y) / 2 + (side * height * (to.x - from.x)) / chord,
  };
  return { kind: 'arcs', arcs: arcsAbout(from, to, centre, counterClockwise, digit) };
};

/**
 * Arcs from one point to another about a centre that is about equally far from both; at most half a turn each, or a full
 * circle. An arc of a few last digits' length has no direction to speak of and becomes a line.
 */
export const arcsAbout = (from: Point, to: Point, centre: Point, counterClockwise: boolean, digit: number): readonly (Arc | Line)[] => {
  if (from.x === to.x && from.y === to.y) return [fullCircle(from, centre, counterClockwise)];
  const turn = travelled(from.x - centre.x, from.y - centre.y, to.x - centre.x, to.y - centre.y, counterClockwise);
  if (turn < Math.PI && distance(from, to) < SHORTEST_ARC * digit) return [{ kind: 'line', from, to }];
  if (turn <= Math.PI * 1.0001) return [balancedArc(from, to, centre, counterClockwise)];
  const half = middle(from, to, centre, counterClockwise ? turn / 2 : -turn / 2);
  return [balancedArc(from, half, centre, counterClockwise), balancedArc(half, to, centre, counterClockwise)];
};

/** A full circle as two half circles, for those who need every arc to have a chord. */
export const halves = (circle: Arc): readonly Arc[] => {
  const opposite = { x: 2 * circle.centre.x - circle.from.x, y: 2 * circle.centre.y - circle.from.y };
  const { from, to, centre, radius } = circle;
  const sweep = circle.sweep / 2;
  return [
    { kind: 'arc', from, to: opposite, centre, radius, sweep },
    { kind: 'arc', from: opposite, to, centre, radius, sweep },
  ];
};

const fullCircle = (from: Point, centre: Point, counterClockwise: boolean): Arc => ({
  kind: 'arc',
  from,
  to: from,
  centre,
  radius: distance(from, centre),
  sweep: counterClockwise ? FULL_TURN : -FULL_TURN,
});

/** The arc whose centre is the given one, moved along the chord to be equally far from both ends. */
export const balancedArc = (from: Point, to: Point, near: Point, counterClockwise: boolean): Arc => {
  const ux = to.x - from.x;
  const uy = to.y - from.y;
  const square = ux * ux + uy * uy;
  const share = ((near.x - (from.x + to.x) / 2) * ux + (near.y - (from.y + to.y) / 2) * uy) / square;
  const centre = { x: near.x - share * ux, y: near.y - share * uy };
  const turn = travelled(from.x - centre.x, from.y - centre.y, to.x - centre.x, to.y - centre.y, counterClockwise);
  return { kind: 'arc', from, to, centre, radius: distance(from, centre), sweep: counterClockwise ? turn : -turn };
};

const middle = (from: Point, to: Point, centre: Point, turn: number): Point => {
  const radius = (distance(from, centre) + distance(to, centre)) / 2;
  const angle = Math.atan2(from.y - centre.y, from.x - centre.x) + turn;
  return { x: centre.x + radius * Math.cos(angle), y: centre.y + radius * Math.sin(angle) };
};

const distance = (a: Point, b: Point): number => Math.hypot(a.x - b.x, a.y - b.y);

/** Lengths in sentences: enough digits to see what is wrong. */
export const millimetres = (length: number): Part => mm(length, upTo(5));
