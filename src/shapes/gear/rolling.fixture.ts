/** Teeth as polygons of an independent library, rolled against each other: for tests only. Lengths in mm, inside in nanometres. */
import { areaPaths, difference, FillRule, intersect, type Path64 } from 'clipper2-ts';
import { there } from '../../../test/there.ts';
import type { Contour } from '../../geometry/contour.ts';
import { flatten } from '../../geometry/flatten.ts';
import { type Point, point } from '../../geometry/segment.ts';
import type { Shape } from '../shape.ts';

export const teethOf = ({ outlines }: Shape): Contour => there(outlines.at(-1)).contour;

const NANO = 1e6;
const nano = (points: readonly Point[]): Path64 => points.map(({ x, y }) => ({ x: Math.round(x * NANO), y: Math.round(y * NANO) }));
const squareMillimetres = (paths: readonly Path64[]): number => Math.abs(areaPaths([...paths])) / NANO ** 2;

export interface Placed {
  /** Turned first, then moved. */
  readonly turn?: number;
  readonly x?: number;
  readonly y?: number;
}
export const placed = (points: readonly Point[], { turn = 0, x = 0, y = 0 }: Placed = {}): Path64 => {
  const [c, n] = [Math.cos(turn), Math.sin(turn)];
  return nano(points.map((p) => point(c * p.x - n * p.y + x, n * p.x + c * p.y + y)));
};

export const fine = (shape: Shape, chordError = 1e-5): readonly Point[] => flatten(teethOf(shape), chordError);

/** Of a contour what lies within an angle to either side of X (and beyond `inner`), as one polygon. */
export const sector = (points: readonly Point[], half: number, reach: number, inner = 0): readonly Point[] => {
  const rim = Array.from({ length: 41 }, (_, i) => half * (i / 20 - 1));
  const at = (radius: number) => (angle: number) => point(radius * Math.cos(angle), radius * Math.sin(angle));
  const wedge = [...rim.map(at(reach)), ...(inner > 0 ? rim.toReversed().map(at(inner)) : [point(0, 0)])];
  const cut = intersect([nano(points)], [nano(wedge)], FillRule.NonZero);
  const largest = cut.toSorted((a, b) => Math.abs(areaPaths([b])) - Math.abs(areaPaths([a])))[0] ?? [];
  return largest.map(({ x, y }) => point(x / NANO, y / NANO));
};

export const overlap = (a: Path64, b: Path64): number => squareMillimetres(intersect([a], [b], FillRule.NonZero));
export const outsideOf = (a: Path64, opening: Path64): number => squareMillimetres(difference([a], [opening], FillRule.NonZero));

/** What is left of a blank, and of it what the other has not, in mm², once a tool has been everywhere. */
export const generated = (blank: readonly Point[], tools: Iterable<readonly Point[]>, gear: readonly Point[]) => {
  let left: Path64[] = [nano(blank)];
  for (const tool of tools) left = difference(left, [nano(tool)], FillRule.NonZero);
  const ours = intersect([nano(gear)], [nano(blank)], FillRule.NonZero);
  return {
    tooMuch: squareMillimetres(difference(ours, left, FillRule.NonZero)),
    tooLittle: squareMillimetres(difference(left, ours, FillRule.NonZero)),
  };
};

/** How far one can be moved between its two contacts: `pressed` says the overlap in mm² when it is moved by so much, mm. */
export const playOf = (pressed: (by: number) => number, within: number): number => {
  const free = (side: 1 | -1): number => {
    let [low, high] = [-within, within];
    for (let i = 0; i < 11; i += 1) {
      const middle = (low + high) / 2;
      if (pressed(side * middle) > 1e-5) high = middle;
      else low = middle;
    }
    return (low + high) / 2;
  };
  return free(1) + free(-1);
};
