/** Laying in rows and columns: equal pieces in a row at one pitch, single or half-turned in pairs, the rows straight or offset. */
import { boundsOfChain, mergedBounds } from '../../geometry/area.ts';
import { reverseChain } from '../../geometry/chain.ts';
import type { Bounds } from '../../geometry/measure.ts';
import { changedOver, type Outline, outlineOf, overlap } from './clearance.ts';
import { coverOf } from './cover.ts';
import { fill, type Put, type Room } from './fill-rows.ts';
import type { Placed } from './layout.ts';
import { type Prepared, rectangleOf } from './prepared.ts';
import { patternsOf, type Shape } from './row-patterns.ts';
import { type Kind, turnedPolygons } from './turned.ts';
import { goesOn, type Work } from './work.ts';

/** mm by which the polygons around arcs may lie outside them: far below a web, so that rows are as close as they can be. */
const ARC_ERROR = 0.005;
/** Patterns that are laid on the plate, the densest first; the others are only reckoned. */
const LAID = 24;
const LAID_ON_OUTLINES = 8;

/** Kinds one after the other, each in a band of its own above the last. */
export const layInRows = (prepared: Prepared, work: Work): readonly Placed[] => {
  const tallFirst = prepared.kinds.toSorted((a, b) => sizeOf(b) - sizeOf(a));
  const ways: readonly boolean[] = [false, true];
  const tried = ways.map((over) => inBands(prepared, tallFirst, over, work));
  const metal = (placed: readonly Placed[]): number =>
    placed.reduce((sum, p) => sum + prepared.kinds.find(({ id }) => id === p.piece)!.area, 0);
  const best = tried.reduce((a, b) => (metal(b) > metal(a) * (1 + 1e-12) ? b : a));
  return prepared.kinds.flatMap(({ id }) => best.filter((p) => p.piece === id));
};

const sizeOf = ({ grown }: Kind): number => {
  const b = boundsOfChain(grown.outer);
  return Math.max(b.maxX - b.minX, b.maxY - b.minY);
};

/** @param over whether x and y are changed over: columns are made instead of rows */
const inBands = (prepared: Prepared, kinds: readonly Kind[], over: boolean, work: Work): readonly Placed[] => {
  const room = roomOf(prepared, over);
  let from = room.bounds.minY;
  const placed: Placed[] = [];
  for (const kind of kinds) {
    if (!goesOn(work, `laying ${kind.id} in rows`)) break;
    const shapes = kind.degrees.map((degrees) => shapeOf(kind, degrees, over));
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

const shapeOf = (kind: Kind, degrees: number, over: boolean): Shape => {
  const drawn = outlineOf(turnedPolygons(kind.grown, degrees, ARC_ERROR));
  const other = changedOver(drawn);
  return over ? { degrees, outline: other, over: drawn } : { degrees, outline: drawn, over: other };
};

const turned = (outline: Outline, over: boolean): Outline => (over ? changedOver(outline) : outline);

/** Most pieces; of as many, those that reach least far up. */
const best = (shapes: readonly Shape[], quantity: number, room: Room, from: number, work: Work): readonly Put[] => {
  const patterns = patternsOf(shapes).toSorted((a, b) => a.areaEach - b.areaEach);
  const laid = patterns.slice(0, room.simple ? LAID : LAID_ON_OUTLINES);
  const reach = (puts: readonly Put[]): number => puts.reduce((top, { shape, y }) => Math.max(top, y + shape.outline.maxY), from);
  let found: readonly Put[] = [];
  const take = (puts: readonly Put[]): void => {
    const more = puts.length - found.length;
    if (more > 0 || (more === 0 && reach(puts) < reach(found) - 1e-9)) found = puts;
  };
  for (const pattern of laid) {
    if (!goesOn(work, 'laying in rows')) break;
    const whole = fill(pattern, quantity, room, from, work);
    take(whole.puts);
    if (whole.puts.length === quantity) continue;
    // The strip that is left above the last rows may hold pieces turned otherwise.
    for (const keep of [whole.rows, whole.rows - 1, whole.rows - 2]) {
      if (keep < 1) continue;
      const below = whole.puts.filter(({ row }) => row < keep);
      const top = reach(below);
      for (const other of laid) if (other.areaEach > 0) take([...below, ...fill(other, quantity - below.length, room, top, work).puts]);
    }
  }
  return found;
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
