/** Keeps centre lines, hidden edges and what lies on layers of notes out of the outlines, and asks about those that close. */

import { isFilled } from '../../sequence/sequence.ts';
import { type Finding, remedy } from '../../text/finding.ts';
import { contour, list, name, type Part, term } from '../../text/part.ts';
import { phrases, say } from '../../text/say.ts';
import { isLayerOfNotes } from '../curve/construction.ts';
import type { DrawnCurve } from '../curve/curve.ts';
import type { DrawingUnits, Loop } from '../drawing.ts';
import { find } from '../findings.ts';
import type { WorkCurve } from '../piece/fit-pieces.ts';
import type { FoundLoop } from '../piece/loop-found.ts';
import { spot } from '../place-in-file.ts';

/**
 * What `join` makes of the curves, those that explain the drawing joined apart. Where nothing else closes, line types and layers mean
 * nothing here, and all of it is work.
 */
export const besideConstruction = <T>(
  drawn: readonly DrawnCurve[],
  join: (curves: readonly WorkCurve[]) => T,
  loopsOf: (joined: T) => readonly FoundLoop[],
): T => {
  const told = drawn.map((curve): WorkCurve => ({ ...curve, construction: explains(curve) }));
  if (told.every((curve) => curve.construction === undefined)) return join(drawn);
  const apart = join(told);
  return loopsOf(apart).some((loop) => !loop.hidden) ? apart : join(drawn);
};

/** By what it is known: the line type before the layer. */
const explains = ({ lineType, layer, curve, closes }: DrawnCurve): string | undefined => {
  if (lineType !== undefined) return lineType;
  // Whether a line on a layer of its own divides an outline is asked where they meet.
  return isLayerOfNotes(layer) && (closes || curve.kind !== 'line') ? layer : undefined;
};

/** One question for all loops that are drawn so. */
export const reportConstruction = (
  loops: readonly Loop[],
  known: ReadonlyMap<string, string | undefined>,
  units: DrawingUnits,
): Finding[] => {
  const closed = loops.filter((loop) => known.get(loop.id) !== undefined);
  if (!isFilled(closed)) return [];
  const [first] = closed;
  const ids = closed.map(({ id }) => id);
  const by = [...new Set(ids.flatMap((id) => known.get(id) ?? []))];
  const named = list(ids.map(contour), 'and');
  const at = first.contour.segments[0].from;
  return [
    find('looks-like-construction', (closed.length === 1 ? words.one : words.many)(named, by), {
      place: { ...spot(at, units), loop: first.id },
      done: words.leftOut,
      remedy: remedy(words.confirm(named, first.id), { field: 'without', value: ids }),
    }),
  ];
};

const words = phrases('construction', {
  one: (loop: Part, by: readonly string[]) =>
    say`${{ loop }} is drawn as a centre line, a hidden edge or a note, by its line type or layer: ${{ by: list(by.map(name), 'and') }}.`,
  many: (loops: Part, by: readonly string[]) =>
    say`${{ loops }} are drawn as centre lines, hidden edges or notes, by their line type or layer: ${{ by: list(by.map(name), 'and') }}.`,
  leftOut: say`Left out unless you say otherwise: nothing is cut along it.`,
  confirm: (loops: Part, first: string) =>
    say`Confirm that ${{ loops }} is left out (${{ without: term('without') }}); what is to be cut gets a side of its own, as in ${{ field: term(`kept.${first}`) }}.`,
});
