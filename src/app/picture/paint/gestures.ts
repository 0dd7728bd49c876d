/** Fingers and mouse told apart: a pan, a pinch, or a tap that stayed in place. */
import type { Point } from '../../../geometry/segment.ts';

export interface Touching {
  /** Where each pointer is, by its id; at most two count. */
  readonly pointers: ReadonlyMap<number, Point>;
  readonly start: Point;
  /** Once moved further than a tap may, it is no tap any more; nor with a second finger. */
  readonly moved: boolean;
}

export type Gesture =
  | { readonly kind: 'none' }
  | { readonly kind: 'pan'; readonly dx: number; readonly dy: number }
  | { readonly kind: 'pinch'; readonly before: readonly [Point, Point]; readonly after: readonly [Point, Point] }
  | { readonly kind: 'tap'; readonly at: Point };

/** Pixels that a tap may wander. */
const TAP = 5;

export const untouched: Touching = { pointers: new Map(), start: { x: 0, y: 0 }, moved: false };

export const down = (before: Touching, id: number, at: Point): Touching => {
  if (before.pointers.size >= 2) return before;
  const first = before.pointers.size === 0;
  return { pointers: new Map([...before.pointers, [id, at]]), start: first ? at : before.start, moved: !first };
};

export const moved = (before: Touching, id: number, at: Point): { readonly touching: Touching; readonly gesture: Gesture } => {
  const old = before.pointers.get(id);
  if (old === undefined) return { touching: before, gesture: { kind: 'none' } };
  const pointers = new Map(before.pointers).set(id, at);
  const far = before.moved || Math.hypot(at.x - before.start.x, at.y - before.start.y) > TAP;
  const touching = { ...before, pointers, moved: far };
  if (pointers.size === 2) {
    const [a, b] = [[...before.pointers.values()], [...pointers.values()]] as unknown as [[Point, Point], [Point, Point]];
    return { touching, gesture: { kind: 'pinch', before: a, after: b } };
  }
  // The first few pixels are made up for at once, so that the picture sticks to the finger.
  const from = before.moved ? old : before.start;
  return { touching, gesture: far ? { kind: 'pan', dx: at.x - from.x, dy: at.y - from.y } : { kind: 'none' } };
};

export const up = (before: Touching, id: number, at: Point): { readonly touching: Touching; readonly gesture: Gesture } => {
  if (!before.pointers.has(id)) return { touching: before, gesture: { kind: 'none' } };
  const pointers = new Map(before.pointers);
  pointers.delete(id);
  const tap = pointers.size === 0 && !before.moved;
  return {
    touching: pointers.size === 0 ? untouched : { ...before, pointers, moved: true },
    gesture: tap ? { kind: 'tap', at } : { kind: 'none' },
  };
};
