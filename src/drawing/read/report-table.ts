/** Finds lattices of rectangles that share their edges: title blocks, lists of parts, grids; no wire can cut them so. */

import { isFilled } from '../../sequence/sequence.ts';
import { type Finding, remedy } from '../../text/finding.ts';
import { contour, count, list, type Part, term } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { Text } from '../../text/text.ts';
import type { DrawingUnits, Loop } from '../drawing.ts';
import { find } from '../findings.ts';
import { spot } from '../place-in-file.ts';
import { isRectangle, sharing, uprightEdges } from './upright.ts';

/** Cells of tables; none where nothing but them would be left of the drawing. */
export const tablesOf = (loops: readonly Loop[]): readonly Loop[] => {
  const around = new Set(loops.map((loop) => loop.parent));
  const cells = loops.filter((loop) => isRectangle(loop) && loop.contour.segments.length <= MOST_CORNERS && !around.has(loop.id));
  const pairs = sharing(cells.map((cell) => uprightEdges(cell.contour) ?? []));
  const group = cells.map((_, i) => i);
  const root = (i: number): number => (group[i] === i || group[i] === undefined ? i : root(group[i]));
  for (const [a, b] of pairs) group[root(a)] = root(b);
  const sizes = new Map<number, number>();
  for (let i = 0; i < cells.length; i += 1) sizes.set(root(i), (sizes.get(root(i)) ?? 0) + 1);
  const tables = cells.filter((_, i) => (sizes.get(root(i)) ?? 0) >= LEAST_CELLS);
  return loops.some((loop) => !tables.includes(loop) && !isAround(loop, tables)) ? tables : [];
};

/** A face that is what a table leaves of its border. */
const isAround = (loop: Loop, tables: readonly Loop[]): boolean => {
  const edges = uprightEdges(loop.contour);
  return edges !== undefined && sharing([edges, ...tables.map((t) => uprightEdges(t.contour) ?? [])]).some(([a, b]) => a === 0 || b === 0);
};

/** A rectangle whose edges are divided where those of others end. */
const MOST_CORNERS = 40;
/** Two rectangles edge to edge may be two parts. */
const LEAST_CELLS = 3;

export const reportTables = (tables: readonly Loop[], units: DrawingUnits): Finding[] => {
  if (!isFilled(tables)) return [];
  const [first] = tables;
  const ids = tables.map(({ id }) => id);
  return [
    find('looks-like-table', words.table(namesOf(ids)), {
      place: { ...spot(first.contour.segments[0].from, units), loop: first.id },
      done: words.leftOut,
      remedy: remedy(words.confirm(first.id), { field: 'without', value: ids }),
    }),
  ];
};

/** All names of a few, the first of many. */
const namesOf = (ids: readonly string[]): Part | Text =>
  ids.length <= SHOWN ? list(ids.map(contour), 'and') : words.andMore(list(ids.slice(0, SHOWN).map(contour)), ids.length - SHOWN);

const SHOWN = 8;

const words = phrases('tables', {
  table: (loops: Part | Text) => say`${{ loops }} are rectangles edge to edge: they look like a title block, a table or a grid.`,
  andMore: (loops: Part, more: number) => say`${{ loops }} and ${{ more: count(more) }} more`,
  leftOut: say`They are left out unless you say otherwise: nothing is cut along them.`,
  confirm: (first: string) =>
    say`Confirm that they are left out (${{ without: term('without') }}); what is to be cut gets a side of its own, as in ${{ field: term(`kept.${first}`) }}, and room for the wire.`,
});
