/** Writes moves: remembers where the program is, what compensation is on, and spells each move as the dialect wants it. */

import type { Finding } from '../../finding/finding.ts';
import { lengthOf } from '../../geometry/measure.ts';
import type { Point, Segment } from '../../geometry/segment.ts';
import type { Dialect } from '../dialect/dialect.ts';
import { find, type WriteCode } from './findings.ts';
import { fromGrid, type Grid, isWritable, printed, type Spot, spotOf } from './grid.ts';
import { type GridMove, gridMoves } from './grid-moves.ts';
import type { Sheet } from './sheet.ts';

export type Written = { readonly kind: 'done' } | { readonly kind: 'refused'; readonly finding: Finding };

export interface Pen {
  readonly travel: (to: Point) => Written;
  readonly cut: (segment: Segment) => Written;
  /** On the next move, which has to be straight. */
  readonly compensate: (side: 'left' | 'right', register: number) => Written;
  /** On the next move, which has to be straight. */
  readonly cancel: () => void;
  /** Before anything that is not a cut: what waits for a move that does not come is written by itself. */
  readonly settle: () => Written;
  /** The wire follows the programmed path with an offset, or is about to. */
  readonly isCompensated: () => boolean;
}

/** Where a move may begin beside the end of the one before, in last digits: both were rounded. */
const JOINED = 2;

/**
 * Under compensation the control turns corners square to each move, so a move of a few last digits, whose direction is mostly
 * rounding, would throw the wire off by tenths of the offset. Such moves are run through, by at most this many last digits.
 */
const SHORTEST_UNDER_COMPENSATION = 4;

const done: Written = { kind: 'done' };

type Compensating =
  | { readonly kind: 'off' }
  | { readonly kind: 'begins'; readonly words: string }
  | { readonly kind: 'on' }
  | { readonly kind: 'ends' };

export const pen = (dialect: Dialect, grid: Grid, page: Sheet): Pen => {
  let at: Spot = { x: 0, y: 0 };
  // Where the plan is; `at` lags behind it by less than the shortest move.
  let meant: Point = { x: 0, y: 0 };
  let compensating: Compensating = { kind: 'off' };

  const place = (to: Spot): string => {
    const origin = dialect.coordinates === 'incremental' ? at : zero;
    return `X${printed(to.x - origin.x, grid)} Y${printed(to.y - origin.y, grid)}`;
  };

  const spell = (move: GridMove): string => {
    if (move.kind === 'line') return `G01 ${place(move.to)}`;
    const word = move.counterClockwise ? 'G03' : 'G02';
    if (dialect.arcs === 'radius') return `${word} ${place(move.to)} R${printed(move.radius, grid)}`;
    return `${word} ${place(move.to)} I${printed(move.centre.x - at.x, grid)} J${printed(move.centre.y - at.y, grid)}`;
  };

  const write = (moves: readonly GridMove[]): void => {
    for (const move of moves) {
      page.block(spell(move));
      at = move.to;
    }
  };

  const switching = (segment: Segment, words: string): Written => {
    const moves = gridMoves(at, segment, grid, dialect.arcs);
    const only = moves[0];
    if (only?.kind !== 'line') return refused('compensation-needs-a-straight-move', 'arc or nothing', segment.from);
    page.block(`${words} ${spell(only)}`);
    at = only.to;
    return done;
  };

  const cut = (segment: Segment): Written => {
    if (!usable(segment, grid)) return refused('coordinate-unusable', 'cut', segment.from);
    const gap = Math.hypot(segment.from.x - meant.x, segment.from.y - meant.y) * grid.perMillimetre;
    if (gap > JOINED) return notJoined(meant, segment.from);
    meant = segment.to;
    const state = compensating;
    if (state.kind === 'begins' || state.kind === 'ends') {
      compensating = state.kind === 'begins' ? { kind: 'on' } : { kind: 'off' };
      return switching(segment, state.kind === 'begins' ? state.words : 'G40');
    }
    if (state.kind === 'on' && isShort(segment)) return done;
    write(gridMoves(at, segment, grid, dialect.arcs));
    return done;
  };

  const isShort = (segment: Segment): boolean => {
    const to = spotOf(segment.to, grid);
    const reach = Math.hypot(to.x - at.x, to.y - at.y);
    return reach < SHORTEST_UNDER_COMPENSATION && lengthOf(segment) * grid.perMillimetre < 2 * SHORTEST_UNDER_COMPENSATION;
  };

  return {
    cut,
    travel: (to) => {
      if (!isWritable(to.x, grid) || !isWritable(to.y, grid)) return refused('coordinate-unusable', 'travel', to);
      const spot = spotOf(to, grid);
      meant = to;
      if (spot.x === at.x && spot.y === at.y) return done;
      page.block(`G00 ${place(spot)}`);
      at = spot;
      return done;
    },
    compensate: (side, register) => {
      if (compensating.kind !== 'off') return refused('compensation-needs-a-straight-move', 'twice', meant);
      compensating = { kind: 'begins', words: `${side === 'left' ? 'G41' : 'G42'} D${register}` };
      return done;
    },
    cancel: () => {
      compensating = compensating.kind === 'on' ? { kind: 'ends' } : { kind: 'off' };
    },
    settle: () => {
      if (compensating.kind === 'ends') {
        page.block('G40');
        compensating = { kind: 'off' };
      }
      return done;
    },
    isCompensated: () => compensating.kind === 'begins' || compensating.kind === 'on',
  };
};

const zero: Spot = { x: 0, y: 0 };

const usable = (segment: Segment, grid: Grid): boolean => {
  const { from, to } = segment;
  if (![from.x, from.y, to.x, to.y].every((number) => isWritable(number, grid))) return false;
  if (segment.kind === 'line') return true;
  return [segment.centre.x, segment.centre.y, segment.radius, segment.sweep].every(Number.isFinite);
};

const sentences: Readonly<Record<string, string>> = {
  'arc or nothing': 'Compensation would be switched on a move that is not straight or has no length.',
  twice: 'Compensation would be switched on before a straight move has switched it off.',
  cut: 'A cut has a coordinate that is no number or too large for a program.',
  travel: 'A travel has a coordinate that is no number or too large for a program.',
};

const refused = (code: WriteCode, what: keyof typeof sentences, spot: Point): Written => {
  const sentence = sentences[what] as string;
  const place = Number.isFinite(spot.x) && Number.isFinite(spot.y) ? { place: { kind: 'spot', x: spot.x, y: spot.y } as const } : {};
  return { kind: 'refused', finding: find(code, sentence, place) };
};

const notJoined = (end: Point, begin: Point): Written => {
  const gap = Math.hypot(end.x - begin.x, end.y - begin.y);
  const sentence = `A move begins ${gap.toFixed(4)} mm from where the one before ended, at ${begin.x.toFixed(4)}, ${begin.y.toFixed(4)} mm.`;
  return { kind: 'refused', finding: find('path-not-joined', sentence, { place: { kind: 'spot', x: begin.x, y: begin.y } }) };
};

export const roundedOffset = (offset: number, grid: Grid): number => fromGrid(Math.round(offset * grid.perMillimetre), grid);
