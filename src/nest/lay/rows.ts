/** Laying in rows and columns: equal pieces in a row at one pitch, single or half-turned in pairs, the rows straight or offset. */

import { boundsOfChain, mergedBounds } from '../../geometry/area.ts';
import { reverseChain } from '../../geometry/chain.ts';
import type { Bounds } from '../../geometry/measure.ts';
import { itemOf } from '../../sequence/sequence.ts';
import { phrases, say } from '../../text/say.ts';
import { type CountedWork, goesOn } from '../counted-work.ts';
import { coverOf } from '../cover.ts';
import type { PlacedPiece } from '../nest-outcome.ts';
import { type Prepared, rectangleOf } from '../prepared.ts';
import { type PieceKind, turnedPolygons } from '../turned-kinds.ts';
import { changedOver, type Outline, outlineOf, overlap } from './clearance.ts';
import { fill, type Put, type Room } from './fill-rows.ts';
import { type Pattern, patternsOf, type TurnedShape } from './row-patterns.ts';

const notes = phrases('nest-rows', { rows: say`laying in rows` });

/** mm by which the polygons around arcs may lie outside them: far below a web, so that rows are as close as they can be. */
const ARC_ERROR = 0.005;
/** Patterns of each way to lie that are laid on the plate, the densest first, and of all ways together; the others are only reckoned. */
const LAID = { eachWay: 12, all: 48, allOnOutlines: 12 };
/** Patterns tried in the strip that the rows of another one leave. */
const OTHERS = 6;

/** Kinds one after the other, each in a band of its own above the last. */
export const layInRows = (prepared: Prepared, work: CountedWork): readonly PlacedPiece[] => {
  const tallFirst = prepared.kinds.toSorted((a, b) => sizeOf(b) - sizeOf(a));
  const ways: readonly boolean[] = [false, true];
  const tried = ways.map((over) => inBands(prepared, tallFirst, over, work));
  const areas = new Map(prepared.kinds.map(({ id, area }) => [id, area]));
  const metal = (placed: readonly PlacedPiece[]): number => placed.reduce((sum, p) => sum + itemOf(areas, p.piece), 0);
  const best = tried.reduce((a, b) => (metal(b) > metal(a) * (1 + 1e-12) ? b : a));
  return prepared.kinds.flatMap(({ id }) => best.filter((p) => p.piece === id));
};

const sizeOf = ({ grown }: PieceKind): number => {
  const b = boundsOfChain(grown.outer);
  return Math.max(b.maxX - b.minX, b.maxY - b.minY);
};

/** @param over whether x and y are changed over: columns are made instead of rows */
const inBands = (prepared: Prepared, kinds: readonly PieceKind[], over: boolean, work: CountedWork): readonly PlacedPiece[] => {
  const room = roomOf(prepared, over);
  let from = room.bounds.minY;
  const placed: PlacedPiece[] = [];
  for (const kind of kinds) {
    const shapes = unlike(kind.degrees.map((degrees) => shapeOf(kind, degrees, over)));
    const puts = best(shapes, kind.quantity, room, from, work);
    placed.push(
      ...puts.map(({ shape, x, y }, i) => ({
        piece: kind.id,
        copy: i + 1,
        degrees: shape.degrees,
        dx: over ? y : x,
        dy: over ? x : y,
      })),
    );
    from = puts.reduce((top, { shape, y }) => Math.max(top, y + shape.outline.maxY), from);
  }
  return placed;
};

const shapeOf = (kind: PieceKind, degrees: number, over: boolean): TurnedShape => {
  const drawn = outlineOf(turnedPolygons(kind.grown, degrees, ARC_ERROR));
  const other = changedOver(drawn);
  return over ? { degrees, outline: other, over: drawn } : { degrees, outline: drawn, over: other };
};

/** Ways to lie that are not the same as one before: a rectangle turned by half a turn is the same rectangle. */
const unlike = (shapes: readonly TurnedShape[]): readonly TurnedShape[] => {
  const seen = new Set<string>();
  return shapes.filter(({ outline: { bands, minX, minY } }) => {
    const rounded = (length: number): string => length.toFixed(6);
    const key = bands
      .map(({ low, trapezoids }) => [low - minY, ...trapezoids.flat().map((x) => x - minX)].map(rounded).join(' '))
      .join('; ');
    return !seen.has(key) && seen.add(key);
  });
};

const turned = (outline: Outline, over: boolean): Outline => (over ? changedOver(outline) : outline);

/** Most pieces; of as many, those that reach least far up. */
const best = (shapes: readonly TurnedShape[], quantity: number, room: Room, from: number, work: CountedWork): readonly Put[] => {
  const patterns = patternsOf(shapes).toSorted((a, b) => coarse(a.areaEach) - coarse(b.areaEach));
  const laid = densestOfEachWay(patterns, LAID.eachWay).slice(0, room.simple ? LAID.all : LAID.allOnOutlines);
  const others = densestOfEachWay(patterns, 1).slice(0, OTHERS);
  const reach = (puts: readonly Put[]): number => puts.reduce((top, { shape, y }) => Math.max(top, y + shape.outline.maxY), from);
  let found: readonly Put[] = [];
  const take = (puts: readonly Put[]): void => {
    const more = puts.length - found.length;
    if (more > 0 || (more === 0 && reach(puts) < reach(found) - 1e-9)) found = puts;
  };
  for (const pattern of laid) {
    // One pattern is laid in any case: a search that is ended at once still gives a layout.
    if (!goesOn(work, notes.rows) && found.length > 0) break;
    const whole = fill(pattern, quantity, room, from, work);
    take(whole.puts);
    if (whole.puts.length === quantity) continue;
    // The strip that is left above the last rows may hold pieces turned otherwise.
    for (let keep = whole.rows; keep >= 1; keep -= 1) {
      const below = whole.puts.filter(({ row }) => row < keep);
      const top = reach(below);
      for (const other of others) take([...below, ...fill(other, quantity - below.length, room, top, work).puts]);
    }
  }
  return found;
};

/** Rounding must not decide which of equally dense patterns comes first. */
const coarse = (area: number): number => Number(area.toPrecision(9));

const densestOfEachWay = (patterns: readonly Pattern[], most: number): readonly Pattern[] => {
  const counts = new Map<number, number>();
  return patterns.filter(({ rows }) => {
    const way = rows[0].members[0].shape.degrees;
    const count = (counts.get(way) ?? 0) + 1;
    counts.set(way, count);
    return count <= most;
  });
};

const roomOf = ({ free, zones, rectangle }: Prepared, over: boolean): Room => {
  const bounds = mergedBounds(free.map(boundsOfChain));
  const around = rectangleOf(wider(bounds));
  const outside = [coverOf(around, ARC_ERROR), ...free.map((c) => coverOf(reverseChain(c), ARC_ERROR))];
  const blocked = [...(rectangle ? [] : [outlineOf(outside)]), ...zones.map((z) => outlineOf([coverOf(z, ARC_ERROR)]))].map((o) =>
    turned(o, over),
  );
  const within: Bounds = over ? { minX: bounds.minY, minY: bounds.minX, maxX: bounds.maxY, maxY: bounds.maxX } : bounds;
  return { bounds: within, simple: blocked.length === 0, isClear: (outline, x, y) => blocked.every((b) => !overlap(b, outline, x, y)) };
};

const wider = ({ minX, minY, maxX, maxY }: Bounds): Bounds => ({ minX: minX - 1, minY: minY - 1, maxX: maxX + 1, maxY: maxY + 1 });
