/** Letters -> what is cut: grown or shrunk for play, with bridges or without the middles that fall out. */

import { boundsOfChain } from '../../geometry/area.ts';
import { clockwise, counterClockwise } from '../../geometry/chain.ts';
import type { Contour, Region } from '../../geometry/contour.ts';
import { united, without } from '../../geometry/make/combine.ts';
import { type Nested, nest, regionsOf } from '../../geometry/near/containment.ts';
import { roomiestPoint } from '../../geometry/near/roomiest.ts';
import { offsetRegion } from '../../geometry/offset/offset.ts';
import type { Point } from '../../geometry/segment.ts';
import { sideBySide } from '../../sequence/sequence.ts';
import { type BridgeRequest, barsOf } from './bridges.ts';
import { WITHIN } from './letters.ts';

export interface CutOuts {
  readonly contours: readonly Contour[];
  readonly nested: readonly Nested[];
  /** Roomiest places of the middles that fall out. */
  readonly fallen: readonly Point[];
  /** Roomiest places of the middles that no bridge could be found for; they fall as well. */
  readonly unbridged: readonly Point[];
  /** Middles that a bridge is wider than. */
  readonly covered: readonly Point[];
  readonly bridges: number;
}

export type Grown = { readonly kind: 'grown'; readonly contours: readonly Contour[] } | { readonly kind: 'nothing left' };

/** Letters with their walls moved outwards, or for a number below 0 inwards, mm; those that meet become one. */
export const grown = (contours: readonly Contour[], by: number): Grown => {
  if (by === 0) return { kind: 'grown', contours };
  const moved: Contour[] = [];
  for (const region of regionsOf(contours, WITHIN)) {
    const outcome = offsetRegion(region, -by);
    if (outcome.kind !== 'offset') return { kind: 'nothing left' };
    moved.push(...outcome.regions.flatMap((r) => [r.outer, ...r.holes]));
  }
  const whole = united(moved, WITHIN);
  return whole.kind === 'broken' ? { kind: 'nothing left' } : { kind: 'grown', contours: whole.contours };
};

/** Letters as pieces: nothing falls but them. */
export const standing = (contours: readonly Contour[]): CutOuts => ({
  contours,
  nested: nest(contours, WITHIN),
  fallen: [],
  unbridged: [],
  covered: [],
  bridges: 0,
});

/** Letters as openings. Without bridges nothing is left inside of an opening, so that only the outermost contours are cut. */
export const openings = (contours: readonly Contour[], bridge: BridgeRequest): CutOuts => {
  if (!(bridge.width > 0)) {
    const { outermost, islands } = outermostOf(contours);
    return { ...standing(outermost), fallen: islands };
  }
  const tied = regionsOf(contours, WITHIN).map((letter) => tie(letter, bridge));
  const { outermost, islands } = outermostOf(tied.flatMap((t) => t.contours));
  return {
    ...standing(outermost),
    unbridged: islands,
    covered: tied.flatMap((t) => t.covered),
    bridges: tied.reduce((sum, t) => sum + t.bars, 0),
  };
};

interface Tied {
  readonly contours: readonly Contour[];
  readonly covered: readonly Point[];
  readonly bars: number;
}

const tie = (letter: Region, bridge: BridgeRequest): Tied => {
  const contours = [letter.outer, ...letter.holes];
  if (letter.holes.length === 0) return { contours, covered: [], bars: 0 };
  const { bars, covered } = barsOf(letter, bridge);
  const cut = without(contours, bars, WITHIN);
  return cut.kind === 'broken' ? { contours, covered: [], bars: 0 } : { contours: cut.contours, covered, bars: bars.length };
};

interface Outermost {
  readonly outermost: readonly Contour[];
  /** Roomiest places of the islands that are left out, with all that is on them. */
  readonly islands: readonly Point[];
}

/** An opening on an island that is tied lies in no other opening: it is one of the outermost. */
const outermostOf = (contours: readonly Contour[]): Outermost => {
  const lying = sideBySide(contours, nest(contours, WITHIN));
  const at = (wanted: number): readonly Contour[] => lying.flatMap(([contour, { depth }]) => (depth === wanted ? [contour] : []));
  return { outermost: at(0), islands: at(1).map((c) => roomiest(c, [])) };
};

/** A place to thread the wire in every opening: in the letters themselves, or in the middles of letters that stand. */
export const startsOf = ({ contours, nested }: Pick<CutOuts, 'contours' | 'nested'>, letters: 'openings' | 'pieces'): readonly Point[] =>
  sideBySide(contours, nested).flatMap(([c, { depth }], i) => {
    const isOpening = (depth % 2 === 0) === (letters === 'openings');
    const within = sideBySide(contours, nested).flatMap(([inner, { parent }]) => (parent === i ? [inner] : []));
    return isOpening ? [roomiest(c, within)] : [];
  });

/** Sought to a two-hundredth of the smaller side: a stroke is as roomy all along, and any place of it will do. */
const roomiest = (outer: Contour, holes: readonly Contour[]): Point => {
  const { minX, minY, maxX, maxY } = boundsOfChain(outer);
  const precision = Math.max(Math.min(maxX - minX, maxY - minY) / 200, 1e-5);
  return roomiestPoint({ outer: counterClockwise(outer), holes: holes.map(clockwise) }, precision, MOST_SQUARES).at;
};

const MOST_SQUARES = 4000;
