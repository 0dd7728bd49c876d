/** Whether a tooth draws its pawl in or throws it out. Lengths in mm, angles in rad. */
import { type Point, point } from '../../geometry/segment.ts';

/**
 * How far the push of the tooth passes inside of the pawl's pivot, as an angle at the place where they touch: above 0 the pawl is drawn
 * in, below 0 thrown out. For a wheel that is locked clockwise, its pawl before the face.
 *
 * @param normal square to the face, out of the tooth, of length 1.
 */
export const drawOf = (contact: Point, normal: Point, pivot: Point): number => {
  const arm = point(contact.x - pivot.x, contact.y - pivot.y);
  return Math.asin(Math.max(-1, Math.min(1, (arm.x * normal.y - arm.y * normal.x) / Math.hypot(arm.x, arm.y))));
};

export interface Pawl {
  /** From the middle of the wheel to the pivot, and from the pivot to the place where the pawl touches the face. */
  readonly pivot: number;
  readonly length: number;
}

/** On the clockwise side of the face; nothing where the pawl does not reach. Without a pawl, square to the radius through the contact. */
export const pivotOf = (contact: Point, pawl: Pawl | undefined): Point | undefined => {
  const far = Math.hypot(contact.x, contact.y);
  const [x, y] = [contact.x / far, contact.y / far];
  if (pawl === undefined) return point(contact.x + far * y, contact.y - far * x);
  const along = (pawl.pivot ** 2 - pawl.length ** 2 + far ** 2) / (2 * far);
  const square = pawl.pivot ** 2 - along ** 2;
  if (!(square > 0)) return undefined;
  const aside = Math.sqrt(square);
  return point(along * x + aside * y, along * y - aside * x);
};
