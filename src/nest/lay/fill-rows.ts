/** A pattern of rows laid on a plate: row upon row as close as they go, keeping what has room. */

import type { Bounds } from '../../geometry/measure.ts';
import type { Point } from '../../geometry/segment.ts';
import type { CountedWork } from '../counted-work.ts';
import type { Outline } from './clearance.ts';
import { type Member, type Pattern, type Row, rowRise, type TurnedShape } from './row-patterns.ts';

/** Where pieces may lie. */
export interface Room {
  readonly bounds: Bounds;
  /** The bounds are all there is. */
  readonly simple: boolean;
  /** Whether nothing is in the way of a piece that lies within the bounds. */
  readonly isClear: (outline: Outline, x: number, y: number) => boolean;
}

/** A piece laid, and in which row. */
export interface Put {
  readonly shape: TurnedShape;
  readonly x: number;
  readonly y: number;
  readonly row: number;
}

export interface Filled {
  readonly puts: readonly Put[];
  readonly rows: number;
}

/** Beginnings tried along and across where the plate is no plain rectangle, as parts of the pitch. */
const BEGINNINGS = 5;
/** Rows below that are kept in mind: a tall piece reaches down between those of several rows. */
const REACH = 12;
const TOUCH = 1e-9;

/** The best of several beginnings, above `from`. */
export const fill = (pattern: Pattern, quantity: number, room: Room, from: number, work: CountedWork): Filled => {
  const count = room.simple ? 1 : BEGINNINGS;
  const { pitch } = pattern.rows[0];
  const rise = (pattern.areaEach * pattern.rows[0].members.length) / pitch;
  let most: Filled = { puts: [], rows: 0 };
  for (let i = 0; i < count; i += 1)
    for (let j = 0; j < count; j += 1) {
      const filled = fillFrom(pattern, quantity, room, { x: (pitch * i) / count, y: from + (rise * j) / count }, work);
      if (filled.puts.length > most.puts.length) most = filled;
    }
  return most;
};

/** A row on the plate: where its group's origin lies. */
interface LaidRow {
  readonly row: Row;
  readonly shift: number;
  readonly y: number;
}

/** @param begin how far in the first row begins, and how high. */
const fillFrom = ({ rows, shift }: Pattern, quantity: number, room: Room, begin: Point, work: CountedWork): Filled => {
  const laid: LaidRow[] = [];
  const puts: Put[] = [];
  for (let r = 0; puts.length < quantity; r += 1) {
    const row = rows[r % 2 === 0 ? 0 : 1];
    const along = r % 2 === 0 ? 0 : shift;
    const y = laid.reduce((least, below) => Math.max(least, below.y + rowRise(below.row, row, along - below.shift)), begin.y - lowest(row));
    if (y + lowest(row) + heightOfLowest(row) > room.bounds.maxY + TOUCH) break;
    const start = room.bounds.minX - rows[0].members[0].shape.outline.minX + begin.x + along;
    const found = alongRow(row, start, y, r, room);
    work.done += 20 + found.length;
    puts.push(...found.slice(0, quantity - puts.length));
    laid.push({ row, shift: along, y });
    if (laid.length > REACH) laid.shift();
  }
  return { puts, rows: puts.reduce((top, p) => Math.max(top, p.row + 1), 0) };
};

const lowest = ({ members }: Row): number => Math.min(...members.map(({ shape, y }) => y + shape.outline.minY));

/** The least height at which any member ends: when even that is too high, no further row has room. */
const heightOfLowest = (row: Row): number => Math.min(...row.members.map(({ shape, y }) => y + shape.outline.maxY)) - lowest(row);

const alongRow = ({ members, pitch }: Row, start: number, y: number, row: number, room: Room): readonly Put[] => {
  const { minX, maxX } = room.bounds;
  const count = Math.ceil((maxX - minX) / pitch) + 2;
  return Array.from({ length: 2 * count }, (_, k) => k - count).flatMap((k) =>
    members.flatMap((m): readonly Put[] =>
      hasRoom(m, start + k * pitch, y, room) ? [{ shape: m.shape, x: start + k * pitch + m.x, y: y + m.y, row }] : [],
    ),
  );
};

const hasRoom = ({ shape: { outline }, x, y }: Member, alongX: number, alongY: number, { bounds, isClear }: Room): boolean => {
  const [px, py] = [alongX + x, alongY + y];
  return (
    px + outline.minX >= bounds.minX - TOUCH &&
    px + outline.maxX <= bounds.maxX + TOUCH &&
    py + outline.minY >= bounds.minY - TOUCH &&
    py + outline.maxY <= bounds.maxY + TOUCH &&
    isClear(outline, px, py)
  );
};
