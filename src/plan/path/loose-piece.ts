/** The piece that comes free: how large, where its weight acts, and what has to be done with it when its tab is cut. */
import { areaOf, boundsOfChain, centroidOf } from '../../geometry/area.ts';
import type { Point } from '../../geometry/segment.ts';
import { type Amount, fixed, type Part, upTo } from '../../text/part.ts';
import type { Handling, LoosePiece } from '../plan.ts';
import type { Surroundings } from '../same-shape.ts';

/** kg up to which a magnet or a plate under it takes a slug up, and a hand lifts it out. Common practice, no source. */
const CAUGHT = 0.05;
const LIFTED = 2;

/** kg: from here on lifting needs tackle (the constant of a known lifting equation, from memory). */
export const TACKLE = 23;

/** A part is never caught: it must not be dropped. */
export const handlingOf = (role: LoosePiece['role'], mass: number): Handling => {
  if (mass >= TACKLE) return 'tackle';
  if (mass >= LIFTED) return 'held';
  return mass >= CAUGHT || role === 'part' ? 'lifted' : 'caught';
};

/** All but its mass and where the weight of each of several acts. */
export const looseOf = (
  around: Surroundings,
  asked: Pick<LoosePiece, 'role' | 'area'> & {
    readonly mass: number;
    readonly reach: number;
    readonly height: number;
  },
): Omit<LoosePiece, 'mass'> => {
  const { role, area, mass, reach, height } = asked;
  return { role, area, size: sizeOf(around, reach, height), balance: balanceOf(around), handling: handlingOf(role, mass) };
};

/** What is left of it where the wire takes all. */
export const nothingLoose = ({ role, balance }: Omit<LoosePiece, 'mass'>): Omit<LoosePiece, 'mass'> => ({
  role,
  balance,
  area: 0,
  size: { x: 0, y: 0, height: 0 },
  handling: 'no core',
});

/** @param reach from the contour to the far side of the rough cut, by which a slug is smaller all round. */
export const sizeOf = ({ loop }: Surroundings, reach: number, height: number): LoosePiece['size'] => {
  const b = boundsOfChain(loop.loop.contour);
  const lost = loop.kept === 'die' ? 2 * reach : 0;
  return { x: Math.max(0, b.maxX - b.minX - lost), y: Math.max(0, b.maxY - b.minY - lost), height };
};

/**
 * Centre of gravity seen from above, of what is inside the contour without what was cut out of it. The kerf, the same all round,
 * is not taken off: it shifts the centre by less than its own width.
 */
export const balanceOf = ({ loop, inside }: Surroundings): Point => {
  const own = weighed(loop.loop.contour, 1);
  const all = inside.reduce((sum, child) => {
    const gone = weighed(child.loop.contour, -1);
    return { area: sum.area + gone.area, x: sum.x + gone.x, y: sum.y + gone.y };
  }, own);
  const centre = all.area > 1e-9 ? all : own;
  return { x: centre.x / centre.area, y: centre.y / centre.area };
};

const weighed = (contour: Surroundings['loop']['loop']['contour'], sign: 1 | -1) => {
  const area = sign * Math.abs(areaOf(contour));
  const { x, y } = centroidOf(contour);
  return { area, x: x * area, y: y * area };
};

/** '14 x 9.3 x 25 mm'. */
export const saidSize = ({ x, y, height }: LoosePiece['size']): Part => {
  const shown = (value: number): Amount => ({ value, digits: fixed(value < 10 ? 1 : 0) });
  return { kind: 'quantity', amounts: [shown(x), shown(y), { value: height, digits: upTo(2) }], joint: 'x', unit: 'mm' };
};
