/** Room for the numbers of a picture: smaller where they stand close, and left out where even small ones would hide each other. */

export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** Below this share of their usual size numbers cannot be read. */
const SMALLEST = 0.6;

export interface Crowd {
  /** Share of the usual size. */
  readonly share: number;
  /** Indices of the spots whose number can be shown. */
  readonly shown: readonly number[];
}

/** `reach`: half the width of a number at its usual size, in the unit of the spots. The first of two that collide is shown. */
export const crowdOf = (spots: readonly Spot[], reach: number): Crowd => {
  const all = spots.map((_, i) => i);
  if (withoutTouching(spots, 2 * reach).length === spots.length) return { share: 1, shown: all };
  return { share: SMALLEST, shown: withoutTouching(spots, 2 * reach * SMALLEST) };
};

/** A grid of cells as wide as the distance: whoever is nearer lies in one of the nine around. */
const withoutTouching = (spots: readonly Spot[], distance: number): readonly number[] => {
  const cells = new Map<string, Spot[]>();
  const near = (column: number, row: number): readonly Spot[] =>
    [-1, 0, 1].flatMap((i) => [-1, 0, 1].flatMap((j) => cells.get(`${column + i} ${row + j}`) ?? []));
  return spots.flatMap((spot, index) => {
    const [column, row] = [Math.floor(spot.x / distance), Math.floor(spot.y / distance)];
    if (near(column, row).some((p) => Math.hypot(p.x - spot.x, p.y - spot.y) < distance)) return [];
    const cell = cells.get(`${column} ${row}`) ?? [];
    cells.set(`${column} ${row}`, cell);
    cell.push(spot);
    return [index];
  });
};
