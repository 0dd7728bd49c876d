/** Finds room for short texts beside their places, so that none covers another. */

import type { Point } from '../../geometry/segment.ts';
import { type Patch, placed } from '../../picture/label-room.ts';
import { sideBySide } from '../../sequence/sequence.ts';
import type { Window } from './view.ts';

export interface Label {
  readonly key: string;
  readonly at: Point;
  readonly width: number;
  readonly height: number;
  /** Pixels between the place and the text. */
  readonly away: number;
  /** Stands even where there is no room. */
  readonly needed: boolean;
}

export interface PlacedLabel<L extends Label> {
  readonly label: L;
  readonly box: Window;
}

/** East first, then round about, near before far. */
const DIRECTIONS: readonly Point[] = [
  { x: 1, y: -0.6 },
  { x: -1, y: -0.6 },
  { x: 1, y: 0.6 },
  { x: -1, y: 0.6 },
  { x: 0, y: -1 },
  { x: 0, y: 1 },
];
const FARTHER: readonly number[] = [1, 2.2];

/** In the order given; labels without room are left out unless they are needed. Nearer than 2,000 in sight. */
export const placedLabels = <L extends Label>(labels: readonly L[], taken: readonly Window[] = []): readonly PlacedLabel<L>[] => {
  const wanted = labels.map((label) => ({
    tries: FARTHER.flatMap((far) => DIRECTIONS.map((d) => patchAt(label, d, far))),
    needed: label.needed,
  }));
  return sideBySide(labels, placed(wanted, taken.map(patchOf))).flatMap(([label, patch]) =>
    patch === undefined ? [] : [{ label, box: boxOf(patch) }],
  );
};

const patchAt = ({ at, width, height, away }: Label, d: Point, far: number): Patch => ({
  x: at.x + d.x * (away * far + width / 2),
  y: at.y + d.y * (away * far + height / 2),
  across: width / 2,
  up: height / 2,
});

const patchOf = ({ minX, minY, maxX, maxY }: Window): Patch => ({
  x: (minX + maxX) / 2,
  y: (minY + maxY) / 2,
  across: (maxX - minX) / 2,
  up: (maxY - minY) / 2,
});

const boxOf = ({ x, y, across, up }: Patch): Window => ({ minX: x - across, minY: y - up, maxX: x + across, maxY: y + up });
