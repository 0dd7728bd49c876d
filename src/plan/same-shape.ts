/** Loops of the same shape, so that what holds for one is worked out once for all of them. */
import type { Contour } from '../geometry/contour.ts';
import type { Point, Segment } from '../geometry/segment.ts';
import { contour, count, type Part } from '../text/part.ts';
import { phrases, say } from '../text/say.ts';
import type { Text } from '../text/text.ts';
import type { KeptLoop } from './kept-side.ts';
import type { CoreChoice } from './question.ts';

/** A loop with the children whose metal stands inside it and the holes already there. */
export interface Surroundings {
  readonly loop: KeptLoop;
  readonly inside: readonly KeptLoop[];
  readonly holes: readonly { readonly at: Point; readonly diameter: number }[];
  /** Whether its core is to stay whole or to be cut away, where the user said so. */
  readonly core?: CoreChoice | undefined;
  /** What it is asked of its own, as a key; none where it is asked what the job asks. */
  readonly asked?: string | undefined;
}

export interface LikeLoops {
  /** The one that is worked out. */
  readonly first: Surroundings;
  /** All of them, the first included, with the way from the first to each. */
  readonly members: readonly { readonly loop: KeptLoop; readonly by: Point }[];
}

/**
 * Groups loops that can be moved onto each other without turning, with all that lies inside them, to a hundredth of what a
 * program resolves. Parts (punch type) stand alone, and so do loops that are begun from the edge of the block: what is around
 * them differs from one to the next.
 */
export const shapesOf = (all: readonly Surroundings[], fromEdge: (id: string) => boolean = () => false): readonly LikeLoops[] => {
  const groups = new Map<string, { first: Surroundings; members: { loop: KeptLoop; by: Point }[] }>();
  for (const one of all) {
    const key = one.loop.kept === 'punch' || fromEdge(one.loop.loop.id) ? `alone ${one.loop.loop.id}` : keyOf(one);
    const group = groups.get(key);
    const start = startOf(one.loop.loop.contour);
    if (group === undefined) {
      groups.set(key, { first: one, members: [{ loop: one.loop, by: { x: 0, y: 0 } }] });
      continue;
    }
    const origin = startOf(group.first.loop.loop.contour);
    group.members.push({ loop: one.loop, by: { x: start.x - origin.x, y: start.y - origin.y } });
  }
  return [...groups.values()];
};

/** How a shape is called in a sentence. */
export const shapeName = ({ first, members }: LikeLoops): Part | Text => {
  const { id } = first.loop.loop;
  return members.length === 1 ? contour(id) : words.alike(id, members.length - 1);
};

const words = phrases('shape', {
  alike: (first: string, more: number) => say`${{ loop: contour(first) }} (and ${{ more: count(more) }} more of the same shape)`,
});

const startOf = (contour: Contour): Point => contour.segments[0].from;

const keyOf = ({ loop, inside, holes, core, asked }: Surroundings): string => {
  const origin = startOf(loop.loop.contour);
  const parts = [contourKey(loop.loop.contour, origin)];
  for (const child of inside) parts.push(`${child.kept} ${contourKey(child.loop.contour, origin)}`);
  for (const hole of holes) parts.push(`o ${pointKey(hole.at, origin)} ${hole.diameter}`);
  if (core !== undefined) parts.push(core);
  if (asked !== undefined) parts.push(asked);
  return parts.join('|');
};

const contourKey = (contour: Contour, origin: Point): string => contour.segments.map((s) => segmentKey(s, origin)).join(';');

const segmentKey = (s: Segment, origin: Point): string =>
  s.kind === 'line' ? pointKey(s.to, origin) : `${pointKey(s.to, origin)},${pointKey(s.centre, origin)},${s.sweep.toFixed(8)}`;

const pointKey = (p: Point, origin: Point): string => `${Math.round((p.x - origin.x) * 1e6)},${Math.round((p.y - origin.y) * 1e6)}`;
