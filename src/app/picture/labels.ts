/** Finds room for short texts beside their places, so that none covers another. */
import { meets, type Spot, type Window } from './view.ts';

export interface Label {
  readonly key: string;
  readonly at: Spot;
  readonly width: number;
  readonly height: number;
  /** Pixels between the place and the text. */
  readonly away: number;
  /** Stands even where there is no room. */
  readonly needed: boolean;
}

export interface PlacedLabel {
  readonly label: Label;
  readonly box: Window;
}

/** East first, then round about, near before far. */
const DIRECTIONS: readonly Spot[] = [
  { x: 1, y: -0.6 },
  { x: -1, y: -0.6 },
  { x: 1, y: 0.6 },
  { x: -1, y: 0.6 },
  { x: 0, y: -1 },
  { x: 0, y: 1 },
];
const FARTHER: readonly number[] = [1, 2.2];

/** In the order given; labels without room are left out unless they are needed. Nearer than 2,000 in sight. */
export const placedLabels = (labels: readonly Label[], taken: readonly Window[] = []): readonly PlacedLabel[] => {
  const grid = gridOf(taken);
  const placed: PlacedLabel[] = [];
  for (const label of labels) {
    const tries = FARTHER.flatMap((far) => DIRECTIONS.map((d) => boxAt(label, d, far)));
    const free = tries.find((box) => !grid.holds(box)) ?? (label.needed ? tries[0] : undefined);
    if (free === undefined) continue;
    grid.add(free);
    placed.push({ label, box: free });
  }
  return placed;
};

const boxAt = ({ at, width, height, away }: Label, d: Spot, far: number): Window => {
  const x = at.x + d.x * (away * far + width / 2);
  const y = at.y + d.y * (away * far + height / 2);
  return { minX: x - width / 2, minY: y - height / 2, maxX: x + width / 2, maxY: y + height / 2 };
};

const CELL = 64;

/** Boxes by the squares of a grid that they touch. */
const gridOf = (taken: readonly Window[]) => {
  const cells = new Map<string, Window[]>();
  const keys = ({ minX, minY, maxX, maxY }: Window): readonly string[] => {
    const found: string[] = [];
    for (let i = Math.floor(minX / CELL); i <= Math.floor(maxX / CELL); i += 1)
      for (let k = Math.floor(minY / CELL); k <= Math.floor(maxY / CELL); k += 1) found.push(`${i} ${k}`);
    return found;
  };
  const add = (box: Window): void => {
    for (const key of keys(box)) cells.set(key, [...(cells.get(key) ?? []), box]);
  };
  for (const box of taken) add(box);
  return { add, holds: (box: Window): boolean => keys(box).some((key) => cells.get(key)?.some((other) => meets(other, box))) };
};
