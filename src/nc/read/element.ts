/** A compensated move before its corners are known: the programmed segment, and the line or circle the wire's centre keeps to. */
import { endDirection, lengthOf, startDirection } from '../../geometry/measure.ts';
import type { Arc, Line, Point, Segment } from '../../geometry/segment.ts';
import { arcsAbout } from './arc.ts';
import type { Block } from './program.ts';
import { ARC_VANISHES, DIRECTION_NOISE, MOST_NOISE } from './tolerance.ts';

/** How the control compensates at the moment. Lengths in mm. */
export interface Compensation {
  readonly side: 'left' | 'right';
  readonly register: number;
  /** Value of the register. */
  readonly offset: number;
  /** The offset, negative on the right: along the left-hand normal of travel. */
  readonly signed: number;
  /** Last digit of the program. */
  readonly digit: number;
  readonly outsideCorners: 'arc' | 'intersection';
}

export interface Element {
  readonly block: Block;
  readonly rapid: boolean;
  readonly condition: number | undefined;
  readonly programmed: Segment;
  readonly startDirection: Point;
  readonly endDirection: Point;
  /** Radius of the wire centre's arc; 0 where it has shrunk to a point, infinite for a line. */
  readonly pathRadius: number;
  /** Rad by which rounding may have turned its direction. */
  readonly noise: number;
}

export interface Move {
  readonly block: Block;
  readonly rapid: boolean;
  readonly condition: number | undefined;
  readonly programmed: Segment;
}

/** `tight`: an inside arc with less radius than the offset. */
export type ElementOutcome = { readonly kind: 'element'; readonly element: Element } | { readonly kind: 'tight'; readonly radius: number };

/** `programmed` is the move's segment or a part of it. */
export const elementOf = (move: Move, programmed: Segment, compensation: Compensation): ElementOutcome => {
  const { digit, signed } = compensation;
  let pathRadius = Number.POSITIVE_INFINITY;
  if (programmed.kind === 'arc') {
    pathRadius = programmed.radius - Math.sign(programmed.sweep) * signed;
    if (pathRadius < -ARC_VANISHES * digit) return { kind: 'tight', radius: programmed.radius };
    if (pathRadius < ARC_VANISHES * digit) pathRadius = 0;
  }
  const noise = Math.min(MOST_NOISE, directionNoise(programmed) * digit);
  const element: Element = {
    block: move.block,
    rapid: move.rapid,
    condition: move.condition,
    programmed,
    startDirection: startDirection(programmed),
    endDirection: endDirection(programmed),
    pathRadius,
    noise,
  };
  return { kind: 'element', element };
};

const directionNoise = (segment: Segment): number =>
  segment.kind === 'line' ? DIRECTION_NOISE / lengthOf(segment) : DIRECTION_NOISE / lengthOf(segment) + DIRECTION_NOISE / segment.radius;

/** The wire's centre beside a point of the programmed path where travel has this direction. */
export const beside = (point: Point, direction: Point, signed: number): Point => ({
  x: point.x - direction.y * signed,
  y: point.y + direction.x * signed,
});

/** Where the wire's centre would start and end if the element stood alone. */
export const ownStart = (element: Element, signed: number): Point => beside(element.programmed.from, element.startDirection, signed);
export const ownEnd = (element: Element, signed: number): Point => beside(element.programmed.to, element.endDirection, signed);

/** Nearer than this, in mm, two points of a centre path are one: a thousandth of the finest last digit a dialect can have. */
const SAME_PLACE = 1e-9;

/** The wire's centre from one corner to the next along the element; nothing where it has shrunk to a point. */
export const centreBetween = (element: Element, from: Point, to: Point, compensation: Compensation): readonly (Line | Arc)[] => {
  if (Math.hypot(to.x - from.x, to.y - from.y) <= SAME_PLACE) return [];
  const { programmed, pathRadius } = element;
  const straight: readonly Line[] = [{ kind: 'line', from, to }];
  if (programmed.kind === 'line' || pathRadius === 0) return straight;
  const arcs = arcsAbout(from, to, programmed.centre, programmed.sweep > 0, compensation.digit);
  const turned = arcs.reduce((sum, arc) => sum + (arc.kind === 'arc' ? Math.abs(arc.sweep) : 0), 0);
  // Corners that rounding has put past each other would send the wire the long way round.
  return turned > Math.abs(programmed.sweep) + Math.PI / 2 ? straight : arcs;
};
