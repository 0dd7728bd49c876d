/** Finds room for numbered circles near the places they belong to, so that none hides another. */

type Spot = readonly [number, number];

/** Sixteen ways out and several distances: the first free one is taken, the nearest where none is. All in px. */
export const placeLabels = (targets: readonly Spot[], radius: number): Spot[] => {
  const placed: Spot[] = [];
  const room = 2 * radius + 1.5;
  const isFree = ([x, y]: Spot): boolean =>
    placed.every(([a, b]) => (a - x) ** 2 + (b - y) ** 2 >= room * room) &&
    targets.every(([a, b]) => (a - x) ** 2 + (b - y) ** 2 >= radius * radius);
  for (const target of targets) placed.push(spotsAround(target, radius).find(isFree) ?? spotsAround(target, radius)[0]!);
  return placed;
};

const spotsAround = ([x, y]: Spot, radius: number): Spot[] => {
  const spots: Spot[] = [];
  for (const far of [2.2, 3.4, 5, 7, 9.5, 12.5])
    for (let i = 0; i < 16; i += 1) {
      // Up to the right first, then by turns to both sides.
      const turn = -Math.PI / 4 + (i % 2 === 0 ? 1 : -1) * Math.ceil(i / 2) * (Math.PI / 8);
      spots.push([x + Math.cos(turn) * far * radius, y + Math.sin(turn) * far * radius]);
    }
  return spots;
};
