/** Finds room for numbered circles near the places they belong to, so that none hides another. */
import type { Point } from '../geometry/segment.ts';
import { discAt, type Patch, placed } from './label-room.ts';

/** Between two circles, px. */
const AIR = 1.5;

/** Sixteen ways out and several distances: the first free one is taken, the nearest where none is. All in px. */
export const placeLabels = (targets: readonly (readonly [number, number])[], radius: number): (readonly [number, number])[] => {
  const room = radius + AIR / 2;
  const points = targets.map(([x, y]) => discAt({ x, y }, 0));
  const wanted = targets.map(([x, y]) => ({ tries: spotsAround({ x, y }, radius).map((s) => discAt(s, room)), needed: true }));
  return placed(wanted, points).map((patch) => [(patch as Patch).x, (patch as Patch).y]);
};

const spotsAround = ({ x, y }: Point, radius: number): Point[] => {
  const spots: Point[] = [];
  for (const far of [2.2, 3.4, 5, 7, 9.5, 12.5])
    for (let i = 0; i < 16; i += 1) {
      // Up to the right first, then by turns to both sides.
      const turn = -Math.PI / 4 + (i % 2 === 0 ? 1 : -1) * Math.ceil(i / 2) * (Math.PI / 8);
      spots.push({ x: x + Math.cos(turn) * far * radius, y: y + Math.sin(turn) * far * radius });
    }
  return spots;
};
