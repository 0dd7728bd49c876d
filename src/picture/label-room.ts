/** Room for the numbers and words of a picture, so that none hides another: in the order in which they matter. */
import type { Point } from '../geometry/segment.ts';

/** What a number or a word covers: a box by half its width and height, or a disc by its radius. In the unit of the picture. */
export interface Patch {
  readonly x: number;
  readonly y: number;
  readonly across: number;
  readonly up: number;
  readonly round?: true;
}

export interface Wanted {
  /** Places where it may stand, the best first. */
  readonly tries: readonly Patch[];
  /** Stands at the first of them even where there is no room. */
  readonly needed?: boolean;
}

/** Where each stands, in their order; undefined where there is no room. Nothing stands upon what is taken. */
export const placed = (wanted: readonly Wanted[], taken: readonly Patch[] = []): readonly (Patch | undefined)[] => {
  const grid = gridOf([...taken, ...wanted.flatMap((w) => w.tries)]);
  for (const patch of taken) grid.add(patch);
  return wanted.map(({ tries, needed = false }) => {
    const patch = tries.find((t) => !grid.hidesAny(t)) ?? (needed ? tries[0] : undefined);
    if (patch !== undefined) grid.add(patch);
    return patch;
  });
};

export const discAt = ({ x, y }: Point, radius: number): Patch => ({ x, y, across: radius, up: radius, round: true });

/** Touching is not hiding. */
const hides = (a: Patch, b: Patch): boolean => {
  const [x, y] = [Math.abs(a.x - b.x), Math.abs(a.y - b.y)];
  return a.round && b.round ? Math.hypot(x, y) < a.across + b.across : x < a.across + b.across && y < a.up + b.up;
};

/** Patches by the cells of a grid that they touch; no patch is larger than a cell, so it touches four at the most. */
const gridOf = (all: readonly Patch[]) => {
  const size = all.reduce((most, p) => Math.max(most, 2 * p.across, 2 * p.up), Number.MIN_VALUE);
  const cells = new Map<string, Patch[]>();
  const keys = ({ x, y, across, up }: Patch): readonly string[] => {
    const found: string[] = [];
    for (let i = Math.floor((x - across) / size); i <= Math.floor((x + across) / size); i += 1)
      for (let j = Math.floor((y - up) / size); j <= Math.floor((y + up) / size); j += 1) found.push(`${i} ${j}`);
    return found;
  };
  return {
    add: (patch: Patch): void => {
      for (const key of keys(patch)) cells.set(key, [...(cells.get(key) ?? []), patch]);
    },
    hidesAny: (patch: Patch): boolean => keys(patch).some((key) => cells.get(key)?.some((other) => hides(other, patch))),
  };
};

/** Below this share of their usual size numbers cannot be read. */
const SMALLEST = 0.6;

export interface Crowd {
  /** Share of the usual size. */
  readonly share: number;
  /** Indices of the spots whose number can be shown. */
  readonly shown: readonly number[];
}

/** Numbers that cannot move aside get smaller where they stand close. `reach`: half the width of a number at its usual size. */
export const crowdOf = (spots: readonly Point[], reach: number): Crowd => {
  const shown = (radius: number): readonly number[] =>
    placed(spots.map((s) => ({ tries: [discAt(s, radius)] }))).flatMap((patch, i) => (patch === undefined ? [] : [i]));
  const all = shown(reach);
  return all.length === spots.length ? { share: 1, shown: all } : { share: SMALLEST, shown: shown(reach * SMALLEST) };
};
