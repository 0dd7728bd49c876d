/** Things by the boxes around them: which of them reach into a window, which are near. Numbers of the index stay in here. */
import Flatbush from 'flatbush';
import type { Bounds } from '../measure.ts';
import type { Point } from '../segment.ts';

export interface BoxIndex<T> {
  /** Those whose boxes meet a box, in no order. */
  readonly search: (box: Bounds, accepts?: (thing: T) => boolean) => T[];
  /** Those whose boxes come within `reach` of a place, the nearest first and so many at most. */
  readonly nearest: (at: Point, most: number, reach?: number, accepts?: (thing: T) => boolean) => T[];
}

export const boxIndexOf = <T>(things: readonly T[], boxOf: (thing: T) => Bounds): BoxIndex<T> => {
  if (things.length === 0) return { search: () => [], nearest: () => [] };
  const index = new Flatbush(things.length);
  for (const thing of things) {
    const b = boxOf(thing);
    index.add(b.minX, b.minY, b.maxX, b.maxY);
  }
  index.finish();
  const thingAt = (i: number): T => things[i] as T;
  const filter = (accepts?: (thing: T) => boolean) => (accepts === undefined ? undefined : (i: number): boolean => accepts(thingAt(i)));
  return {
    search: (b, accepts) => index.search(b.minX, b.minY, b.maxX, b.maxY, filter(accepts)).map(thingAt),
    nearest: (at, most, reach, accepts) => index.neighbors(at.x, at.y, most, reach, filter(accepts)).map(thingAt),
  };
};
