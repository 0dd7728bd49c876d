/** Places about the middle of a shape. Angles in rad from the X axis, counter-clockwise; lengths in mm. */
import { type Point, point } from '../geometry/segment.ts';

export const polar = (radius: number, angle: number): Point => point(radius * Math.cos(angle), radius * Math.sin(angle));

export const spun = ({ x, y }: Point, angle: number): Point =>
  point(x * Math.cos(angle) - y * Math.sin(angle), x * Math.sin(angle) + y * Math.cos(angle));
