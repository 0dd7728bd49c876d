/** Asks about other views of a part: beside it, of the same extent along x or y as projections are, without openings of their own. */

import type { Bounds } from '../../geometry/measure.ts';
import { isFilled } from '../../sequence/sequence.ts';
import { type Finding, remedy } from '../../text/finding.ts';
import { contour, list, type Part, term } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import type { DrawingUnits, Loop } from '../drawing.ts';
import { find } from '../findings.ts';
import { spot } from '../place-in-file.ts';
import { boxOf, isRectangle } from './upright.ts';

export interface Views {
  readonly of: Loop;
  readonly views: readonly Loop[];
}

/** Of the largest part that has something to show: openings, or more than a rectangle. */
export const viewsOf = (loops: readonly Loop[]): Views | undefined => {
  const around = new Set(loops.map((loop) => loop.parent));
  const outer = loops.filter((loop) => loop.depth === 0);
  const of = outer.find((loop) => around.has(loop.id) || !isRectangle(loop));
  if (of === undefined || outer.length < 2 || outer.length > MOST) return undefined;
  const plain = outer.filter(
    (loop) => loop !== of && !around.has(loop.id) && !isAlike(loop, of) && loop.area > SLIGHT * loop.perimeter ** 2,
  );
  const box = boxOf(of);
  const views = (['X', 'Y'] as const).flatMap((axis) => projected(plain, box, axis));
  return views.length === 0 ? undefined : { of, views: [...new Set(views)] };
};

/** Those in the band of the part along one axis and beside it along the other, where together they reach from edge to edge of it. */
const projected = (plain: readonly Loop[], of: Bounds, axis: 'X' | 'Y'): readonly Loop[] => {
  const other = axis === 'X' ? 'Y' : 'X';
  const sides = [
    (box: Bounds) => box[`max${other}`] < of[`min${other}`] - SAME,
    (box: Bounds) => box[`min${other}`] > of[`max${other}`] + SAME,
  ];
  return sides.flatMap((beside) => {
    const band = plain.filter((loop) => {
      const box = boxOf(loop);
      return beside(box) && box[`min${axis}`] >= of[`min${axis}`] - SAME && box[`max${axis}`] <= of[`max${axis}`] + SAME;
    });
    const low = Math.min(...band.map((loop) => boxOf(loop)[`min${axis}`]));
    const high = Math.max(...band.map((loop) => boxOf(loop)[`max${axis}`]));
    return Math.abs(low - of[`min${axis}`]) <= SAME && Math.abs(high - of[`max${axis}`]) <= SAME ? band : [];
  });
};

const isAlike = (a: Loop, b: Loop): boolean => Math.abs(a.area / b.area - 1) < 1e-4 && Math.abs(a.perimeter / b.perimeter - 1) < 1e-4;

/** mm: views are drawn from each other. */
const SAME = 0.01;
/** Of the perimeter squared: what encloses less is no view, nor a sound loop. */
const SLIGHT = 1e-4;
/** A sheet with more parts than this is no drawing of one part. */
const MOST = 200;

export const reportViews = (found: Views | undefined, units: DrawingUnits): Finding[] => {
  if (found === undefined || !isFilled(found.views)) return [];
  const [first] = found.views;
  const ids = found.views.map(({ id }) => id);
  const named = list(ids.map(contour), 'and');
  return [
    find('looks-like-view', (ids.length === 1 ? words.one : words.many)(named, found.of.id), {
      place: { ...spot(first.contour.segments[0].from, units), loop: first.id },
      done: ids.length === 1 ? words.cutOne : words.cutMany,
      remedy: remedy(words.settle(named, first.id), { field: 'without', value: ids }),
    }),
  ];
};

const words = phrases('views', {
  one: (loop: Part, of: string) =>
    say`${{ loop }} lies beside ${{ of: contour(of) }} and reaches just as far, without openings: it looks like a side view or a section of it.`,
  many: (loops: Part, of: string) =>
    say`${{ loops }} lie beside ${{ of: contour(of) }} and reach just as far, without openings: they look like side views or sections of it.`,
  cutOne: say`It will be cut as a part of its own unless you leave it out.`,
  cutMany: say`They will be cut as parts of their own unless you leave them out.`,
  settle: (loops: Part, first: string) =>
    say`Leave ${{ loops }} out (${{ without: term('without') }}), or name the side that is kept of each, as in ${{ field: term(`kept.${first}`) }}.`,
});
