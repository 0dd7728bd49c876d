/** Gives loops and chains their names and puts the finished drawing together. */
import { perimeterOf } from '../../geometry/area.ts';
import type { Point } from '../../geometry/segment.ts';
import type { DrawingUnits, Loop, OpenChain } from '../drawing.ts';
import type { FoundChain } from '../join/join.ts';
import type { Nested } from '../join/loop-around.ts';
import type { FoundLoop } from '../piece/loop-found.ts';

/** Loops by falling area, then from left to right and from below: the same file always has the same names. */
export const loopsInOrder = (loops: readonly FoundLoop[]): FoundLoop[] =>
  loops
    .map((loop) => ({ loop, size: rounded(loop.area) }))
    .sort((p, q) => q.size - p.size || p.loop.middle.x - q.loop.middle.x || p.loop.middle.y - q.loop.middle.y)
    .map(({ loop }) => loop);

/** To nine digits: loops that differ by rounding alone are equally large. */
const rounded = (value: number): number => Number(value.toPrecision(9));

export const loopName = (index: number): string => `L${index + 1}`;

/** Chains by falling length, then by place. */
export const chainsInOrder = (chains: readonly FoundChain[]): (FoundChain & { readonly id: string })[] =>
  chains
    .map((chain) => ({ chain, size: rounded(chain.length), low: lowerEnd(chain) }))
    .sort((p, q) => q.size - p.size || p.low.x - q.low.x || p.low.y - q.low.y)
    .map(({ chain }, i) => ({ ...chain, id: `C${i + 1}` }));

const lowerEnd = ({ from, to }: FoundChain): Point => (from.x < to.x || (from.x === to.x && from.y <= to.y) ? from : to);

/** @param nesting of the visible loops, by their number among all; hidden ones have none */
export const finishedLoops = (loops: readonly FoundLoop[], nesting: ReadonlyMap<number, Nested>, units: DrawingUnits): Loop[] =>
  loops.map((loop, i) => {
    const nested = nesting.get(i) ?? { parent: -1, depth: 0 };
    return {
      id: loopName(i),
      contour: loop.contour,
      layer: loop.layer,
      hidden: loop.hidden && loop.construction === undefined,
      aside: loop.construction === undefined ? undefined : 'construction',
      parent: nested.parent < 0 ? undefined : loopName(nested.parent),
      depth: nested.depth,
      area: Math.abs(loop.area) / (units.millimetres * units.millimetres),
      perimeter: loop.perimeter / units.millimetres,
      fitDeviation: loop.deviation,
    };
  });

export const finishedChains = (chains: readonly (FoundChain & { readonly id: string })[], units: DrawingUnits): OpenChain[] =>
  chains.map(({ id, path, layer, hidden, deviation }) => ({
    id,
    path,
    layer,
    hidden,
    length: perimeterOf(path) / units.millimetres,
    fitDeviation: deviation,
  }));
