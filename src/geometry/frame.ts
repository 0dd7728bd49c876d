/** A place on a contour with the directions that matter there, and the few vector steps that leads are made of. */
import type { Point } from './segment.ts';

export interface ContourFrame {
  readonly at: Point;
  /** Unit vector of travel. */
  readonly along: Point;
  /** Unit vector at right angles to it, towards the side on which the wire runs. */
  readonly aside: Point;
}

/** `at`, moved by multiples of the frame's two directions. */
export const from = (frame: ContourFrame, along: number, aside: number): Point => ({
  x: frame.at.x + frame.along.x * along + frame.aside.x * aside,
  y: frame.at.y + frame.along.y * along + frame.aside.y * aside,
});

/** The same place travelled the other way; the wire stays on its side of the metal. */
export const turned = (frame: ContourFrame): ContourFrame => ({ ...frame, along: { x: -frame.along.x, y: -frame.along.y } });

/** 1 where the wire is left of travel, -1 where it is right of it. */
export const sideOf = ({ along, aside }: ContourFrame): 1 | -1 => (along.x * aside.y - along.y * aside.x > 0 ? 1 : -1);

/** Unit vector to the left of a direction, or to its right for -1. */
export const besides = (along: Point, side: 1 | -1): Point => ({ x: -along.y * side, y: along.x * side });
