/** Whether a thin wall keeps its shape while it is cut, by what was measured on fins in hardened tool steel. */

export type WallAnswer =
  | { readonly kind: 'sound' }
  /** Thinner than any fin that came out whole. */
  | { readonly kind: 'too thin'; readonly thickness: number; readonly least: number }
  /** Thin walls that stand out too far lose their shape. */
  | { readonly kind: 'too long'; readonly thickness: number; readonly length: number; readonly most: number };

/** Fins of 0.117 to 0.5 mm were made; sound at 1 to 2 mm long, bent beyond. mm. */
const leastThickness = 0.12;
export const thinBelow = 0.5;
const longestThin = 2;

/** Thickness and free length of a wall, mm. */
export const judgeWall = (thickness: number, length: number): WallAnswer => {
  if (thickness < leastThickness) return { kind: 'too thin', thickness, least: leastThickness };
  if (thickness < thinBelow && length > longestThin) return { kind: 'too long', thickness, length, most: longestThin };
  return { kind: 'sound' };
};
