/** Writes moves: remembers where the program is, what compensation is on, and spells each move as the dialect wants it. */

import { lengthOf } from '../../geometry/measure.ts';
import type { Point, Segment } from '../../geometry/segment.ts';
import { type Finding, remedy } from '../../text/finding.ts';
import { fixed, mm, placeByLetters, term } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Dialect } from '../dialect/dialect.ts';
import { find, type WriteCode } from './findings.ts';
import { fromGrid, type Grid, type GridPlace, isWritable, largestOf, printed, spotOf } from './grid.ts';
import { type GridMove, gridMoves } from './grid-moves.ts';
import type { Sheet } from './sheet.ts';

export type Written = { readonly kind: 'done' } | { readonly kind: 'refused'; readonly finding: Finding };

export interface ProgramPen {
  readonly travel: (to: Point) => Written;
  readonly cut: (segment: Segment) => Written;
  /** On the next move, which has to be straight. */
  readonly compensate: (side: 'left' | 'right', register: number) => Written;
  /** On the next move, which has to be straight. */
  readonly cancel: () => void;
  /** Before anything that is not a cut: what waits for a move that does not come is written by itself. */
  readonly settle: () => void;
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

/** What the pen holds. */
interface PenState {
  readonly dialect: Dialect;
  readonly grid: Grid;
  readonly page: Sheet;
  /** Where the program is. */
  at: GridPlace;
  /** Where the plan is; the program lags behind it by less than the shortest move. */
  meant: Point;
  compensating: Compensating;
}

export const pen = (dialect: Dialect, grid: Grid, page: Sheet): ProgramPen => {
  const state: PenState = { dialect, grid, page, at: zero, meant: zero, compensating: { kind: 'off' } };
  return {
    travel: (to) => travel(to, state),
    cut: (segment) => cut(segment, state),
    compensate: (side, register) => {
      if (state.compensating.kind !== 'off') return refused('compensation-needs-a-straight-move', 'twice', state.meant);
      state.compensating = { kind: 'begins', words: `${side === 'left' ? 'G41' : 'G42'} D${register}` };
      return done;
    },
    cancel: () => {
      state.compensating = state.compensating.kind === 'on' ? { kind: 'ends' } : { kind: 'off' };
    },
    settle: () => {
      if (state.compensating.kind !== 'ends') return;
      page.block('G40');
      state.compensating = { kind: 'off' };
    },
    isCompensated: () => state.compensating.kind === 'begins' || state.compensating.kind === 'on',
  };
};

const travel = (to: Point, state: PenState): Written => {
  const { grid } = state;
  if (!isWritable(to.x, grid) || !isWritable(to.y, grid)) return unwritable('travel', to, grid);
  const spot = spotOf(to, grid);
  state.meant = to;
  if (spot.x === state.at.x && spot.y === state.at.y) return done;
  state.page.block(`G00 ${place(spot, state)}`);
  state.at = spot;
  return done;
};

const cut = (segment: Segment, state: PenState): Written => {
  const { grid, dialect, compensating } = state;
  if (!usable(segment, grid)) return unwritable('cut', farther(segment), grid);
  const gap = Math.hypot(segment.from.x - state.meant.x, segment.from.y - state.meant.y) * grid.perMillimetre;
  if (gap > JOINED) return notJoined(state.meant, segment.from);
  state.meant = segment.to;
  if (compensating.kind === 'begins' || compensating.kind === 'ends') {
    state.compensating = compensating.kind === 'begins' ? { kind: 'on' } : { kind: 'off' };
    return switching(segment, compensating.kind === 'begins' ? compensating.words : 'G40', state);
  }
  if (compensating.kind === 'on' && isShort(segment, state)) return done;
  for (const move of gridMoves(state.at, segment, grid, dialect.arcs)) write(move, '', state);
  return done;
};

const switching = (segment: Segment, words: string, state: PenState): Written => {
  const only = gridMoves(state.at, segment, state.grid, state.dialect.arcs)[0];
  if (only?.kind !== 'line') return refused('compensation-needs-a-straight-move', 'arc or nothing', segment.from);
  write(only, `${words} `, state);
  return done;
};

const isShort = (segment: Segment, { at, grid }: PenState): boolean => {
  const to = spotOf(segment.to, grid);
  const reach = Math.hypot(to.x - at.x, to.y - at.y);
  return reach < SHORTEST_UNDER_COMPENSATION && lengthOf(segment) * grid.perMillimetre < 2 * SHORTEST_UNDER_COMPENSATION;
};

const write = (move: GridMove, before: string, state: PenState): void => {
  state.page.block(before + spell(move, state));
  state.at = move.to;
};

const spell = (move: GridMove, state: PenState): string => {
  const { grid, at } = state;
  if (move.kind === 'line') return `G01 ${place(move.to, state)}`;
  const word = move.counterClockwise ? 'G03' : 'G02';
  if (state.dialect.arcs === 'radius') return `${word} ${place(move.to, state)} R${printed(move.radius, grid)}`;
  return `${word} ${place(move.to, state)} I${printed(move.centre.x - at.x, grid)} J${printed(move.centre.y - at.y, grid)}`;
};

const place = (to: GridPlace, { dialect, at, grid }: PenState): string => {
  const origin = dialect.coordinates === 'incremental' ? at : zero;
  return `X${printed(to.x - origin.x, grid)} Y${printed(to.y - origin.y, grid)}`;
};

const zero: GridPlace = { x: 0, y: 0 };

const usable = (segment: Segment, grid: Grid): boolean => {
  const { from, to } = segment;
  if (![from.x, from.y, to.x, to.y].every((number) => isWritable(number, grid))) return false;
  if (segment.kind === 'line') return true;
  return [segment.centre.x, segment.centre.y, segment.radius, segment.sweep].every(Number.isFinite);
};

const faults = phrases('program-move', {
  'arc or nothing': say`Compensation would be switched on a move that is not straight or has no length.`,
  twice: say`Compensation would be switched on before a straight move has switched it off.`,
  cut: say`A cut has a coordinate that is not a number.`,
  travel: say`A travel has a coordinate that is not a number.`,
});

/** The end of a segment that lies further from zero. */
const farther = ({ from, to }: Segment): Point => (awayFrom(to) > awayFrom(from) ? to : from);

const awayFrom = ({ x, y }: Point): number => Math.max(Math.abs(x), Math.abs(y));

/** A place that no program can name: mostly a part drawn in the coordinates of a hall or a map, which a zero near it cures. */
const unwritable = (what: 'cut' | 'travel', to: Point, grid: Grid): Written => {
  const away = awayFrom(to);
  if (!(away < Number.POSITIVE_INFINITY) || isWritable(away, grid)) return refused('coordinate-unusable', what, to);
  const near = { x: Math.round(to.x / TENS) * TENS, y: Math.round(to.y / TENS) * TENS };
  const finding = find(
    'coordinate-unusable/far',
    say`The cut lies ${{ away: mm(away, fixed(0)) }} from program zero, and a program names places up to ${{ most: mm(largestOf(grid), fixed(0)) }} away.`,
    {
      place: { kind: 'spot', x: to.x, y: to.y },
      remedy: remedy(
        say`Set the program zero near the part, for example ${{ datum: placeByLetters(near, fixed(0)) }} of the drawing (${{ option: term('--datum') }}, ${{ field: term('datum') }} in the job).`,
        { field: 'datum', value: near },
      ),
    },
  );
  return { kind: 'refused', finding };
};

/** mm: a zero is named in round numbers. */
const TENS = 10;

const refused = (code: WriteCode, what: keyof typeof faults, spot: Point): Written => {
  const place = Number.isFinite(spot.x) && Number.isFinite(spot.y) ? { place: { kind: 'spot', x: spot.x, y: spot.y } as const } : {};
  return { kind: 'refused', finding: find(code, faults[what], place) };
};

const notJoined = (end: Point, begin: Point): Written => {
  const gap = Math.hypot(end.x - begin.x, end.y - begin.y);
  const text = say(
    'path-not-joined',
  )`A move begins ${{ gap: mm(gap, fixed(4)) }} from where the one before ended, ${{ place: placeByLetters(begin, fixed(4), 'block') }}.`;
  return { kind: 'refused', finding: find('path-not-joined', text, { place: { kind: 'spot', x: begin.x, y: begin.y } }) };
};

export const roundedOffset = (offset: number, grid: Grid): number => fromGrid(Math.round(offset * grid.perMillimetre), grid);
