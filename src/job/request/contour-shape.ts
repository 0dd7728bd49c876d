/** What a contour is known again by, wherever it lies and whatever number it bears: its shape, its size and its place. */
import { areaOf, boundsOfChain, perimeterOf } from '../../geometry/area.ts';
import type { Contour } from '../../geometry/contour.ts';
import type { ContourInput } from '../contour-schema.ts';

export type PutOn = NonNullable<ContourInput['on']>;

/** Straight lines, arcs, area (0.01 mm²) and length (µm): the same for shapes that are turned or moved. */
export const fingerprintOf = (contour: Contour): string => {
  const arcs = contour.segments.filter((s) => s.kind === 'arc').length;
  const lines = contour.segments.length - arcs;
  return [lines, arcs, Math.round(100 * Math.abs(areaOf(contour))), Math.round(1000 * perimeterOf(contour))].join(' ');
};

/** As it is kept with what is put on a contour, so that it is found again. */
export const putOn = (contour: Contour): PutOn => {
  const { minX, minY, maxX, maxY } = boundsOfChain(contour);
  return {
    centre: { x: rounded((minX + maxX) / 2), y: rounded((minY + maxY) / 2) },
    width: rounded(maxX - minX),
    height: rounded(maxY - minY),
    fingerprint: fingerprintOf(contour),
  };
};

const rounded = (value: number): number => Math.round(value * 1e4) / 1e4;

/** mm: a middle that lies no further off is the same. */
const SAME_PLACE = 0.05;

interface Named {
  readonly id: string;
  readonly contour: Contour;
}

/** `as named`: it still bears its name. `again`: another one has the name, or none, and the shape was found once. `lost`: not found, or more than once. */
export type FoundAgain = { readonly kind: 'as named' | 'again'; readonly id: string } | { readonly kind: 'lost'; readonly alike: number };

export const foundAgain = (id: string, on: PutOn | undefined, loops: readonly Named[]): FoundAgain => {
  const named = loops.find((l) => l.id === id);
  if (on === undefined) return named === undefined ? { kind: 'lost', alike: 0 } : { kind: 'as named', id };
  if (named !== undefined && isShape(named, on) && isThere(named, on)) return { kind: 'as named', id };
  const alike = loops.filter((l) => isShape(l, on));
  const there = alike.filter((l) => isThere(l, on));
  const [only] = there.length === 1 ? there : alike.length === 1 ? alike : [];
  return only === undefined ? { kind: 'lost', alike: alike.length } : { kind: 'again', id: only.id };
};

const isShape = ({ contour }: Named, { fingerprint }: PutOn): boolean => fingerprintOf(contour) === fingerprint;

const isThere = ({ contour }: Named, { centre }: PutOn): boolean => {
  const { minX, minY, maxX, maxY } = boundsOfChain(contour);
  return Math.hypot((minX + maxX) / 2 - centre.x, (minY + maxY) / 2 - centre.y) <= SAME_PLACE;
};
