/** A segment -> moves whose ends and centres lie on the grid of last digits, and whose arcs still close. */
import { pointAt } from '../../geometry/measure.ts';
import type { Arc, Point, Segment } from '../../geometry/segment.ts';
import { type Grid, type GridPlace, LARGEST, spotOf } from './grid.ts';

export interface GridLine {
  readonly kind: 'line';
  readonly to: GridPlace;
}

export interface GridArc {
  readonly kind: 'arc';
  readonly to: GridPlace;
  readonly centre: GridPlace;
  /** In last digits. */
  readonly radius: number;
  readonly counterClockwise: boolean;
}

export type GridMove = GridLine | GridArc;

/** Arcs with ends nearer than this many last digits have no centre worth writing. */
const SHORTEST_CHORD = 4;

/** Arcs that stray from their chord by less than this share of a last digit are lines to the control. */
const FLATTEST_SAGITTA = 0.25;

/**
 * The moves from a place on the grid along a segment. Arcs beyond half a turn become two by centre, because rounded ends close
 * together say little about the centre; by radius no arc is longer than a quarter turn, because R says little about the
 * centre of a half circle. Parts that fall within one last digit are left out.
 */
export const gridMoves = (from: GridPlace, segment: Segment, grid: Grid, arcs: 'centre' | 'radius'): readonly GridMove[] => {
  if (segment.kind === 'line') return lineTo(from, spotOf(segment.to, grid));
  if (arcs === 'centre' && isWhole(segment)) return wholeCircle(from, segment, grid);
  const longest = longestPart(segment.radius * grid.perMillimetre, grid, arcs);
  const parts = Math.max(1, Math.ceil(Math.abs(segment.sweep) / longest - 1e-9));
  const moves: GridMove[] = [];
  let at = from;
  for (let part = 1; part <= parts; part += 1) {
    const to = spotOf(pointAt(segment, part / parts), grid);
    const made = arcTo(at, to, segment, Math.abs(segment.sweep) / parts, grid);
    moves.push(...made);
    at = made.at(-1)?.to ?? at;
  }
  return moves;
};

/** Rad of arc in one move. A centre too far away to be written leaves only chords that stray less than a program can say. */
const longestPart = (radius: number, grid: Grid, arcs: 'centre' | 'radius'): number => {
  if (radius >= LARGEST * 10 ** grid.decimals) return 2 * Math.sqrt((2 * 0.99 * FLATTEST_SAGITTA) / radius);
  return arcs === 'centre' ? Math.PI : Math.PI / 2;
};

const isWhole = (arc: Arc): boolean => Math.abs(arc.sweep) >= 2 * Math.PI - 1e-9;

const lineTo = (from: GridPlace, to: GridPlace): readonly GridMove[] => (from.x === to.x && from.y === to.y ? [] : [{ kind: 'line', to }]);

/** At most half a turn. */
const arcTo = (from: GridPlace, to: GridPlace, arc: Arc, turn: number, grid: Grid): readonly GridMove[] => {
  const chord = Math.hypot(to.x - from.x, to.y - from.y);
  const radius = arc.radius * grid.perMillimetre;
  const sagitta = radius * (1 - Math.cos(turn / 2));
  if (chord < SHORTEST_CHORD || sagitta < FLATTEST_SAGITTA) return lineTo(from, to);
  const centre = onGrid(balanced(from, to, inDigits(arc.centre, grid)), (spot) => Math.abs(apart(spot, from) - apart(spot, to)));
  const reach = Math.max(Math.round(radius), Math.ceil(chord / 2));
  return [{ kind: 'arc', to, centre, radius: reach, counterClockwise: arc.sweep > 0 }];
};

const wholeCircle = (from: GridPlace, circle: Arc, grid: Grid): readonly GridMove[] => {
  const radius = circle.radius * grid.perMillimetre;
  if (radius < 1) return [];
  const centre = onGrid(inDigits(circle.centre, grid), (spot) => Math.abs(apart(spot, from) - radius));
  return [{ kind: 'arc', to: from, centre, radius: Math.round(radius), counterClockwise: circle.sweep > 0 }];
};

const inDigits = (point: Point, grid: Grid): Point => ({ x: point.x * grid.perMillimetre, y: point.y * grid.perMillimetre });

const apart = (a: Point, b: Point): number => Math.hypot(a.x - b.x, a.y - b.y);

/** The centre moved along the chord until both rounded ends are equally far from it. */
const balanced = (from: GridPlace, to: GridPlace, centre: Point): Point => {
  const ux = to.x - from.x;
  const uy = to.y - from.y;
  const share = ((centre.x - (from.x + to.x) / 2) * ux + (centre.y - (from.y + to.y) / 2) * uy) / (ux * ux + uy * uy);
  return { x: centre.x - share * ux, y: centre.y - share * uy };
};

/**
 * The nearest grid spot whose radii differ by at most one last digit, so that each is within half a digit of their mean. One
 * of the four spots around the wanted centre always is: going round them the difference changes by steps of at most two.
 */
const onGrid = (wanted: Point, mismatch: (spot: GridPlace) => number): GridPlace => {
  const x = Math.floor(wanted.x);
  const y = Math.floor(wanted.y);
  let best: GridPlace = { x: Math.round(wanted.x) + 0, y: Math.round(wanted.y) + 0 };
  let least = Number.POSITIVE_INFINITY;
  for (let corner = 0; corner < 4; corner += 1) {
    const spot = { x: x + (corner & 1), y: y + (corner >> 1) };
    const excess = Math.max(0, mismatch(spot) - 1);
    const cost = excess * 1000 + apart(spot, wanted);
    if (cost < least) {
      least = cost;
      best = spot;
    }
  }
  return best;
};
